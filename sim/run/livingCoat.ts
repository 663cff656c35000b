import type { CellBlock } from '../base/grid.ts';
import { airSlices, type AirSlice } from '../deposit/airSlices.ts';
import type { GunPose } from '../deposit/fluidSlices.ts';
import { poseBetween } from '../deposit/pieces.ts';
import { sprayUntil, startSprayClock, type SprayClock } from '../deposit/sprayClock.ts';
import { blowFilm, type Blast } from '../film/flow/blow.ts';
import { advanceFilm, FRESH_STEP_S, type AdvanceOptions } from '../film/life/advance.ts';
import { filmForNextCoat } from '../film/life/nextCoat.ts';
import { momentOf, type FilmMoment } from '../film/life/snapshot.ts';
import { copyLivingFilm, emptyLivingFilm, type LivingFilm } from '../film/life/state.ts';
import { wetFilm } from '../film/life/wetFilm.ts';
import type { FilmLaw } from '../film/law.ts';
import type { Footprint } from '../gun/spray.ts';
import { solventKept } from '../gun/drops.ts';
import { capAirSpeed_m_s, jetSpeed_m_s } from '../gun/jet.ts';
import { JUDGED_COVER } from '../verdict/judged.ts';
import { filmLawOf } from './filmLaw.ts';
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
}

/** A coat before its first stroke, on a bare panel or on the film that an earlier coat left. */
export function startCoat(setting: CoatSetting, travel: Travel, beneath: LivingFilm | null = null): LivingCoat {
  const { panelGrid, spray, air } = setting;
  const { path, strokes } = travel;
  const law = filmLawOf(setting);
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
    const from_s = film.time_s;
    advanceFilm(film, law, next_s, options);
    spray(coat, next_s);
    blow(coat, from_s, next_s);
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

function spray(coat: LivingCoat, until_s: number): void {
  const block = sprayUntil(coat.clock, coat.landed, coat.start_s + until_s);
  coat.landed = block;
  if (block === null) return;
  const { wet_m, solids_m, arrivedDry_m } = coat.clock.landed;
  wetFilm(coat.film, coat.law, { ...block, wet_m, solids_m, arrivedDry_m, fastFraction: coat.fastFraction });
}

/** The air that the trigger lets out, with or without fluid, blows at the film: one blast for every half depth of travel. */
function blow(coat: LivingCoat, from_s: number, until_s: number): void {
  const { setUp, spray: fan } = coat.setting;
  const { halfDepth_m } = fan.footprint;
  const capSpeed_m_s = capAirSpeed_m_s(setUp.capPressure_Pa);
  let waiting_s = 0;
  let last: GunPose | null = null;
  for (const slice of coat.air) {
    const low = Math.max(0, (coat.start_s + from_s - slice.start_s) / slice.duration_s);
    const high = Math.min(1, (coat.start_s + until_s - slice.start_s) / slice.duration_s);
    if (!(high > low)) continue;
    const travel_m = (high - low) * Math.hypot(slice.end.x_m - slice.start.x_m, slice.end.y_m - slice.start.y_m);
    const pieces = Math.max(1, Math.ceil(travel_m / halfDepth_m));
    for (let i = 0; i < pieces; i++) {
      const pose = poseBetween(slice, low + ((high - low) * (i + 0.5)) / pieces);
      waiting_s += ((high - low) * slice.duration_s) / pieces;
      if (last !== null && Math.hypot(pose.x_m - last.x_m, pose.y_m - last.y_m) < 0.5 * halfDepth_m) continue;
      blowFilm(coat.film, coat.law, blastAt(pose, fan.footprint, capSpeed_m_s), waiting_s);
      last = pose;
      waiting_s = 0;
    }
  }
  if (last !== null && waiting_s > 0) blowFilm(coat.film, coat.law, blastAt(last, fan.footprint, capSpeed_m_s), waiting_s);
}

function blastAt(pose: GunPose, { halfLength_m, halfDepth_m, distance_m }: Footprint, capSpeed_m_s: number): Blast {
  const scale = pose.z_m / distance_m;
  return {
    x_m: pose.x_m,
    y_m: pose.y_m,
    longX: Math.cos(pose.fan_rad),
    longY: Math.sin(pose.fan_rad),
    halfLength_m: scale * halfLength_m,
    halfDepth_m: scale * halfDepth_m,
    speed_m_s: jetSpeed_m_s(capSpeed_m_s, pose.z_m),
  };
}

/** Fast solvent leaves first in flight; taken at the planned distance for the whole coat. */
function arrivingFastFraction({ mix, setUp, plan }: CoatSetting): number {
  const { fast, slow, solventSpeedRatio } = mix;
  if (!(solventSpeedRatio > 0)) return fast.volumeFraction;
  const warmth = setUp.drops.solventSpeedRatio / solventSpeedRatio;
  const keptFast = fast.volumeFraction * solventKept(plan.distance_m, setUp.drops.meanDiameter_m, fast.relativeEvaporation * warmth);
  const keptSlow = slow.volumeFraction * solventKept(plan.distance_m, setUp.drops.meanDiameter_m, slow.relativeEvaporation * warmth);
  return keptFast + keptSlow > 0 ? keptFast / (keptFast + keptSlow) : 0;
}
