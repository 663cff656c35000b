import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { emptyDeposit } from '../../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../../sim/deposit/layPath.ts';
import { makeSpray } from '../../../sim/gun/makeSpray.ts';
import { pathOf, plainSetUp, strokeOf, strokesPath, wholeGrid, type PathRow } from '../../helpers/sprayCases.ts';

const panelGrid = wholeGrid(300, 200, 2e-3);
const lossy = plainSetUp({ width_m: 0.2, depth_m: 0.05 }, {
  transfer: { efficiencyFraction: 0.6, atDistance_m: 0.2, decayLength_m: 0.5 },
  volumeSolidsFraction: 0.2,
  drops: { meanDiameter_m: 30e-6, spreadRatio: 2, solventSpeedRatio: 5.6, atViscosity_Pa_s: 0.05, atPressure_Pa: 55e3 },
});
const spray = makeSpray(lossy);

function lay(rows: readonly PathRow[], options: { until_s?: number; lag_s?: number } = {}) {
  const deposit = emptyDeposit(panelGrid.grid);
  const by = makeSpray({ ...lossy, triggerLag_s: options.lag_s ?? 0 });
  const account = layPath({ deposit, panelGrid, path: pathOf(rows), strokes: [], spray: by, ...(options.until_s === undefined ? {} : { until_s: options.until_s }) });
  return { deposit, account };
}
const sum = (values: Float32Array) => values.reduce((total, value) => total + value, 0) * 4e-6;

describe('the account of a stroke inside the panel', () => {
  const { deposit, account } = lay([{ t: 0, x: 0.1501, y: 0.2003 }, { t: 1, x: 0.4502, y: 0.2003, trigger: 0 }]);
  it('has fog by efficiency and flight by the solvent lost, and wet and solids to match', () => {
    const kept = (1 - 0.038 * 5.6) ** 1.5;
    const sprayed = lossy.fluidRate_m3_s;
    // The table is linear between whole millimetres and 200 mm is one of them; wet sums are in single precision.
    expect(account.sprayed_m3 / sprayed).toBeCloseTo(1, 12);
    expect(account.fog_m3 / sprayed).toBeCloseTo(0.4, 9);
    expect(account.flight_m3 / sprayed).toBeCloseTo(0.6 * 0.8 * (1 - kept), 9);
    expect(account.landed_m3 / sprayed).toBeCloseTo(0.6 * (0.2 + 0.8 * kept), 5);
    expect(sum(deposit.solids_m) / sprayed).toBeCloseTo(0.6 * 0.2, 5);
    expect(sum(deposit.arrivedDry_m) / sum(deposit.wet_m)).toBeCloseTo(spray.arrival.dryFraction[180]!, 5);
  });
});

describe('missed', () => {
  it('is what falls beside the panel and in its holes', () => {
    const half = { ...panelGrid, cover: panelGrid.cover.map((_, cell) => (Math.floor(cell / 300) < 100 ? 1 : 0)) };
    const { path, strokes } = strokesPath([{ from: [0.15, 0.2], to: [0.45, 0.2] }], 0.3);
    const account = layPath({ deposit: emptyDeposit(panelGrid.grid), panelGrid: half, path, strokes, spray });
    expect(account.missed_m3 / account.landed_m3).toBeCloseTo(1, 5);
  });
});

