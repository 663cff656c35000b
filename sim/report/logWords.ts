import { CELSIUS_0_K } from '../base/units.ts';
import type { LogEntrySpec, LogKind } from '../job/schema.ts';
import type { StepState } from '../log/progress.ts';
import { SURFACE_MARGIN_K } from '../materials/surfaceMargin.ts';
import { momentShown } from './changeWords.ts';
import { spanWords } from './clockWords.ts';
import type { ReportedEntry, ReportedNotedAir } from './reportedLog.ts';
import { waitWords } from './schemeWords.ts';
import { roundedText, shown, shownPercent, shownTemperature, shownTemperatureStep, shownUnit, type UnitSystem } from './units.ts';

/** Kinds of entry. */
export const LOG_KIND_WORDS: Readonly<Record<LogKind, string>> = { coat: 'Coat', fix: 'Set on', sand: 'Sand', mask: 'Mask', rework: 'Rework', other: 'Other' };

/** How far a step is. */
export const STEP_STATE_WORDS: Readonly<Record<StepState, string>> = { done: 'Done', 'under-way': 'Under way', 'not-yet': 'Not yet' };

/** Faults to choose from, in the trade's words (FAA-H-8083-31 chapter 8; T.O. 1-1-8 table 4-1; AC 43.13-1B chapter 2; as quoted in training texts). */
export const LOG_FAULTS = [
  'Run or sag', 'Dry spray', 'Orange peel', 'Blush', 'Thin lap or stripe', 'Holiday', 'Heavy spot', 'Pinholes', 'Blisters', 'Fisheyes', 'Dirt or lint', 'Brush marks', 'Wrinkling or lifting',
  'Bleeding', 'Ragged mask edge', 'Peeling', 'Slack cloth', 'Light passes', 'Sand scratches', 'Spitting gun',
] as const;

/** A line of an entry: what it is about, and its words. */
export interface LogLine {
  readonly head: string;
  readonly text: string;
}

/** The teeth between which a wet film lies: never one figure. */
export function combWords({ low_um, high_um }: Pick<LogEntrySpec['combs'][number], 'low_um' | 'high_um'>, system: UnitSystem): string {
  const tooth = (value: number): string => shown(value * 1e-6, 'film', system);
  if (high_um === undefined) return `${tooth(low_um)} wet or more: every tooth was wetted`;
  if (low_um === 0) return `below ${tooth(high_um)} wet: no tooth was wetted`;
  const { name, size } = shownUnit('film', system);
  return `between ${roundedText((low_um * 1e-6) / size)} and ${roundedText((high_um * 1e-6) / size)} ${name} wet`;
}

/** The air as noted: `20.6 °C, 54 %, dew point 11.0 °C; surface 20.2 °C, 9.2 °C above it`. */
export function notedAirWords({ temperature_K, humidityFraction, dewPoint_K, surface_K, surfaceMargin_K }: ReportedNotedAir, system: UnitSystem): string {
  const surface = surface_K === null || surfaceMargin_K === null
    ? 'surface not read'
    : `surface ${shownTemperature(surface_K, system)}, ${shownTemperatureStep(Math.abs(surfaceMargin_K), system)} ${surfaceMargin_K < 0 ? 'BELOW' : 'above'} the dew point`;
  return `${shownTemperature(temperature_K, system)}, ${shownPercent(humidityFraction)}, dew point ${shownTemperature(dewPoint_K, system)}; ${surface}`;
}

/** How long was waited since what was done before, and what the plan asked; null where nothing was noted before. */
export function waitedWords({ wait, plan }: Pick<ReportedEntry, 'wait' | 'plan'>): string | null {
  if (wait === null) return null;
  const { entry, wait_s, fromEnd } = wait;
  const name = `“${entry.name}”`;
  const since = wait_s < 0 ? `${name} had not ended yet: it ended ${spanWords(-wait_s / 60)} later by the clock` : `${spanWords(wait_s / 60)} after the ${fromEnd ? 'end' : 'start'} of ${name}${fromEnd ? '' : ' (no end noted)'}`;
  return plan.before === null ? since : `${since}; the plan asked after “${plan.before.name}”: ${waitWords(plan.before)}`;
}

/** An entry line by line, in the order of the work; what was not noted has no line. */
export function entryLines(reported: ReportedEntry, system: UnitSystem): LogLine[] {
  const lines: (LogLine | null)[] = [...whenLines(reported), ...liquidLines(reported, system), ...airLines(reported, system), ...gunLines(reported), ...seenLines(reported, system)];
  return lines.filter((each) => each !== null);
}

function line(head: string, text: string | null | undefined): LogLine | null {
  return text === undefined || text === null || text === '' ? null : { head, text };
}

function whenLines(reported: ReportedEntry): (LogLine | null)[] {
  const { entry, took_s, panelNames } = reported;
  return [
    line('When', `${fromTo(entry)}${took_s === null || took_s < 0 ? '' : `, ${spanWords(took_s / 60)}`}`),
    line('Who', entry.certificate === undefined ? entry.who : `${entry.who}, certificate ${entry.certificate}`),
    line('On', panelNames.join(', ')),
    line('Wait before', waitedWords(reported)),
    line('Wait as noted', entry.waited_min === undefined ? null : spanWords(entry.waited_min)),
  ];
}

