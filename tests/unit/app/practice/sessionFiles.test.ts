import { describe, expect, it } from 'vitest';
import { serialiseSession } from '../../../../sim/job/session.ts';
import { readSessionFiles, sessionFileName, strokesFileName, type ReadableFile } from '../../../../src/app/practice/sessionFiles.ts';
import { session } from './samples.ts';

const file = (name: string, text: string, size = text.length): ReadableFile => ({ name, size, text: () => Promise.resolve(text) });
const good = (name: string): ReadableFile => file(name, serialiseSession(session()));

describe('file names', () => {
  it('say trainee, drill and date', () => {
    expect(sessionFileName(session())).toBe('trainee-a-flat-panel-2026-03-01.crosscoat-session.json');
    expect(strokesFileName(session())).toBe('trainee-a-flat-panel-2026-03-01.csv');
  });

  it.each([
    ['Zoë Ångström', 'zoe-angstrom'],
    ['../../etc/passwd', 'etc-passwd'],
    ['a:b*c?"<>|\\\n', 'a-b-c'],
    ['', 'trainee'],
    ['名前', 'trainee'],
    ['x'.repeat(100), 'x'.repeat(40)],
  ])('hold safe letters only: %j', (trainee, part) => {
    expect(strokesFileName(session({ trainee }))).toBe(`${part}-flat-panel-2026-03-01.csv`);
  });
});

describe('readSessionFiles', () => {
  it('reads a session back as it was saved', async () => {
    expect(await readSessionFiles([good('a.json')])).toEqual({ opened: [{ file: 'a.json', session: session() }], refused: [] });
  });

  it('names each bad file with its error and opens the others', async () => {
    const gone: ReadableFile = { name: 'gone.json', size: 1, text: () => Promise.reject(new Error('the file could not be read')) };
    const { opened, refused } = await readSessionFiles([good('a.json'), file('photo.json', 'not json'), gone, file('job.json', '{}'), good('b.json')]);
    expect(opened.map((each) => each.file)).toEqual(['a.json', 'b.json']);
    expect(refused.map(({ title }) => title)).toEqual(['photo.json was not opened', 'gone.json was not opened', 'job.json was not opened']);
    expect(refused[0]!.text).toContain('photo.json');
    expect(refused[1]!.text).toBe('the file could not be read');
  });

  it('refuses a file above 64 MB without reading it', async () => {
    const unread: ReadableFile = { name: 'long.json', size: 64e6 + 1, text: () => { throw new Error('was read'); } };
    const { refused } = await readSessionFiles([unread, file('full.json', 'x', 64e6)]);
    expect(refused[0]!.text).toContain('65 MB, more than 64 MB');
    expect(refused[1]!.text).toContain('JSON');
  });

  it('opens 200 files and says how many are left', async () => {
    const text = '[]';
    const files = Array.from({ length: 202 }, (_, i) => file(`${i}.json`, text));
    const { refused } = await readSessionFiles(files);
    expect(refused).toHaveLength(201);
    expect(refused.at(-1)).toMatchObject({ title: '2 files were not opened', text: expect.stringContaining('200.json') as string });
  });
});
