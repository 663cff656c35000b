import { heatedAir } from '../air/moistAir.ts';
import { CELSIUS_0_K } from '../base/units.ts';
import type { Job, MixSpec } from '../job/schema.ts';
import { changedMixSpec } from '../mix/changedMixSpec.ts';
import type { Cause, Change, ConditionChange, LifeFaultKind } from '../verdict/verdict.ts';
import { heldSpeed_m_s, meanPlannedFilm_m } from './planTrials.ts';
import type { CoatSetting } from './result.ts';

/** A change that the trade makes against a fault of the film's life, with the figures of the cause that it would show. */
export interface LifeTrial {
  readonly change: Change;
  readonly cause: Pick<Cause, 'kind' | 'found' | 'meant' | 'unit'>;
}

/** Steps of a cure. Assumed: large enough to feel, small enough to make at the gun. */
const FASTER = 1.25;
const LESS_FLUID = 0.8;
const FARTHER = 1.25;
const CLOSER = 0.75;
const LESS_THINNER = 0.7;
const MORE_THINNER = 1.4;
const RETARDER_FRACTIONS = [0.1, 0.2] as const;
const WARMER_K = [3, 6, 10] as const;
const WAITS_S = [1800, 3600, 7200] as const;

/**
 * What the trade does against a fault, in the order in which it is tried: faster, less fluid, farther,
 * less thinner against runs and over-thick film; slower, closer, more thinner, retarder against orange
 * peel; retarder and a warmer room against blush, never above the ceiling; a longer wait and a lighter
 * coat against blisters; a lighter coat and retarder against pinholes; retarder against dry laps.
 * (Common practice; elements in NAVEDTRA 14315 and USAF T.O. 1-1-8.)
 */
export function lifeTrials(kind: LifeFaultKind, setting: CoatSetting): LifeTrial[] {
  switch (kind) {
    case 'run':
      return [...toTarget(setting), ...speedBy(setting, FASTER), ...fluidBy(setting, LESS_FLUID), ...thinnerBy(setting, LESS_THINNER), ...distanceBy(setting, FARTHER)];
    case 'orange-peel':
      return [...toTarget(setting), ...thinnerBy(setting, MORE_THINNER), ...distanceBy(setting, CLOSER), ...speedBy(setting, 1 / FASTER), ...retarded(setting), ...warmed(setting)];
    case 'dry-lap':
      return [...retarded(setting), ...distanceBy(setting, CLOSER)];
    case 'blush':
      return [...warmed(setting), ...retarded(setting)];
    case 'blister':
      return [...waited(setting), ...speedBy(setting, FASTER)];
    case 'pinhole':
      return [...toTarget(setting), ...speedBy(setting, FASTER), ...retarded(setting)];
    case 'over-thick':
      return [...toTarget(setting), ...speedBy(setting, FASTER), ...fluidBy(setting, LESS_FLUID)];
  }
}

/** The speed at which the plan's mean film is the target's, where it is not. */
function toTarget(setting: CoatSetting): LifeTrial[] {
  const { plan, target } = setting;
  const found = meanPlannedFilm_m(setting, plan);
  const speed_m_s = heldSpeed_m_s((plan.speed_m_s * found) / target.thickness_m);
  if (Math.abs(speed_m_s / plan.speed_m_s - 1) < 0.05) return [];
  return [{ change: { kind: 'plan', speed_m_s }, cause: { kind: 'plan-film', found, meant: target.thickness_m, unit: 'm' } }];
}

function speedBy({ plan }: CoatSetting, ratio: number): LifeTrial[] {
  const speed_m_s = heldSpeed_m_s(plan.speed_m_s * ratio);
  if (speed_m_s === plan.speed_m_s) return [];
  return [{ change: { kind: 'plan', speed_m_s }, cause: { kind: 'plan-speed', found: plan.speed_m_s, meant: speed_m_s, unit: 'm/s' } }];
}

function distanceBy({ plan, setUp }: CoatSetting, ratio: number): LifeTrial[] {
  const [near, far] = setUp.distanceRange_m;
  const distance_m = Math.min(far, Math.max(near, Math.round(plan.distance_m * ratio * 100) / 100));
  if (Math.abs(distance_m / plan.distance_m - 1) < 0.05) return [];
  return [{ change: { kind: 'plan', distance_m }, cause: { kind: 'plan-distance', found: plan.distance_m, meant: distance_m, unit: 'm' } }];
}