describe('time', () => {
  const rows = [{ t: 0, x: 0.15, y: 0.2 }, { t: 1, x: 0.45, y: 0.2, trigger: 0 }, { t: 2, x: 0.45, y: 0.3, trigger: 0 }];
  it('stops in mid-stroke at until_s: the film is that of the shorter stroke', () => {
    const cut = lay(rows, { until_s: 0.4 }).deposit;
    const short = lay([rows[0]!, { t: 0.4, x: 0.27, y: 0.2, trigger: 0 }]).deposit;
    const peak = Math.max(...short.wet_m);
    // Places computed by one formula and by another differ by rounding; single precision.
    cut.wet_m.forEach((film, i) => expect(Math.abs(film - short.wet_m[i]!)).toBeLessThan(1e-6 * peak));
    expect(lay(rows, { until_s: 0 }).account.sprayed_m3).toBe(0);
  });
  it('lets fluid lag the trigger both ways, on into the travel after the stroke', () => {
    const straight = [{ t: 0, x: 0.1, y: 0.2 }, { t: 0.8, x: 0.34, y: 0.2, trigger: 0 }, { t: 1.2, x: 0.46, y: 0.2, trigger: 0 }];
    const lagged = lay(straight, { lag_s: 0.1 });
    const moved = lay([{ t: 0, x: 0.13, y: 0.2 }, { t: 0.8, x: 0.37, y: 0.2, trigger: 0 }]);
    const peak = Math.max(...moved.deposit.wet_m);
    expect(lagged.account.sprayed_m3).toBeCloseTo(moved.account.sprayed_m3, 15);
    lagged.deposit.wet_m.forEach((film, i) => expect(Math.abs(film - moved.deposit.wet_m[i]!)).toBeLessThan(1e-6 * peak));
  });
  it('opens in proportion between air only and full', () => {
    const share = (trigger: number) => lay([{ ...rows[0]!, trigger }, rows[1]!]).account.sprayed_m3 / lossy.fluidRate_m3_s;
    const shares = [0, 0.5, 0.75, 1].map(share);
    [0, 0, 0.5, 1].forEach((value, i) => expect(shares[i]!).toBeCloseTo(value, 12));
  });
});

describe('passes', () => {
  it('counts a stroke once, however often its gun comes back, over the full fan width', () => {
    const rows = [{ t: 0, x: 0.15, y: 0.2 }, { t: 1, x: 0.45, y: 0.2 }, { t: 2, x: 0.15, y: 0.21 }, { t: 3, x: 0.15, y: 0.21, trigger: 0 }];
    const count = (strokes: ReturnType<typeof strokeOf>[]) => {
      const deposit = emptyDeposit(panelGrid.grid);
      layPath({ deposit, panelGrid, path: pathOf(rows), strokes, spray });
      return (x_m: number, y_m: number) => deposit.passes[Math.floor(y_m / 2e-3) * 300 + Math.floor(x_m / 2e-3)];
    };
    const one = count([strokeOf(0, 0, 3)]);
    const two = count([strokeOf(0, 0, 1), strokeOf(1, 1, 3)]);
    expect([one(0.3, 0.2), two(0.3, 0.2)]).toEqual([1, 2]);
    // The band is 200 mm wide: 0.1 to 0.3 for the first, 10 mm higher at its end for the second.
    expect([two(0.44, 0.101), two(0.44, 0.097), two(0.17, 0.307)]).toEqual([2, 0, 1]);
    expect(count([])(0.3, 0.2)).toBe(0);
  });
});

describe('bands of a cross coat', () => {
  it('leave nothing where no stroke has been, and no negative film', () => {
    const { path, strokes } = strokesPath([
      { from: [0.1, 0.1], to: [0.3, 0.1] }, { from: [0.12, 0.13], to: [0.28, 0.13] },
    ], 0.3);
    const deposit = emptyDeposit(panelGrid.grid);
    layPath({ deposit, panelGrid, path, strokes, spray });
    const upright = strokesPath([{ from: [0.2, 0.02], to: [0.2, 0.18] }], 0.3, { fan: 0 });
    layPath({ deposit, panelGrid, ...upright, spray });
    expect(Math.min(...deposit.wet_m)).toBe(0);
    deposit.wet_m.forEach((film, cell) => {
      if (cell % 300 > 165 || Math.floor(cell / 300) > 120) expect(film).toBe(0);
    });
  });
});

describe('refusals', () => {
  const code = (work: () => unknown) => {
    try {
      work();
    } catch (error) {
      return error instanceof CrosscoatError ? error.code : error;
    }
    return 'nothing';
  };
  it('names a gun behind the panel and numbers that are none', () => {
    expect(code(() => lay([{ t: 0, x: 0, y: 0, z: 0 }, { t: 1, x: 0, y: 0 }]))).toBe('range');
    expect(code(() => lay([{ t: 0, x: NaN, y: 0 }, { t: 1, x: 0, y: 0 }]))).toBe('range');
  });
  it('stops when asked', () => {
    const rows = Array.from({ length: 9000 }, (_, i) => ({ t: i, x: 0.3, y: 0.2 + 1e-4 * Math.sin(i), z: 0.2 + 1e-3 * Math.sin(3 * i) }));
    const stop = () => layPath({ deposit: emptyDeposit(panelGrid.grid), panelGrid, path: pathOf(rows), strokes: [], spray, shouldStop: () => true });
    expect(code(stop)).toBe('cancelled');
  });
});
