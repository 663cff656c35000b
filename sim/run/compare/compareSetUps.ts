import { checkRange } from '../../base/check.ts';
import { CrosscoatError } from '../../base/errors.ts';
import type { Job, SetUpSpec } from '../../job/schema.ts';
import type { ReportedComparison } from '../../report/reportedComparison.ts';
import { LONGEST_WATCH_S } from '../coatLife.ts';
import { coatOf } from '../settle.ts';
import { stopIfAsked } from '../stop.ts';
import { bestOfRow, betterOf, ROW_NAMES } from './bestOfRow.ts';
import { isWatched, type CompareOptions, type Comparison, type ProblemSide, type WatchedSide } from './comparison.ts';
import { laySide, type LaidSide } from './laidSide.ts';
import { settleSide } from './sideJob.ts';
import { watchSide } from './watchSide.ts';

/** Side of a cell where none is asked for, mm. Assumed: fine enough for a fan of 30 mm depth, coarse enough to be quick. */
const CELL_MM = 4;
/** Share of the work that is done when every side is laid. */
const LAID_SHARE = 0.4;
/** Films are watched beyond the time at which the heaviest place should have set, where run film gathers and sets later. Assumed. */
const WATCH_RATIO = 1.25;

/**
 * Lays one planned coat with each of some set-ups, watches every film to the same time, and puts their
 * figures side by side with what is not known of each set-up. A coat's recording and its hand are left
 * out: what is compared is the plan.
 *
 * A set-up that contradicts itself is a side with a problem; the others are compared all the same.
 * @throws CrosscoatError `range` for no set-ups or times that do not rise, `not-found` for a coat or set-up that
 * is not in the job, `cancelled`.
 */
export function compareSetUps(job: Job, coatId: string, options: CompareOptions): Comparison {
  const coat = coatOf(job, coatId);
  const specs = specsOf(job, options);
  const { shouldStop, onProgress } = options;
  const laid = specs.map((spec, i) => {
    stopIfAsked(shouldStop);
    const side = tried(spec, () => laySide(settleSide(job, coatId, spec.id, options.strokes, options.cell_mm ?? CELL_MM), shouldStop));
    onProgress?.((LAID_SHARE * (i + 1)) / specs.length);
    return side;
  });
  const { at_s: asked = [] } = options;
  const watched_s = options.until_s ?? commonEnd_s(laid.filter((side) => 'ladder' in side), typeof asked === 'function' ? [] : asked);
  const at_s = typeof asked === 'function' ? asked(watched_s) : asked;
  checkTimes(at_s, watched_s);
  const sides = laid.map((side, i) => {
    stopIfAsked(shouldStop);
    const watched = 'ladder' in side ? tried(specs[i] as SetUpSpec, () => watchSide(side, { ...options, at_s, until_s: watched_s })) : side;
    onProgress?.(LAID_SHARE + ((1 - LAID_SHARE) * (i + 1)) / specs.length);
    return watched;
  });
  const panel = job.part.panels.find(({ id }) => id === coat.panel);
  return {
    coat: { id: coat.id, name: coat.name },
    panel: { id: coat.panel, name: panel?.name ?? coat.panel },
    strokes: options.strokes,
    watched_s: sides.some(isWatched) ? watched_s : 0,
    at_s,
    sides,
    rows: rowsOf(sides),
  };
}

function specsOf({ setUps }: Job, options: CompareOptions): SetUpSpec[] {
  checkRange({ name: 'compareSetUps: number of set-ups', value: options.setUps.length, low: 1, high: 100, advice: 'name the set-ups to compare' });
  return options.setUps.map((id) => {
    const spec = setUps.find((one) => one.id === id);
    if (spec !== undefined) return spec;
    const known = setUps.map((one) => one.id).join(', ');
    throw new CrosscoatError('not-found', `compareSetUps: set-up "${id}" is not in the job (it has ${known}); give some of these`, { pointer: '/setUps' });
  });
}

function checkTimes(at_s: readonly number[], end_s: number): void {
  let last_s = 0;
  for (const time_s of at_s) {
    checkRange({ name: 'compareSetUps: time', value: time_s, low: last_s, high: end_s, unit: 's', why: 'times rise, within the watch', advice: 'give times in their order' });
    last_s = time_s;
  }
}

/** What a set-up gives, or why it gives nothing: bad numbers of its own, with its name before the message. */
function tried<T>({ id, name }: SetUpSpec, run: () => T): T | ProblemSide {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof CrosscoatError) || error.code === 'cancelled' || error.code === 'internal') throw error;
    const named = new CrosscoatError(error.code, `${name} (${id}): ${error.message}`, error.place);
    return { setUp: { id, name }, problem: named.message, error: named };
  }
}

/** The same end for all: when the last should have set, and not before the last time asked for. */
function commonEnd_s(sides: readonly LaidSide[], at_s: readonly number[]): number {
  const sets_s = sides.map((side) => (Number.isNaN(side.sets_s) ? LONGEST_WATCH_S : side.sets_s));
  return Math.min(LONGEST_WATCH_S, Math.max(WATCH_RATIO * Math.max(0, ...sets_s), ...at_s));
}

function rowsOf(sides: readonly (WatchedSide | ProblemSide)[]): ReportedComparison['rows'] {
  const [first] = sides.filter(isWatched);
  if (first === undefined) return [];
  return ROW_NAMES.map((name) => bestOfRow(name, sides.map((side) => (isWatched(side) ? side.figures[name] : null)), betterOf(name, first.setting.target)));
}