function fluidBy({ setUp }: CoatSetting, ratio: number): LifeTrial[] {
  const rate_m3_s = setUp.fluidRate_m3_s * ratio;
  return [{ change: { kind: 'fluid-rate', rate_m3_s }, cause: { kind: 'fluid', found: setUp.fluidRate_m3_s, meant: rate_m3_s, unit: 'm3/s' } }];
}

/** Only of a coat that names a mix: without one nobody has said how it is thinned. */
function thinnerBy({ coat, mix }: CoatSetting, ratio: number): LifeTrial[] {
  if (coat.mix === undefined || !(mix.thinnerRatio > 0)) return [];
  const thinnerPerFinish = Math.round(mix.thinnerRatio * ratio * 100) / 100;
  return [{ change: { kind: 'thinner', thinnerPerFinish }, cause: { kind: 'thinner', found: mix.thinnerRatio, meant: thinnerPerFinish, unit: 'ratio' } }];
}

function retarded({ coat, mix }: CoatSetting): LifeTrial[] {
  if (coat.mix === undefined) return [];
  return RETARDER_FRACTIONS.filter((fraction) => fraction > mix.retarderFraction + 0.01).map((retarderFraction) => ({
    change: { kind: 'retarder', retarderFraction },
    cause: { kind: 'solvent', found: mix.retarderFraction, meant: retarderFraction, unit: 'fraction' },
  }));
}

/** Warmer by steps, the last of them the ceiling itself. */
function warmed({ air, job }: CoatSetting): LifeTrial[] {
  const ceiling_K = job.air.ceiling_C + CELSIUS_0_K;
  const steps_K = WARMER_K.map((by_K) => Math.min(ceiling_K, air.temperature_K + by_K));
  return [...new Set(steps_K)]
    .filter((temperature_K) => temperature_K > air.temperature_K + 0.1)
    .map((temperature_K) => ({
      change: { kind: 'warm-room', temperature_K },
      cause: { kind: 'air', found: air.temperature_K, meant: temperature_K, unit: 'K' },
    }));
}

function waited({ coat }: CoatSetting): LifeTrial[] {
  const { over } = coat;
  if (over === undefined) return [];
  const was_s = over.wait_min * 60;
  return WAITS_S.filter((wait_s) => wait_s > was_s).map((wait_s) => ({
    change: { kind: 'wait', wait_s },
    cause: { kind: 'wait', found: was_s, meant: wait_s, unit: 's' },
  }));
}

/** The job with a condition changed for one coat, its set-up, its mix, or the room. */
export function jobWithCondition({ job, coat, air }: CoatSetting, change: ConditionChange): Job {
  switch (change.kind) {
    case 'fluid-rate':
      return { ...job, setUps: job.setUps.map((one) => (one.id === coat.setUp ? { ...one, fluidRate_mL_min: change.rate_m3_s * 60e6 } : one)) };
    case 'thinner':
      return withMix(job, coat.mix, (mix) => changedMixSpec(mix, { thinnerPerFinish: change.thinnerPerFinish }));
    case 'retarder':
      return withMix(job, coat.mix, (mix) => changedMixSpec(mix, { retarder_percent: change.retarderFraction * 100 }));
    case 'warm-room': {
      const { relativeHumidityFraction } = heatedAir(air, change.temperature_K);
      return { ...job, air: { ...job.air, temperature_C: change.temperature_K - CELSIUS_0_K, humidity_percent: relativeHumidityFraction * 100 } };
    }
    case 'wait':
      return {
        ...job,
        coats: job.coats.map((one) => (one.id === coat.id && one.over !== undefined ? { ...one, over: { ...one.over, wait_min: change.wait_s / 60 } } : one)),
      };
  }
}

function withMix(job: Job, id: string | undefined, changed: (mix: MixSpec) => MixSpec): Job {
  return { ...job, mixes: job.mixes.map((mix) => (mix.id === id ? changed(mix) : mix)) };
}
