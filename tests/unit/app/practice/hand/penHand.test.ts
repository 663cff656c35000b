import { describe, expect, it } from 'vitest';
import { gunAxes } from '../../../../../sim/base/gunAxes.ts';
import { penTrigger, pitchOfLean, readLean, yawOfLean } from '../../../../../src/app/practice/hand/penHand.ts';

const DEGREE = Math.PI / 180;

function sprayOf(stance: Parameters<typeof readLean>[0], fan_rad: number): readonly number[] {
  const lean = { right: 0, up: 0 };
  readLean(stance, lean);
  const yaw_rad = yawOfLean(lean, fan_rad);
  return gunAxes(fan_rad, pitchOfLean(lean, fan_rad, yaw_rad), yaw_rad).spray;
}

describe('a pen as a gun', () => {
  it('sprays along the pen, from tail to tip, whatever the fan', () => {
    for (const fan_rad of [0, Math.PI / 2, 0.6, -2]) {
      const [x, y, z] = sprayOf({ tiltX: 30, tiltY: -20 }, fan_rad) as [number, number, number];
      // Tail to the right and up the screen: the spray goes to the left and down.
      expect(x / z).toBeCloseTo(Math.tan(30 * DEGREE), 12);
      expect(y / z).toBeCloseTo(Math.tan(20 * DEGREE), 12);
      expect(x).toBeLessThan(0);
      expect(y).toBeLessThan(0);
    }
  });

  it('is square when upright', () => {
    for (const stance of [{ tiltX: 0, tiltY: 0 }, { tiltX: 0, tiltY: 0, altitudeAngle: Math.PI / 2, azimuthAngle: 0 }]) {
      expect(sprayOf(stance, 0).map((part) => part + 0)).toEqual([0, 0, -1]);
    }
  });

  it('reads altitude and azimuth as the same lean', () => {
    // Tail to the right, 30° off upright.
    const tilts = sprayOf({ tiltX: 30, tiltY: 0 }, 0.3);
    const angles = sprayOf({ tiltX: 0, tiltY: 0, altitudeAngle: 60 * DEGREE, azimuthAngle: 0 }, 0.3);
    tilts.forEach((part, i) => expect(angles[i]).toBeCloseTo(part, 12));
    // Tail toward the person (down the screen): the spray goes up.
    expect(sprayOf({ tiltX: 0, tiltY: 0, altitudeAngle: 60 * DEGREE, azimuthAngle: 90 * DEGREE }, 0.3)[1]).toBeCloseTo(0.5, 12);
  });

  it('takes a pen that lies flat as 60° off upright', () => {
    for (const stance of [{ tiltX: 90, tiltY: 0 }, { tiltX: 0, tiltY: 0, altitudeAngle: 0, azimuthAngle: 0 }]) {
      expect(sprayOf(stance, 0)[0]).toBeCloseTo(-Math.sin(60 * DEGREE), 12);
    }
  });
});

describe('penTrigger', () => {
  it('opens with the pressure', () => {
    const cases = [[0, 0.5], [0.14, 0.5], [0.15, 0.5], [0.425, 0.75], [0.7, 1], [1, 1]] as const;
    for (const [pressure, trigger] of cases) expect(penTrigger(true, pressure)).toBeCloseTo(trigger, 12);
    expect(penTrigger(false, 0)).toBe(0);
  });
});
