import { describe, expect, it } from 'vitest';
import { makeFootprint } from '../../../sim/gun/footprint.ts';
import { makeSetUp } from '../../../sim/gun/setUpFromSpec.ts';
import type { SetUpSpec } from '../../../sim/job/schema.ts';
import { flattestOverlap, overlapCv } from '../../../sim/run/flattestOverlap.ts';
import { FAN } from './testJob.ts';

function footprint(profile: SetUpSpec['fan']['profile']) {
  return makeFootprint(makeSetUp({ ...FAN, fan: { ...FAN.fan, profile } }).fan);
}

const beta = (beta1: number) => footprint({ family: 'double-beta', beta1, beta2: 3 });

describe('overlapCv', () => {
  // Computed from the closed-form profiles at 20 001 places a pitch; ours sums 200 places of a
  // sampled profile, so 0.002 leaves room for the sampling of edges.
  it.each([
    ['beta 3 at 50 %', beta(3), 0.5, 0.0087],
    ['beta 3 at 30 %', beta(3), 0.3, 0.32],
    ['beta 2.5 at 45 %', beta(2.5), 0.45, 0.0132],
    ['parabola at 60 %', footprint({ family: 'parabola' }), 0.6, 0.0199],
    ['triangle at 40 %', footprint({ family: 'triangle' }), 0.4, 0.0693],
    ['cosine squared at 55 %', footprint({ family: 'cosine-squared' }), 0.55, 0.0335],
    ['Gaussian at 40 %', footprint({ family: 'gaussian' }), 0.4, 0.0459],
  ] as const)('%s', (_, print, overlap, cv) => {
    expect(Math.abs(overlapCv(print, overlap) - cv)).toBeLessThan(0.002);
  });
});

describe('flattestOverlap', () => {
  // Overlap of least CV: 0.4571, 0.5080, 0.5503 for beta 2.5, 3, 3.5; exactly a half for triangle
  // and cosine squared. Steps are 0.25 %, so 0.3 % is the search's own error.
  it.each([
    ['beta 2.5', beta(2.5), 0.4571],
    ['beta 3', beta(3), 0.508],
    ['beta 3.5', beta(3.5), 0.5503],
    ['triangle', footprint({ family: 'triangle' }), 0.5],
    ['cosine squared', footprint({ family: 'cosine-squared' }), 0.5],
  ] as const)('%s', (_, print, overlap) => {
    expect(Math.abs(flattestOverlap(print) - overlap)).toBeLessThan(0.003);
  });

  it('passes by a local best that is not even enough: the parabola’s 30 % has a CV of 5 %', () => {
    expect(flattestOverlap(footprint({ family: 'parabola' }))).toBeGreaterThan(0.58);
  });

  it('asks no more of a Gaussian fan than an even film needs', () => {
    const print = footprint({ family: 'gaussian' });
    const overlap = flattestOverlap(print);
    expect(overlapCv(print, overlap)).toBeLessThanOrEqual(0.02);
    expect(overlap).toBeLessThan(0.6);
  });
});
