import { assertThat } from '../../base/errors.ts';
import type { Grid } from '../../base/grid.ts';
import type { FaultKind } from '../../verdict/verdict.ts';

/** The faults that a simulated hand is judged by. */
export const HAND_FAULTS = ['holiday', 'thin-lap', 'heavy-spot', 'dry-spray', 'run', 'orange-peel', 'blush'] as const satisfies readonly FaultKind[];
export type HandFault = (typeof HAND_FAULTS)[number];

/** What one hand laid. Films are of the target's kind. */
export interface HandOutcome {
  /** Its place among all hands of the seed. */
  readonly index: number;
  readonly mean_m: number;
  readonly least_m: number;
  readonly most_m: number;
  readonly cv: number;
  /** Area at fault by kind, and of all places with any fault, m². */
  readonly area_m2: Readonly<Record<HandFault, number>>;
  readonly faulty_m2: number;
}

/** Many hands on one coat, as far as they have been sprayed; plain data that can be sent and put together. */
export interface HandsTally {
  readonly grid: Grid;
  /** 1 for the cells of the panel that are judged. */
  readonly judged: Uint8Array;
  /** Their area, m². */
  readonly panel_m2: number;
  /** By index, rising. */
  readonly outcomes: readonly HandOutcome[];
  /** How many hands had a fault on each cell, of any kind and of each. */
  readonly faulty: Uint16Array;
  readonly byKind: Readonly<Record<HandFault, Uint16Array>>;
}

/** A tally of no hands. */
export function emptyTally(grid: Grid, judged: Uint8Array, panel_m2: number): HandsTally {
  const cells = grid.columns * grid.rows;
  const byKind = Object.fromEntries(HAND_FAULTS.map((kind) => [kind, new Uint16Array(cells)])) as Record<HandFault, Uint16Array>;
  return { grid, judged, panel_m2, outcomes: [], faulty: new Uint16Array(cells), byKind };
}

/** Two shares of the same hands put together; neither is changed. The order does not matter. */
export function mergeTallies(a: HandsTally, b: HandsTally): HandsTally {
  const mine = new Set(a.outcomes.map(({ index }) => index));
  assertThat(!b.outcomes.some(({ index }) => mine.has(index)), 'mergeTallies: a hand is in both shares');
  assertThat(a.faulty.length === b.faulty.length && a.grid.columns === b.grid.columns, 'mergeTallies: two panels');
  const added = (one: Uint16Array, other: Uint16Array): Uint16Array => one.map((count, cell) => count + (other[cell] as number));
  const byKind = Object.fromEntries(HAND_FAULTS.map((kind) => [kind, added(a.byKind[kind], b.byKind[kind])])) as Record<HandFault, Uint16Array>;
  return { ...a, outcomes: [...a.outcomes, ...b.outcomes].sort((one, other) => one.index - other.index), faulty: added(a.faulty, b.faulty), byKind };
}
