import type { Between } from '../mix/between.ts';
import type { CupTime } from '../mix/cupTime.ts';
import type { Cup } from '../materials/cups.ts';
import { ratioWords } from './ratioWords.ts';
import type { LaterSeconds, ReportedMixing, ReportedThinning, ThinningOrigin, WantedSeconds } from './reportedMixing.ts';
import { roundedText, shown, shownPercent, shownTemperature, type Quantity, type UnitSystem } from './units.ts';
import { capitalised } from './words.ts';

const ORIGIN_WORDS: Readonly<Record<ThinningOrigin, string>> = {
  readings: 'By your own readings',
  cup: 'By the cup reading in the job, carried to other ratios by the usual law of this kind of finish',
  finish: 'By the usual law of this kind of finish (common practice; your own cup readings go before it)',
};

/** What the tool cannot know of a mix. */
export const MIX_LIMITS =
  'Volumes are taken to add and the finish to flow alike fast and slow. Makers’ cans differ, and one stands thicker with age: the cup has the last word. ' +
  'The ratio, the thinner and the seconds of the product data sheet go before these.';

/** `121 mm²/s`. */
export function viscosityWords(viscosity_m2_s: number): string {
  return `${roundedText(viscosity_m2_s * 1e6)} mm²/s`;
}

/** `20 to 100 s`. */
export function cupRangeWords({ least_s, most_s }: Cup): string {
  return `${least_s} to ${most_s} s`;
}

/** `36 s in the Ford cup No. 4`, or that this cup has no figure and which would have one. */
export function cupTimeWords({ cup, seconds, fitting }: CupTime): string {
  if (seconds !== null) return `${roundedText(seconds)} s in the ${cup.name}`;
  const other = fitting === null ? 'no cup known here fits' : `the ${fitting.name} fits (${cupRangeWords(fitting)})`;
  return `outside what the ${cup.name} can tell (${cupRangeWords(cup)}), so no seconds are given; ${other}`;
}

/** The ratio in words, with a capital and a full stop. */
export function ratioSentence({ ratio }: Pick<ReportedMixing, 'ratio'>): string {
  return `${capitalised(ratioWords(ratio))}.`;
}

/** What the cup says of the mix at its ratio. */
export function nowSentence(thinning: ReportedThinning, system: UnitSystem): string {
  const { origin, law, time, viscosity_m2_s, isBeyondReadings } = thinning;
  const beyond = isBeyondReadings ? ' This ratio lies outside your readings, so it is a guess: take a reading there.' : '';
  return `${ORIGIN_WORDS[origin]}: ${viscosityWords(viscosity_m2_s)} at ${shownTemperature(law.temperature_K, system)}, ${cupTimeWords(time)}.${beyond}`;
}

/** How far to thin for the seconds wanted. */
export function wantedSentence({ seconds, ratio, isBeyondReadings, problem }: WantedSeconds, { time: { cup }, law }: ReportedThinning, system: UnitSystem): string {
  if (ratio === null) return `For ${roundedText(seconds)} s: ${problem ?? 'no ratio'}.`;
  const beyond = isBeyondReadings ? ' That lies outside your readings, so it is a guess: go there in steps and read the cup.' : '';
  return `For ${roundedText(seconds)} s in the ${cup.name} at ${shownTemperature(law.temperature_K, system)}: ${ratioWords(ratio)}.${beyond}`;
}

/** The same mix at another temperature. */
export function laterSentence({ temperature_K, time, low_s, high_s, viscosity_m2_s }: LaterSeconds, { sensitivity_K }: Pick<ReportedThinning, 'sensitivity_K'>, system: UnitSystem): string {
  const spread = low_s === null || high_s === null || high_s - low_s < 0.1 ? '' : ` (${roundedText(low_s)} to ${roundedText(high_s)} s)`;
  return `The same mix at ${shownTemperature(temperature_K, system)}: ${viscosityWords(viscosity_m2_s.value)}, ${cupTimeWords(time)}${time.seconds === null ? '' : spread}. ${sensitivityWords(sensitivity_K)}`;
}

function sensitivityWords({ value, low, high }: Between): string {
  const known = low === high ? 'from your own two readings at two temperatures' : `${low} to ${high} K is common practice; two readings of one mix at two temperatures would fix it`;
  return `Temperature coefficient ${roundedText(value)} K (${known}).`;
}

/** The textbook rules, each with its limit, and how little they say. */
export function guessSentences({ guess, time: { cup } }: ReportedThinning): string[] {
  if (guess === null) return ['The textbook rules have no value here: one of the liquids is thinner than 0.2 mm²/s.'];
  const row = (name: string, viscosity_m2_s: number, limit: string, time: CupTime): string => `${name}: ${viscosityWords(viscosity_m2_s)}, ${time.seconds === null ? `outside the ${cup.name}` : `${roundedText(time.seconds)} s in the ${cup.name}`}. ${limit}`;
  const apart = guess.spreadRatio < 1.05 ? 'The three agree here, as nearly nothing is thinned.' : `The largest is ${roundedText(guess.spreadRatio)} times the smallest.`;
  return [
    `Fed with the finish at ${viscosityWords(guess.finish_m2_s)}, the thinner at ${viscosityWords(guess.thinner_m2_s)} (usual solvents, from memory) and ${shownPercent(guess.thinnerMassFraction)} of thinner by weight. ${apart} None of them is meant for a polymer in its thinner, where they lie tenfold apart: a first guess only.`,
    row('Refutas index (Maples 2000), by weight', guess.refutas_m2_s, 'Fails below 0.2 mm²/s.', guess.times.refutas),
    row('Logarithms (Arrhenius), by weight', guess.arrhenius_m2_s, 'For like liquids.', guess.times.arrhenius),
    row('Cube roots (Kendall and Monroe), by weight', guess.cubeRoot_m2_s, 'For liquids of nearly one viscosity.', guess.times.cubeRoot),
  ];
}

