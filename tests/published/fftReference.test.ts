import FFT from 'fft.js';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../sim/base/noise.ts';
import { emptyDeposit } from '../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../sim/deposit/layPath.ts';
import { fanShape } from '../../sim/gun/profile.ts';
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

/** Flux of the fan at the origin by its formula (powers and all), wrapped round; fan along x. */
function formulaKernel(setUp: SetUp): Float64Array {
  const shape = fanShape(setUp.fan);
  const kernel = new Float64Array(SIZE * SIZE);
  for (let row = 0; row < SIZE; row++) {
    for (let column = 0; column < SIZE; column++) {
      const u = (((column + SIZE / 2) % SIZE) - SIZE / 2) * CELL_M / shape.halfLength_m;
      const s = (((row + SIZE / 2) % SIZE) - SIZE / 2) * CELL_M / shape.halfDepth_m;
      if (Math.abs(u) > 1) continue;
      const chord = shape.chordSquared(u);
      if (s * s < chord) kernel[row * SIZE + column] = shape.peak_m2 * shape.across(u) * shape.along((s * s) / chord);
    }
  }
  return kernel;
}

describe('dwells at whole-cell places against a convolution by fast Fourier transform', () => {
  // The tables are linear between 2049 and 4097 nodes; the steepest curvature, 8 for the Gaussian's 16
  // halved, gives 16/8/1024² = 1.9e-6 there and half of it or less elsewhere; single precision adds 1e-7.
  // The Gaussian's sizes keep the cut of its support off cell centres, where a tie would decide.
  const cases: [string, SetUp, number][] = [
    ['double-beta 3, 3', plainSetUp({ width_m: 0.2, depth_m: 0.06 }), 1e-6],
    ['double-beta 2, 3', plainSetUp({ width_m: 0.2, depth_m: 0.06, profile: { family: 'double-beta', beta1: 2, beta2: 3 } }), 1e-6],
    ['cosine-squared', plainSetUp({ width_m: 0.2, depth_m: 0.06, profile: { family: 'cosine-squared' } }), 1e-6],
    ['Gaussian', plainSetUp({ width_m: 0.1013, depth_m: 0.0307, profile: { family: 'gaussian' } }), 2e-6],
  ];
  it.each(cases)('%s', (name, setUp, tolerance) => {
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
    const reference = convolve(dwell_s, formulaKernel(setUp)).map((value) => value * setUp.fluidRate_m3_s);
    const peak = Math.max(...reference);
    const worst = deposit.wet_m.reduce((high, film, i) => Math.max(high, Math.abs(film - reference[i]!)), 0) / peak;
    console.log(`${name}: worst difference ${worst.toExponential(2)} of the peak (${tolerance} allowed)`);
    expect(worst).toBeLessThan(tolerance);
  });
});
