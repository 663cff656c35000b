import type { CellBlock } from '../base/grid.ts';
import { airSlices, type AirSlice } from '../deposit/airSlices.ts';
import { sprayUntil, startSprayClock, type SprayClock } from '../deposit/sprayClock.ts';
import { advanceFilm, FRESH_STEP_S, type AdvanceOptions } from '../film/life/advance.ts';
import { filmForNextCoat } from '../film/life/nextCoat.ts';
import { momentOf, type FilmMoment } from '../film/life/snapshot.ts';
import { copyLivingFilm, emptyLivingFilm, type LivingFilm } from '../film/life/state.ts';
import type { Landing } from '../film/life/wetFilm.ts';
import type { FilmLaw } from '../film/law.ts';
import { solventKept } from '../gun/drops.ts';
import { JUDGED_COVER } from '../verdict/judged.ts';
import { filmLawOf } from './filmLaw.ts';
import { filmSteps } from './filmSteps.ts';
import type { CoatSetting } from './result.ts';
import type { Travel } from './lay.ts';

/** A coat under way: the film as it is now, and what is still to be sprayed. */
export interface LivingCoat {
  readonly setting: CoatSetting;
  readonly law: FilmLaw;
  readonly film: LivingFilm;
  readonly clock: SprayClock;
  readonly air: readonly AirSlice[];
  /** Time of the path at its first row; the film's clock starts there. */
  readonly start_s: number;
  /** When the path ends, on the film's clock. */
  readonly sprayed_s: number;
  /** Share of the arriving solvent that is fast. */
  readonly fastFraction: number;
  landed: CellBlock | null;
  /** Air slices before this one are over. */
  nextAir: number;
}

/**
 * A coat before its first stroke, on a bare panel or on the film that an earlier coat left.
 * @param law of this setting, where it is made already.
 */
export function startCoat(setting: CoatSetting, travel: Travel, beneath: LivingFilm | null = null, law: FilmLaw = filmLawOf(setting)): LivingCoat {
  const { panelGrid, spray, air } = setting;
  const { path, strokes } = travel;
  const inside = Uint8Array.from(panelGrid.cover, (cover) => (cover >= JUDGED_COVER ? 1 : 0));
  const start_s = path.t_s[0] ?? 0;
  return {
    setting,
    law,
    film: beneath === null ? emptyLivingFilm(panelGrid.grid, inside, air.temperature_K) : filmForNextCoat(beneath, law),
    clock: startSprayClock({ panelGrid, path, strokes, spray }),
    air: airSlices(path),
    start_s,
    sprayed_s: path.count > 0 ? (path.t_s[path.count - 1] as number) - start_s : 0,
    fastFraction: arrivingFastFraction(setting),
    landed: null,
    nextAir: 0,
  };
}

/**
 * Sprays and lets the film live up to a time of its clock. Spray and air are laid every
 * `FRESH_STEP_S`, so a time between two such steps is rounded up to the next while the gun is at work.
 * @throws CrosscoatError `cancelled`.
 */
export function liveUntil(coat: LivingCoat, until_s: number, options: AdvanceOptions = {}): void {
  const { film, law } = coat;
  const step_s = FRESH_STEP_S * (options.stepScale ?? 1);
  while (film.time_s < until_s && film.time_s < coat.sprayed_s) {
    const next_s = Math.min(coat.sprayed_s, (Math.floor(film.time_s / step_s + 1e-6) + 1) * step_s);
    const step = { until_s: next_s, landing: landingUntil(coat, next_s), air: airOf(coat, next_s), start_s: coat.start_s };
    const steps = filmSteps(film, law, coat.setting, step, options);
    while (steps.next().done !== true);
  }
  if (film.time_s < until_s) advanceFilm(film, law, until_s, options);
}

/** The film as it is now, and all that it has been through. */
export function coatMoment(coat: LivingCoat): FilmMoment {
  return momentOf(coat.film, coat.law);
}

/** A coat that can go on by itself, sharing nothing that changes with the one it was copied from. */
export function copyCoat(coat: LivingCoat): LivingCoat {
  const { landed, ...clock } = coat.clock;
  const copied = { ...landed, wet_m: landed.wet_m.slice(), solids_m: landed.solids_m.slice(), arrivedDry_m: landed.arrivedDry_m.slice(), passes: landed.passes.slice() };
  return { ...coat, film: copyLivingFilm(coat.film), clock: { ...clock, landed: copied } };
}

/** What landed between the film's time and `until_s`. */
function landingUntil(coat: LivingCoat, until_s: number): Landing | null {
  const block = sprayUntil(coat.clock, coat.landed, coat.start_s + until_s);
  coat.landed = block;
  if (block === null) return null;
  const { wet_m, solids_m, arrivedDry_m } = coat.clock.landed;
  return { ...block, wet_m, solids_m, arrivedDry_m, fastFraction: coat.fastFraction };
}

/** The air slices that may reach into a step; those that ended before it are passed over for good. */
function airOf(coat: LivingCoat, until_s: number): AirSlice[] {
  const { air, start_s, film } = coat;
  while (coat.nextAir < air.length && endOf(air[coat.nextAir] as AirSlice) <= start_s + film.time_s) coat.nextAir++;
  let end = coat.nextAir;
  while (end < air.length && (air[end] as AirSlice).start_s < start_s + until_s) end++;
  return air.slice(coat.nextAir, end);
}

function endOf({ start_s, duration_s }: AirSlice): number {
  return start_s + duration_s;
}

/** Fast solvent leaves first in flight; taken at the planned distance for the whole coat. */
export function arrivingFastFraction({ mix, setUp, plan }: CoatSetting): number {
  const { fast, slow, solventSpeedRatio } = mix;
  if (!(solventSpeedRatio > 0)) return fast.volumeFraction;
  const warmth = setUp.drops.solventSpeedRatio / solventSpeedRatio;
  const keptFast = fast.volumeFraction * solventKept(plan.distance_m, setUp.drops.meanDiameter_m, fast.relativeEvaporation * warmth);
  const keptSlow = slow.volumeFraction * solventKept(plan.distance_m, setUp.drops.meanDiameter_m, slow.relativeEvaporation * warmth);
  return keptFast + keptSlow > 0 ? keptFast / (keptFast + keptSlow) : 0;
}
