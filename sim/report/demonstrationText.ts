import { ESTIMATE_STATEMENT } from './cautions.ts';
import type { Knob, LessonFigureName, LessonFigures, ReportedDemonstration, ReportedSide } from './reportedDemonstration.ts';
import { wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { roundedText, shown, shownNumber, shownPercent, shownTemperatureStep, shownTime, shownUnit, type UnitSystem } from './units.ts';
import { capitalised, FAULT_PLURALS, listed } from './words.ts';

const SECONDS_A_MINUTE = 60;
const M_PER_MM = 1e-3;

/** A knob's value as people read it: `0.6 s`, `3.15 in`, `two passes at right angles`. */
export function knobWords({ quantity, unit }: Knob, value: number, system: UnitSystem): string {
  switch (quantity) {
    case 'length':
      return shown(value * M_PER_MM, 'length', system);
    case 'speed':
      return shown(value, 'speed', system);
    case 'angle':
      return `${roundedText(value)}°`;
    case 'ratio':
      return `${roundedText(value)} ${value === 1 ? 'volume' : 'volumes'}`;
    case 'passes':
      return value === 1 ? 'one pass' : 'two passes at right angles, each twice as fast';
    case 'time':
    case 'percent':
    case 'wait':
      return `${roundedText(value)} ${unit}`;
  }
}

/** How a sentence begins that speaks of a knob's value: `With a stop of 0.6 s`. */
export function knobLead(knob: Knob, value: number, system: UnitSystem): string {
  const said = value === 0 && knob.saidNone !== undefined ? knob.saidNone : knob.said.replace('#', knobWords(knob, value, system));
  return capitalised(said);
}

/** How a figure is named, told in a sentence, and written in a table. */
interface FigureWords {
  readonly name: string;
  readonly tell: (figures: LessonFigures, side: ReportedSide, system: UnitSystem) => string;
  readonly cell: (figures: LessonFigures, system: UnitSystem) => string;
}

const FIGURES: Readonly<Record<LessonFigureName, FigureWords>> = {
  heaviest_m: film('heaviest wet film', (figures) => figures.heaviest_m),
  thinnest_m: film('thinnest wet film', (figures) => figures.thinnest_m),
  mean_m: film('mean wet film', (figures) => figures.mean_m),
  meanDry_m: film('mean dry film', (figures) => figures.meanDry_m),
  cv: {
    name: 'film varies by',
    tell: ({ cv }) => `the film varies by ${shownPercent(cv)}`,
    cell: ({ cv }) => shownPercent(cv),
  },
  inTargetFraction: {
    name: 'area in target',
    tell: ({ inTargetFraction }) => `${shownPercent(inTargetFraction)} of the area is in target`,
    cell: ({ inTargetFraction }) => shownPercent(inTargetFraction),
  },
  longestRun_m: {
    name: 'longest run',
    tell: ({ longestRun_m }, _, system) => (longestRun_m > 0 ? `the longest run is ${shown(longestRun_m, 'length', system)}` : 'no run forms'),
    cell: ({ longestRun_m }, system) => (longestRun_m > 0 ? shown(longestRun_m, 'length', system) : 'none'),
  },
  peel_m: {
    name: 'ripple left',
    tell: ({ peel_m, peelWord }, _, system) => `a ripple of ${shown(peel_m, 'film', system)} is left (${peelWord})`,
    cell: ({ peel_m, peelWord }, system) => `${shown(peel_m, 'film', system)}, ${peelWord}`,
  },
  dryFraction: {
    name: 'arrived dry, at most',
    tell: ({ dryFraction }) => `${shownPercent(dryFraction)} of the film arrives dry where it is driest`,
    cell: ({ dryFraction }) => shownPercent(dryFraction),
  },
  blushMargin_K: {
    name: 'film less dew point, lowest',
    tell: ({ blushMargin_K }, _, system) => marginWords(blushMargin_K, system),
    cell: ({ blushMargin_K }, system) => (Number.isNaN(blushMargin_K) ? '?' : shownTemperatureStep(blushMargin_K, system)),
  },
  trappedFraction: {
    name: 'solvent in what lay beneath',
    tell: ({ trappedFraction }) => `what lies beneath is still ${shownPercent(trappedFraction)} solvent when this coat lands on it`,
    cell: ({ trappedFraction }) => shownPercent(trappedFraction),
  },
  touchDry_s: {
    name: 'dry to touch',
    tell: ({ touchDry_s }, { time_s }) => (touchDry_s === null ? `it is not yet dry to touch after ${minutes(time_s)}` : `it is dry to touch after ${minutes(touchDry_s)}`),
    cell: ({ touchDry_s }) => (touchDry_s === null ? 'not yet' : minutes(touchDry_s)),
  },
  lost_m3: {
    name: 'did not land, whole coat',
    tell: ({ lost_m3 }, _, system) => `${shown(lost_m3, 'volume', system)} do not land`,
    cell: ({ lost_m3 }, system) => shown(lost_m3, 'volume', system),
  },
};

function film(name: string, of: (figures: LessonFigures) => number): FigureWords {
  return {
    name,
    tell: (figures, _, system) => `the ${name} is ${shown(of(figures), 'film', system)}`,
    cell: (figures, system) => shown(of(figures), 'film', system),
  };
}

function marginWords(margin_K: number, system: UnitSystem): string {
  if (Number.isNaN(margin_K)) return 'there is no film yet';
  const step = shownTemperatureStep(Math.abs(margin_K), system);
  return margin_K < 0 ? `the film falls to ${step} below the dew point` : `the film stays ${step} above the dew point`;
}

/** Under two minutes in seconds, else in minutes. */
function minutes(time_s: number): string {
  return time_s < 2 * SECONDS_A_MINUTE ? shownTime(time_s) : `${roundedText(time_s / SECONDS_A_MINUTE)} min`;
}

/**
 * What a demonstration has shown, in words made of its own figures: the side at the knob, then the cured
 * one where the knob is not there already, then other cures. Faults are named only where they were found.
 */
export function demonstrationSentence({ demonstration, sides }: ReportedDemonstration, system: UnitSystem): string {
  const [shownSide, cured, ...others] = sides;
  if (shownSide === undefined || cured === undefined) return '';
  const { knob, tells } = demonstration;
  const told = (side: ReportedSide, lead: string) => `${lead}, ${listed(tells.map((name) => FIGURES[name].tell(side.figures, side, system)))}: ${foundWords(side)}.`;
  const sentences = [told(shownSide, leadOf(knob, shownSide, system))];
  if (shownSide.knob !== cured.knob) sentences.push(told(cured, leadOf(knob, cured, system)));
  for (const other of others) sentences.push(told(other, other.title));
  return sentences.join(' ');
}

/** A side beyond the knob's reach is named by its title. */
function leadOf(knob: Knob, side: ReportedSide, system: UnitSystem): string {
  return side.knob === null ? side.title : knobLead(knob, side.knob, system);
}

function foundWords({ faults }: ReportedSide): string {
  return faults.length === 0 ? 'the model finds no fault' : `the model finds ${listed(faults.map((kind) => FAULT_PLURALS[kind]))}`;
}

/** Every figure of some sides at one time, side by side: a head, then a row a figure. */
export function demonstrationTable(knob: Knob, sides: readonly ReportedSide[], system: UnitSystem): string[][] {
  return [
    ['', ...sides.map(({ title }) => title)],
    [knob.name, ...sides.map(({ knob: value }) => (value === null ? '–' : knobWords(knob, value, system)))],
    ...Object.values(FIGURES).map(({ name, cell }) => [name, ...sides.map(({ figures }) => cell(figures, system))]),
    ['faults', ...sides.map(({ faults }) => (faults.length === 0 ? 'none' : listed(faults.map((kind) => FAULT_PLURALS[kind]))))],
  ];
}

/** A demonstration as plain text; lines joined, one newline at the end. */
export function demonstrationText(run: ReportedDemonstration, system: UnitSystem): string {
  const { title, question, caution, knob } = run.demonstration;
  const time_s = run.sides[0]?.time_s ?? 0;
  const at = (sides: readonly ReportedSide[]) => [`At ${minutes(sides[0]?.time_s ?? 0)}`, ...textTable(demonstrationTable(knob, sides, system)), ''];
  const lines = [
    title,
    '',
    ...wrapped(demonstrationSentence(run, system)),
    '',
    ...run.moments.filter((sides) => sides[0]?.time_s !== time_s).flatMap(at),
    ...at(run.sides),
    ...wrapped(`To ask: ${question}`),
    ...wrapped(`Caution: ${caution}`),
    '',
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

/** What a list says of each demonstration: its id, its title, and what its knob turns. */
export function demonstrationList(demonstrations: readonly ReportedDemonstration['demonstration'][], system: UnitSystem): string {
  const rows = demonstrations.map(({ id, title, knob }) => [id, `${title} (${knob.name}, ${rangeWords(knob, system)})`]);
  const width = Math.max(...rows.map(([id = '']) => id.length));
  return rows.map(([id = '', words = '']) => `${id.padEnd(width)}  ${words}\n`).join('');
}

function rangeWords(knob: Knob, system: UnitSystem): string {
  const { low, high, quantity } = knob;
  if (quantity === 'length') return `${shownNumber(low * M_PER_MM, 'length', system)} to ${shownNumber(high * M_PER_MM, 'length', system)} ${shownUnit('length', system).name}`;
  if (quantity === 'speed') return `${shownNumber(low, 'speed', system)} to ${shownNumber(high, 'speed', system)} ${shownUnit('speed', system).name}`;
  return `${low} to ${high}${quantity === 'angle' ? '°' : knob.unit === '' ? '' : ` ${knob.unit}`}`;
}
