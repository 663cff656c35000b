import { describe, expect, it } from 'vitest';
import { zoneRim } from '../../../sim/picture/zoneRim.ts';

const GRID = { columns: 5, rows: 5, cellSize_m: 1 };

/** Signed area by the shoelace formula, positive counter-clockwise. */
function area(ring: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    sum += (ring[i] as number) * (ring[j + 1] as number) - (ring[j] as number) * (ring[i + 1] as number);
  }
  return sum / 2;
}

const cellsAt = (...places: [number, number][]) => Uint32Array.from(places, ([x, y]) => y * 5 + x);

describe('zoneRim', () => {
  it('traces one cell by its four corners, counter-clockwise', () => {
    const [ring] = zoneRim(cellsAt([1, 2]), GRID);
    expect(area(ring as Float64Array)).toBe(1);
    expect(ring).toHaveLength(8);
    expect(Math.min(...(ring as Float64Array))).toBe(1);
  });

  it('keeps corners only', () => {
    const rings = zoneRim(cellsAt([0, 0], [1, 0], [2, 0], [2, 1]), GRID);
    expect(rings).toHaveLength(1);
    expect(rings[0]).toHaveLength(12);
    expect(area(rings[0] as Float64Array)).toBe(4);
  });

  it('gives a hole its own clockwise ring', () => {
    const ringOfEight = cellsAt([0, 0], [1, 0], [2, 0], [0, 1], [2, 1], [0, 2], [1, 2], [2, 2]);
    const areas = zoneRim(ringOfEight, GRID).map(area).sort((a, b) => a - b);
    expect(areas).toEqual([-1, 9]);
  });

  it('parts cells that touch at a corner only', () => {
    for (const pair of [cellsAt([1, 1], [2, 2]), cellsAt([2, 1], [1, 2])]) {
      expect(zoneRim(pair, GRID).map(area)).toEqual([1, 1]);
    }
  });

  it('encloses exactly the cells, whatever their shape', () => {
    for (let pattern = 1; pattern < 4096; pattern++) {
      const cells = Uint32Array.from(Array.from({ length: 12 }, (_, i) => i).filter((i) => (pattern >> i) & 1));
      const rings = zoneRim(cells, { columns: 4, rows: 3, cellSize_m: 1 });
      expect(rings.reduce((sum, ring) => sum + area(ring), 0)).toBe(cells.length);
    }
  });

  it('has nothing to trace for no cells', () => {
    expect(zoneRim(new Uint32Array(0), GRID)).toEqual([]);
  });
});
