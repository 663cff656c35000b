import { fanShape, type FanShape } from './profile.ts';
import type { SetUp } from './setUp.ts';

/** Places summed along a line for a turned fan without a closed form. */
const PLACES = 1600;

/**
 * The film that one straight stroke leaves across its travel, per liquid laid on a unit of travel:
 * times (efficiency · fluid rate / speed) it is the wet film. In 1/m; its integral across is
 * 1 - cutFraction.
 *
 * Closed forms: for a square fan of any family, `peak · b · ∫along · √chord(u) · across(u)`, which for
 * the double-beta is `T_max b B(½, β2) (1 - x²/a²)^(β1-½)`; for a turned double-beta fan with
 * β1 = β2, half width `W = √(a² cos²ψ + b² sin²ψ)` and the same law. Others turned are summed along
 * each line (midpoint rule).
 *
 * @param fan checked by `makeSetUp`. @param turn_rad from square to the travel, counter-clockwise.
 * @returns a function of the place left of the aim line, m; it is in the fan's stated distance.
 */
export function strokeProfile(fan: SetUp['fan'], turn_rad = 0): (offset_m: number) => number {
  const shape = fanShape(fan);
  const cos = Math.cos(turn_rad);
  const sin = Math.sin(turn_rad);
  if (Math.abs(sin) < 1e-12) return (offset_m) => squareProfile(shape, cos * offset_m);
  const { profile } = fan;
  if (profile.family === 'double-beta' && profile.beta1 === profile.beta2) {
    const half_m = Math.hypot(shape.halfLength_m * cos, shape.halfDepth_m * sin);
    return (offset_m) => (shape.halfLength_m / half_m) * squareProfile(shape, (offset_m * shape.halfLength_m) / half_m);
  }
  return (offset_m) => summedProfile(shape, cos, sin, offset_m);
}

function squareProfile(shape: FanShape, offset_m: number): number {
  const u = offset_m / shape.halfLength_m;
  if (!(Math.abs(u) <= 1)) return 0;
  return shape.peak_m2 * shape.across(u) * shape.halfDepth_m * Math.sqrt(shape.chordSquared(u)) * shape.alongIntegral;
}

function summedProfile(shape: FanShape, cos: number, sin: number, offset_m: number): number {
  const reach_m = Math.hypot(shape.halfLength_m, shape.halfDepth_m);
  let sum = 0;
  for (let i = 0; i < PLACES; i++) {
    const along_m = reach_m * ((2 * i + 1) / (PLACES) - 1);
    sum += fluxOf(shape, offset_m * cos - along_m * sin, -along_m * cos - offset_m * sin);
  }
  return (sum * 2 * reach_m) / (PLACES);
}

/** Share of the landing liquid per area at x along the long axis and y along the short, 1/m². */
function fluxOf(shape: FanShape, x_m: number, y_m: number): number {
  const u = x_m / shape.halfLength_m;
  if (!(Math.abs(u) <= 1)) return 0;
  const chordSquared = shape.halfDepth_m ** 2 * shape.chordSquared(u);
  const w = (y_m * y_m) / chordSquared;
  return w <= 1 ? shape.peak_m2 * shape.across(u) * shape.along(w) : 0;
}
