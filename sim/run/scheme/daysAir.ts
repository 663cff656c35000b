import { airAt, airByHour } from '../../air/airByHour.ts';
import { makeAir, type MoistAir } from '../../air/moistAir.ts';
import { MINUTES_PER_DAY } from '../../base/localTime.ts';
import type { Job } from '../../job/schema.ts';
import type { DaysAir } from '../../scheme/dayPlan.ts';

/** The air through the days of a plan. */
export interface PlanAir {
  readonly kind: DaysAir;
  readonly at: (minute: number) => MoistAir;
  /** The time whose air a time has: itself where it is known. Two times with one answer have one air. */
  readonly known: (minute: number) => number;
  /** Times between which the air changes evenly, rising, from `from` to `to`. */
  readonly nodes: (from: number, to: number) => readonly number[];
}

/** A typed day is a whole one when it lacks no more than four hours. Assumed: nobody reads the air at night. */
const WHOLE_DAY_min = 20 * 60;
const HOUR_min = 60;

/**
 * The air by the hour. Before and after the hours typed nothing is known: where they hold a day, the days after go as the last of
 * them and the days before as the first (assumed, since holding a cold evening for ever would stop the work); where they hold
 * less, the first and the last stay as they are. Without hours it is the job's one air throughout.
 * @throws CrosscoatError what `airByHour` and `makeAir` throw.
 */
export function planAir(job: Job, from: number, to: number): PlanAir {
  const { hours = [], air } = job;
  if (hours.length === 0) {
    const room = makeAir(air, '/air');
    return { kind: 'steady', at: () => room, known: () => 0, nodes: () => [from] };
  }
  const series = airByHour(hours, air);
  const [first, last] = [series.rows[0]?.minute ?? 0, series.rows.at(-1)?.minute ?? 0];
  const isWhole = last - first >= WHOLE_DAY_min;
  const known = isWhole ? (minute: number) => repeated(minute, first, last) : (minute: number) => Math.min(last, Math.max(first, minute));
  return {
    kind: first <= from && last >= to ? 'typed' : isWhole ? 'repeated' : 'held',
    at: (minute) => airAt(series, known(minute)).air,
    known,
    nodes: (begin, end) => nodesOf(series.rows.map(({ minute }) => minute), begin, end, isWhole),
  };
}

/** The same time of day within the last day known, or within the first. */
function repeated(minute: number, first: number, last: number): number {
  if (minute > last) return Math.max(first, minute - Math.ceil((minute - last) / MINUTES_PER_DAY) * MINUTES_PER_DAY);
  if (minute < first) return Math.min(last, minute + Math.ceil((first - minute) / MINUTES_PER_DAY) * MINUTES_PER_DAY);
  return minute;
}

/** Full hours, and the times typed where they are off them. */
function nodesOf(typed: readonly number[], from: number, to: number, isWhole: boolean): number[] {
  const nodes = new Set<number>();
  for (let at = Math.floor(from / HOUR_min) * HOUR_min; at <= to; at += HOUR_min) nodes.add(at);
  for (const minute of typed) {
    if (minute >= from && minute <= to) nodes.add(minute);
    if (!isWhole || minute % HOUR_min === 0) continue;
    for (let at = minute + MINUTES_PER_DAY; at <= to; at += MINUTES_PER_DAY) if (at >= from) nodes.add(at);
  }
  return [...nodes].sort((a, b) => a - b);
}
