import { batch, computed, effect, signal, untracked } from '@preact/signals';
import { handsTable, judgeHands, mergeTallies, type HandSpec, type HandsTally, type Job, type ReportedHandsTable } from '../../../sim/index.ts';
import { isDropped } from '../../worker/client.ts';
import { coat } from '../document.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { chosenSetUps } from './besideSheet.ts';
import { askPool, cancelPool, POOL, type PoolWorker } from './pool.ts';

/** Hands that a worker sprays before it is asked again: two or three seconds, since each share lays the plan twice beforehand. */
const SHARE = 25;

/** One set-up's hands, as far as they are sprayed. */
interface SprayedSetUp {
  readonly id: string;
  readonly tally: HandsTally;
  readonly speed_m_s: number;
}

export const handsSheet = {
  sprayed: signal<readonly SprayedSetUp[]>([]),
  /** Share of all hands that are sprayed, 0 to 1. */
  done: signal(0),
  working: signal(false),
  /** What the hands sprayed; the figures are out of date once it differs. */
  madeOf: signal<HandsAsked | null>(null),
  problem: signal<Problem | null>(null),
};

/** Everything that the figures depend on. */
interface HandsAsked {
  readonly job: Job;
  readonly coat: string;
  readonly setUps: readonly string[];
  readonly strokes: 'as-stated' | 'to-target';
  readonly hand: HandSpec;
  readonly count: number;
}

const asked = computed<HandsAsked>(() => {
  const { hands, beside } = state.setUps.value;
  const own = coat.value.hand;
  const hand: HandSpec = hands.hand === 'own' ? (own.kind === 'own' ? own : { kind: 'practised' }) : { kind: hands.hand };
  return { job: state.job.value, coat: coat.value.id, setUps: chosenSetUps.value, strokes: beside.strokes, hand, count: hands.count };
});

/** Whether what is shown is of another job, choice or hand than the one in view. */
export const isOutOfDate = computed(() => handsSheet.madeOf.value !== null && handsSheet.madeOf.value !== asked.value);

/** The set-ups in order of what they forgive, from what is sprayed so far; null before the first hands. */
export const handsResult = computed<ReportedHandsTable | null>(() => {
  const of = handsSheet.madeOf.value;
  const sprayed = handsSheet.sprayed.value;
  if (of === null || sprayed.length === 0) return null;
  const judged = sprayed.map(({ id, tally, speed_m_s }) => {
    const name = of.job.setUps.find((one) => one.id === id)?.name ?? id;
    return { setUp: { id, name }, speed_m_s, verdict: judgeHands(tally) };
  });
  return handsTable(of.job, of.coat, judged, { hand: of.hand, seed: of.job.seed, strokes: of.strokes });
});

let run = 0;

/** Sprays every chosen set-up by all the hands, both workers going halves. */
export async function startHands(): Promise<void> {
  const of = asked.peek();
  const own = ++run;
  batch(() => {
    handsSheet.madeOf.value = of;
    handsSheet.sprayed.value = [];
    handsSheet.done.value = 0;
    handsSheet.problem.value = null;
    handsSheet.working.value = true;
  });
  const queue = sharesOf(of);
  const whole = queue.length;
  try {
    await Promise.all(POOL.map((worker) => work(worker, of, queue, whole, () => own === run)));
  } catch (thrown) {
    if (own === run && !isDropped(thrown)) handsSheet.problem.value = problemOf('The hands could not spray', thrown);
  } finally {
    if (own === run) handsSheet.working.value = false;
  }
}

/** Leaves off; what is sprayed stays. */
export function stopHands(): void {
  run++;
  POOL.forEach(cancelPool);
  handsSheet.working.value = false;
}

interface Share {
  readonly setUp: string;
  readonly first: number;
  readonly count: number;
}

/** Hands of every set-up by turns, so that all fill up together. */
function sharesOf({ setUps, count }: HandsAsked): Share[] {
  const shares: Share[] = [];
  for (let first = 0; first < count; first += SHARE) {
    for (const setUp of setUps) shares.push({ setUp, first, count: Math.min(SHARE, count - first) });
  }
  return shares;
}

async function work(worker: PoolWorker, of: HandsAsked, queue: Share[], whole: number, isWanted: () => boolean): Promise<void> {
  for (let share = queue.shift(); share !== undefined && isWanted(); share = queue.shift()) {
    const { setUp, first, count } = share;
    const { tally, speed_m_s } = await askPool(worker, 'hands', { job: of.job, coat: of.coat, setUp, strokes: of.strokes, hand: of.hand, seed: of.job.seed, first, count });
    if (!isWanted()) return;
    const others = handsSheet.sprayed.peek();
    const known = others.find(({ id }) => id === setUp);
    const next = { id: setUp, speed_m_s, tally: known === undefined ? tally : mergeTallies(known.tally, tally) };
    batch(() => {
      handsSheet.sprayed.value = known === undefined ? [...others, next] : others.map((one) => (one.id === setUp ? next : one));
      handsSheet.done.value = 1 - queue.length / whole;
    });
  }
}

/** Begins when the sheet is first opened, and leaves off when it is closed. @returns what ends that. */
export function followHands(): () => void {
  const stop = effect(() => {
    if (handsSheet.madeOf.value === null) untracked(() => void startHands());
  });
  return () => {
    stop();
    if (handsSheet.working.peek()) stopHands();
  };
}
