import type { PNG } from 'pngjs';
import { colourDistance, pixel } from './openCanvas.ts';

export interface HatchMeasures {
  /** 1 when all edges run one way, 0 when none does. */
  readonly coherence: number;
  /** Direction of the lines, from -90 to 90, positive rising to the right. */
  readonly direction_deg: number;
  /** Drawn share of the row with the least drawn on it. */
  readonly emptiestRow: number;
  /** Drawn share of the row with the most drawn on it. */
  readonly fullestRow: number;
}

/** What a hatching adds to a patch of the map, from the pictures without and with it. */
export function hatchMeasures(
  bare: PNG, hatched: PNG, left: number, top: number, right: number, bottom: number,
): HatchMeasures {
  const width = right - left;
  const height = bottom - top;
  const drawn = (column: number, row: number): number =>
    colourDistance(pixel(bare, left + column, top + row), pixel(hatched, left + column, top + row));
  let xx = 0;
  let yy = 0;
  let xy = 0;
  let emptiest = 1;
  let fullest = 0;
  for (let row = 1; row < height - 1; row++) {
    let filled = 0;
    for (let column = 1; column < width - 1; column++) {
      const dx = drawn(column + 1, row) - drawn(column - 1, row);
      const dy = drawn(column, row - 1) - drawn(column, row + 1);
      xx += dx * dx;
      yy += dy * dy;
      xy += dx * dy;
      if (drawn(column, row) > 25) filled++;
    }
    emptiest = Math.min(emptiest, filled / (width - 2));
    fullest = Math.max(fullest, filled / (width - 2));
  }
  const gradient_deg = (Math.atan2(2 * xy, xx - yy) * 90) / Math.PI;
  return {
    coherence: Math.hypot(xx - yy, 2 * xy) / (xx + yy),
    direction_deg: gradient_deg > 0 ? gradient_deg - 90 : gradient_deg + 90,
    emptiestRow: emptiest,
    fullestRow: fullest,
  };
}
