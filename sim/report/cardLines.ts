import { METRES_PER_FOOT, PASCALS_PER_PSI } from '../base/units.ts';
import type { StepSpec } from '../job/schema.ts';
import type { Amount } from '../mix/mixBatch.ts';
import type { CupTime } from '../mix/cupTime.ts';
import { clockWords, whenWords } from './clockWords.ts';
import { ratioWords } from './ratioWords.ts';
import type { CardEntry, CardGun, CardMix } from './reportedCard.ts';
import { roundedText, shown, shownFluidRate, shownNumber, shownPercent, shownTemperature, shownTime, shownUnit, type UnitSystem } from './units.ts';

/** One line of the card: what it is about, and its words. */
export interface CardLine {
  readonly head: string;
  readonly text: string;
}

/** What a hand spans between thumb and little finger, m. Assumed: 180 to 230 mm; everyone measures their own once. */
const HAND_SPAN_M = 0.2;
/** What the film is told within is of interest only from here on. */
const TOLD_SPREAD = 0.02;

/** A step's kind for the head of its entry. */
export function stepKindWords(step: StepSpec): string {
  switch (step.kind) {
    case 'spray':
      return `sprayed, ${step.layer}`;
    case 'brush':
      return `brushed, ${step.layer}`;
    case 'sand':
      return `sand ${step.wet ? 'wet' : 'dry'}, ${step.grit} grit`;
    case 'fix':
      return 'set on';
    case 'mask':
      return 'mask';
    case 'unmask':
      return 'take masks off';
  }
}

/** What the card says of one step, line by line, in the order of the work. */
export function cardLines(entry: CardEntry, system: UnitSystem): CardLine[] {
  return [
    ...(entry.mix === null ? [] : mixLines(entry.mix, system)),
    ...(entry.gun === null ? [] : gunLines(entry.gun, system)),
    ...filmLines(entry, system),
    ...stepLines(entry.step, system),
    ...waitLines(entry),
  ];
}

function mixLines(mix: CardMix, system: UnitSystem): CardLine[] {
  const { pour } = mix;
  const retarder = mix.retarderName === null ? [] : [`${mix.retarderName} ${amountWords(pour.retarder, system)}`];
  const parts = [`${mix.finishName} ${amountWords(pour.finish, system)}`, `thinner ${amountWords(pour.thinner, system)}`, ...retarder];
  return [
    { head: 'Mix', text: `${mix.name}: ${ratioWords(mix.ratio)} by volume; ${shownPercent(mix.volumeSolidsFraction)} solids by volume` },
    { head: 'Pour', text: `${parts.join(', ')}: ${amountWords(pour.total, system)} in all, with what stays in pot and hose` },
    { head: 'Cup', text: mix.cup.seconds === null ? `${cupWords(mix.cup)}; read it and write it down` : `${cupWords(mix.cup)} at ${shownTemperature(mix.temperature_K, system)}, ${mix.isRead ? 'from your own reading' : 'a guess from usual viscosity'}: read it and write it down` },
  ];
}

/** `22.4 s in the Ford cup No. 4`; where the cup does not hold, its sentence and no figure. */
export function cupWords({ cup, seconds, fitting }: CupTime): string {
  if (seconds !== null) return `${roundedText(seconds)} s in the ${cup.name}`;
  const other = fitting === null ? 'no cup known here fits' : `use the ${fitting.name}`;
  return `outside the range of the ${cup.name} (${cup.least_s} to ${cup.most_s} s), so no figure; ${other}`;
}

function amountWords({ volume_m3, weight_kg }: Amount, system: UnitSystem): string {
  return `${shown(volume_m3, 'volume', system)} (${shown(weight_kg, 'weight', system)})`;
}

function gunLines(gun: CardGun, system: UnitSystem): CardLine[] {
  const passes = gun.isCross ? 'cross coat: a second pass at right angles before the first flashes off' : 'single coat: one pass';
  return [
    { head: 'Gun', text: `${gun.setUpName}; ${shownFluidRate(gun.fluidRate_m3_s, system)}, ${roundedText(gun.capPressure_Pa / 1000)} kPa (${roundedText(gun.capPressure_Pa / PASCALS_PER_PSI)} psi) at the cap; prove the fan on a card first` },
    { head: 'Distance', text: `${shown(gun.distance_m, 'length', system)}: ${spanWords(gun.distance_m)}; fan ${shown(gun.fanWidth_m, 'length', system)} wide there` },
    { head: 'Strokes', text: `${gun.isRecorded ? 'as recorded' : `${gun.strokeCount} strokes a side`}; ${passes}; begin at A, along its arrow${gun.isCross ? ', then at B' : ''}` },
    { head: 'Overlap', text: `${shownPercent(gun.overlapFraction)} of the fan, next stroke ${shown(gun.pitch_m, 'length', system)} on` },
    { head: 'Speed', text: `${shown(gun.speed_m_s, 'speed', system)}: a metre (3 ft 3 in) in ${roundedText(1 / gun.speed_m_s)} s; open ${shown(gun.lead_m, 'length', system)} before the edge, close ${shown(gun.lag_m, 'length', system)} past it` },
  ];
}

