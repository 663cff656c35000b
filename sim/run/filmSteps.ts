import { blockHull, type CellBlock } from '../base/grid.ts';
import { fanScale } from '../base/raySource.ts';
import type { AirSlice } from '../deposit/airSlices.ts';
import type { GunPose } from '../deposit/fluidSlices.ts';
import { poseBetween } from '../deposit/pieces.ts';
import { blastBlock, blowFilm, type Blast } from '../film/flow/blow.ts';
import { advanceSteps, type AdvanceOptions } from '../film/life/advance.ts';
import type { LivingFilm } from '../film/life/state.ts';
import { wetFilm, type Landing } from '../film/life/wetFilm.ts';
import type { FilmLaw } from '../film/law.ts';
import { capAirSpeed_m_s, jetSpeed_m_s } from '../gun/jet.ts';
import type { Footprint } from '../gun/spray.ts';
import type { CoatSetting } from './result.ts';

/** What the gun does to a film in a short while. Times are on the film's clock. */
export interface GunStep {
  readonly until_s: number;
  /** What landed meanwhile, null for nothing. */
  readonly landing: Landing | null;
  /** Travel with the air on; what lies outside the step is left out. */
  readonly air: readonly AirSlice[];
  /** Time of the path at which the film's clock stands at 0. */
  readonly start_s: number;
}

/**
 * Carries a film over one step of spraying, in pieces: it lives up to the step's end, then takes what
 * landed, then is blown at. After each piece the block of cells that it changed is given out; blasts
 * lie over each other, so theirs is given out once, after the last, and null between them.
 * @throws CrosscoatError `cancelled`.
 */
export function* filmSteps(film: LivingFilm, law: FilmLaw, setting: CoatSetting, step: GunStep, options: AdvanceOptions = {}): Generator<CellBlock | null, void> {
  const from_s = film.time_s;
  yield* advanceSteps(film, law, step.until_s, options);
  if (step.landing !== null) {
    wetFilm(film, law, step.landing);
    yield step.landing;
  }
  let blown: CellBlock | null = null;
  for (const { blast, step_s } of blastsOf(setting, step, from_s)) {
    blowFilm(film, law, blast, step_s);
    const block = blastBlock(film.grid, blast);
    blown = blown === null ? block : blockHull(blown, block);
    yield null;
  }
  if (blown !== null) yield blown;
}

/** The air that the trigger lets out, with or without fluid, blows at the film: one blast for every half depth of travel. */
function* blastsOf({ setUp, spray }: CoatSetting, { air, start_s, until_s }: GunStep, from_s: number): Generator<{ readonly blast: Blast; readonly step_s: number }, void> {
  const { footprint } = spray;
  const { halfDepth_m } = footprint;
  const capSpeed_m_s = capAirSpeed_m_s(setUp.capPressure_Pa);
  let waiting_s = 0;
  let last: GunPose | null = null;
  for (const slice of air) {
    const low = Math.max(0, (start_s + from_s - slice.start_s) / slice.duration_s);
    const high = Math.min(1, (start_s + until_s - slice.start_s) / slice.duration_s);
    if (!(high > low)) continue;
    const travel_m = (high - low) * Math.hypot(slice.end.x_m - slice.start.x_m, slice.end.y_m - slice.start.y_m);
    const pieces = Math.max(1, Math.ceil(travel_m / halfDepth_m));
    for (let i = 0; i < pieces; i++) {
      const pose = poseBetween(slice, low + ((high - low) * (i + 0.5)) / pieces);
      waiting_s += ((high - low) * slice.duration_s) / pieces;
      if (last !== null && Math.hypot(pose.x_m - last.x_m, pose.y_m - last.y_m) < 0.5 * halfDepth_m) continue;
      yield { blast: blastAt(pose, footprint, capSpeed_m_s), step_s: waiting_s };
      last = pose;
      waiting_s = 0;
    }
  }
  if (last !== null && waiting_s > 0) yield { blast: blastAt(last, footprint, capSpeed_m_s), step_s: waiting_s };
}

function blastAt(pose: GunPose, { halfLength_m, halfDepth_m, distance_m, origin_m }: Footprint, capSpeed_m_s: number): Blast {
  const scale = fanScale(pose.z_m, distance_m, origin_m);
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
