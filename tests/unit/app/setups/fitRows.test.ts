import { expect, it } from 'vitest';
import { fitRows, fitSentence } from '../../../../src/app/setups/fitRows.ts';
import type { FanFit, FitIntervals } from '../../../../sim/index.ts';

const FIT: FanFit = {
  family: 'double-beta', width_m: 0.254, beta1: 2.9, taper_m: null, offset_m: -0.004, imbalance: 0.06, fog: 0.5, peak: 34,
  freeCount: 6, rms: 1.02, aicc: -120.4, behind: 0, weight: 0.71,
};
const INTERVALS: FitIntervals = {
  width: { low: 0.25, high: 0.26 }, beta1: { low: 2.7, high: 3.2 }, taper: null, offset: { low: -0.005, high: -0.003 }, imbalance: { low: 0.02, high: 0.1 }, fog: null,
};

it('lists the numbers that the family has, in the reader\'s units', () => {
  expect(fitRows(FIT, INTERVALS, 'um', 'metric')).toEqual([
    { name: 'Full width', value: '254 mm', interval: '250 to 260 mm' },
    { name: 'Exponent across', value: '2.9', interval: '2.7 to 3.2' },
    { name: 'Middle of the fan', value: '-4 mm', interval: '-5 to -3 mm' },
    { name: 'Heavier toward larger places', value: '0.06', interval: '0.02 to 0.1' },
    { name: 'Film everywhere (fog)', value: '0.5 µm', interval: '' },
  ]);
  const flat = fitRows({ ...FIT, family: 'flat-top', beta1: null, taper_m: 0.0508 }, { ...INTERVALS, taper: { low: 0.0381, high: 0.0635 } }, '', 'us');
  expect(flat[1]).toEqual({ name: 'Tapered edge', value: '2 in', interval: '1.5 to 2.5 in' });
});

it('says how far readings lie from the curve', () => {
  expect(fitSentence('Rounded', FIT, 'metric')).toBe('Rounded: 254 mm wide; readings lie 3 % of its peak from it (root mean square).');
});
