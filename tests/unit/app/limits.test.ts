import { describe, expect, it } from 'vitest';
import { limitsAt } from '../../../src/app/limits.ts';
import { demoJob } from '../../../sim/job/demo.ts';

describe('limitsAt', () => {
  const job = demoJob();

  // The figures are those of the job's schema, which the form must not repeat.
  it.each([
    [['setUps', 0, 'fan', 'width_mm'], 5, 1500],
    [['setUps', 0, 'fan', 'profile', 'beta1'], 1, 8],
    [['setUps', 0, 'distanceRange_mm', 1], 10, 2000],
    [['coats', 0, 'plan', 'overlap_percent'], 0, 95],
    [['coats', 0, 'plan', 'lead_mm'], 0, 1000],
    [['coats', 0, 'target', 'min_percent'], 1, 100],
    [['part', 'panels', 0, 'holes', 0, 'circle_mm', 2], 1, 1e5],
    [['part', 'panels', 0, 'hinge_mm', 1, 0], -1e5, 1e5],
    [['part', 'panels', 0, 'attitude', 'tilt_deg'], 0, 180],
    [['cell_mm'], 1, 10],
    [['air', 'temperature_C'], -20, 60],
    [['air', 'altitude_m'], -400, 5000],
    [['mixes', 0, 'thinner', 1, 'percent'], 0.01, 100],
    [['mixes', 0, 'thinnerPerFinish'], 0, 10],
    [['mixes', 1, 'retarder', 'percent'], 0.01, 100],
    [['mixes', 0, 'cup', 'seconds'], 1, 1000],
    [['setUps', 0, 'drops', 'atViscosity_mPa_s'], 1, 2000],
    [['coats', 3, 'over', 'wait_min'], 0, 20160],
  ] as const)('%j runs from %d to %d', (path, low, high) => {
    expect(limitsAt(job, path)).toMatchObject({ low, high, whole: false });
  });

  it('knows that a seed is whole', () => {
    expect(limitsAt(job, ['seed'])).toMatchObject({ low: 0, high: 4294967295, whole: true });
  });

  it('refuses a path that the schema does not have', () => {
    expect(() => limitsAt(job, ['coats', 0, 'plan', 'colour'])).toThrow('the schema has no colour');
  });
});