/** A distance by the hand, which is always there. */
function spanWords(distance_m: number): string {
  const spans = distance_m / HAND_SPAN_M;
  if (Math.abs(spans - 1) <= 0.1) return 'about a spread hand, thumb to little finger';
  return spans < 1 ? `about ${roundedText(spans * 100)} % of a spread hand` : `about a spread hand and ${shownPercent(spans - 1)} of another`;
}

function filmLines({ gun, wet_m, dry_m, after_m }: CardEntry, system: UnitSystem): CardLine[] {
  if (wet_m === null || dry_m === null) return [];
  const spread = (film: { readonly value: number; readonly low: number; readonly high: number }): string =>
    film.high - film.low > TOLD_SPREAD * film.value ? `${shown(film.value, 'film', system)} (${shownNumber(film.low, 'film', system)} to ${shownNumber(film.high, 'film', system)})` : shown(film.value, 'film', system);
  const { name } = shownUnit('film', system);
  const target = gun === null ? [] : [{ head: 'Target', text: `${shown(gun.target.thickness_m, 'film', system)} ${gun.target.film}, from ${shownNumber(gun.target.low_m, 'film', system)} to ${shownNumber(gun.target.high_m, 'film', system)} ${name} of the whole coat` }];
  return [
    ...target,
    { head: 'Film', text: `of this coat, wet ${spread(wet_m)}, dry ${spread(dry_m)}; all coats dry after it ${shown(after_m.value, 'film', system)}` },
  ];
}

function stepLines(step: StepSpec, system: UnitSystem): CardLine[] {
  switch (step.kind) {
    case 'sand':
      return [
        { head: 'Take off', text: `about ${shown(step.removes_um * 1e-6, 'film', system)}: level only, never through to the clear` },
        ...(step.keepOff.length === 0 ? [] : [{ head: 'Keep off', text: step.keepOff.join(', ') }]),
      ];
    case 'fix':
      return [{ head: 'Set on', text: [step.length_mm === undefined ? '' : `${tapeLength(step.length_mm / 1000, system)} of ${step.what}${step.width_mm === undefined ? '' : `, ${shown(step.width_mm / 1000, 'length', system)} wide`}`, step.count === undefined ? '' : `${step.count} pieces`].filter((text) => text !== '').join('; ') || step.what }];
    case 'mask':
      return [{ head: 'Leave open', text: `${step.share_percent} % of the area; burnish the edge, seal it with one mist of the colour beneath` }];
    case 'unmask':
      return [{ head: 'Pull', text: 'low and back on itself' }];
    case 'brush':
    case 'spray':
      return step.paste_g_L === undefined ? [] : [{ head: 'Paste', text: `${step.paste_g_L} g of aluminium paste to a litre of unthinned finish (22.5 g/L, 3 oz to a US gallon, at most: FAA AC 43.13-1B 2-21g)` }];
  }
}

/** Tape is bought by the metre and the foot. */
function tapeLength(length_m: number, system: UnitSystem): string {
  return system === 'us' ? `${roundedText(length_m / METRES_PER_FOOT)} ft` : `${roundedText(length_m)} m`;
}

function waitLines({ waitUntil, latest, wait_s, end }: CardEntry): CardLine[] {
  const last = latest === null || end === null ? '' : `; begin the next by ${whenWords(latest, end)} at the latest`;
  if (waitUntil !== null && end !== null) return [{ head: 'Wait', text: `until ${whenWords(waitUntil, end)} in the air as typed${last}; longer where it is colder` }];
  return wait_s > 0 ? [{ head: 'Wait', text: `${shownTime(wait_s)} at ${CARD_REFERENCE}, twice as long for each 10 °F colder` }] : [];
}

/** Where stated waits hold. */
const CARD_REFERENCE = `70 °F (${roundedText((70 - 32) / 1.8)} °C)`;

/** What a step is worked on: panels, and whether both sides. */
export function entryPanels({ panelNames, sides }: CardEntry): string {
  return `${panelNames.join(', ')}${sides === 2 ? ', and the other side alike' : ''}`;
}

/** When a step begins and ends, for the head of its entry; empty without days. */
export function entryTime({ start, end }: CardEntry): string {
  return start === null || end === null ? '' : `${clockWords(start)} to ${whenWords(end, start)}`;
}

/** Air in which a coat may be laid, by the published windows, for the foot of a day. */
export const CARD_AIR = `Air for a coat: 65 to 75 °F (${roundedText((65 - 32) / 1.8)} to ${roundedText((75 - 32) / 1.8)} °C) and below 65 % by FAA AC 43.13-1B; with care 60 to 90 °F and up to 75 %; part at least 3 °C (5.4 °F) above the dew point. Read it before each coat.`;

/** What is filled in by hand at each step, by kind. */
export function handBoxes(step: StepSpec, system: UnitSystem): readonly string[] {
  const degree = system === 'us' ? '°F' : '°C';
  const done = ['Began', 'Ended', 'By'];
  switch (step.kind) {
    case 'spray':
      return ['Batch', 'Cup, s', `Liquid, ${degree}`, `Air, ${degree}`, 'RH, %', `Part, ${degree}`, 'Wet comb, between', ...done];
    case 'brush':
      return ['Batch', 'Cup, s', `Air, ${degree}`, 'RH, %', ...done];
    case 'sand':
      return ['Faults found', ...done];
    case 'fix':
    case 'mask':
    case 'unmask':
      return done;
  }
}
