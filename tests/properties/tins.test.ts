import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseTins, type TinSize } from '../../sim/scheme/tins.ts';

/** Whole millilitres, so that cost, content and count are exact whole numbers for brute force too. */
const size = fc.integer({ min: 1, max: 12 });
const price = fc.integer({ min: 0, max: 9 });

/** Every choice that holds the need and from which no tin can be left out, by trying all counts. */
function bruteForce(sizes: readonly number[], prices: readonly number[], need: number): readonly [cost: number, content: number, tins: number] {
  let best: readonly [number, number, number] = [Infinity, Infinity, Infinity];
  const tryFrom = (i: number, cost: number, content: number, tins: number): void => {
    if (content >= need) {
      const by = cost - best[0] || content - best[1] || tins - best[2];
      if (by < 0) best = [cost, content, tins];
      return;
    }
    for (let k = i; k < sizes.length; k++) tryFrom(k, cost + prices[k]!, content + sizes[k]!, tins + 1);
  };
  tryFrom(0, 0, 0, 0);
  return best;
}

function chosen(sizes: readonly TinSize[], need_mL: number): readonly [cost: number | null, content: number, tins: number] {
  const { cost, held_m3, tins } = chooseTins(sizes, need_mL * 1e-6);
  return [cost, Math.round(held_m3 * 1e6), tins.reduce((sum, { count }) => sum + count, 0)];
}

describe('chooseTins', () => {
  it('with all prices is the cheapest choice, then the least left over, then the fewest tins, as by trying all', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(size, price), { minLength: 1, maxLength: 4 }), fc.integer({ min: 0, max: 30 }), (pairs, need) => {
        const sizes = pairs.map(([mL, each]) => ({ size_m3: mL * 1e-6, price: each }));
        expect(chosen(sizes, need)).toEqual(bruteForce(pairs.map(([mL]) => mL), pairs.map(([, each]) => each), need));
      }),
      { numRuns: 500 },
    );
  });

  it('without a price leaves least over, then takes the fewest tins, and its cost is not known', () => {
    fc.assert(
      fc.property(fc.array(size, { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 30 }), (all, need) => {
        const [, content, tins] = bruteForce(all, all.map(() => 0), need);
        expect(chosen(all.map((mL) => ({ size_m3: mL * 1e-6, price: null })), need)).toEqual([null, content, tins]);
      }),
      { numRuns: 500 },
    );
  });

  it('always holds the need, whatever the sizes', () => {
    const anySize = fc.double({ min: 1e-5, max: 0.02, noNaN: true });
    fc.assert(
      fc.property(fc.array(anySize, { minLength: 1, maxLength: 5 }), fc.double({ min: 0, max: 0.1, noNaN: true }), (all, need_m3) => {
        const { held_m3, over_m3, tins } = chooseTins(all.map((size_m3) => ({ size_m3, price: 1 })), need_m3);
        // Sizes count in whole tenths of a millilitre, rounded down, so a choice never holds less than it says.
        expect(held_m3).toBeGreaterThanOrEqual(need_m3 - 1e-12);
        // A need of a fraction of a unit, as 5e-13 m³, takes no tin: then nothing is over.
        expect(over_m3).toBeCloseTo(Math.max(0, held_m3 - need_m3), 12);
        expect(tins.every(({ count }) => Number.isInteger(count) && count > 0)).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
});
