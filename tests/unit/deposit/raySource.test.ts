import { describe, expect, it } from 'vitest';
import { fanScale, raySource } from '../../../sim/base/raySource.ts';
import { emptyDeposit } from '../../../sim/deposit/emptyDeposit.ts';
import { layPath, type DepositOptions } from '../../../sim/deposit/layPath.ts';
import { makeSpray } from '../../../sim/gun/makeSpray.ts';
import { pathOf, plainSetUp, strokeOf, strokesPath, wholeGrid } from '../../helpers/sprayCases.ts';

const panelGrid = wholeGrid(500, 400, 2e-3);
/** 300 mm wide at 200 mm, from rays that start 40 mm in front of the nozzle, or as far behind it. */
const ORIGINS_M = [0.04, -0.04];

function laid(origin_m: number, options: Partial<DepositOptions> & Pick<DepositOptions, 'path' | 'strokes'>) {
  const deposit = emptyDeposit(panelGrid.grid);
  const account = layPath({ deposit, panelGrid, spray: makeSpray(plainSetUp({ origin_m })), ...options });
  return { deposit, account };
}

/** Rows with film, in the middle column, times the cell: the stroke's full width. */
function width_m(wet_m: Float32Array): number {
  const { columns, rows, cellSize_m } = panelGrid.grid;
  let count = 0;
  for (let row = 0; row < rows; row++) if ((wet_m[row * columns + columns / 2] as number) > 0) count++;
  return count * cellSize_m;
}

describe('a fan whose rays do not start at the nozzle', () => {
  it.each(ORIGINS_M)('is as wide at every distance as a straight line through %f m says', (origin_m) => {
    for (const z of [0.15, 0.2, 0.25]) {
      const { path, strokes } = strokesPath([{ from: [0.3, 0.4], to: [0.7, 0.4] }], 0.3, { z });
      const { deposit } = laid(origin_m, { path, strokes });
      const line_m = (0.3 / (0.2 - origin_m)) * (z - origin_m);
      // A cell at either rim, whose middle may lie outside.
      expect(Math.abs(width_m(deposit.wet_m) - line_m)).toBeLessThan(2 * panelGrid.grid.cellSize_m);
      expect(fanScale(z, 0.2, origin_m) * 0.3).toBeCloseTo(line_m, 12);
    }
  });

  it.each(ORIGINS_M)('loses nothing when the gun leans (%f m)', (origin_m) => {
    const path = pathOf([{ t: 0, x: 0.45, y: 0.4, pitch: 0.3, yaw: -0.2 }, { t: 1, x: 0.5, y: 0.42, pitch: 0.2, yaw: 0.2 }]);
    const { account } = laid(origin_m, { path, strokes: [strokeOf(0, 0, 1)] });
    // 2 mm cells sum a smooth spot to 1e-6; the table's nodes are good to as much.
    expect(Math.abs(account.landed_m3 / account.sprayed_m3 - 1)).toBeLessThan(5e-6);
  });

  it.each(ORIGINS_M)('is laid alike in closed form and by stamps (%f m)', (origin_m) => {
    const { path, strokes } = strokesPath([{ from: [0.3, 0.4], to: [0.7, 0.4] }], 0.3, { z: 0.17 });
    const closed = laid(origin_m, { path, strokes, method: 'closed' }).deposit.wet_m;
    const stamped = laid(origin_m, { path, strokes, method: 'stamp', stepScale: 0.25 }).deposit.wet_m;
    const peak = closed.reduce((high, value) => Math.max(high, value), 0);
    const worst = closed.reduce((high, value, i) => Math.max(high, Math.abs(value - (stamped[i] as number))), 0);
    expect(worst / peak).toBeLessThan(1.7e-3);
  });

  it('aims where the nozzle aims: the spot’s middle does not move with the origin', () => {
    const pose = { x_m: 0.4, y_m: 0.3, z_m: 0.2, fan_rad: Math.PI / 2, pitch_rad: 0.2, yaw_rad: 0.3 };
    const source = raySource(pose, 0.05);
    const slant = (from: { readonly z_m: number }) => from.z_m / (Math.cos(0.2) * Math.cos(0.3));
    expect(slant(pose) - slant(source)).toBeCloseTo(0.05, 12);
    expect(raySource(pose, 0)).toBe(pose);
  });

  it('stays in front of the panel when the gun is nearer than the origin', () => {
    const source = raySource({ x_m: 0, y_m: 0, z_m: 0.02, fan_rad: 0, pitch_rad: 0, yaw_rad: 0 }, 0.04);
    expect(source.z_m).toBeCloseTo(0.005, 12);
    expect(fanScale(0.02, 0.2, 0.04)).toBeCloseTo(0.005 / 0.16, 12);
  });
});
