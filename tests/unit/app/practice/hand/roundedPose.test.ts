import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecordingReader } from '../../../../../sim/stroke/recordingReader.ts';
import { pathFrom, poseOfRow } from '../../../../../sim/stroke/path.ts';
import { writeRecording } from '../../../../../sim/stroke/writeRecording.ts';
import { roundedPose } from '../../../../../src/app/practice/hand/roundedPose.ts';

const among = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const pose = fc.record({
  t_s: among(0, 5000),
  x_m: among(-3, 3),
  y_m: among(-3, 3),
  z_m: among(0.01, 1.2),
  fan_rad: among(-7, 7),
  pitch_rad: among(-1.4, 1.4),
  yaw_rad: among(-1.4, 1.4),
  trigger: among(0, 1),
});
const DEGREE = Math.PI / 180;

describe('roundedPose', () => {
  it('has the bits that the written and read recording has', () => {
    fc.assert(
      fc.property(pose, (raw) => {
        const rounded = roundedPose(raw);
        const reader = createRecordingReader({ fileName: 'hand.csv' });
        for (const piece of writeRecording(pathFrom([rounded, { ...rounded, t_s: rounded.t_s + 1 }]))) reader.push(piece);
        const read = poseOfRow(reader.end().path, 0);
        expect(read).toEqual({ ...rounded, trigger: Math.fround(rounded.trigger) });
      }),
    );
  });

  it('moves nothing by more than half a unit, and nothing twice', () => {
    fc.assert(
      fc.property(pose, (raw) => {
        const rounded = roundedPose(raw);
        // Half a unit and the rounding of the arithmetic at these sizes.
        expect(Math.abs(rounded.x_m - raw.x_m)).toBeLessThanOrEqual(0.5e-6 + 1e-14);
        expect(Math.abs(rounded.fan_rad - raw.fan_rad)).toBeLessThanOrEqual(0.0005 * DEGREE + 1e-14);
        expect(Math.abs(rounded.trigger - raw.trigger)).toBeLessThanOrEqual(0.0005 + 1e-14);
        expect(roundedPose(rounded)).toEqual(rounded);
      }),
    );
  });

  it('has no minus before a zero', () => {
    expect(Object.is(roundedPose({ t_s: 0, x_m: -1e-9, y_m: 0, z_m: 1, fan_rad: 0, pitch_rad: -1e-9, yaw_rad: 0, trigger: 0 }).pitch_rad, 0)).toBe(true);
  });
});