/** What the retarder does, and its limit; null without one. */
export function retarderSentence({ retarder, ratio }: Pick<ReportedMixing, 'retarder' | 'ratio'>): string | null {
  if (retarder === null) return null;
  const { name, judgement, timeRatio } = retarder;
  const judged = {
    none: '', 'below-usual': 'less than the usual 5 to 15 %', usual: 'within the usual 5 to 15 %',
    'above-usual': 'more than the usual 5 to 15 %: the film stays soft for long', 'too-much': 'more than the 25 % that practice never passes: use less',
  }[judgement];
  return `Retarder, ${name}: ${shownPercent(ratio.retarderFraction)} of the thinner, ${judged}. The solvents take about ${roundedText(timeRatio)} times as long to go (by their evaporation rates alone; the film holds the last of them back longer).`;
}

/** Solids before and after thinning. */
export function solidsSentence({ canSolids, mixedSolids }: Pick<ReportedMixing, 'canSolids' | 'mixedSolids'>): string {
  return `Volume solids ${shownPercent(canSolids.value)} as it comes, ${shownPercent(mixedSolids.value)} as mixed (${shownPercent(mixedSolids.low)} to ${shownPercent(mixedSolids.high)}, as makers differ; the data sheet says which).`;
}

/** Wet and dry film of one coat; null where none is asked. */
export function filmSentence({ film }: Pick<ReportedMixing, 'film'>, system: UnitSystem): string | null {
  if (film === null) return null;
  return `One coat: ${betweenWords(film.wet_m, 'film', system)} wet, ${betweenWords(film.dry_m, 'film', system)} dry.`;
}

/** What is mixed, and for what. */
export function batchSentence({ liquid_m3, need, fill }: Pick<ReportedMixing, 'liquid_m3' | 'need' | 'fill'>, system: UnitSystem): string | null {
  if (liquid_m3 === null) return null;
  const pots = fill === null ? '' : ` ${fill.potCount === 1 ? 'One pot' : `${fill.potCount} pots, all alike,`} of ${shown(fill.each.total.volume_m3, 'volume', system)}${fill.potCount === 1 ? '' : ' each'}.`;
  if (need === null) return `Mix ${betweenWords(liquid_m3, 'volume', system)}.${pots}`;
  const coats = need.coatCount === 1 ? 'one coat' : `${need.coatCount} coats`;
  return `For ${coats} on ${shown(need.area_m2, 'panel-area', system)}, ${shownPercent(need.landedFraction.value)} of it landing and ${shown(need.left_m3, 'volume', system)} left in pot and hose: mix ${betweenWords(liquid_m3, 'volume', system)}.${pots}`;
}

/** `630 mL (420 to 980 mL)`; the spread is left out where there is none. */
export function betweenWords({ value, low, high }: Between, quantity: Quantity, system: UnitSystem): string {
  const [middle, least, most] = [value, low, high].map((each) => shown(each, quantity, system)) as [string, string, string];
  return least === most ? middle : `${middle} (${least} to ${most})`;
}

const PART_WORDS = { finish: 'finish', thinner: 'thinner', retarder: 'retarder', total: 'together' } as const;

/** A line of the pouring table: part, its volume and weight, and the mark and scale that the pot then shows. */
export interface PourRow {
  readonly part: string;
  readonly volume: string;
  readonly weight: string;
  readonly mark: string;
  readonly scale: string;
}

/** Pours of one pot in order, then all together. Weights are in grams in both systems: shop scales read grams, and an ounce may be a volume. */
export function pourRows({ fill, parts }: Pick<ReportedMixing, 'fill' | 'parts'>, system: UnitSystem): PourRow[] {
  const poured = fill?.each ?? parts;
  if (poured === null || poured === undefined) return [];
  const volume = (m3: number): string => shown(m3, 'volume', system);
  const weight = (kg: number): string => shown(kg, 'weight', 'metric');
  let [mark_m3, scale_kg] = [0, 0];
  const rows = (['finish', 'thinner', 'retarder'] as const).filter((part) => poured[part].volume_m3 > 0).map((part) => {
    mark_m3 += poured[part].volume_m3;
    scale_kg += poured[part].weight_kg;
    return { part: PART_WORDS[part], volume: volume(poured[part].volume_m3), weight: weight(poured[part].weight_kg), mark: volume(mark_m3), scale: weight(scale_kg) };
  });
  const { total } = poured;
  return [...rows, { part: PART_WORDS.total, volume: volume(total.volume_m3), weight: weight(total.weight_kg), mark: '', scale: '' }];
}
