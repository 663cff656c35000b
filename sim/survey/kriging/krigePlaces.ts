import type { CovarianceLaw } from './covariance.ts';
import { krigeAt, makeKriging, type Kriging } from './kriging.ts';
import { picked, type PlacedValues } from './placedValues.ts';

/** Up to so many values answer together for every place. */
export const MOST_WHOLE = 400;
/** Of more, so many answer: the nearest to the middle of the tile in which a place lies. */
export const NEAREST = 64;
/** Side of a tile, m. Assumed: small beside the distances over which a film changes. */
const TILE_M = 0.05;

/** What is believed at some places, one value a place, m. */
export interface KrigedPlaces {
  readonly value_m: Float64Array;
  readonly error_m: Float64Array;
  /** Distance to the nearest value, m. */
  readonly nearest_m: Float64Array;
}

/**
 * Kriged values at places. More than 400 values are not taken whole: the nearest 64 of each tile of 50 mm answer, which
 * leaves steps between tiles that are small beside the standard error.
 * @param places_m x0, y0, x1, y1, …
 */
export function krigePlaces(values: PlacedValues, law: CovarianceLaw, places_m: Float64Array): KrigedPlaces {
  const count = places_m.length / 2;
  const out = { value_m: new Float64Array(count), error_m: new Float64Array(count), nearest_m: new Float64Array(count) };
  const krigingAt = values.value_m.length <= MOST_WHOLE ? always(makeKriging(values, law)) : byTile(values, law);
  for (let i = 0; i < count; i++) {
    const [x, y] = [places_m[2 * i] as number, places_m[2 * i + 1] as number];
    const kriging = krigingAt(x, y);
    const { value_m, error_m } = krigeAt(kriging, x, y);
    out.value_m[i] = value_m;
    out.error_m[i] = error_m;
    out.nearest_m[i] = nearest(kriging.values, x, y);
  }
  return out;
}

function always(kriging: Kriging): () => Kriging {
  return () => kriging;
}

function byTile(values: PlacedValues, law: CovarianceLaw): (x: number, y: number) => Kriging {
  const tiles = new Map<string, Kriging>();
  return (x, y) => {
    const [column, row] = [Math.floor(x / TILE_M), Math.floor(y / TILE_M)];
    const key = `${column},${row}`;
    let kriging = tiles.get(key);
    if (kriging === undefined) {
      kriging = makeKriging(picked(values, nearestIndices(values, (column + 0.5) * TILE_M, (row + 0.5) * TILE_M)), law);
      tiles.set(key, kriging);
    }
    return kriging;
  };
}

function nearestIndices({ x_m, y_m }: PlacedValues, x: number, y: number): number[] {
  const apart = x_m.map((one, i) => Math.hypot(one - x, (y_m[i] as number) - y));
  return Array.from(apart.keys()).sort((a, b) => (apart[a] as number) - (apart[b] as number) || a - b).slice(0, NEAREST);
}

function nearest({ x_m, y_m }: PlacedValues, x: number, y: number): number {
  let least = Infinity;
  for (let i = 0; i < x_m.length; i++) least = Math.min(least, Math.hypot((x_m[i] as number) - x, (y_m[i] as number) - y));
  return least;
}
