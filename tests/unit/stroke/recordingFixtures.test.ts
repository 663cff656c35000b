import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createRecordingReader } from '../../../sim/stroke/recordingReader.ts';

function readFixture(name: string) {
  const reader = createRecordingReader({ fileName: name });
  reader.push(readFileSync(new URL(`../../fixtures/recordings/${name}`, import.meta.url), 'utf8'));
  return reader.end();
}

describe('recorded files as people have them', () => {
  it('inches and milliseconds, quotes, CRLF, a byte-order mark and a remark column', () => {
    const { path, warnings } = readFixture('inches-quoted-crlf-bom.csv');
    expect([...path.t_s]).toEqual([0, 0.1, 0.2, 0.3].map((t) => expect.closeTo(t, 12) as unknown));
    expect([...path.x_m]).toEqual([0, 1.2, 2.4, 3.6].map((x) => expect.closeTo(x * 0.0254, 12) as unknown));
    expect([...path.trigger]).toEqual([0, 1, 1, 0]);
    expect(warnings.map(({ code }) => code)).toEqual(['defaults-used', 'column-ignored']);
  });

  it('trajectory text with the clock\'s own epoch; a quaternion and its negative are one rotation', () => {
    const { path } = readFixture('epoch-times.txt');
    expect(path.count).toBe(4);
    // Epoch seconds in a double resolve 0.24 µs.
    expect(path.t_s[1]! - path.t_s[0]!).toBeCloseTo(0.05, 6);
    for (const fan of path.fan_rad) expect(fan).toBeCloseTo(Math.PI / 2, 12);
  });

  it('semicolons are refused with the reason', () => {
    expect(() => readFixture('semicolons.csv')).toThrow('the fields must be parted by commas');
  });
});
