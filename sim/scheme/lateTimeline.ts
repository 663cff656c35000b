import type { Hold } from './firstStart.ts';
import { ChainLayer, timelineOf, type LaidTask, type Timeline, type TimelineSetting } from './timeline.ts';

/** One task that begins at another time than planned. */
export interface Shift {
  readonly id: string;
  readonly planned: number;
  /** Null where it no longer fits anywhere. */
  readonly start: number | null;
}

/**
 * The days where some tasks begin late: everything goes as planned, or as soon after it as it can. Whoever can begin first goes
 * first; nothing is brought forward, so nothing begins sooner than planned.
 * @param late minutes after the planned start, by the task's id; 0 or more. Unknown ids change nothing.
 */
export function layLate(base: Timeline, setting: TimelineSetting, late: ReadonlyMap<string, number>): Timeline {
  const layers = base.chains.map(({ chain }) => new ChainLayer(chain, setting));
  let busy: readonly (readonly [number, number])[] = [];
  for (;;) {
    const waiting = layers.flatMap((layer, place) => candidateOf(layer, base.chains[place]?.laid[layer.laid.length], late));
    if (waiting.length === 0) return timelineOf(base.start, layers);
    const first = waiting.reduce((best, next) => (goesBefore(next, best) ? next : best));
    const taken = first.layer.lay(first.from, busy, first.held);
    if (taken !== null) busy = [[-Infinity, taken[1]]];
  }
}

/** When a chain's next task should begin, and what keeps it until then; none where the chain is at its end. */
function candidateOf(layer: ChainLayer, planned: LaidTask | undefined, late: ReadonlyMap<string, number>): { readonly layer: ChainLayer; readonly start: number; readonly from: number; readonly work_min: number; readonly held: readonly Hold[] }[] {
  if (layer.next === null) return [];
  const { task, earliest } = layer.next;
  const start = planned?.start ?? earliest;
  const late_min = late.get(task.id) ?? 0;
  const from = Math.max(earliest, start + late_min);
  const held: readonly Hold[] = from <= earliest ? [] : late_min > 0 ? [{ why: 'asked', from: earliest, words: '' }] : (planned?.holds ?? []);
  return [{ layer, start, from, work_min: task.work_min, held }];
}

type Candidate = Readonly<Record<'start' | 'from' | 'work_min', number>>;

/** Who can begin first; of two, who was planned first; of two at one time, the one that takes none of it. */
function goesBefore(a: Candidate, b: Candidate): boolean {
  const [by] = [a.from - b.from, a.start - b.start, a.work_min - b.work_min].filter((each) => each !== 0);
  return by !== undefined && by < 0;
}

/** What begins at another time than planned, in the order of the plan. */
export function shiftsOf(base: Timeline, late: Timeline): readonly Shift[] {
  const starts = new Map(allLaid(late).map(({ task, start }) => [task.id, start]));
  return allLaid(base)
    .map(({ task, start }) => ({ id: task.id, planned: start, start: starts.get(task.id) ?? null }))
    .filter(({ planned, start }) => start !== planned);
}

/** All tasks as laid, in order of time. */
export function allLaid({ chains }: Timeline): readonly LaidTask[] {
  return chains.flatMap(({ laid }) => laid).sort((a, b) => a.start - b.start || a.end - b.end);
}
