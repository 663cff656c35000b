import { describe, expect, it } from 'vitest';
import { emptyDeposit } from '../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../sim/deposit/layPath.ts';
import { makeSpray } from '../../sim/gun/makeSpray.ts';
import { pathOf, plainSetUp, strokesPath, wholeGrid } from '../helpers/sprayCases.ts';

/** Slope of log error against log step between neighbours. */
function orders(errors: readonly number[]): number[] {
  return errors.slice(1).map((error, i) => Math.log2(errors[i]! / error));
}

describe('halving the stamp step', () => {
  /** Inside a long stroke, worst cell against the closed form, of the peak. */
  function insideError(beta2: number, stepScale: number): number {
    const panelGrid = wholeGrid(500, 9, 1e-3);
    const spray = makeSpray(plainSetUp({ width_m: 0.25, depth_m: 0.0617, profile: { family: 'double-beta', beta1: 3, beta2 } }));
    // A small lean to the rows keeps the stamps off whole-cell places, so that every phase occurs.
    const lean = 0.0031;
    const { path, strokes } = strokesPath([{ from: [-0.1, 0.0043 - 0.1 * lean], to: [0.6, 0.0043 + 0.6 * lean] }], 0.3, { fan: Math.PI / 2 + Math.atan(lean) });
    const [closed, stamped] = (['closed', 'stamp'] as const).map((method) => {
      const deposit = emptyDeposit(panelGrid.grid);
      layPath({ deposit, panelGrid, path, strokes, spray, method, stepScale });
      return deposit.wet_m;
    });
    const peak = Math.max(...closed!);
    return closed!.reduce((high, film, i) => Math.max(high, Math.abs(film - stamped![i]!)), 0) / peak;
  }
  // Sums of (1-t²)^(β2-1) at even places converge as step^β2: its Fourier transform falls as k^-β2.
  it.each([[1.5], [2], [2.5]])('gives order β2 = %f inside a stroke', (beta2) => {
    const errors = [2, 1, 0.5].map((scale) => insideError(beta2, scale));
    const measured = orders(errors);
    console.log(`β2 ${beta2}: errors ${errors.map((error) => error.toExponential(2)).join(', ')}, orders ${measured.map((order) => order.toFixed(2)).join(', ')}`);
    // The steps fit the travel to within a stamp in 70, and phases are sampled: a quarter of an order.
    for (const order of measured) expect(Math.abs(order - beta2)).toBeLessThan(0.25);
    expect(errors[2]!).toBeLessThan(0.02);
  });

  it('gives second order at a stroke\'s ends', () => {
    const panelGrid = wholeGrid(300, 60, 1e-3);
    const spray = makeSpray(plainSetUp({ width_m: 0.05, depth_m: 0.04 }));
    const { path, strokes } = strokesPath([{ from: [0.0503, 0.0302], to: [0.2517, 0.0317] }], 0.3);
    const lay = (method: 'closed' | 'stamp', stepScale: number) => {
      const deposit = emptyDeposit(panelGrid.grid);
      layPath({ deposit, panelGrid, path, strokes, spray, method, stepScale });
      return deposit.wet_m;
    };
    const closed = lay('closed', 1);
    const peak = Math.max(...closed);
    const errors = [2, 1, 0.5].map((scale) => {
      const stamped = lay('stamp', scale);
      return closed.reduce((high, film, i) => Math.max(high, Math.abs(film - stamped[i]!)), 0) / peak;
    });
    const measured = orders(errors);
    console.log(`ends: errors ${errors.map((error) => error.toExponential(2)).join(', ')}, orders ${measured.map((order) => order.toFixed(2)).join(', ')}`);
    for (const order of measured) expect(order).toBeGreaterThan(1.75);
  });
});

describe('halving the cell', () => {
  /** Share of a tilted burst that the cells' sum misses. */
  function lostShare(cell_m: number, beta: number, i: number): number {
    const side = Math.round(0.36 / cell_m);
    const panelGrid = wholeGrid(side, side, cell_m);
    const deposit = emptyDeposit(panelGrid.grid);
    const spray = makeSpray(plainSetUp({ width_m: 0.2, depth_m: 0.2, profile: { family: 'double-beta', beta1: beta, beta2: beta } }));
    const tilt = 0.4;
    const pose = { x: 0.18 + ((i * 0.7548777) % 1) * cell_m - 0.2 * Math.sin(tilt), y: 0.18 + ((i * 0.5698403) % 1) * cell_m, z: 0.2 * Math.cos(tilt), fan: 0, yaw: tilt };
    const account = layPath({ deposit, panelGrid, path: pathOf([{ t: 0, ...pose }, { t: 1, ...pose }]), strokes: [], spray });
    return account.missed_m3 / account.sprayed_m3;
  }
  it('of a tilted burst falls faster than second order, down to the footprint\'s sampling', () => {
    // Root mean square over places within a cell: the error of one place changes sign with its phase.
    const errors = [16e-3, 8e-3, 4e-3].map((cell_m) => {
      const shares = Array.from({ length: 100 }, (_, i) => lostShare(cell_m, 2, i));
      return Math.sqrt(shares.reduce((sum, share) => sum + share * share, 0) / shares.length);
    });
    const measured = orders(errors);
    console.log(`cells: errors ${errors.map((error) => error.toExponential(2)).join(', ')}, orders ${measured.map((order) => order.toFixed(2)).join(', ')}`);
    // A disc with flux (1-r²)^(β-1) has a Fourier transform that falls as k^-(β+½): order 2.5 for β = 2.
    for (const order of measured) expect(Math.abs(order - 2.5)).toBeLessThan(0.5);
  });
});
