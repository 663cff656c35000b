import type { KnownNumber } from '../gun/knownWithin.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { COMPARED_WORDS, comparedCell } from './comparedWords.ts';
import type { ComparedRow, ReportedComparison, ReportedLaidSide } from './reportedComparison.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { shownTime, type UnitSystem } from './units.ts';
import { capitalised, FAULT_PLURALS, listed } from './words.ts';

/** Sides of one table; more begin another below it. */
const SIDES_A_TABLE = 3;

/** What the marks of the table in plain text mean. */
const MARKS_NOTE = '* best of its row. = cannot be told from the best: no difference. ! sprayed from a distance at which this fan was not measured: a guess. ';

/** What the figures and intervals of a comparison mean. */
export const COMPARE_NOTE =
  '± is half of the 95 % interval that comes of fan width, profile, fluid rate and transfer, each set-up by itself; drops, viscosity and the hand are taken as exact. ' +
  'More film until it would run: in the same strokes on a bare panel, to where it would move 3 mm; thinnest places include the edges.';

const NUMBER_WORDS: Readonly<Record<KnownNumber, string>> = { width: 'fan width', beta1: 'profile', fluidRate: 'fluid rate', efficiency: 'transfer' };

/** Set-ups side by side as plain text; lines joined, one newline at the end. */
export function compareText(comparison: ReportedComparison, system: UnitSystem): string {
  const { sides } = comparison;
  const places = sides.flatMap((side, place) => (side.problem === null ? [place] : []));
  const tables: string[] = [];
  for (let from = 0; from < places.length; from += SIDES_A_TABLE) {
    tables.push(...textTable(compareTable(comparison, places.slice(from, from + SIDES_A_TABLE), system)), '');
  }
  const problems = sides.flatMap(({ problem }) => (problem === null ? [] : [problem]));
  const lines = [
    ...wrapped(headWords(comparison)),
    '',
    ...tables,
    ...(problems.length === 0 ? [] : [...bulleted('Not compared:', problems), '']),
    ...doubtLines(sides.filter((side) => side.problem === null)),
    ...(tables.length === 0 ? [] : [...wrapped(MARKS_NOTE + COMPARE_NOTE), '']),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

/** A head, then a row a figure, for the sides at some places. */
export function compareTable({ sides, rows }: ReportedComparison, places: readonly number[], system: UnitSystem): string[][] {
  const shown = places.flatMap((place) => {
    const side = sides[place];
    return side === undefined || side.problem !== null ? [] : [{ place, side }];
  });
  return [
    ['', ...shown.map(({ side }) => side.setUp.name)],
    ...rows.map((row) => [COMPARED_WORDS[row.name].title, ...shown.map(({ side, place }) => `${comparedCell(row.name, side.figures[row.name], system)}${marksOf(row, side, place)}`)]),
    ['faults', ...shown.map(({ side: { faults } }) => (faults.length === 0 ? 'none' : listed(faults.map((kind) => FAULT_PLURALS[kind]))))],
  ];
}

/** ` *`, ` =` or two spaces, and ` !`, so that figures stand under each other. */
function marksOf({ name, best, isTie }: ComparedRow, { figures }: ReportedLaidSide, place: number): string {
  const mark = best.includes(place) ? (isTie ? ' =' : ' *') : '  ';
  return `${mark}${figures[name].isOutsideRange ? ' !' : ''}`;
}

function headWords({ coat, panel, strokes, watched_s }: ReportedComparison): string {
  const speed = strokes === 'as-stated' ? 'at the plan’s speed' : 'each at the speed that brings its mean film to the target';
  return `${coat.name} on ${panel.name}, planned strokes ${speed}${watched_s > 0 ? `; every film watched for ${shownTime(watched_s)}` : ''}.`;
}

function doubtLines(sides: readonly ReportedLaidSide[]): string[] {
  const doubts = comparedDoubts(sides);
  return doubts.length === 0 ? [] : [...bulleted('Doubts:', doubts), ''];
}

/** What is not known or doubtful of the sides, a sentence each. */
export function comparedDoubts(sides: readonly ReportedLaidSide[]): string[] {
  const unmeasured = sides
    .filter(({ assumed }) => assumed.length > 0)
    .map(({ setUp, assumed }) => `${setUp.name}: not measured, so wide intervals are assumed: ${listed(assumed.map((one) => NUMBER_WORDS[one]))}`);
  const warnings = sides.flatMap((side) => side.warnings.map(({ text }) => `${side.setUp.name}: ${capitalised(text)}`));
  return [...new Set([...unmeasured, ...warnings])];
}
