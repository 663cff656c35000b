import { describe, expect, it } from 'vitest';
import { emptyDeposit } from '../../../sim/deposit/emptyDeposit.ts';
import { layPath, type DepositOptions } from '../../../sim/deposit/layPath.ts';
import { strokesAt, strokesAtPlaces } from '../../../sim/deposit/strokesAt.ts';
import { makeSpray } from '../../../sim/gun/makeSpray.ts';
import type { SetUp } from '../../../sim/gun/setUp.ts';
import { pathOf, plainSetUp, strokeOf, strokesPath, wholeGrid } from '../../helpers/sprayCases.ts';

const panelGrid = wholeGrid(400, 300, 2e-3);
const spray = makeSpray(plainSetUp());

function lay(options: Partial<DepositOptions> & Pick<DepositOptions, 'path' | 'strokes'>) {
  const deposit = emptyDeposit(panelGrid.grid);
  const account = layPath({ deposit, panelGrid, spray, ...options });
  return { deposit, account };
}

function worst(a: Float32Array, b: Float32Array): number {
  const peak = a.reduce((high, value) => Math.max(high, value), 0);
  return a.reduce((high, value, i) => Math.max(high, Math.abs(value - b[i]!)), 0) / peak;
}

const along = { from: [0.2003, 0.3004] as const, to: [0.6003, 0.3004] as const };
const slanted = { from: [0.25, 0.25] as const, to: [0.55, 0.35] as const };

describe('a stroke that lies wholly on the panel', () => {
  it('keeps its liquid: missed is nothing', () => {
    for (const line of [along, slanted]) {
      const fan = Math.atan2(line.to[1] - line.from[1], line.to[0] - line.from[0]) + Math.PI / 2;
      const { path, strokes } = strokesPath([line], 0.3, { fan });
      const { account } = lay({ path, strokes });
      expect(account.sprayed_m3).toBeCloseTo((200e-6 / 60) * (Math.hypot(line.to[0] - line.from[0], line.to[1] - line.from[1]) / 0.3), 12);
      expect(Math.abs(account.missed_m3) / account.sprayed_m3).toBeLessThan(1e-6);
    }
  });

  const families: SetUp['fan']['profile'][] = [
    { family: 'double-beta', beta1: 3, beta2: 3 },
    { family: 'double-beta', beta1: 2, beta2: 2.5 },
    { family: 'gaussian' },
    { family: 'triangle' },
    { family: 'cosine-squared' },
    { family: 'flat-top', taper_m: 0.05 },
  ];
  for (const profile of families) {
    for (const [name, line, turn] of [['with the grid', along, 0], ['slanted', slanted, 0], ['fan turned 35°', along, 0.6], ['backward', { from: along.to, to: along.from }, 0]] as const) {
      it(`is the same by closed form and by stamps: ${profile.family}, ${name}`, () => {
        const fan = Math.atan2(line.to[1] - line.from[1], line.to[0] - line.from[0]) + Math.PI / 2 + turn;
        const own = makeSpray(plainSetUp({ width_m: 0.15, depth_m: 0.06, profile }));
        const { path, strokes } = strokesPath([line], 0.3, { fan });
        const closed = lay({ path, strokes, spray: own, method: 'closed' });
        const coarse = lay({ path, strokes, spray: own, method: 'stamp', stepScale: 0.5 });
        const fine = lay({ path, strokes, spray: own, method: 'stamp', stepScale: 0.25 });
        const coarseError = worst(closed.deposit.wet_m, coarse.deposit.wet_m);
        const fineError = worst(closed.deposit.wet_m, fine.deposit.wet_m);
        // Stamps at b/24 against the exact sum: the flux has kinks at worst, so the midpoint rule is
        // off by less than (step/b)² = 1.7e-3 of the peak, and falls with the step down to the tables' 2e-5.
        expect(fineError).toBeLessThan(1.7e-3);
        expect(fineError).toBeLessThan(Math.max(0.6 * coarseError, 2e-5));
        expect(closed.deposit.passes.every((count, i) => count === fine.deposit.passes[i])).toBe(true);
      });
    }
  }
});

describe('strokesAt', () => {
  it('sums to the film at cell centres, over sweeps, stamps and bursts outside strokes', () => {
    const path = pathOf([
      { t: 0, x: 0.1, y: 0.2 },
      { t: 1, x: 0.5, y: 0.2 },
      { t: 1.5, x: 0.5, y: 0.28, z: 0.22, pitch: 0.2, yaw: -0.1 },
      { t: 2.5, x: 0.2, y: 0.31, z: 0.18, fan: 1.3, trigger: 0 },
      { t: 3, x: 0.3, y: 0.25 },
      { t: 3.1, x: 0.3, y: 0.25, trigger: 0 },
    ]);
    const strokes = [strokeOf(0, 0, 1), strokeOf(1, 1, 3)];
    const { deposit } = lay({ path, strokes });
    const peak = deposit.wet_m.reduce((high, value) => Math.max(high, value), 0);
    const cells = [40_200, 40_100, 56_200, 58_150, 50_150];
    const places_m = cells.map((cell) => [((cell % 400) + 0.5) * 2e-3, (Math.floor(cell / 400) + 0.5) * 2e-3] as const);
    const lists = strokesAtPlaces({ path, strokes, spray, places_m });
    cells.forEach((cell, i) => {
      const sum = lists[i]!.reduce((total, share) => total + share.wet_m, 0);
      expect(deposit.wet_m[cell]!).toBeGreaterThan(0);
      expect(Math.abs(sum - deposit.wet_m[cell]!)).toBeLessThan(1e-5 * peak);
    });
    expect(lists.flat().map((share) => share.stroke)).toContain(-1);
    expect(strokesAt({ path, strokes, spray, x_m: places_m[0]![0], y_m: places_m[0]![1] })).toEqual(lists[0]);
  });
});
