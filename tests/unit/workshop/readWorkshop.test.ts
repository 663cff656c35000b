import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseJob, parseSession, serialiseJob, USUAL_RUBRIC } from '../../../sim/index.ts';
import { readWorkshop } from '../../../src/workshop/readWorkshop.ts';
import { MADE, numberedJob, packedJob, packedSession, packedShort, shortJob, zipBytes } from './samples.ts';

const text = (value: string): Uint8Array => new TextEncoder().encode(value);

describe('packWorkshop and readWorkshop', () => {
  it('give 20 jobs and two sessions back whole', async () => {
    const bytes = await zipBytes({ jobs: Array.from({ length: 20 }, (_, i) => packedJob(i)), sessions: [packedSession('a'), packedSession('b')], rubric: USUAL_RUBRIC });
    const read = await readWorkshop(bytes, 'w.zip');
    expect(read.doubts).toEqual([]);
    expect(read.leftOut).toEqual([]);
    expect(read.files.map(({ digest }) => digest)).toEqual(Array<string>(23).fill('fits'));
    const jobs = read.files.filter(({ content }) => content.kind === 'job');
    expect(jobs.map(({ name }) => parseJob(read.text(name)).job)).toEqual(Array.from({ length: 20 }, (_, i) => numberedJob(i)));
    const sessions = read.files.filter(({ content }) => content.kind === 'session');
    expect(sessions.map(({ name }) => parseSession(read.text(name)).id)).toEqual(['a', 'b']);
    expect(read.manifest).toMatchObject({ made: MADE.toISOString(), preferences: { units: 'us' } });
    expect(read.manifest?.jobs[4]).toMatchObject({ id: 'job-4', archived: true, name: 'Rudder 4, été' });
    // The correlation of an overlap that was too short for one has no figure.
    expect(read.manifest?.sessions[0]?.figures.hand.overlap.correlation_s).toBeNull();
  });

  it('is a zip that another reader takes, with digests that another tool gives', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'crosscoat-zip-'));
    const path = join(folder, 'w.zip');
    writeFileSync(path, await zipBytes());
    const script = 'import sys,zipfile,json,hashlib\nz=zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\nm=json.loads(z.read("workshop.json"))\nfor f in m["jobs"]+m["sessions"]:\n  assert hashlib.sha256(z.read(f["file"])).hexdigest()==f["sha256"], f\nprint(len(z.namelist()))';
    expect(execFileSync('python3', ['-c', script, path], { encoding: 'utf8' }).trim()).toBe('5');
    expect(readFileSync(path).length).toBeGreaterThan(1000);
  });

  it('knows an edited file by its digest, and still offers it', async () => {
    const bytes = await zipBytes();
    const names: Record<string, Uint8Array> = {};
    const before = await readWorkshop(bytes, 'w.zip');
    for (const { name } of before.files) names[name] = text(before.text(name));
    names['workshop.json'] = text(JSON.stringify(before.manifest));
    const first = before.files[0]!.name;
    names[first] = text(before.text(first).replace('Rudder 1', 'Rudder one'));
    // Packed again in a folder, as a desktop does.
    const again = zipSync({ 'my workshop': names, '__MACOSX': { '._x': text('') } });
    const read = await readWorkshop(again, 'w.zip');
    expect(read.files.map(({ digest }) => digest)).toEqual(['changed', 'fits', 'fits']);
    expect(read.files[0]!.content).toMatchObject({ kind: 'job', name: 'Rudder one, été' });
    expect(read.leftOut).toEqual([]);
  });

  it('offers the jobs of a zip without a manifest, and names the rest', async () => {
    const zip = zipSync({ 'a.json': text(serialiseJob(numberedJob(1))), 'b.json': text('{"schemaVersion": 99}'), 'strokes.csv': text('t_s\n'), 'inner.zip': text('PK') });
    const read = await readWorkshop(zip, 'some.zip');
    expect(read.manifest).toBeNull();
    expect(read.doubts[0]).toContain('no manifest');
    expect(read.files).toHaveLength(1);
    expect(read.files[0]).toMatchObject({ name: 'a.json', digest: 'not-listed', listed: null });
    expect(read.leftOut).toEqual(expect.arrayContaining([
      { name: 'inner.zip', why: expect.stringContaining('not followed') as string },
      { name: 'b.json', why: expect.stringContaining('newer Crosscoat') as string },
      { name: 'strokes.csv', why: expect.stringContaining('no JSON') as string },
    ]));
  });

  it('reads what is whole of a zip cut at every tenth byte, and never more', async () => {
    const bytes = await zipBytes({ jobs: [1, 2, 3].map(packedShort), sessions: [] });
    const whole = [1, 2, 3].map((number) => serialiseJob(shortJob(number)));
    const counts: number[] = [];
    for (let length = 0; length < bytes.length; length += 10) {
      const read = await readWorkshop(bytes.subarray(0, length), 'cut.zip').catch((thrown: unknown) => String(thrown));
      if (typeof read === 'string') {
        expect(read).toContain('is no zip');
        counts.push(0);
        continue;
      }
      expect(read.doubts[0]).toContain('cut short');
      for (const { name } of read.files) expect(whole).toContain(read.text(name));
      counts.push(read.files.length);
    }
    expect([...new Set(counts)]).toEqual([0, 1, 2, 3]);
  });

  it('says which listed file is not in the zip', async () => {
    const before = await readWorkshop(await zipBytes(), 'w.zip');
    const read = await readWorkshop(zipSync({ 'workshop.json': text(JSON.stringify(before.manifest)) }), 'w.zip');
    expect(read.leftOut.map(({ why }) => why)).toEqual(Array<unknown>(3).fill(expect.stringContaining('the manifest lists it')));
  });
});
