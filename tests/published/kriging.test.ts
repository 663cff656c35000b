import { readFileSync } from 'node:fs';
import { describe } from 'vitest';
import type { CovarianceLaw } from '../../sim/survey/kriging/covariance.ts';
import { krigeAt, makeKriging, type Kriging } from '../../sim/survey/kriging/kriging.ts';
import { restrictedLogLikelihood } from '../../sim/survey/kriging/likelihood.ts';
import { testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

interface Case {
  readonly name: string;
  readonly noise: number | readonly number[];
  readonly predicted: readonly number[];
  readonly error: readonly number[];
  readonly restrictedLogLikelihood: number;
}
interface Fixture {
  readonly madeWith: Readonly<Record<string, string>>;
  readonly cases: readonly Case[];
}
interface Given extends Fixture {
  readonly sill: number;
  readonly range_m: number;
  readonly x_m: readonly number[];
  readonly y_m: readonly number[];
  readonly value: readonly number[];
  readonly places_m: readonly (readonly [number, number])[];
}

function fixture(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../fixtures/kriging/${name}`, import.meta.url), 'utf8'));
}

const given = fixture('scikitLearn.json') as Given;
const law: CovarianceLaw = { sill_m2: given.sill, range_m: given.range_m };

function krigingOf({ noise }: Case): Kriging {
  const noise_m = typeof noise === 'number' ? given.x_m.map(() => noise) : noise;
  return makeKriging({ x_m: Float64Array.from(given.x_m), y_m: Float64Array.from(given.y_m), value_m: Float64Array.from(given.value), noise_m: Float64Array.from(noise_m) }, law);
}

/** The fixtures' values have no unit; ours then have none either. */
function rowsOf({ madeWith, cases }: Fixture, tolerance: number, why: string): PublishedRow[] {
  const source = `reference computation with ${Object.entries(madeWith).map(([name, version]) => `${name} ${version}`).join(', ')}; script beside tests/fixtures/kriging`;
  return cases.flatMap((one) => [
    ...given.places_m.flatMap(([x, y], i): PublishedRow[] => [
      { source, quantity: `${one.name}: value at ${x}, ${y}`, expected: one.predicted[i] as number, tolerance, why, ours: () => krigeAt(krigingOf(one), x, y).value_m },
      { source, quantity: `${one.name}: standard error at ${x}, ${y}`, expected: one.error[i] as number, tolerance, why, ours: () => krigeAt(krigingOf(one), x, y).error_m },
    ]),
    { source, quantity: `${one.name}: restricted log likelihood`, expected: one.restrictedLogLikelihood, tolerance, why, ours: () => restrictedLogLikelihood(krigingOf(one).values, law) },
  ]);
}

describe('kriging beside scikit-learn', () => {
  testPublished(rowsOf(given, 1e-6, 'the package has no unknown mean: its constant of variance 1e8 stands in, good to some 5e-7'));
});

describe('kriging beside R’s gstat, restricted likelihood beside nlme', () => {
  testPublished(rowsOf(fixture('gstat.json') as Fixture, 1e-7, 'square roots of rounding at exact values (1e-16 of the sill); all else agrees to 1e-9'));
});
