import type { Proportion } from '../base/proportion.ts';
import type { HandsVerdict } from '../verdict/handsVerdict.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { shown, shownPercent, shownPlace, type UnitSystem } from './units.ts';
import { FAULT_PLURALS, FAULT_WORDS } from './words.ts';

/** One set-up under many hands, or why it could not be sprayed. */
export interface ReportedHands {
  readonly setUp: { readonly id: string; readonly name: string };
  readonly speed_m_s: number;
  /** From 1; set-ups that cannot be told apart share one. */
  readonly rank: number;
  readonly verdict: HandsVerdict;
}

/** All set-ups under the same hands, best first. */
export interface ReportedHandsTable {
  readonly coatName: string;
  readonly handName: string;
  readonly seed: number;
  readonly strokes: 'as-stated' | 'to-target';
  readonly rows: readonly ReportedHands[];
}

/** What the figures of many hands leave out. */
export const HANDS_NOTE =
  'Chances with their 95 % intervals (Wilson) and the standard error of so many hands, which halves for four times as many; how well the hand and the gun are known is not in them. ' +
  'The errors of the usual hands are Assumed. Sprayed on cells of 10 mm with coarse steps, and with the gun’s air only where that marks the planned coat: the mean film is right to 0.05 %, the heaviest place to 1.2 %, the thinnest to 4 %; a run or ripple of about 2 cm² may be missed. Blisters, pinholes, dry laps and over-thick film are left out, and so is a coat beneath.';

/** Set-ups by what they forgive, as plain text; lines joined, one newline at the end. */
export function handsText(table: ReportedHandsTable, system: UnitSystem): string {
  const lines = [...wrapped(handsHead(table)), '', ...textTable(handsRows(table, system)), '', ...worstLines(table, system), ...wrapped(HANDS_NOTE), ...wrapped(ESTIMATE_STATEMENT)];
  return `${lines.join('\n')}\n`;
}

/** What was sprayed, and by whom. */
export function handsHead({ coatName, handName, seed, strokes, rows }: ReportedHandsTable): string {
  const count = rows[0]?.verdict.count ?? 0;
  const speed = strokes === 'as-stated' ? 'at the plan’s speed' : 'each at the speed that brings its mean film to the target';
  return `${coatName}, sprayed by ${count} hands (${handName}; seed ${seed}) with each set-up, ${speed}. Best first, by what it forgives.`;
}

/** A head and a row a figure, a column a set-up. */
export function handsRows({ rows }: ReportedHandsTable, system: UnitSystem): string[][] {
  const each = (name: string, cell: (row: ReportedHands) => string): string[] => [name, ...rows.map(cell)];
  const kinds = rows[0]?.verdict.byKind.map(({ kind }) => kind) ?? [];
  return [
    ['', ...rows.map(({ setUp, rank }) => `${rank}. ${setUp.name}`)],
    each('no fault', ({ verdict }) => chanceWords(verdict.faultless)),
    each('2 % of the panel at fault at most', ({ verdict }) => chanceWords(verdict.nearlyFaultless)),
    ...kinds.map((kind) => each(FAULT_PLURALS[kind], ({ verdict }) => chanceWords((verdict.byKind.find((one) => one.kind === kind) as HandsVerdict['byKind'][number]).chance))),
    each('panel at fault, mean', ({ verdict }) => `${shownPercent(verdict.faultyShare.mean)} ± ${shownPercent(verdict.faultyError)}`),
    each('mean film, 5 to 95 % of hands', ({ verdict: { film_m } }) => `${shown(film_m.low, 'film', system)} to ${shown(film_m.high, 'film', system)}`),
    each('variation (CV), 5 to 95 % of hands', ({ verdict: { cv } }) => `${shownPercent(cv.low)} to ${shownPercent(cv.high)}`),
    each('speed', ({ speed_m_s }) => shown(speed_m_s, 'speed', system)),
  ];
}

/** `55 % (43 to 66 %)`: whole per cent, since so many hands tell no more. */
export function chanceWords({ share, low, high }: Proportion): string {
  const whole = (value: number): string => String(Math.round(value * 100));
  return `${whole(share)} % (${whole(low)} to ${whole(high)} %)`;
}

function worstLines(table: ReportedHandsTable, system: UnitSystem): string[] {
  return [...worstSentences(table, system).flatMap((text) => wrapped(text)), ''];
}

/** Where each set-up goes wrong most often. */
export function worstSentences({ rows }: ReportedHandsTable, system: UnitSystem): string[] {
  return rows.map(({ setUp, verdict: { worst } }) =>
    worst === null ? `${setUp.name}: no hand had a fault anywhere.` : `${setUp.name} goes wrong most often at ${shownPlace(worst.at_m, system)}: ${shownPercent(worst.chance)} of hands, mostly ${FAULT_WORDS[worst.kind]}.`,
  );
}
