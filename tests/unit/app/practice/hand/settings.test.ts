import { describe, expect, it } from 'vitest';
import { aimOf } from '../../../../../sim/stroke/path.ts';
import { eventOf, HandRig, SETTINGS } from './handRig.ts';

describe('settings', () => {
  it('take hold with the next frame; the hand’s distance stays unless another is meant', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0, { clientX: 500, clientY: 300 });
    rig.root.dispatchEvent(eventOf('wheel', 1, { deltaY: -100, deltaX: 0, deltaMode: 0, ctrlKey: false }));
    const settings = { ...SETTINGS, fanTurned: true, pivotX_m: 0.1 };
    rig.hand.setSettings(settings);
    expect(rig.run(3, 3)).toBe(1);
    expect([rig.last.fan_rad, Math.round(rig.last.z_m * 1000)]).toEqual([0, 210]);
    rig.hand.setSettings({ ...settings, mode: 'wrist', meantDistance_m: 0.25 });
    rig.run(5, 5);
    const swing_rad = 0.4 / 0.85;
    expect(aimOf(rig.last).x_m).toBeCloseTo(0.1 + 0.85 * Math.tan(swing_rad), 4);
    expect(rig.last.yaw_rad).toBeCloseTo(swing_rad, 4);
  });

  it('let the distance wander by no more than was asked, the same for the same seed', () => {
    const distances = (seed: number): number[] => {
      const rig = new HandRig({ wander: { amount_m: 0.03, seed } });
      rig.pointer('pointermove', 0);
      rig.run(20, 20_000, 20);
      return rig.rows.map((row) => row.z_m);
    };
    const first = distances(7);
    expect(first).toHaveLength(1001);
    expect(distances(7)).toEqual(first);
    expect(distances(8)).not.toEqual(first);
    const off = first.map((z_m) => Math.abs(z_m - 0.2));
    expect(Math.max(...off)).toBeLessThanOrEqual(0.03 + 1e-6);
    expect(Math.max(...off)).toBeGreaterThan(0.01);
    // Smooth: 20 ms are 0.0154 of 1.3 s, the steepest slope of 200 seeds was 6.45, so a step is below 0.0154 × 7 × 30 mm.
    for (let i = 1; i < first.length; i++) expect(Math.abs(first[i]! - first[i - 1]!)).toBeLessThan(0.00324);
  });
});
