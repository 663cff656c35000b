import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gunAxes } from '../../../sim/base/gunAxes.ts';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { createRecordingReader } from '../../../sim/stroke/recordingReader.ts';
import { anglesOfQuaternion } from '../../../sim/stroke/trajectoryText.ts';

type Quaternion = [x: number, y: number, z: number, w: number];

function product([ax, ay, az, aw]: Quaternion, [bx, by, bz, bw]: Quaternion): Quaternion {
  return [
    aw * bx + ax * bw + ay * bz - az * by,
    aw * by - ax * bz + ay * bw + az * bx,
    aw * bz + ax * by - ay * bx + az * bw,
    aw * bw - ax * bx - ay * by - az * bz,
  ];
}

/** Rz(fan) · Ry(-yaw) · Rx(pitch), from half angles. */
function quaternionOfAngles(fan: number, pitch: number, yaw: number): Quaternion {
  const z: Quaternion = [0, 0, Math.sin(fan / 2), Math.cos(fan / 2)];
  const y: Quaternion = [0, Math.sin(-yaw / 2), 0, Math.cos(yaw / 2)];
  const x: Quaternion = [Math.sin(pitch / 2), 0, 0, Math.cos(pitch / 2)];
  return product(product(z, y), x);
}

function turned(q: Quaternion, [x, y, z]: [number, number, number]): number[] {
  const [qx, qy, qz, qw] = q;
  return product(product(q, [x, y, z, 0]), [-qx, -qy, -qz, qw]).slice(0, 3);
}

const angle = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });

describe('anglesOfQuaternion', () => {
  it('goes both ways', () => {
    fc.assert(fc.property(angle(3.1), angle(1.5), angle(1.5), (fan, pitch, yaw) => {
      const [f, p, y] = anglesOfQuaternion(...quaternionOfAngles(fan, pitch, yaw));
      // asin loses half the digits near a quarter turn: 1e-16 / cos 1.5 is 1.4e-15, kept loose by rounding in ten products.
      expect(f).toBeCloseTo(fan, 12);
      expect(p).toBeCloseTo(pitch, 12);
      expect(y).toBeCloseTo(yaw, 12);
    }));
  });

  it('turns the body axes into the gun axes: x long, y short, z against the spray', () => {
    fc.assert(fc.property(angle(3.1), angle(1.5), angle(1.5), (fan, pitch, yaw) => {
      const q = quaternionOfAngles(fan, pitch, yaw);
      const axes = gunAxes(fan, pitch, yaw);
      turned(q, [1, 0, 0]).forEach((value, i) => { expect(value).toBeCloseTo(axes.long[i]!, 12); });
      turned(q, [0, 1, 0]).forEach((value, i) => { expect(value).toBeCloseTo(axes.short[i]!, 12); });
      turned(q, [0, 0, -1]).forEach((value, i) => { expect(value).toBeCloseTo(axes.spray[i]!, 12); });
    }));
  });
});

describe('trajectory text', () => {
  const read = (text: string) => {
    const reader = createRecordingReader({ fileName: 'a.txt' });
    for (const character of text) reader.push(character);
    return reader.end();
  };

  it('is known by its remarks or its numbers, in metres and seconds', () => {
    const rows = '10.0 0.5 0.25 0.2 0 0 0.70710678 0.70710678\n10.1 0.6 0.25 0.2 0 0 0 1\n';
    for (const text of [rows, `# timestamp tx ty tz qx qy qz qw\n\n${rows}`, `timestamp tx ty tz qx qy qz qw\n${rows.replaceAll(' ', '\t')}`]) {
      const { path, warnings } = read(text);
      expect([...path.t_s]).toEqual([10, 10.1]);
      expect([...path.x_m]).toEqual([0.5, 0.6]);
      expect(path.fan_rad[0]).toBeCloseTo(Math.PI / 2, 12);
      expect(path.fan_rad[1]).toBe(0);
      expect([...path.trigger]).toEqual([1, 1]);
      expect(warnings.map(({ code }) => code)).toEqual(['defaults-used']);
    }
  });

  it('takes a ninth field as the trigger', () => {
    const { path, warnings } = read('0 0 0 0.2 0 0 0 1 off\n1 0 0 0.2 0 0 0 1 1\n');
    expect([...path.trigger]).toEqual([0, 1]);
    expect(warnings).toEqual([]);
  });

  it.each([
    ['too few fields', '0 0 0 0.2 0 0 0 1\n1 0 0 0.2 0 0 0\n', 'columns', 2],
    ['trigger in some rows', '# a\n0 0 0 0.2 0 0 0 1\n1 0 0 0.2 0 0 0 1 1\n', 'columns', 3],
    ['a quaternion of the wrong length', '0 0 0 0.2 0 0 0 1\n1 0 0 0.2 1 0 0 1\n', 'range', 2],
    ['a word', '0 0 0 0.2 0 0 0 1\n1 0 x 0.2 0 0 0 1\n', 'range', 2],
  ])('refuses %s', (_, text, code, row) => {
    expect(() => read(text)).toThrow(CrosscoatError);
    try {
      read(text);
    } catch (error) {
      expect(error).toMatchObject({ code, place: { row } });
    }
  });
});
