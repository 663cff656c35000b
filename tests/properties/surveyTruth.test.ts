import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { krigeAt, krigingWeights, makeKriging } from '../../sim/survey/kriging/kriging.ts';
import { placedValues, type PlacedValue } from '../../sim/survey/kriging/placedValues.ts';
import { evenPlaces } from '../../sim/survey/evenPlaces.ts';

const side = fc.double({ min: 0, max: 1, noNaN: true });
const value: fc.Arbitrary<PlacedValue> = fc.record({ at_m: fc.tuple(side, side), value_m: fc.double({ min: -5, max: 5, noNaN: true }), noise_m: fc.double({ min: 0.05, max: 1, noNaN: true }) });
const values = fc.array(value, { minLength: 1, maxLength: 25 });
const law = fc.record({ sill_m2: fc.double({ min: 0.05, max: 3, noNaN: true }), range_m: fc.double({ min: 0.02, max: 2, noNaN: true }) });

describe('kriging', () => {
  it('has weights that sum to 1 and give its value', () => {
    fc.assert(fc.property(values, law, side, side, (list, of, x, y) => {
      const kriging = makeKriging(placedValues(list), of);
      const weights = krigingWeights(kriging, x, y);
      const told = weights.reduce((sum, weight, i) => sum + weight * (kriging.values.value_m[i] as number), 0);
      // Condition numbers reach some 25 · 3 / 0.05² = 3e4 here: rounding of 1e-16 stays below 1e-9.
      expect(Math.abs(weights.reduce((sum, weight) => sum + weight, 0) - 1)).toBeLessThan(1e-9);
      expect(Math.abs(told - krigeAt(kriging, x, y).value_m)).toBeLessThan(1e-8);
    }));
  });

  it('in a mirror is the mirrored map, and moves with all that is added to its values', () => {
    fc.assert(fc.property(values, law, side, side, fc.double({ min: -9, max: 9, noNaN: true }), (list, of, x, y, more) => {
      const here = krigeAt(makeKriging(placedValues(list), of), x, y);
      const there = krigeAt(makeKriging(placedValues(list.map((one) => ({ ...one, at_m: [2 - one.at_m[0], one.at_m[1]] as const, value_m: one.value_m + more }))), of), 2 - x, y);
      expect(Math.abs(there.value_m - here.value_m - more)).toBeLessThan(1e-7);
      expect(Math.abs(there.error_m - here.error_m)).toBeLessThan(1e-7);
    }));
  });

  it('has no larger error with one more reading', () => {
    fc.assert(fc.property(values, value, law, side, side, (list, more, of, x, y) => {
      const [before, after] = [list, [...list, more]].map((all) => krigeAt(makeKriging(placedValues(all), of), x, y).error_m) as [number, number];
      expect(after).toBeLessThanOrEqual(before * (1 + 1e-9) + 1e-9);
    }));
  });
});

describe('places spread evenly', () => {
  it('are as many as asked, no two the same, whatever the candidates', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 })), { minLength: 1, maxLength: 150, selector: String }), fc.integer({ min: 1, max: 40 }), (places, count) => {
      const [x, y] = [places.map(([one]) => one), places.map(([, one]) => one)];
      const { taken, owner } = evenPlaces(x, y, count);
      expect(taken.length).toBe(Math.min(count, places.length));
      expect(new Set(taken).size).toBe(taken.length);
      expect(owner.length).toBe(places.length);
    }));
  });
});
