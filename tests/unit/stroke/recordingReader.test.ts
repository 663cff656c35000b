import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { createRecordingReader, type Recording } from '../../../sim/stroke/recordingReader.ts';
import { RecordingRows } from '../../../sim/stroke/recordingRows.ts';

function read(text: string, cut = text.length): Recording {
  const reader = createRecordingReader({ fileName: 'a.csv' });
  for (let i = 0; i < text.length; i += cut) reader.push(text.slice(i, i + cut));
  return reader.end();
}

/** The error that reading `text` gives. */
function refusal(text: string): CrosscoatError {
  try {
    read(text);
  } catch (error) {
    if (error instanceof CrosscoatError) return error;
    throw error;
  }
  throw new Error('was read');
}

const HEADER = 't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n';
const GOOD = `${HEADER}0,100,50,200,90,1,-2,0\n0.01,103,50,201,90,1,-2,spray\n0.02,106,50,202,91,1,-2,air\n`;

describe('createRecordingReader, CSV', () => {
  it('reads the columns into SI', () => {
    const { path, warnings } = read(GOOD);
    expect(warnings).toEqual([]);
    expect(path.count).toBe(3);
    expect([...path.t_s]).toEqual([0, 0.01, 0.02]);
    expect([...path.x_m]).toEqual([100, 103, 106].map((x) => x * 0.001));
    expect([...path.z_m]).toEqual([200, 201, 202].map((z) => z * 0.001));
    expect(path.yaw_rad[2]).toBeCloseTo((-2 * Math.PI) / 180, 15);
    expect([...path.trigger]).toEqual([0, 1, 0.5]);
  });

  it('gives the same path wherever the text is cut', () => {
    const quoted = GOOD.replaceAll('\n', '\r\n').replace('100,', '"100",').replace('t_s', '"t_s"');
    for (let cut = 1; cut < 40; cut++) expect(read(quoted, cut).path).toEqual(read(GOOD).path);
    expect(read(`\ufeff${GOOD}`, 1).path).toEqual(read(GOOD).path);
    expect(read(GOOD.replaceAll('\n', '\r'), 7).path).toEqual(read(GOOD).path);
    expect(read(GOOD.trimEnd(), 5).path).toEqual(read(GOOD).path);
  });

  it.each([
    ['t_ms,x_cm,y_m', '0,10,0.1', [0, 0.1, 0.1]],
    ['t_us,x_in,y_ft', '0,10,1', [0, 0.254, 0.3048]],
    ['t_min,x_mil,y_mm', '0,1000,25', [0, 0.0254, 0.025]],
  ])('understands units %s', (header, row, expected) => {
    const { path } = read(`${header}\n${row}\n1,0,0\n`);
    [path.t_s[0], path.x_m[0], path.y_m[0]].forEach((value, i) => { expect(value).toBeCloseTo(expected[i]!, 15); });
    expect(path.t_s[1]).toBeCloseTo({ t_ms: 1e-3, t_us: 1e-6, t_min: 60 }[header.split(',')[0]!]!, 15);
  });

  it('fills missing columns with the stated defaults and says so', () => {
    const { path, warnings, columns } = read('t_s,x_mm,y_mm\n0,0,0\n1,1,1\n');
    expect([path.z_m[0], path.fan_rad[0], path.pitch_rad[0], path.yaw_rad[0], path.trigger[0]]).toEqual([0.2, Math.PI / 2, 0, 0, 1]);
    expect(warnings.map(({ code }) => code)).toEqual(['defaults-used']);
    expect(warnings[0]!.text).toContain('z = 200 mm');
    expect(columns.filter(({ name }) => name === null).map(({ quantity }) => quantity)).toEqual(['z', 'fan', 'pitch', 'yaw', 'trigger']);
  });

  it('ignores columns that mean nothing here, with a warning', () => {
    const { warnings, path } = read('t_s,temperature_C,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n0,20,7,0,1,0,0,0,1\n1,20,8,0,1,0,0,0,1\n');
    expect(path.x_m[0]).toBe(7 * 0.001);
    expect(warnings.map(({ code }) => code)).toEqual(['column-ignored']);
    expect(warnings[0]!.text).toContain('temperature_C');
  });

  it('keeps the fan from spinning between 179 and -179 degrees', () => {
    const { path } = read('t_s,x_mm,y_mm,fan_deg\n0,0,0,179\n1,0,0,-179\n2,0,0,179\n');
    expect(path.fan_rad[1]).toBeCloseTo((181 * Math.PI) / 180, 12);
    expect(path.fan_rad[2]).toBeCloseTo((179 * Math.PI) / 180, 12);
  });

  it('drops a repeated row with a counted warning', () => {
    const { path, warnings } = read(`${GOOD}0.02,106,50,202,91,1,-2,air\n0.03,106,50,202,91,1,-2,0\n`);
    expect(path.count).toBe(4);
    expect(warnings).toMatchObject([{ code: 'row-dropped', place: { row: 5 } }]);
  });

  it('takes the trigger as off where the gun points away, and says so', () => {
    const { path, warnings } = read(`${HEADER}0,0,0,200,90,120,0,1\n1,0,0,200,90,0,0,1\n2,0,0,200,90,120,0,0\n`);
    expect([...path.trigger]).toEqual([0, 1, 0]);
    expect(warnings).toMatchObject([{ code: 'model-limit', place: { row: 2 } }]);
  });
});

