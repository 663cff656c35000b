import type { Solvent } from '../materials/solvent.ts';
import { explosiveLimits, exposureLimits, lowest } from './vapour.ts';

/** Air is called below the limits when it is at this share of them. */
export const LOW_SHARE = 0.1;

/** A room and the outside air that its fan brings. */
export interface RoomAir {
  readonly volume_m3: number;
  readonly fresh_m3_s: number;
  /** Factor for uneven mixing, 1 for perfect. */
  readonly mixing: number;
}

/** Vapour of one solvent let off in steps of equal length, at an even rate within each. */
export interface VapourSource {
  readonly solvent: Solvent;
  /** m³ of vapour in each step. */
  readonly vapour_m3: Float64Array;
}

/** The room's air at the end of every step. */
export interface VapourCourse {
  readonly step_s: number;
  readonly steps: number;
  readonly solvents: readonly SolventCourse[];
  /** Share of the lower explosive limit, by the lowest published limits: Σ C/LEL. */
  readonly lelFraction: Float64Array;
  /** Multiple of the exposure limits: Σ C/L over the solvents that have one. */
  readonly timesLimit: Float64Array;
  /** Step whose end has the most of each; 0-based. */
  readonly worstLel: number;
  readonly worstLimit: number;
  /** Name of the solvent that takes up most of the exposure limits at `worstLimit`; null where none has a limit. */
  readonly mostLimited: string | null;
  /** Time at whose ends the air is over the exposure limits, and over a quarter of the explosive one, s. */
  readonly overLimit_s: number;
  readonly overQuarter_s: number;
  /** From the end of the last spraying until both stay below `LOW_SHARE` to the end, s; null where they are not below at the end. */
  readonly lowAfter_s: number | null;
}

/** One solvent in the room. */
export interface SolventCourse {
  readonly solvent: Solvent;
  /** Share of the air by volume at the end of every step. */
  readonly airFraction: Float64Array;
  readonly entered_m3: number;
  /** Carried off by the fan, by the same mixing factor. */
  readonly left_m3: number;
  /** Still in the room at the end. */
  readonly there_m3: number;
}

const QUARTER = 0.25;

/**
 * Vapour in a room whose air is mixed, step by step: `V dC/dt = source - (Q/K) C`, clean at the start, with
 * the exact answer over each step of an even source. Between the ends of a step the air goes one way only, so
 * the highest of the ends is the highest at all.
 *
 * The mixing factor K enters as in the rules for dilution air: a fan that brings Q does the work of Q/K,
 * since part of the fresh air goes out again unused. What it leaves out: near the gun and over the wet film
 * the air is far richer than the mean, and with the fan off nothing at all is let out.
 * @param quiet_s when the last spraying ends, for `lowAfter_s`.
 */
export function vapourCourse(sources: readonly VapourSource[], step_s: number, room: RoomAir, quiet_s = 0): VapourCourse {
  const steps = sources[0]?.vapour_m3.length ?? 0;
  const solvents = sources.map((source) => solventCourse(source, step_s, room));
  const lelFraction = new Float64Array(steps);
  const timesLimit = new Float64Array(steps);
  for (const { solvent, airFraction } of solvents) {
    const lel = lowest(explosiveLimits(solvent));
    const exposure = exposureLimits(solvent);
    for (let step = 0; step < steps; step++) {
      lelFraction[step] = (lelFraction[step] as number) + (airFraction[step] as number) / lel;
      if (exposure.length > 0) timesLimit[step] = (timesLimit[step] as number) + (airFraction[step] as number) / lowest(exposure);
    }
  }
  const worstLimit = worst(timesLimit);
  return {
    step_s,
    steps,
    solvents,
    lelFraction,
    timesLimit,
    worstLel: worst(lelFraction),
    worstLimit,
    mostLimited: mostLimited(solvents, worstLimit),
    overLimit_s: step_s * timesLimit.filter((times) => times > 1).length,
    overQuarter_s: step_s * lelFraction.filter((share) => share > QUARTER).length,
    lowAfter_s: lowAfter(lelFraction, timesLimit, step_s, quiet_s),
  };
}

function solventCourse({ solvent, vapour_m3 }: VapourSource, step_s: number, room: RoomAir): SolventCourse {
  const { volume_m3, fresh_m3_s, mixing } = room;
  const airFraction = new Float64Array(vapour_m3.length);
  const drawn_m3 = (fresh_m3_s / mixing) * step_s;
  const changes = drawn_m3 / volume_m3;
  /** (1 - e^-k)/k, and what of an even source has left by the step's end; both without a difference of near equals. */
  const kept = changes > 0 ? -Math.expm1(-changes) / changes : 1;
  const gone = goneShare(changes);
  let fraction = 0;
  let entered_m3 = 0;
  let left_m3 = 0;
  for (let step = 0; step < vapour_m3.length; step++) {
    const source_m3 = vapour_m3[step] as number;
    left_m3 += fraction * volume_m3 * -Math.expm1(-changes) + source_m3 * gone;
    fraction = fraction * Math.exp(-changes) + (source_m3 / volume_m3) * kept;
    entered_m3 += source_m3;
    airFraction[step] = fraction;
  }
  return { solvent, airFraction, entered_m3, left_m3, there_m3: fraction * volume_m3 };
}

/** Below this the series is right to rounding and the closed form is not. */
const FEW_CHANGES = 1e-3;

/** Share of a step's even source that has left by its end: 1 - (1 - e^-k)/k. */
function goneShare(changes: number): number {
  if (changes < FEW_CHANGES) return changes / 2 - changes ** 2 / 6 + changes ** 3 / 24;
  return 1 + Math.expm1(-changes) / changes;
}

function worst(values: Float64Array): number {
  let at = 0;
  for (let step = 1; step < values.length; step++) if ((values[step] as number) > (values[at] as number)) at = step;
  return at;
}

function mostLimited(solvents: readonly SolventCourse[], step: number): string | null {
  const [most] = solvents
    .map(({ solvent, airFraction }) => ({ name: solvent.name, fraction: airFraction[step] ?? 0, limits: exposureLimits(solvent) }))
    .filter(({ fraction, limits }) => limits.length > 0 && fraction > 0)
    .sort((a, b) => b.fraction / lowest(b.limits) - a.fraction / lowest(a.limits));
  return most?.name ?? null;
}

function lowAfter(lelFraction: Float64Array, timesLimit: Float64Array, step_s: number, quiet_s: number): number | null {
  let last = -1;
  for (let step = 0; step < lelFraction.length; step++) {
    if ((lelFraction[step] as number) > LOW_SHARE || (timesLimit[step] as number) > LOW_SHARE) last = step;
  }
  if (last >= lelFraction.length - 1 && last >= 0) return null;
  return Math.max(0, (last + 2) * step_s - quiet_s);
}
