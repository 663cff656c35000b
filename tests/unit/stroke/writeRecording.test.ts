import { describe, expect, it } from 'vitest';
import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import { createRecordingReader } from '../../../sim/stroke/recordingReader.ts';
import { PathBuilder } from '../../../sim/stroke/pathBuilder.ts';
import { recordingRows, writeRecording } from '../../../sim/stroke/writeRecording.ts';
import { rectangle } from './panels.ts';

const { path } = planStrokes(
  rectangle(1.2, 3),
  { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0.3, order: 'serpentine', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: true },
  0.2,
  0.05,
);

describe('writeRecording', () => {
  it('reads back to the last digit printed, a plan with no gap taken for a loss', () => {
    const text = [...writeRecording(path)].join('');
    const reader = createRecordingReader({ fileName: 'plan.csv' });
    reader.push(text);
    const { path: again, warnings } = reader.end();
    expect(warnings).toEqual([]);
    expect(again.count).toBe(path.count);
    for (let i = 0; i < path.count; i++) {
      // Half of the last digit, and as much rounding as a double carries.
      expect(Math.abs(again.t_s[i]! - path.t_s[i]!)).toBeLessThanOrEqual(0.5e-6 + 1e-12);
      expect(Math.abs(again.x_m[i]! - path.x_m[i]!)).toBeLessThanOrEqual(0.5e-6 + 1e-12);
      expect(Math.abs(again.y_m[i]! - path.y_m[i]!)).toBeLessThanOrEqual(0.5e-6 + 1e-12);
      expect(Math.abs(again.fan_rad[i]! - path.fan_rad[i]!)).toBeLessThanOrEqual(0.9e-5);
      expect(again.trigger[i]).toBe(path.trigger[i]);
    }
    expect([...writeRecording(again)].join('')).toBe(text);
  });

  it('of its first rows goes on with the rows of the rest', () => {
    const rows = new PathBuilder();
    for (let i = 0; i < path.count; i++) rows.addRow(path.t_s[i]!, path.x_m[i]!, path.y_m[i]!, path.z_m[i]!, path.fan_rad[i]!, path.pitch_rad[i]!, path.yaw_rad[i]!, path.trigger[i]!);
    const whole = [...writeRecording(rows.build())].join('');
    for (const cut of [0, 1, rows.count - 1, rows.count]) {
      const first = new PathBuilder();
      for (let i = 0; i < cut; i++) first.addRow(path.t_s[i]!, path.x_m[i]!, path.y_m[i]!, path.z_m[i]!, path.fan_rad[i]!, path.pitch_rad[i]!, path.yaw_rad[i]!, path.trigger[i]!);
      expect([...writeRecording(first.build())].join('') + recordingRows(rows.rowsFrom(cut)), `cut at ${cut}`).toBe(whole);
    }
  });

  it('comes in pieces', () => {
    const long = { ...path, count: 10_000, ...Object.fromEntries((['t_s', 'x_m', 'y_m', 'z_m', 'fan_rad', 'pitch_rad', 'yaw_rad'] as const).map((key) => [key, Float64Array.from({ length: 10_000 }, (_, i) => i * 1e-3)])), trigger: new Float32Array(10_000) };
    const pieces = [...writeRecording(long)];
    expect(pieces.length).toBe(3);
    expect(pieces.join('').split('\n').length).toBe(10_002);
  });
});