/** Start and end; day and offset once where they are the same. */
function fromTo({ started, ended }: LogEntrySpec): string {
  if (ended === undefined) return `begun ${momentShown(started)}, no end noted`;
  const [from, to] = [momentShown(started), momentShown(ended)];
  const isAlike = from.slice(0, 10) === to.slice(0, 10) && from.slice(from.indexOf('(')) === to.slice(to.indexOf('('));
  return isAlike ? `begun ${from.slice(0, from.indexOf(' ('))}, ended ${to.slice(11)}` : `begun ${from}, ended ${to}`;
}

function liquidLines({ entry, cupName }: ReportedEntry, system: UnitSystem): (LogLine | null)[] {
  const { product, thinner, ratio, cup, used_mL } = entry;
  return [
    line('Product', canWords(product)),
    line('Thinner', canWords(thinner)),
    line('Finish to thinner', ratio),
    line('Cup', cup === undefined ? null : `${roundedText(cup.seconds)} s in the ${cupName ?? cup.kind}, liquid at ${shownTemperature(cup.temperature_C + CELSIUS_0_K, system)}`),
    line('Used', used_mL === undefined ? null : shown(used_mL * 1e-6, 'volume', system)),
  ];
}

function canWords(can: LogEntrySpec['product']): string | null {
  if (can === undefined) return null;
  return [can.name, ...(can.batch === undefined ? [] : [`batch ${can.batch}`]), ...(can.shelfLife === undefined ? [] : [`use by ${can.shelfLife}`])].join(', ');
}

function airLines({ airStart, airEnd }: ReportedEntry, system: UnitSystem): (LogLine | null)[] {
  return [
    line('Air at the start', airStart === null ? null : notedAirWords(airStart, system)),
    line('Air at the end', airEnd === null ? null : notedAirWords(airEnd, system)),
  ];
}

function gunLines({ entry, setUpName, recordingName }: ReportedEntry): (LogLine | null)[] {
  const lost = (name: string | null, id: string | undefined): string | null => name ?? (id === undefined ? null : `${id} (no longer in this job)`);
  return [
    line('Set-up', lost(setUpName, entry.setUp)),
    line('Gun', entry.gun),
    line('Recorded strokes', lost(recordingName, entry.recording)),
  ];
}

function seenLines({ entry }: ReportedEntry, system: UnitSystem): (LogLine | null)[] {
  const { combs, faults, sanding, notes, photos } = entry;
  return [
    ...combs.map((comb) => line('Wet-film comb', `${combWords(comb, system)}${placeWords(comb, system)}`)),
    ...faults.map(({ what, where, done }) => line('Fault seen', [what, ...(where === undefined ? [] : [where]), ...(done === undefined ? [] : [`done: ${done}`])].join('; '))),
    line('Sanded', sanding === undefined ? null : `#${sanding.grit} ${sanding.wet ? 'wet' : 'dry'}`),
    line('Remark', notes),
    line('Photographs', photos.map(({ name }) => name).join('; ')),
  ];
}

function placeWords({ x_mm, y_mm }: LogEntrySpec['combs'][number], system: UnitSystem): string {
  if (x_mm === undefined || y_mm === undefined) return '';
  return `, at ${shown(x_mm / 1000, 'length', system)} right, ${shown(y_mm / 1000, 'length', system)} up`;
}

/** What an entry itself gives cause to look at again, a sentence each. It is kept as it was noted. */
export function entryCautions(reported: ReportedEntry, system: UnitSystem): string[] {
  const { entry, took_s, airStart, airEnd } = reported;
  return [
    ...(took_s !== null && took_s < 0 ? [`It ends ${spanWords(-took_s / 60)} before it starts: a clock was put back, or a time is wrong. Both are kept; correct what is wrong.`] : []),
    ...shelfCaution('product', entry.product, entry),
    ...shelfCaution('thinner', entry.thinner, entry),
    ...airCaution('start', airStart, system),
    ...airCaution('end', airEnd, system),
    ...waitCaution(reported),
  ];
}

function shelfCaution(what: string, can: LogEntrySpec['product'], { started }: LogEntrySpec): string[] {
  if (can?.shelfLife === undefined || started.slice(0, 10) <= can.shelfLife) return [];
  return [`The shelf life of the ${what} ended on ${can.shelfLife}, before this was done. Whether it may be used is for its maker and the person who signs.`];
}

function airCaution(when: string, air: ReportedNotedAir | null, system: UnitSystem): string[] {
  if (air === null || air.surfaceMargin_K === null || air.surfaceMargin_K >= SURFACE_MARGIN_K) return [];
  return [`At the ${when} the surface was ${air.surfaceMargin_K < 0 ? 'below the dew point: water falls on it' : `only ${shownTemperatureStep(air.surfaceMargin_K, system)} above the dew point`}. ${shownTemperatureStep(SURFACE_MARGIN_K, system)} is the usual least.`];
}

/** Only where the entry before is of the step whose wait the plan states. */
function waitCaution({ wait, plan: { before } }: ReportedEntry): string[] {
  if (wait === null || before === null || wait.entry.step !== before.id || wait.wait_s < 0) return [];
  const waited_h = wait.wait_s / 3600;
  if (waited_h < before.wait_h) return ['It was begun before the wait that the plan states for 70 °F was over. Warmer, drier air shortens a wait and cold lengthens it: see Days.'];
  return before.latest_h !== undefined && waited_h > before.latest_h ? ['It was begun after the latest time that the plan states for the next step.'] : [];
}
