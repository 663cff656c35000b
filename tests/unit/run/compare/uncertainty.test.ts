import { describe, expect, it } from 'vitest';
import { movedSetUp } from '../../../../sim/gun/knownWithin.ts';
import { layCoat } from '../../../../sim/run/lay.ts';
import { strokesOf } from '../../../../sim/run/strokes.ts';
import { laidValues } from '../../../../sim/run/compare/laidValues.ts';
import { SIGMAS_95 } from '../../../../sim/base/special.ts';
import { knownSetUp, laidWithin, withSetUp } from '../../../../sim/run/compare/uncertainty.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import { testJob, type JobParts } from '../testJob.ts';

const CELL_MM = 10;
const DRAWS = 200;

/** Uniform numbers from a seed: a linear congruence with the constants of Press and others, Numerical Recipes. */
function uniforms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** Standard deviation, and its own standard error from the fourth moment: sd √((κ - 1)/(4 n)). */
function deviationOf(values: readonly number[]): { readonly sd: number; readonly error: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const moment = (power: number) => values.reduce((sum, value) => sum + (value - mean) ** power, 0) / values.length;
  const sd = Math.sqrt(moment(2));
  return { sd, error: sd * Math.sqrt((moment(4) / moment(2) ** 2 - 1) / (4 * values.length)) };
}

function study(parts: JobParts) {
  const setting = settleCoat(testJob(parts), 'coat', { cell_mm: CELL_MM });
  const strokes = strokesOf(setting);
  const known = knownSetUp(setting);
  const within = laidWithin(setting, strokes, known);
  const next = uniforms(4);
  const normal = () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
  const draws = Array.from({ length: DRAWS }, () => {
    const moves = { width: normal() / SIGMAS_95, beta1: normal() / SIGMAS_95, fluidRate: normal() / SIGMAS_95, efficiency: normal() / SIGMAS_95 };
    const moved = withSetUp(setting, movedSetUp(known.stated, known.known, moves));
    return laidValues(moved, layCoat(moved, strokes));
  });
  return { within, mean: deviationOf(draws.map(({ wet_m }) => wet_m)), cv: deviationOf(draws.map(({ cv }) => cv)), setting, strokes };
}

describe('the interval of a film', () => {
  it('is that of fluid rate and transfer alone where the fan is exact: film is their product', () => {
    const setting = settleCoat(testJob({ setUp: { knownWithin: { width_percent: 0, beta1: 0, fluidRate_percent: 4, efficiency_percent: 3 } } }), 'coat', { cell_mm: CELL_MM });
    const strokes = strokesOf(setting);
    const values = laidValues(setting, layCoat(setting, strokes));
    const within = laidWithin(setting, strokes, knownSetUp(setting));
    // Films are kept in single precision: 6e-8 of a value, on differences of 0.03.
    expect(within.wet_m / values.wet_m / 0.05).toBeCloseTo(1, 4);
    expect(within.sprayed_m3 / values.sprayed_m3).toBeCloseTo(0.04, 10);
    expect(within.solvent_m3 / values.solvent_m3).toBeCloseTo(0.04, 10);
    expect(within.cv).toBeLessThan(1e-6);
  });

  it('agrees with 200 coats whose numbers are drawn at random, where stripes make the film vary', () => {
    // A third of overlap: the film varies by a quarter, and as straight a line as any in width and exponent.
    const { within, mean, cv } = study({ plan: { overlap_percent: 33 }, setUp: { knownWithin: { width_percent: 5, beta1: 0.3, fluidRate_percent: 10, efficiency_percent: 15 } } });
    console.table([{ figure: 'mean film, µm', interval: (within.wet_m / SIGMAS_95) * 1e6, draws: mean.sd * 1e6, error: mean.error * 1e6 }, { figure: 'CV', interval: within.cv / SIGMAS_95, draws: cv.sd, error: cv.error }]);
    expect(Math.abs(within.wet_m / SIGMAS_95 - mean.sd)).toBeLessThan(3 * mean.error);
    expect(Math.abs(within.cv / SIGMAS_95 - cv.sd)).toBeLessThan(3 * cv.error);
  });

  it('is right to a tenth where the overlap is flattest and width and exponent act together', () => {
    const { within, cv } = study({ setUp: { knownWithin: { width_percent: 5, beta1: 0.3, fluidRate_percent: 10, efficiency_percent: 15 } } });
    console.table([{ figure: 'CV, flattest', interval: within.cv / SIGMAS_95, draws: cv.sd, error: cv.error }]);
    expect(Math.abs(within.cv / SIGMAS_95 - cv.sd)).toBeLessThan(0.1 * cv.sd + 3 * cv.error);
  });
});
