import FFT from 'fft.js';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../sim/base/noise.ts';
import { emptyDeposit } from '../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../sim/deposit/layPath.ts';
import { makeSpray } from '../../sim/gun/makeSpray.ts';
import type { SetUp } from '../../sim/gun/setUp.ts';
import { pathOf, plainSetUp, wholeGrid, type PathRow } from '../helpers/sprayCases.ts';

const SIZE = 256;
const CELL_M = 2e-3;

/** In place: a transform of every row, then of every column, of a complex SIZE × SIZE field. */
function transform(field: Float64Array, inverse: boolean): void {
  const fft = new FFT(SIZE);
  const line = fft.createComplexArray() as number[];
  const out = fft.createComplexArray() as number[];
  const along = (start: number, step: number) => {
    for (let i = 0; i < SIZE; i++) {
      line[2 * i] = field[2 * (start + i * step)]!;
      line[2 * i + 1] = field[2 * (start + i * step) + 1]!;
    }
    if (inverse) fft.inverseTransform(out, line);
    else fft.transform(out, line);
    for (let i = 0; i < SIZE; i++) {
      field[2 * (start + i * step)] = out[2 * i]!;
      field[2 * (start + i * step) + 1] = out[2 * i + 1]!;
    }
  };
  for (let row = 0; row < SIZE; row++) along(row * SIZE, 1);
  for (let column = 0; column < SIZE; column++) along(column, SIZE);
}

/** Circular convolution of two real fields by the Fourier transform of a general package. */
function convolve(a: Float64Array, b: Float64Array): Float64Array {
  const complex = (real: Float64Array) => {
    const field = new Float64Array(2 * SIZE * SIZE);
    real.forEach((value, i) => (field[2 * i] = value));
    transform(field, false);
    return field;
  };
  const [fa, fb] = [complex(a), complex(b)];
  const product = new Float64Array(fa.length);
  for (let i = 0; i < SIZE * SIZE; i++) {
    product[2 * i] = fa[2 * i]! * fb[2 * i]! - fa[2 * i + 1]! * fb[2 * i + 1]!;
    product[2 * i + 1] = fa[2 * i]! * fb[2 * i + 1]! + fa[2 * i + 1]! * fb[2 * i]!;
  }
  transform(product, true);
  return Float64Array.from({ length: SIZE * SIZE }, (_, i) => product[2 * i]!);
}

/** A fan's formula written out here, 1/m², x along the fan and y along the travel; none of it is the program's. */
type Formula = (x: number, y: number) => number;

/** B(½, n) as tabled: π/2 for n = 3/2, 4/3 for 2, 3π/8 for 5/2, 16/15 for 3, 5π/16 for 7/2. */
const BETA_HALF = { 2.5: (3 * Math.PI) / 8, 3: 16 / 15, 3.5: (5 * Math.PI) / 16 };

function doubleBeta(a: number, b: number, beta1: 2 | 3, acrossBeta: 2.5 | 3.5): Formula {
  const peak = 1 / (a * b * BETA_HALF[3] * BETA_HALF[acrossBeta]);
  return (x, y) => {
    const chord = 1 - (x / a) ** 2;
    if (chord <= 0) return 0;
    const w = (y / b) ** 2 / chord;
    return w < 1 ? peak * Math.pow(chord, beta1 - 1) * Math.pow(1 - w, 2) : 0;
  };
}

function cosineSquared(a: number, b: number): Formula {
  const peak = 1 / (a * b * BETA_HALF[3]);
  return (x, y) => (Math.abs(x) < a && Math.abs(y) < b ? peak * Math.cos((Math.PI * x) / (2 * a)) ** 2 * (1 - (y / b) ** 2) ** 2 : 0);
}

/** Standard deviations a quarter of width and depth, cut at four of them. */
function gaussian(width: number, depth: number): Formula {
  const [sx, sy] = [width / 4, depth / 4];
  return (x, y) => (Math.abs(x) <= 4 * sx && Math.abs(y) < 4 * sy ? Math.exp(-(x * x) / (2 * sx * sx) - (y * y) / (2 * sy * sy)) / (2 * Math.PI * sx * sy) : 0);
}

/** A formula at the cells around the origin, wrapped round; fan along x. */
function formulaKernel(formula: Formula): Float64Array {
  const away = (cell: number): number => (((cell + SIZE / 2) % SIZE) - SIZE / 2) * CELL_M;
  return Float64Array.from({ length: SIZE * SIZE }, (_, i) => formula(away(i % SIZE), away(Math.floor(i / SIZE))));
}

describe('dwells at whole-cell places against a convolution by fast Fourier transform', () => {
  // The tables are linear between 4097 nodes; the steepest curvature, the Gaussian's 16, gives
  // 16/8/2048² = 4.8e-7 there and half of it or less elsewhere; single precision adds 1e-7.
  // The Gaussian's sizes keep the cut of its support off cell centres, where a tie would decide.
  const cases: [string, SetUp, Formula][] = [
    ['double-beta 3, 3', plainSetUp({ width_m: 0.2, depth_m: 0.06 }), doubleBeta(0.1, 0.03, 3, 3.5)],
    ['double-beta 2, 3', plainSetUp({ width_m: 0.2, depth_m: 0.06, profile: { family: 'double-beta', beta1: 2, beta2: 3 } }), doubleBeta(0.1, 0.03, 2, 2.5)],
    ['cosine-squared', plainSetUp({ width_m: 0.2, depth_m: 0.06, profile: { family: 'cosine-squared' } }), cosineSquared(0.1, 0.03)],
    ['Gaussian', plainSetUp({ width_m: 0.1013, depth_m: 0.0307, profile: { family: 'gaussian' } }), gaussian(0.1013, 0.0307)],
  ];
  it.each(cases)('%s', (name, setUp, formula) => {
    const random = seededRandom(7);
    const dwell_s = new Float64Array(SIZE * SIZE);
    const rows: PathRow[] = [];
    for (let i = 0; i < 60; i++) {
      // Kept a fan's half length from the edges, so that wrapping round does not matter.
      const column = 60 + Math.floor(random() * (SIZE - 120));
      const row = 60 + Math.floor(random() * (SIZE - 120));
      const place = { x: (column + 0.5) * CELL_M, y: (row + 0.5) * CELL_M, fan: 0 };
      const time_s = 0.1 + random();
      dwell_s[row * SIZE + column] = dwell_s[row * SIZE + column]! + time_s;
      rows.push({ t: 2 * i, ...place, trigger: 1 }, { t: 2 * i + time_s, ...place, trigger: 0 });
    }
    const panelGrid = wholeGrid(SIZE, SIZE, CELL_M);
    const deposit = emptyDeposit(panelGrid.grid);
    layPath({ deposit, panelGrid, path: pathOf(rows), strokes: [], spray: makeSpray(setUp) });
    const reference = convolve(dwell_s, formulaKernel(formula)).map((value) => value * setUp.fluidRate_m3_s);
    const peak = Math.max(...reference);
    const worst = deposit.wet_m.reduce((high, film, i) => Math.max(high, Math.abs(film - reference[i]!)), 0) / peak;
    console.log(`${name}: worst difference ${worst.toExponential(2)} of the peak (1e-6 allowed)`);
    expect(worst).toBeLessThan(1e-6);
  });
});
