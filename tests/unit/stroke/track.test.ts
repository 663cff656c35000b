import { describe, expect, it } from 'vitest';
import { pathFrom, type Pose } from '../../../sim/stroke/path.ts';
import { smoothTrack } from '../../../sim/stroke/track.ts';

const pose = (t_s: number, x_m: number, extra: Partial<Pose> = {}): Pose => ({ t_s, x_m, y_m: 0.3, z_m: 0.2, fan_rad: Math.PI / 2, pitch_rad: 0, yaw_rad: 0, trigger: 1, ...extra });

describe('smoothTrack', () => {
  it.each([
    ['two rows', [0, 3]],
    ['uneven rows', [0, 0.013, 0.5, 0.51, 1.7, 3]],
    ['rows at 1000 Hz', Array.from({ length: 3001 }, (_, i) => i / 1000)],
  ])('is exact for even straight travel on %s, to the ends of the path', (_, times) => {
    const path = pathFrom(times.map((t) => pose(t, 0.1 + 0.4 * t)));
    for (const [from, to] of [[0, 3], [0.5, 2.2], [2.9, 3]] as const) {
      const track = smoothTrack(path, from, to);
      for (let i = 0; i < track.count; i++) {
        const t = track.start_s + i * track.step_s;
        expect(track.x_m[i]).toBeCloseTo(0.1 + 0.4 * t, 10);
        expect(track.vx_m_s[i]).toBeCloseTo(0.4, 9);
        expect(track.vy_m_s[i]).toBeCloseTo(0, 9);
      }
    }
  });

  it('follows the aim point, not the nozzle', () => {
    const yaw_rad = 0.2;
    const path = pathFrom([pose(0, 0, { yaw_rad, fan_rad: 0 }), pose(1, 0.4, { yaw_rad, fan_rad: 0 })]);
    const track = smoothTrack(path, 0, 1);
    expect(track.x_m[50]).toBeCloseTo(0.2 + 0.2 * Math.tan(yaw_rad), 10);
    expect(track.slant_m[50]).toBeCloseTo(0.2 / Math.cos(yaw_rad), 10);
    expect(track.tilt_rad[50]).toBeCloseTo(yaw_rad, 10);
  });
});
