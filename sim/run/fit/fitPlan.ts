import type { CoatSpec, Job, PlanSpec } from '../../job/schema.ts';
import { changedMixSpec } from '../../mix/changedMixSpec.ts';
import type { StrokePlan } from '../../stroke/plan.ts';
import { fanDepth_m, fanWidth_m } from '../fan.ts';
import type { CoatSetting } from '../result.ts';
import { coatOf } from '../settle.ts';
import type { SprayPoint } from '../window/sprayPoint.ts';
import { withCoat } from './fitKinds.ts';

const MM = 1e-3;
const UM = 1e-6;
const ML_MIN = 1e-6 / 60;

/** A way to lay a coat: what is in the gun, and how it is moved. */
export interface FitChoice {
  readonly setUpId: string;
  readonly mixId: string | null;
  readonly cross: boolean;
  readonly point: SprayPoint;
  /** Film that it is meant to lay. */
  readonly target: Pick<CoatSetting['target'], 'film' | 'thickness_m'>;
}

/**
 * Where the first stroke stands, inward from the edge: as stated, or farther out where the overlap is over a
 * half, so that the edge gets every stroke that a place in the middle gets.
 */
export function firstStroke_m({ firstStroke_m: stated_m }: Pick<StrokePlan, 'firstStroke_m'>, width_m: number, overlapFraction: number): number {
  return Math.min(stated_m, (0.5 - overlapFraction) * width_m);
}

/** The plan of a point, in the words of a job: the stated one with distance, speed and overlap changed, the first stroke and the fluid far enough outside the edge. */
export function fitPlan({ setUp, plan, coat }: CoatSetting, { distance_m, speed_m_s, overlapFraction }: SprayPoint): PlanSpec {
  const lead_mm = Math.ceil(fanDepth_m(setUp, distance_m) / MM);
  return {
    ...coat.plan,
    overlap_percent: rounded(overlapFraction * 100, 2),
    speed_m_s: rounded(speed_m_s, 3),
    distance_mm: rounded(distance_m / MM, 1),
    lead_mm: Math.max(coat.plan.lead_mm, lead_mm),
    lag_mm: Math.max(coat.plan.lag_mm, lead_mm),
    firstStroke_mm: Math.floor(firstStroke_m(plan, fanWidth_m(setUp, distance_m), overlapFraction) / MM),
  };
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

/**
 * The job with one coat laid another way, by a steady hand and its plan. A set-up or mix of which the fluid
 * rate or the thinner changes is added under a new id, so that other coats keep theirs. The coat is laid
 * once: how often a wish asks for it is not in a job.
 */
export function jobWithChoice(job: Job, coatId: string, choice: FitChoice, plan: PlanSpec): Job {
  const { id, name, panel, over, target } = coatOf(job, coatId);
  const setUps = changedList(job.setUps, choice.setUpId, { fluidRate_mL_min: choice.point.fluidRate_m3_s / ML_MIN }, (one, change) => ({ ...one, ...change }));
  const mixes = choice.mixId === null ? { list: job.mixes, id: undefined } : changedList(job.mixes, choice.mixId, { thinnerPerFinish: choice.point.thinnerRatio }, changedMixSpec);
  const changed: CoatSpec = {
    id,
    name,
    panel,
    setUp: setUps.id,
    ...(mixes.id === undefined ? {} : { mix: mixes.id }),
    ...(over === undefined ? {} : { over }),
    target: { ...target, film: choice.target.film, thickness_um: choice.target.thickness_m / UM },
    plan: { ...plan, cross: choice.cross },
    hand: { kind: 'steady' },
  };
  return withCoat({ ...job, setUps: [...setUps.list], mixes: [...mixes.list] }, changed);
}

/** Smaller changes of a rate or a ratio are rounding. */
const SAME = 1e-9;

/** A list with one of its entries, changed, added under a new id; the list itself and the old id where nothing changes. */
function changedList<T extends { readonly id: string }, K extends keyof T>(list: readonly T[], id: string, change: Pick<T, K> & Record<K, number>, changed: (one: T, change: Pick<T, K>) => T): { readonly list: readonly T[]; readonly id: string } {
  const stated = list.find((one) => one.id === id) as T;
  const keys = Object.keys(change) as K[];
  if (keys.every((key) => Math.abs(change[key] - (stated[key] as number)) <= SAME * change[key])) return { list, id };
  const fresh = freshId(id, list);
  return { list: [...list, { ...changed(stated, change), id: fresh }], id: fresh };
}

/** Longest id of a job. */
const LONGEST_ID = 64;

function freshId(id: string, list: readonly { readonly id: string }[]): string {
  for (let number = 1; ; number++) {
    const tail = number === 1 ? '-fit' : `-fit-${number}`;
    const fresh = id.slice(0, LONGEST_ID - tail.length) + tail;
    if (!list.some((one) => one.id === fresh)) return fresh;
  }
}
