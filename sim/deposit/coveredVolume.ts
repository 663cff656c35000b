import type { PanelGrid } from '../panel/panelGrid.ts';

/** Film times cover summed over the panel, m³: what lies on it. Row sums in double precision. */
export function coveredVolume_m3(film_m: Float32Array, panelGrid: PanelGrid): number {
  const { grid, cover } = panelGrid;
  let sum_m = 0;
  for (let row = 0; row < grid.rows; row++) {
    const end = (row + 1) * grid.columns;
    let rowSum_m = 0;
    for (let cell = row * grid.columns; cell < end; cell++) rowSum_m += (film_m[cell] as number) * (cover[cell] as number);
    sum_m += rowSum_m;
  }
  return sum_m * grid.cellSize_m * grid.cellSize_m;
}
