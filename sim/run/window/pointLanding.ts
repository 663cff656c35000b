import { fanScale } from '../../base/raySource.ts';
import { dryDropShare, solventKept } from '../../gun/drops.ts';
import { transferEfficiency } from '../../gun/transfer.ts';
import type { LapRipple, StrokeShape } from './lapRipple.ts';
import type { PointConditions } from './pointConditions.ts';
import type { SprayPoint } from './sprayPoint.ts';

/** What lands of one point's strokes, and how wide they are. */
export interface PointLanding {
  /** Shares of the sprayed liquid that reach the panel's plane: wet film, and the solids in it. */
  readonly wet: number;
  readonly solids: number;
  /** Share of the wet film in drops that arrive dry. */
  readonly dryFraction: number;
  /** The fan there over the fan as stated. */
  readonly scale: number;
  readonly halfLength_m: number;
  readonly pitch_m: number;
  /** Wet film of one stroke at unit share of its shape, m. */
  readonly stroke_m: number;
  /** Mean wet film of one pass, m. */
  readonly pass_m: number;
}

/**
 * Amounts of a stroke at a point's distance: efficiency, solvent kept in flight and dry drops as the
 * set-up gives them with that mix and air (the functions behind the arrival tables: a table a point would
 * cost more than the film), the fan as wide as its rays are there.
 */
export function pointLanding({ setUp }: PointConditions, point: SprayPoint, shape: StrokeShape, ripple: LapRipple): PointLanding {
  const { distance_m, speed_m_s, fluidRate_m3_s } = point;
  const { fan, drops, transfer, volumeSolidsFraction } = setUp;
  const landing = transferEfficiency(transfer, distance_m);
  const kept = solventKept(distance_m, drops.meanDiameter_m, drops.solventSpeedRatio);
  const wet = landing * (volumeSolidsFraction + (1 - volumeSolidsFraction) * kept);
  const scale = fanScale(distance_m, fan.atDistance_m, fan.origin_m);
  const halfLength_m = scale * shape.halfLength_m;
  const stroke_m = (fluidRate_m3_s * wet) / (speed_m_s * halfLength_m);
  return {
    wet,
    solids: landing * volumeSolidsFraction,
    dryFraction: dryDropShare(setUp, distance_m),
    scale,
    halfLength_m,
    pitch_m: ripple.pitch * halfLength_m,
    stroke_m,
    pass_m: (stroke_m * (1 - shape.cutFraction)) / ripple.pitch,
  };
}
