import { describe, expect, it } from 'vitest';
import { darknessLag } from '../../../../../sim/gun/card/photo/absorbance.ts';
import { findSpot } from '../../../../../sim/gun/card/photo/findSpot.ts';

describe('darknessLag', () => {
  it('is what stray light of 4 % takes from a proportional darkness', () => {
    for (const trueAbsorbance of [0.2, 0.6, 1.2]) {
      const seen = Math.log10(1.04 / (10 ** -trueAbsorbance + 0.04));
      // In proportion to a thin film, whose darkness grows by 1/1.04 of the true one.
      expect(darknessLag(seen)).toBeCloseTo(1 - seen / (trueAbsorbance / 1.04), 9);
    }
    expect([0.5, 0.6, 1].map((seen) => darknessLag(seen).toFixed(2))).toEqual(['0.04', '0.05', '0.13']);
    expect(darknessLag(1e-4)).toBeCloseTo(0, 3);
  });
});

describe('findSpot', () => {
  const BLOCKS = { columns: 20, rows: 10 };
  const dark = (at: Record<number, number>) => ({ cells: new Float32Array(0), blocks: Float64Array.from({ length: 200 }, (_, i) => at[i] ?? 0), leastFilm: 0.01, top: 1, warnings: [] });

  it('keeps both halves of a split fan and leaves a blot out', () => {
    const { isFilm, isBlot, warnings } = findSpot(dark({ 65: 0.5, 66: 0.5, 72: 0.4, 73: 0.4, 148: 0.06, 149: 0.06 }), BLOCKS, 'all');
    expect([65, 66, 72, 73, 148].map((block) => isFilm[block])).toEqual([1, 1, 1, 1, 0]);
    expect([148, 127, 65].map((block) => isBlot[block])).toEqual([1, 1, 0]);
    expect(warnings.map(({ text }) => text).join()).toMatch(/a dark place beside the spot was left out/);
  });

  it('warns of a faint spot at a bare edge, refuses a dark one, and lets a stroke run off its ends', () => {
    const rightEdge = (film: number) => dark({ 97: 1, 98: 0.6, 99: film });
    expect(findSpot(rightEdge(0.05), BLOCKS, 'all').warnings.map(({ text }) => text).join()).toMatch(/reaches the edge .* 5\.0 % of its darkest/);
    expect(() => findSpot(rightEdge(0.3), BLOCKS, 'all')).toThrow(/30\.0 % of its darkest, more than 10 % \(the fan is off the card/);
    expect(findSpot(rightEdge(0.3), BLOCKS, 'beside-x').warnings).toEqual([]);
    expect(() => findSpot(rightEdge(0.3), BLOCKS, 'beside-y')).toThrow(/off the card/);
  });
});
