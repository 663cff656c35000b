import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gunAxes, type Vector } from '../../../../../sim/base/gunAxes.ts';
import { aimOf } from '../../../../../sim/stroke/path.ts';
import { swingWithArm, type DraftPose } from '../../../../../src/app/practice/hand/wristPose.ts';

const ARM = { pivotX_m: 0.35, armLength_m: 0.6 };
const DISTANCE_M = 0.2;
const REACH_M = ARM.armLength_m + DISTANCE_M;
const UPRIGHT = Math.PI / 2;

function swung(x_m: number, fan_rad: number, pitch_rad = 0, yaw_rad = 0): DraftPose {
  const draft = { t_s: 0, x_m, y_m: 0.4, z_m: DISTANCE_M, fan_rad, pitch_rad, yaw_rad, trigger: 1 };
  swingWithArm(draft, ARM);
  return draft;
}

describe('swingWithArm', () => {
  for (const [name, fan_rad] of [['upright', UPRIGHT], ['flat', 0], ['slanted', 0.7]] as const) {
    it(`keeps the gun radial with the fan ${name}`, () => {
      for (const swing_rad of [-1.2, -0.5, -0.01, 0, 0.3, 0.9, 1.2]) {
        const pose = swung(ARM.pivotX_m + swing_rad * REACH_M, fan_rad);
        const aim = aimOf(pose);
        expect(pose.x_m).toBeCloseTo(ARM.pivotX_m + ARM.armLength_m * Math.sin(swing_rad), 12);
        expect(pose.z_m).toBeCloseTo(REACH_M - ARM.armLength_m * Math.cos(swing_rad), 12);
        expect(Math.abs(aim.x_m - (ARM.pivotX_m + REACH_M * Math.tan(swing_rad)))).toBeLessThan(1e-9);
        expect(Math.abs(aim.y_m - 0.4)).toBeLessThan(1e-9);
        expect(Math.abs(aim.slant_m - (REACH_M / Math.cos(swing_rad) - ARM.armLength_m))).toBeLessThan(1e-9);
      }
    });
  }

  it('is a pitch for the upright fan and a yaw for the flat one', () => {
    const x_m = ARM.pivotX_m + 0.4 * REACH_M;
    expect(swung(x_m, UPRIGHT).pitch_rad).toBeCloseTo(-0.4, 12);
    expect(swung(x_m, UPRIGHT).yaw_rad).toBeCloseTo(0, 12);
    expect(swung(x_m, 0).yaw_rad).toBeCloseTo(0.4, 12);
    expect(swung(x_m, 0).pitch_rad).toBeCloseTo(0, 12);
  });

  it('is undone by the wrist: a counter-tilt as large as the swing stands square', () => {
    const x_m = ARM.pivotX_m + 0.4 * REACH_M;
    expect(aimOf(swung(x_m, UPRIGHT, 0.4)).tilt_rad).toBeLessThan(1e-7); // acos near 1 loses half the digits
    expect(aimOf(swung(x_m, 0, 0, -0.4)).tilt_rad).toBeLessThan(1e-7);
  });

  it('turns the whole gun about the upright, however it was tilted', () => {
    const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
    fc.assert(
      fc.property(angle(0.6), angle(3), angle(0.5), angle(0.5), (swing_rad, fan_rad, pitch_rad, yaw_rad) => {
        const turn = ([x, y, z]: Vector): number[] => [x * Math.cos(swing_rad) - z * Math.sin(swing_rad), y, x * Math.sin(swing_rad) + z * Math.cos(swing_rad)];
        const before = gunAxes(fan_rad, pitch_rad, yaw_rad);
        const pose = swung(ARM.pivotX_m + swing_rad * REACH_M, fan_rad, pitch_rad, yaw_rad);
        const after = gunAxes(pose.fan_rad, pose.pitch_rad, pose.yaw_rad);
        for (const axis of ['long', 'short', 'spray'] as const) {
          turn(before[axis]).forEach((part, i) => expect(after[axis][i]).toBeCloseTo(part, 9));
        }
      }),
    );
  });

  it('stops at 75° however far the pointer goes', () => {
    expect(swung(50, UPRIGHT).pitch_rad).toBeCloseTo((-75 * Math.PI) / 180, 12);
  });
});
