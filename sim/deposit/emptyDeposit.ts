import { cellCount, type Grid } from '../base/grid.ts';
import type { Deposit } from './deposit.ts';

/** A grid on which nothing has landed yet. */
export function emptyDeposit(grid: Grid): Deposit {
  const cells = cellCount(grid);
  return {
    grid,
    wet_m: new Float32Array(cells),
    solids_m: new Float32Array(cells),
    arrivedDry_m: new Float32Array(cells),
    passes: new Uint16Array(cells),
  };
}
