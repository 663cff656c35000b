import { crc32 as nodeCrc32 } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { CrosscoatError, serialiseJob } from '../../../sim/index.ts';
import { crc32 } from '../../../src/workshop/crc32.ts';
import { listZip } from '../../../src/workshop/listZip.ts';
import { readWorkshop, type ReadWorkshop } from '../../../src/workshop/readWorkshop.ts';
import { ZIP_LIMITS } from '../../../src/workshop/zipLimits.ts';
import { readCentral, readEnd } from '../../../src/workshop/zipRecords.ts';
import { packedShort, shortJob, zipBytes } from './samples.ts';

/** A zip of stored or deflated files in which a test may then lie. */
function zipOf(files: Readonly<Record<string, string>>, level: 0 | 6 = 6): Uint8Array {
  return zipSync(Object.fromEntries(Object.entries(files).map(([name, value]) => [name, strToU8(value)])), { level });
}

/** Changes numbers of the directory's record of the `index`th file, and of its own head. */
function lie(zip: Uint8Array, index: number, central: Readonly<Record<number, number>>, local: Readonly<Record<number, number>> = {}): Uint8Array {
  const bytes = zip.slice();
  const view = new DataView(bytes.buffer);
  let at = readEnd(bytes)!.start;
  for (let i = 0; i < index; i++) at = readCentral(bytes, at)!.next;
  const head = readCentral(bytes, at)!.at;
  for (const [offset, value] of Object.entries(central)) view.setUint32(at + Number(offset), value, true);
  for (const [offset, value] of Object.entries(local)) view.setUint32(head + Number(offset), value, true);
  return bytes;
}

async function whyOf(zip: Uint8Array, name = 'job.json'): Promise<string> {
  const read = await readWorkshop(zip, 'hostile.zip');
  expect(read.files).toEqual([]);
  return read.leftOut.find((each) => each.name === name)?.why ?? `nothing is told of ${name}`;
}

describe('crc32', () => {
  it('gives the check value of the catalogue of parametrised CRC algorithms (CRC-32/ISO-HDLC: cbf43926), and what Node gives', () => {
    expect(crc32(strToU8('123456789')).toString(16)).toBe('cbf43926');
    const bytes = Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) & 255);
    expect(crc32(bytes)).toBe(nodeCrc32(bytes));
  });
});

