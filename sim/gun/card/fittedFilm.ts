import type { FanFit } from './fanFit.ts';
import { FIT_SHAPES } from './fitShapes.ts';

/** What a family's profile is turned by: ln(β1 - ½), taper over half width, or nothing. */
function shapeOf({ beta1, taper_m, width_m }: FanFit): number {
  if (beta1 !== null) return Math.log(beta1 - 0.5);
  return taper_m === null ? 0 : taper_m / (width_m / 2);
}

/** The fitted curve: film in the readings' unit at a place on the readings' scale, fog included. */
export function fittedFilm(fit: FanFit): (place_m: number) => number {
  const { write } = FIT_SHAPES[fit.family];
  const shape = shapeOf(fit);
  const out = new Float64Array(3);
  return (place_m) => {
    const u = (2 * (place_m - fit.offset_m)) / fit.width_m;
    write(u, shape, out);
    return fit.fog + fit.peak * (out[0] as number) * (1 + fit.imbalance * u);
  };
}
