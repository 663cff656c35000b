import type { Spray } from '../gun/spray.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import type { Amounts } from './amounts.ts';
import { fluidSlices } from './fluidSlices.ts';
import { makeLayer, stampsOf, sweepOf } from './pieces.ts';
import { stampFlux } from './stamp.ts';
import { sweepFlux } from './sweep.ts';

/** What one stroke laid at one place. */
export interface StrokeShare {
  /** Index of the stroke, -1 for fluid outside every stroke. */
  readonly stroke: number;
  readonly wet_m: number;
  readonly solids_m: number;
  readonly arrivedDry_m: number;
}

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

/** `strokesAt` for many places in one walk along the path; one list a place. */
export function strokesAtPlaces(options: StrokesAtOptions & { readonly places_m: readonly (readonly [x_m: number, y_m: number])[] }): StrokeShare[][] {
  const { path, strokes, spray, places_m, until_s = Infinity } = options;
  const layer = makeLayer(spray, 'auto');
  const sums = places_m.map(() => new Map<number, { wet_m: number; solids_m: number; arrivedDry_m: number }>());
  const add = (flux: (x_m: number, y_m: number) => number, stroke: number, liquid_m3: number, amounts: Amounts) => {
    places_m.forEach(([x_m, y_m], i) => {
      const film_m = liquid_m3 * flux(x_m, y_m);
      if (!(film_m > 0)) return;
      const at = sums[i] as Map<number, { wet_m: number; solids_m: number; arrivedDry_m: number }>;
      const sum = at.get(stroke) ?? { wet_m: 0, solids_m: 0, arrivedDry_m: 0 };
      sum.wet_m += film_m * amounts.wet;
      sum.solids_m += film_m * amounts.solids;
      sum.arrivedDry_m += film_m * amounts.arrivedDry;
      at.set(stroke, sum);
    });
  };
  for (const slice of fluidSlices(path, strokes, spray.triggerLag_s, until_s)) {
    const sweep = sweepOf(layer, slice);
    if (sweep !== null) {
      add((x_m, y_m) => sweepFlux(sweep, x_m, y_m), sweep.stroke, sweep.liquid_m3, sweep.amounts);
      continue;
    }
    for (const stamp of stampsOf(layer, slice)) {
      add((x_m, y_m) => stampFlux(stamp.view, layer.tables, x_m, y_m), stamp.stroke, stamp.liquid_m3, stamp.amounts);
    }
  }
  return sums.map((at) => [...at].map(([stroke, sum]) => ({ stroke, ...sum })).sort((a, b) => a.stroke - b.stroke));
}
