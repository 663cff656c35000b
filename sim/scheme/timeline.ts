import { MINUTES_PER_DAY } from '../base/localTime.ts';
import { crewOrders, type CrewOrder } from './crewOrders.ts';
import type { DayChain, DayTask } from './dayTask.ts';
import { firstStart, type Hold, type StartRules } from './firstStart.ts';
import { laidWait, type LaidWait } from './laidWait.ts';
import type { Pace } from './pace.ts';

/** What a timeline is laid by. */
export interface TimelineSetting extends StartRules {
  /** When the first step may begin, minutes of the wall clock. */
  readonly start: number;
  /** Pace of a stated wait by the trade's rule, and of the model's own after a coat. */
  readonly rulePace: Pace;
  readonly modelPace: (task: DayTask) => Pace;
}

/** A task in its place. */
export interface LaidTask {
  readonly task: DayTask;
  /** When the wait before it is over, or the job begins; minutes of the wall clock. */
  readonly earliest: number;
  readonly start: number;
  readonly end: number;
  /** Latest start that the step before it allows; null where none is stated. */
  readonly latest: number | null;
  /** Why it does not begin at its earliest; empty where it does. */
  readonly holds: readonly Hold[];
  /** Null where nothing is to be waited for. */
  readonly wait: LaidWait | null;
}

/** A chain in its place. */
export interface LaidChain {
  readonly chain: DayChain;
  readonly laid: readonly LaidTask[];
  /** Tasks for which no start was found within the days looked at: the first of them fits nowhere, the others come after it. */
  readonly unplaced: readonly DayTask[];
  /** Why the first of these does not begin. */
  readonly unplacedHolds: readonly Hold[];
  /** End of its last wait; of what is laid where something is not. */
  readonly ready: number;
}

/** All chains laid through the days by one crew. */
export interface Timeline {
  readonly start: number;
  /** In the order of the schemes. */
  readonly chains: readonly LaidChain[];
  readonly ready: number;
}

/** No start is looked for later than this, days after the first. Assumed: longer than any scheme of dope takes. */
export const MOST_DAYS = 60;

/**
 * Lays the tasks of all chains through the days: one crew, one task at a time, within working hours; waits run day and night. Each
 * step goes to its earliest start that the steps placed before it have left free: so the steps of one chain fill the waits of
 * another. Of the orders tried (`crewOrders`), the one that leaves least unplaced, then fewest steps past their latest start,
 * then is ready soonest. Where no latest start is stated, a later start makes one chain alone ready no sooner, and a second chain
 * makes the first ready no sooner; of three and more, one taken out can make another later (Graham's anomaly): a step that moves
 * up may take the gap that another had. Nothing is broken off and gone on with later.
 */
export function layTimeline(chains: readonly DayChain[], setting: TimelineSetting): Timeline {
  const timelines = crewOrders(chains).map((order) => layInOrder(chains, order, setting));
  return timelines.reduce((best, next) => (isBetter(next, best) ? next : best));
}

/** A chain while it is being laid. */
export class ChainLayer {
  readonly laid: LaidTask[] = [];
  private stopped: readonly Hold[] | null = null;

  constructor(private readonly chain: DayChain, private readonly setting: TimelineSetting) {}

  /** The next task and its earliest start; null where all are laid, or one fits nowhere. */
  get next(): { readonly task: DayTask; readonly earliest: number } | null {
    const task = this.chain.tasks[this.laid.length];
    return task === undefined || this.stopped !== null ? null : { task, earliest: this.ready };
  }

  /**
   * Lays the next task at the first time from `from` on that is free. @returns when the crew is at it; null where it fits nowhere.
   * @param held what keeps it from beginning before `from`.
   */
  lay(from: number, busy: readonly (readonly [number, number])[], held: readonly Hold[] = []): readonly [number, number] | null {
    const { next, setting } = this;
    if (next === null) return null;
    const { task, earliest } = next;
    const { start, holds: found } = firstStart(task, from, setting.start + MOST_DAYS * MINUTES_PER_DAY, busy, setting);
    const holds = [...held, ...found];
    if (start === null) {
      this.stopped = holds;
      return null;
    }
    const end = start + task.work_min;
    this.laid.push({ task, earliest, start, end, latest: this.laid.at(-1)?.wait?.latest ?? null, holds, wait: laidWait(task, end, setting.rulePace, setting.modelPace(task)) });
    return [start, end];
  }

  get ready(): number {
    const last = this.laid.at(-1);
    return last === undefined ? this.setting.start : (last.wait?.until ?? last.end);
  }

  get result(): LaidChain {
    return { chain: this.chain, laid: this.laid, unplaced: this.chain.tasks.slice(this.laid.length), unplacedHolds: this.stopped ?? [], ready: this.ready };
  }
}

/** What the layers come to. */
export function timelineOf(start: number, layers: readonly ChainLayer[]): Timeline {
  const chains = layers.map(({ result }) => result);
  return { start, chains, ready: Math.max(start, ...chains.map(({ ready }) => ready)) };
}

function layInOrder(chains: readonly DayChain[], { turns, fillsGaps }: CrewOrder, setting: TimelineSetting): Timeline {
  const layers = chains.map((chain) => new ChainLayer(chain, setting));
  let busy: (readonly [number, number])[] = [];
  for (const place of turns) {
    const layer = layers[place] as ChainLayer;
    const taken = layer.next === null ? null : layer.lay(layer.next.earliest, busy);
    if (taken === null) continue;
    busy = fillsGaps ? [...busy, taken].sort(([a], [b]) => a - b) : [[-Infinity, taken[1]]];
  }
  return timelineOf(setting.start, layers);
}

function isBetter(next: Timeline, best: Timeline): boolean {
  const [mine, theirs] = [scoreOf(next), scoreOf(best)];
  const differs = mine.findIndex((each, i) => each !== theirs[i]);
  return differs >= 0 && (mine[differs] as number) < (theirs[differs] as number);
}

function scoreOf({ chains, ready }: Timeline): readonly number[] {
  const late = chains.flatMap(({ laid }) => laid).filter(({ start, latest }) => latest !== null && start > latest);
  return [chains.reduce((sum, { unplaced }) => sum + unplaced.length, 0), late.length, ready];
}
