import { interpolateEven } from '../base/interpolate.ts';
import type { SetUp } from '../gun/setUp.ts';
import type { Spray } from '../gun/spray.ts';
import type { StrokePlan } from '../stroke/plan.ts';
import type { Target } from '../verdict/target.ts';
import type { Cause, TravelChange } from '../verdict/verdict.ts';
import { fanDepth_m, fanWidth_m } from './fan.ts';
import { flattestOverlap, overlapCv } from './flattestOverlap.ts';
import type { CoatSetting } from './result.ts';

/** Causes that lie with the plan, each with a change of plan that may mend it. */
export type PlanCause = 'plan-distance' | 'plan-film' | 'plan-edge' | 'plan-lead' | 'plan-overlap';
/** A change of the plan's figures. */
export type PlanChange = Extract<TravelChange, { kind: 'plan' }>;

/** A change of plan worth trying, with the figures that its cause would carry. */
export interface PlanTrial {
  readonly name: PlanCause;
  readonly change: PlanChange;
  readonly found: number;
  readonly meant: number;
  readonly unit: Cause['unit'];
}

/** Smallest departures that are worth a trial. Assumed: below these a hand cannot follow. */
const LEAST_DISTANCE_SHARE = 0.1;
const LEAST_FILM_SHARE = 0.03;
const LEAST_OVERLAP = 0.03;
const LEAST_LEAD_M = 0.002;

/** Slowest and fastest stroke that a cure may ask of a hand, m/s. Assumed: common practice is 0.2 to 0.6. */
const SPEED_RANGE_m_s = [0.1, 1.2] as const;

/**
 * Mean film that a plan lays in the middle of a large panel, m of the target's kind:
 * passes · Q · η(D) · landing share / (v · w(D) · (1 - o)). Edges and small panels get less.
 */
export function meanPlannedFilm_m(setting: CoatSetting, plan: StrokePlan): number {
  const { spray, setUp, target } = setting;
  const pitch_m = fanWidth_m(setUp, plan.distance_m) * (1 - plan.overlapFraction);
  const passes = plan.cross ? 2 : 1;
  const landing = landingShare(spray, plan.distance_m, target);
  return (passes * spray.fluidRate_m3_s * landing * (1 - spray.footprint.cutFraction)) / (plan.speed_m_s * pitch_m);
}

/** Share of the liquid leaving the gun that lands: as liquid for a wet target, as solids for a dry one. */
function landingShare(spray: Spray, distance_m: number, target: Target): number {
  const { start_m, step_m, transferFraction, solventKeptFraction } = spray.arrival;
  const transfer = interpolateEven(transferFraction, start_m, step_m, distance_m);
  const solids = spray.volumeSolidsFraction;
  if (target.film === 'dry') return transfer * solids;
  const kept = interpolateEven(solventKeptFraction, start_m, step_m, distance_m);
  return transfer * (solids + (1 - solids) * kept);
}

/**
 * Changes of plan that might mend a film fault or dry spray, the most particular first: back to
 * the distance at which the fan was read (or, for dry spray, near enough that few drops arrive
 * dry); the mean film on target by speed; strokes that fill the edge; the overlap at which this
 * fan is flattest, with the mean film on target. A change that would alter nothing is left out.
 */
export function planTrials(setting: CoatSetting, dry: boolean): PlanTrial[] {
  if (dry) return [dryDistanceTrial(setting)].filter((trial) => trial !== null);
  return [distanceTrial(setting), filmTrial(setting), edgeTrial(setting), overlapTrial(setting)].filter(
    (trial) => trial !== null,
  );
}

function distanceTrial({ plan, setUp }: CoatSetting): PlanTrial | null {
  const meant = setUp.fan.atDistance_m;
  if (Math.abs(plan.distance_m / meant - 1) <= LEAST_DISTANCE_SHARE) return null;
  return { name: 'plan-distance', change: { kind: 'plan', distance_m: meant }, found: plan.distance_m, meant, unit: 'm' };
}

/** The farthest believed distance, nearer than planned, at which the dry share is half the limit. */
function dryDistanceTrial({ plan, setUp, spray, target }: CoatSetting): PlanTrial | null {
  const meant = wetDistance_m(spray, setUp, target.dryFraction / 2);
  if (meant === null || meant >= plan.distance_m) return null;
  return { name: 'plan-distance', change: { kind: 'plan', distance_m: meant }, found: plan.distance_m, meant, unit: 'm' };
}

