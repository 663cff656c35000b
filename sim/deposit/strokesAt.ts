import type { Spray } from '../gun/spray.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import type { Amounts } from './amounts.ts';
import { fluidSlices } from './fluidSlices.ts';
import { makeLayer, stampsOf, sweepOf } from './pieces.ts';
import { stampFluxes } from './stamp.ts';
import { sweepFlux } from './sweep.ts';

/** What one stroke laid at one place. */
export interface StrokeShare {
  /** Index of the stroke, -1 for fluid outside every stroke. */
  readonly stroke: number;
  readonly wet_m: number;
  readonly solids_m: number;
  readonly arrivedDry_m: number;
}

/** The travel and the spray that are asked about; `until_s` as in `layPath`. */
export interface StrokesAtOptions {
  readonly path: Path;
  readonly strokes: readonly Stroke[];
  readonly spray: Spray;
  readonly until_s?: number;
}

/**
 * What each stroke laid at one place, by stroke index; strokes that laid nothing there are left out.
 * Same pieces and formulas as `layPath`, so that the sum is the film at a cell's centre (to single
 * precision).
 * @param x_m from the panel's left edge, @param y_m from its lower edge.
 */
export function strokesAt(options: StrokesAtOptions & { readonly x_m: number; readonly y_m: number }): StrokeShare[] {
  return strokesAtPlaces({ ...options, places_m: [[options.x_m, options.y_m]] })[0] as StrokeShare[];
}

type Sum = { wet_m: number; solids_m: number; arrivedDry_m: number };

/** `strokesAt` for many places in one walk along the path; one list a place. */
export function strokesAtPlaces(options: StrokesAtOptions & { readonly places_m: readonly (readonly [x_m: number, y_m: number])[] }): StrokeShare[][] {
  const { path, strokes, spray, places_m, until_s = Infinity } = options;
  const layer = makeLayer(spray, 'auto');
  const x_m = Float64Array.from(places_m, (place) => place[0]);
  const y_m = Float64Array.from(places_m, (place) => place[1]);
  const flux = new Float64Array(places_m.length);
  const sums = places_m.map(() => new Map<number, Sum>());
  for (const slice of fluidSlices(path, strokes, spray, until_s)) {
    const sweep = sweepOf(layer, slice);
    if (sweep !== null) {
      for (let i = 0; i < flux.length; i++) flux[i] = sweepFlux(sweep, x_m[i] as number, y_m[i] as number);
      addFluxes(sums, flux, sweep.stroke, sweep.liquid_m3, sweep.amounts);
      continue;
    }
    for (const stamp of stampsOf(layer, slice)) {
      stampFluxes(flux, stamp.view, layer.tables, x_m, y_m);
      addFluxes(sums, flux, stamp.stroke, stamp.liquid_m3, stamp.amounts);
    }
  }
  return sums.map((at) => [...at].map(([stroke, sum]) => ({ stroke, ...sum })).sort((a, b) => a.stroke - b.stroke));
}

/** Adds one piece's film to the sums of the places that it reaches. */
function addFluxes(sums: readonly Map<number, Sum>[], flux: Float64Array, stroke: number, liquid_m3: number, amounts: Amounts): void {
  for (let i = 0; i < flux.length; i++) {
    const film_m = liquid_m3 * (flux[i] as number);
    if (!(film_m > 0)) continue;
    const at = sums[i] as Map<number, Sum>;
    let sum = at.get(stroke);
    if (sum === undefined) {
      sum = { wet_m: 0, solids_m: 0, arrivedDry_m: 0 };
      at.set(stroke, sum);
    }
    sum.wet_m += film_m * amounts.wet;
    sum.solids_m += film_m * amounts.solids;
    sum.arrivedDry_m += film_m * amounts.arrivedDry;
  }
}