describe('createRecordingReader refuses, naming row and column', () => {
  const rows = (row: string) => `${HEADER}0,1,1,200,90,0,0,0\n${row}\n2,1,1,200,90,0,0,0\n`;
  it.each([
    ['not a number', rows('1,abc,1,200,90,0,0,0'), 'range', 3, 'x_mm'],
    ['NaN', rows('1,1,NaN,200,90,0,0,0'), 'range', 3, 'y_mm'],
    ['Infinity', rows('Infinity,1,1,200,90,0,0,0'), 'range', 3, 't_s'],
    ['empty', rows('1,1,1,,90,0,0,0'), 'range', 3, 'z_mm'],
    ['hexadecimal', rows('1,0x10,1,200,90,0,0,0'), 'range', 3, 'x_mm'],
    ['far away', rows('1,1e6,1,200,90,0,0,0'), 'range', 3, 'x_mm'],
    ['behind the panel', rows('1,1,1,-5,90,0,0,0'), 'range', 3, 'z_mm'],
    ['trigger of 2', rows('1,1,1,200,90,0,0,2'), 'range', 3, 'trigger'],
    ['trigger word', rows('1,1,1,200,90,0,0,pull'), 'range', 3, 'trigger'],
    ['too few columns', rows('1,1,1,200'), 'columns', 3, undefined],
    ['decimal commas', rows('1,1,1,200,5,90,0,0,0'), 'columns', 3, undefined],
    ['time backwards', rows('-1,1,1,200,90,0,0,0'), 'time', 3, 't_s'],
    ['one time, two poses', rows('0,2,1,200,90,0,0,0'), 'time', 3, 't_s'],
    ['unknown unit', 't_s,x_furlong,y_mm\n0,0,0\n1,1,1\n', 'unit', 1, 'x_furlong'],
    ['no unit', 't,x_mm,y_mm\n0,0,0\n1,1,1\n', 'unit', 1, 't'],
    ['no x', 't_s,y_mm\n0,0\n1,1\n', 'columns', 1, 'x'],
    ['x twice', 't_s,x_mm,x_in,y_mm\n0,0,0,0\n1,1,1,1\n', 'columns', 1, 'x_in'],
    ['other separator', 't_s;x_mm;y_mm\n0;0;0\n', 'columns', 1, 't'],
    ['inherited names', 't_constructor,x_mm,y_mm\n0,0,0\n', 'unit', 1, 't_constructor'],
  ])('%s', (_, text, code, row, column) => {
    const error = refusal(text);
    expect(error.code).toBe(code);
    expect(error.place).toMatchObject({ file: 'a.csv', row, ...(column === undefined ? {} : { column }) });
    expect(error.message).toMatch(/^a\.csv: /);
  });

  it('lists the understood units', () => {
    expect(refusal('t_s,x_furlong,y_mm\n').message).toContain('x_mm, x_cm, x_m, x_in, x_ft, x_mil');
  });

  it('empty files and bytes that are no text', () => {
    for (const text of ['', '\n\n', HEADER]) expect(refusal(text).code).toBe('columns');
    expect(refusal('PK\u0003\u0004\0\0\0\n').code).toBe('columns');
  });

  it('a quote that never closes, before memory is swallowed', () => {
    const reader = createRecordingReader({ fileName: 'a.csv' });
    reader.push(`${HEADER}"`);
    const piece = '1,2,3\n'.repeat(10_000);
    expect(() => { for (let i = 0; i < 100; i++) reader.push(piece); }).toThrow('a quote is never closed');
  });

  it('more rows than the limit, at the row that is one too many', () => {
    const names = { t: 't_s', x: 'x_mm', y: 'y_mm', z: 'z_mm', fan: 'fan_deg', pitch: 'pitch_deg', yaw: 'yaw_deg', trigger: 'trigger' };
    const rows = new RecordingRows('a.csv', names, 3);
    const add = (row: number) => { rows.add(row, row, 0, 0, 0.2, 0, 0, 0, 1); };
    for (let row = 2; row < 5; row++) add(row);
    expect(() => { add(5); }).toThrow('past the limit of 3 rows');
  });

  it('more characters than the limit at once', () => {
    const reader = createRecordingReader({ fileName: 'a.csv' });
    reader.push(HEADER);
    const piece = '#'.repeat(16) + '\n';
    const huge = { length: 2e9, startsWith: () => false, slice: () => piece } as unknown as string;
    expect(() => { reader.push(huge); }).toThrow(/cut the recording into parts/);
  });
});

describe('gaps in time', () => {
  const rows = (gap_s: number) => {
    let text = 't_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n';
    for (let i = 0; i < 100; i++) text += `${(i * 0.01 + (i >= 50 ? gap_s : 0)).toFixed(3)},${i},0,200,90,0,0,1\n`;
    return text;
  };

  it('with fluid on give a warning with row and length, and the trigger is off in them', () => {
    const { path, warnings } = read(rows(0.4));
    expect(warnings).toMatchObject([{ code: 'time-gap', place: { row: 51 } }]);
    expect(warnings[0]!.text).toContain('0.41 s');
    expect([path.trigger[48], path.trigger[49], path.trigger[50]]).toEqual([1, 0, 1]);
  });

  it('shorter than a quarter second are left alone', () => {
    const { path, warnings } = read(rows(0.2));
    expect(warnings).toEqual([]);
    expect(path.trigger.every((trigger) => trigger === 1)).toBe(true);
  });

  it('count rows with dropped and empty lines in the file', () => {
    const lines = rows(0.4).split('\n');
    lines.splice(10, 0, lines[9]!, '');
    expect(read(lines.join('\n')).warnings.map(({ code, place }) => [code, place.row])).toEqual([['row-dropped', 11], ['time-gap', 53]]);
  });
});