function wetDistance_m({ arrival }: Spray, { distanceRange_m }: SetUp, most: number): number | null {
  const [near, far] = distanceRange_m;
  const first = Math.max(0, Math.ceil((near - arrival.start_m) / arrival.step_m));
  let best: number | null = null;
  for (let i = first; i < arrival.dryFraction.length; i++) {
    const distance_m = arrival.start_m + i * arrival.step_m;
    if (distance_m > far || (arrival.dryFraction[i] as number) > most) break;
    best = distance_m;
  }
  return best;
}

function filmTrial(setting: CoatSetting): PlanTrial | null {
  const found = meanPlannedFilm_m(setting, setting.plan);
  const meant = setting.target.thickness_m;
  if (Math.abs(found / meant - 1) <= LEAST_FILM_SHARE) return null;
  const speed_m_s = speedFor(setting, setting.plan);
  return { name: 'plan-film', change: { kind: 'plan', speed_m_s }, found, meant, unit: 'm' };
}

/** The speed at which a plan's mean film is the target, held to what a hand can do. */
export function speedFor(setting: CoatSetting, plan: StrokePlan): number {
  return heldSpeed_m_s((plan.speed_m_s * meanPlannedFilm_m(setting, plan)) / setting.target.thickness_m);
}

/** A speed held to what a hand can do, to the millimetre a second. */
export function heldSpeed_m_s(exact_m_s: number): number {
  const [slow, fast] = SPEED_RANGE_m_s;
  return Math.round(Math.min(fast, Math.max(slow, exact_m_s)) * 1000) / 1000;
}

/** First stroke on the edge, and fluid on and off half the fan's depth (and a little) past it. */
function edgeTrial({ plan, setUp }: CoatSetting): PlanTrial | null {
  const depth_m = fanDepth_m(setUp, plan.distance_m);
  const lead_m = Math.ceil(depth_m * 1000) / 1000;
  const short_m = Math.min(plan.lead_m, plan.lag_m);
  const insideBy_m = plan.firstStroke_m;
  const needsLead = short_m < lead_m - LEAST_LEAD_M;
  const needsFirst = insideBy_m > LEAST_LEAD_M;
  if (!needsLead && !needsFirst) return null;
  const change: PlanChange = {
    kind: 'plan',
    ...(needsFirst ? { firstStroke_m: 0 } : {}),
    ...(needsLead ? { lead_m } : {}),
  };
  return needsFirst
    ? { name: 'plan-edge', change, found: insideBy_m, meant: 0, unit: 'm' }
    : { name: 'plan-lead', change, found: short_m, meant: lead_m, unit: 'm' };
}

function overlapTrial(setting: CoatSetting): PlanTrial | null {
  const { plan, spray } = setting;
  const meant = Math.round(flattestOverlap(spray.footprint) * 1000) / 1000;
  if (Math.abs(meant - plan.overlapFraction) <= LEAST_OVERLAP) return null;
  if (overlapCv(spray.footprint, plan.overlapFraction) <= overlapCv(spray.footprint, meant)) return null;
  const speed_m_s = speedFor(setting, { ...plan, overlapFraction: meant });
  const steady = Math.abs(speed_m_s / plan.speed_m_s - 1) <= LEAST_FILM_SHARE;
  const change: PlanChange = { kind: 'plan', overlapFraction: meant, ...(steady ? {} : { speed_m_s }) };
  return { name: 'plan-overlap', change, found: plan.overlapFraction, meant, unit: 'fraction' };
}

/** A plan with a change made; `lead_m` sets lead and lag. */
export function changedPlan(plan: StrokePlan, change: PlanChange): StrokePlan {
  return {
    ...plan,
    ...(change.overlapFraction === undefined ? {} : { overlapFraction: change.overlapFraction }),
    ...(change.speed_m_s === undefined ? {} : { speed_m_s: change.speed_m_s }),
    ...(change.distance_m === undefined ? {} : { distance_m: change.distance_m }),
    ...(change.firstStroke_m === undefined ? {} : { firstStroke_m: change.firstStroke_m }),
    ...(change.lead_m === undefined ? {} : { lead_m: change.lead_m, lag_m: change.lead_m }),
  };
}