describe('a zip made to mislead', () => {
  const good = serialiseJob(shortJob(1));

  it('stops a bomb while it unpacks, and says so', async () => {
    const bomb = zipSync({ 'job.json': new Uint8Array(8_000_000) }, { level: 9 });
    expect(bomb.length).toBeLessThan(12_000);
    expect(await whyOf(bomb)).toMatch(/more than 200 times its packed size/);
  });

  it('unpacks nothing of a bomb of some 60 kB whose directory lists the same bytes a thousand times: 8 GB', async () => {
    const one = zipSync({ 'job.json': new Uint8Array(8_000_000) }, { level: 9 });
    const { start } = readEnd(one)!;
    const [head, record, end] = [one.subarray(0, start), one.subarray(start, one.length - 22), one.slice(one.length - 22)];
    const view = new DataView(end.buffer);
    for (const offset of [8, 10]) view.setUint16(offset, 1000, true);
    view.setUint32(12, 1000 * record.length, true);
    const bomb = new Uint8Array(await new Blob([head, ...Array<Uint8Array<ArrayBuffer>>(1000).fill(record.slice()), end]).arrayBuffer());
    expect(bomb.length).toBeLessThan(70_000);
    const { files, leftOut } = await readWorkshop(bomb, 'bomb.zip');
    expect(files).toEqual([]);
    expect(leftOut.filter(({ why }) => why.includes('stands twice'))).toHaveLength(999);
  });

  it('counts all files together', async () => {
    const files = Object.fromEntries(Array.from({ length: 30 }, (_, i) => [`job-${i}.json`, good]));
    const read = await readWorkshop(zipOf(files), 'many.zip', undefined, { ...ZIP_LIMITS, total: 10 * good.length });
    expect(read.files).toHaveLength(10);
    expect(read.leftOut).toHaveLength(20);
    expect(read.leftOut[0]!.why).toContain('brings what the zip unpacks to above');
  });

  it('does not believe a size that a head states: smaller, larger, or 4 GB', async () => {
    const zip = zipOf({ 'job.json': good });
    expect(await whyOf(lie(zip, 0, { 24: 10 }))).toContain('more than the 10 bytes that its head states');
    expect(await whyOf(lie(zip, 0, { 24: good.length + 1 }))).toContain('the zip is damaged');
    expect(await whyOf(lie(zip, 0, { 24: 0xfffffff0 }))).toContain('the zip is damaged');
  });

  it('refuses a packed size that reaches beyond the zip, and heads that are elsewhere', async () => {
    const zip = zipOf({ 'job.json': good });
    expect(await whyOf(lie(zip, 0, { 20: 0x7fffffff }))).toContain('its end is cut off');
    expect(await whyOf(lie(zip, 0, { 42: 5 }))).toContain('not where the directory says');
  });

  it('refuses two names for the same bytes', async () => {
    const zip = zipOf({ 'a.json': good, 'b.json': good });
    const read = await readWorkshop(lie(zip, 1, { 42: 0 }), 'hostile.zip');
    expect(read.files.map(({ name }) => name)).toEqual(['a.json']);
    expect(read.leftOut[0]).toMatchObject({ name: 'b.json' });
  });

  it.each(['../job.json', '/etc/job.json', 'a/../../job.json', 'C:\\job.json', 'a\\b.json', 'a\u0000.json', '~/job.json', './job.json'])('refuses the name %j', async (name) => {
    const read = await readWorkshop(zipOf({ [name]: good }), 'hostile.zip');
    expect(read.files).toEqual([]);
    expect(read.leftOut[0]!.why).toBe('its name leads out of the zip');
  });

  it('refuses encrypted files and other methods by name, and reads the others', async () => {
    const zip = zipOf({ 'job.json': good, 'other.json': good });
    const encrypted = lie(zip, 0, { 8: 1 | (8 << 16) });
    const read = await readWorkshop(encrypted, 'hostile.zip');
    expect(read.files.map(({ name }) => name)).toEqual(['other.json']);
    expect(read.leftOut[0]!.why).toContain('encrypted');
    const lzma = await readWorkshop(lie(zip, 0, { 8: 14 << 16 }), 'hostile.zip');
    expect(lzma.leftOut[0]!.why).toContain('method 14');
  });

  it('tells a damaged file from an edited one by the zip\'s own check sum, and offers it', async () => {
    const zip = zipOf({ 'job.json': good }, 0);
    const at = new TextDecoder('latin1').decode(zip).indexOf('Small 1');
    zip[at] = 'M'.charCodeAt(0);
    const read = await readWorkshop(zip, 'hostile.zip');
    expect(read.files[0]).toMatchObject({ digest: 'damaged', content: { name: 'Mmall 1' } });
  });

  it('refuses too many files and too many bytes before anything is unpacked, and what is no zip', () => {
    const zip = zipOf(Object.fromEntries(Array.from({ length: 20 }, (_, i) => [`${i}.json`, good])));
    expect(() => listZip(zip, 'w.zip', { ...ZIP_LIMITS, files: 10 })).toThrow('w.zip has 20 files, more than 10');
    expect(() => listZip(zip, 'w.zip', { ...ZIP_LIMITS, zip: 100 })).toThrow('more than 100');
    expect(() => listZip(strToU8('{"schemaVersion": 6}'), 'job.json')).toThrow('job.json is no zip');
    expect(() => listZip(new Uint8Array(), 'empty')).toThrow('is no zip');
  });

  it('does not let a name of the language\'s own into its lists', async () => {
    const read = await readWorkshop(zipOf({ 'constructor.json': good, 'toString.json': good, 'hasOwnProperty': good }), 'w.zip');
    expect(read.files).toHaveLength(2);
  });

  it('tells each of 1,000 damaged zips in our words, and never hangs', async () => {
    const whole = await zipBytes({ jobs: [1, 2].map(packedShort), sessions: [] });
    let seed = 20260504;
    const chance = (below: number): number => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return Math.floor((seed / 2 ** 32) * below);
    };
    let read = 0;
    for (let round = 0; round < 1000; round++) {
      const bytes = whole.slice();
      for (let i = 0; i <= chance(8); i++) bytes[chance(bytes.length)] = chance(256);
      const damaged = chance(4) === 0 ? bytes.subarray(0, chance(bytes.length)) : bytes;
      const answer: unknown = await readWorkshop(damaged, 'd.zip').catch((thrown: unknown) => thrown);
      if (answer instanceof Error) {
        expect(answer).toBeInstanceOf(CrosscoatError);
        expect((answer as CrosscoatError).code).not.toBe('internal');
      } else read += (answer as ReadWorkshop).files.length;
    }
    // Most files are whole still, or their damage is told.
    expect(read).toBeGreaterThan(500);
  });
});
