import { solve } from 'ml-matrix';

/**
 * Weights of 1, x, y, x², xy, y² and (x² + y²)², at places from the picture's middle in half its diagonal: any gentle
 * fall-off of the lamp's light, and the camera's own, which is round about its picture's middle, to the fourth order.
 */
export type LightSurface = readonly number[];

const TERMS = 7;

/** Places on the photograph, from its middle in half diagonals. */
export interface PhotoPlaces {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export function lightAt(surface: LightSurface, x: number, y: number): number {
  const [c, x1, y1, x2, xy, y2, r4] = surface as [number, number, number, number, number, number, number];
  const square = x * x + y * y;
  return c + x * (x1 + x2 * x + xy * y) + y * (y1 + y2 * y) + r4 * square * square;
}

/**
 * The surface nearest to values by weighted least squares (normal equations: terms are of order 1, and the rim of a card
 * tells them apart).
 * @param weights 0 leaves a place out.
 */
export function fitLight({ x, y }: PhotoPlaces, values: Float64Array, weights: Float64Array): LightSurface {
  const left = Array.from({ length: TERMS }, () => new Array<number>(TERMS).fill(0));
  const right = new Float64Array(TERMS);
  const terms = new Float64Array(TERMS);
  for (let place = 0; place < values.length; place++) {
    const weight = weights[place] as number;
    if (weight === 0) continue;
    writeTerms(x[place] as number, y[place] as number, terms);
    for (let i = 0; i < TERMS; i++) {
      const scaled = weight * (terms[i] as number);
      const row = left[i] as number[];
      right[i] = (right[i] as number) + scaled * (values[place] as number);
      for (let j = 0; j < TERMS; j++) row[j] = (row[j] as number) + scaled * (terms[j] as number);
    }
  }
  return solve(left, Array.from(right, (value) => [value])).to1DArray();
}

function writeTerms(x: number, y: number, out: Float64Array): void {
  const square = x * x + y * y;
  out[0] = 1;
  out[1] = x;
  out[2] = y;
  out[3] = x * x;
  out[4] = x * y;
  out[5] = y * y;
  out[6] = square * square;
}
