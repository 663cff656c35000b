import { describe, expect, it } from 'vitest';
import { stampTable } from '../../../sim/deposit/stampTable.ts';

describe('stampTable', () => {
  const table = Float32Array.from({ length: 7 * 3 }, (_, i) => i + 1);

  it('lays the same as one cell at a time, also over every edge and beyond', () => {
    for (const [column, row] of [[2, 1], [-3, -1], [8, 4], [-7, 0], [12, 0], [0, 6], [0, -3]] as const) {
      const out = new Float32Array(12 * 6);
      stampTable(out, 12, 6, table, 7, 3, column, row);
      const plain = new Float32Array(12 * 6);
      for (let r = 0; r < 3; r++) {
        for (let c = 0; c < 7; c++) {
          const [x, y] = [column + c, row + r];
          if (x >= 0 && x < 12 && y >= 0 && y < 6) plain[y * 12 + x] = table[r * 7 + c]!;
        }
      }
      expect(out).toEqual(plain);
    }
  });
});
