import { describe, expect, it } from 'vitest';
import { FLOATS_PER_MARK, InkLines } from '../../../src/canvas/inkLines.ts';
import { placeBoxes } from '../../../src/canvas/overlay.ts';
import { travelMarks } from '../../../src/canvas/strokeMarks.ts';
import { thinnedValues, thinning } from '../../../src/canvas/thinnedGrid.ts';
import { KIND_BIT, SELECTED_SHIFT, writeZoneMask } from '../../../src/canvas/zoneMask.ts';

describe('travelMarks', () => {
  it('sets marks evenly round a corner and points them along the travel', () => {
    // 3 m right, then 1 m up: four marks, half a metre in and a metre apart.
    const marks = travelMarks(Float64Array.of(0, 0, 3, 0, 3, 1), 1);
    expect(marks).toEqual([
      { x_m: 0.5, y_m: 0, dx: 1, dy: 0 },
      { x_m: 1.5, y_m: 0, dx: 1, dy: 0 },
      { x_m: 2.5, y_m: 0, dx: 1, dy: 0 },
      { x_m: 3, y_m: 0.5, dx: 0, dy: 1 },
    ]);
  });

  it('gives a short stroke one mark and a point none', () => {
    expect(travelMarks(Float64Array.of(0, 0, 0.1, 0), 1)).toHaveLength(1);
    expect(travelMarks(Float64Array.of(1, 1, 1, 1), 1)).toHaveLength(0);
  });
});

describe('InkLines', () => {
  it('closes a polygon and keeps its marks when it grows', () => {
    const lines = new InkLines();
    for (let i = 0; i < 100; i++) lines.disc(i, 0, 4, 'accent');
    lines.polyline(Float64Array.of(0, 0, 1, 0, 1, 1), true, 2, 'ink');
    expect(lines.count).toBe(103);
    const data = lines.data();
    expect(data[63 * FLOATS_PER_MARK]).toBe(63);
    expect([...data.slice(102 * FLOATS_PER_MARK, 102 * FLOATS_PER_MARK + 4)]).toEqual([1, 1, 0, 0]);
  });
});

describe('thinned grid', () => {
  it('is the grid itself when the GPU can hold it', () => {
    const values = new Float32Array(12);
    expect(thinnedValues(4, 3, values, thinning(4, 3, 4))).toBe(values);
  });

  it('keeps the middle cell of each block, and the last cells of a broken block', () => {
    const values = Float32Array.from({ length: 35 }, (_, i) => i);
    const thin = thinning(7, 5, 3);
    expect(thin).toEqual({ step: 3, columns: 3, rows: 2 });
    expect([...thinnedValues(7, 5, values, thin)]).toEqual([8, 11, 13, 29, 32, 34]);
  });
});

describe('zone mask', () => {
  it('holds every kind on a cell and marks the selected zone', () => {
    const mask = new Float32Array(4).fill(9);
    writeZoneMask([
      { key: 'a', kind: 'thin-lap', label: '', cells: Uint32Array.of(0, 1), at_m: [0, 0] },
      { key: 'b', kind: 'dry-spray', label: '', cells: Uint32Array.of(1, 2), at_m: [0, 0] },
    ], 'b', mask);
    const chosen = 8 + (8 << SELECTED_SHIFT);
    expect([...mask]).toEqual([2, 2 + chosen, chosen, 0]);
  });

  it('has a bit of its own for every kind, chosen or not, that a float holds exactly', () => {
    const kinds = Object.keys(KIND_BIT) as (keyof typeof KIND_BIT)[];
    const zones = kinds.map((kind) => ({ key: kind, kind, label: '', cells: Uint32Array.of(0), at_m: [0, 0] as const }));
    const all = new Float32Array(1);
    writeZoneMask(zones, null, all);
    expect(all[0]).toBe(2 ** kinds.length - 1);
    for (const kind of kinds) {
      const mask = new Float32Array(1);
      writeZoneMask(zones, kind, mask);
      expect(mask[0]).toBe((2 ** kinds.length - 1) + KIND_BIT[kind] * 2 ** SELECTED_SHIFT);
    }
  });
});

describe('placeBoxes', () => {
  it('takes the first free place, and none where all are taken', () => {
    const placed = placeBoxes([
      [[0, 0, 10, 10]],
      [[5, 5, 10, 10], [0, 20, 10, 10]],
      [[0, 25, 10, 10], [45, 0, 10, 10]],
    ], [[40, 0, 10, 10]]);
    expect(placed).toEqual([[0, 0, 10, 10], [0, 20, 10, 10], null]);
  });
});
