import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { readWorkshop } from '../../../src/workshop/readWorkshop.ts';
import { zipBytes } from '../workshop/samples.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const path = join(folder, 'workshop.zip');
const changed = join(folder, 'changed.zip');

beforeAll(async () => {
  const bytes = await zipBytes();
  writeFileSync(path, bytes);
  const { files, text, manifest } = await readWorkshop(bytes, 'w.zip');
  const contents = files.map(({ name }, i) => [name, strToU8(i === 0 ? text(name).replace('Rudder 1', 'Rudder one') : i === 1 ? '{' : text(name))] as const);
  writeFileSync(changed, zipSync({ ...Object.fromEntries(contents), 'workshop.json': strToU8(JSON.stringify(manifest)) }));
});

describe('crosscoat workshop', () => {
  it('lists what is in it and that nothing was changed', async () => {
    const { code, out } = await run(['workshop', path, '--strict']);
    expect(code).toBe(0);
    expect(out).toContain('workshop.zip: a workshop exported 2026-05-04 at 10:00 UTC, with 2 jobs and 1 practice session that can be read.');
    expect(out).toContain('as it was exported');
    expect(out).toContain('3 files read: 3 as it was exported, none changed or damaged, none not listed; none not read. Nothing was written.');
  });

  it('says which file was changed and which cannot be read, and fails where that is asked', async () => {
    const { code, out } = await run(['workshop', changed, '--strict']);
    expect(code).toBe(1);
    expect(out).toMatch(/"Rudder one, été"\s+changed since it was exported/);
    expect(out).toMatch(/- jobs\/rudder-2.*: .*is not JSON: in row 1, column 2/);
    expect((await run(['workshop', changed])).code).toBe(0);
  });

  it('counts what no manifest lists, and takes it for doubtful', async () => {
    const bare = join(folder, 'bare.zip');
    const { files, text } = await readWorkshop(await zipBytes(), 'w.zip');
    writeFileSync(bare, zipSync(Object.fromEntries(files.map(({ name }) => [name, strToU8(text(name))]))));
    const { code, out } = await run(['workshop', bare, '--strict']);
    expect(code).toBe(1);
    expect(out).toContain('3 files read: none as it was exported, none changed or damaged, 3 not listed; none not read.');
  });

  it('says of a bomb only that it was not read', async () => {
    const bomb = join(folder, 'bomb.zip');
    writeFileSync(bomb, zipSync({ 'bomb.json': new Uint8Array(8e6).fill(32) }, { level: 9 }));
    expect((await run(['workshop', bomb])).out).toContain('0 files read; 1 not read. Nothing was written.');
  });

  it('prints JSON', async () => {
    const { out } = await run(['workshop', changed, '--json']);
    const answer = JSON.parse(out) as { files: { digest: string }[]; leftOut: unknown[] };
    expect(answer.files.map(({ digest }) => digest)).toEqual(['changed', 'fits']);
    expect(answer.leftOut).toHaveLength(1);
  });

  it('says what is no zip, and what is not there', async () => {
    const text = join(folder, 'text.zip');
    writeFileSync(text, 'hello');
    expect((await run(['workshop', text])).err).toContain('text.zip is no zip; give the file that “Export all” wrote, or a job file (JSON) to crosscoat spray');
    expect((await run(['workshop', join(folder, 'none.zip')])).err).toContain('no such file');
  });

  it('prints the manifest\'s JSON Schema', async () => {
    const { out } = await run(['schema', 'workshop']);
    expect(JSON.parse(out)).toMatchObject({ $id: 'urn:crosscoat:workshop:1', required: expect.arrayContaining(['made']) as unknown });
  });
});
