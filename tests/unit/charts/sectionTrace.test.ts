import { describe, expect, it } from 'vitest';
import { traceFilm, tracePath } from '../../../src/charts/sectionTrace.ts';

/** 4 × 3 cells of 10 mm; wet film rises with the column, dry with the row. */
const grid = { columns: 4, rows: 3, cellSize_m: 0.01 };
const wet_m = Float32Array.from({ length: 12 }, (_, cell) => cell % 4);
const dry_m = Float32Array.from({ length: 12 }, (_, cell) => Math.floor(cell / 4));
const cover = new Float32Array(12).fill(1);

describe('traceFilm', () => {
  it('reads the film from one end to the other', () => {
    const trace = traceFilm({ grid, wet_m, dry_m }, cover, [0.005, 0.015, 0.035, 0.015]);
    expect(trace.length_m).toBeCloseTo(0.03, 12);
    expect([...trace.wet_m]).toEqual([0, 1, 2, 3]);
    expect([...trace.dry_m]).toEqual([1, 1, 1, 1]);
  });

  it('runs backwards when the line does', () => {
    const trace = traceFilm({ grid, wet_m, dry_m }, cover, [0.035, 0.015, 0.005, 0.015]);
    expect([...trace.wet_m]).toEqual([3, 2, 1, 0]);
  });

  it('has no film beside the grid or in a hole', () => {
    const holed = cover.slice();
    holed[5] = 0;
    const trace = traceFilm({ grid, wet_m, dry_m }, holed, [-0.005, 0.015, 0.035, 0.015]);
    expect([...trace.wet_m]).toEqual([NaN, 0, NaN, 2, 3]);
  });

  it('is no finer than a screen', () => {
    const trace = traceFilm({ grid, wet_m, dry_m }, cover, [0, 0, 1000, 0]);
    expect(trace.wet_m.length).toBeLessThanOrEqual(800);
  });
});

describe('tracePath', () => {
  it('breaks where there is no film', () => {
    const path = tracePath(Float32Array.of(1, 2, NaN, 3), (i) => i, (value) => 10 * value);
    expect(path).toBe('M0.0,10.0L1.0,20.0M3.0,30.0');
  });
});
