import { describe, expect, it } from 'vitest';
import type { ListedJobSpec } from '../../../sim/index.ts';
import { planRestore, type HereJob, type JobRow } from '../../../src/workshop/planRestore.ts';
import type { ReadWorkshop, WorkshopFile } from '../../../src/workshop/readWorkshop.ts';
import { planSentence, stateWords } from '../../../src/workshop/workshopWords.ts';

const digest = (letter: string): string => letter.repeat(64);

/** A job file of the zip whose bytes and content have the digest of one letter. */
function file(letter: string, listed: Partial<ListedJobSpec> | null = {}, over: Partial<WorkshopFile> = {}): WorkshopFile {
  const spec: ListedJobSpec = { id: 'job', name: 'Rudder', file: 'jobs/a.json', sha256: digest(letter), changedAt: '2026-05-02T00:00:00Z', archived: false, earlier: [], ...listed };
  return { name: 'jobs/a.json', digest: 'fits', sha256: digest(letter), listed: listed === null ? null : spec, content: { kind: 'job', name: 'Rudder', part: 'Rudder', coats: 2, signed: { entries: [], surveys: [] }, asWritten: digest(letter) }, ...over };
}

function here(letter: string | null, over: Partial<HereJob> = {}): HereJob {
  return { id: 'job', name: 'Rudder', changedAt: '2026-05-01T00:00:00Z', revision: 7, asWritten: letter === null ? null : digest(letter), signed: { entries: [], surveys: [] }, earlier: [], ...over };
}

function rowOf(each: WorkshopFile, there: HereJob | null): JobRow {
  const read: ReadWorkshop = { manifest: null, doubts: [], files: [each], leftOut: [], text: () => '' };
  return planRestore(read, new Map(there === null ? [] : [['job', there]]), new Map())[0] as JobRow;
}

describe('planRestore', () => {
  it('adds what is not here, under its own id', () => {
    expect(rowOf(file('a'), null)).toMatchObject({ state: 'new', proposed: 'add', choices: ['add', 'skip'], known: [digest('a')] });
    expect(rowOf(file('a', null), here('b'))).toMatchObject({ state: 'new', proposed: 'add', listed: null });
  });

  it('leaves out what is the same, whatever its layout', () => {
    expect(rowOf(file('a'), here('a'))).toMatchObject({ state: 'same', proposed: 'skip' });
  });

  it('knows the older state by the digests that were handed over, and no clock turns that', () => {
    const late = { changedAt: '2030-01-01T00:00:00Z' };
    expect(rowOf(file('a', late), here('b', { earlier: [digest('a')] }))).toMatchObject({ state: 'here-newer', isByClock: false, proposed: 'skip' });
    expect(rowOf(file('b', { earlier: [digest('a')] }), here('a', late))).toMatchObject({ state: 'zip-newer', isByClock: false, proposed: 'replace' });
    expect(rowOf(file('b', { earlier: [digest('a')] }), here('c', { earlier: [digest('a')] }))).toMatchObject({ state: 'both-changed', isByClock: false, proposed: 'copy' });
  });

  it('takes an edited file for newer than what it was exported from', () => {
    const edited = file('x', { sha256: digest('a') }, { digest: 'changed' });
    // Doubtful, so it is not proposed to be written over what is here.
    expect(rowOf(edited, here('a'))).toMatchObject({ state: 'zip-newer', isByClock: false, proposed: 'copy' });
    expect(rowOf(edited, here('b', { earlier: [digest('a')] }))).toMatchObject({ state: 'both-changed' });
  });

  it('asks the clocks where nothing else tells, says so, and proposes nothing to be replaced', () => {
    const row = rowOf(file('a'), here('b'));
    expect(row).toMatchObject({ state: 'zip-newer', isByClock: true, proposed: 'copy' });
    expect(stateWords(row)).toContain('clocks');
    expect(rowOf(file('a'), here('b', { changedAt: '2026-05-03T00:00:00Z' }))).toMatchObject({ state: 'here-newer', isByClock: true, proposed: 'skip' });
    expect(rowOf(file('a'), here('b', { changedAt: '2026-05-02T00:00:00Z' }))).toMatchObject({ state: 'both-changed' });
  });

  it('counts what is signed here and not signed so in the zip, and says it', () => {
    const there = file('a');
    const inZip = { ...there, content: { ...there.content, signed: { entries: ['one', 'two: other'], surveys: [] } } } as WorkshopFile;
    const row = rowOf(inZip, here('b', { signed: { entries: ['one', 'two', 'three'], surveys: ['film'] } }));
    expect(row.notSignedSo).toEqual({ entries: 2, surveys: 1 });
    expect(stateWords(row)).toContain('2 signed entries and 1 signed survey here are not signed so in the zip.');
    expect(stateWords(rowOf(file('a'), here('b', { signed: { entries: ['one'], surveys: [] } })))).toContain(' 1 signed entry here is not signed so in the zip.');
    expect(stateWords(rowOf(inZip, here('b')))).not.toContain('signed');
  });

  it('compares nothing with a job that no longer reads', () => {
    expect(rowOf(file('a'), here(null))).toMatchObject({ state: 'unreadable', proposed: 'copy' });
  });

  it('takes the second file of one id for a new job', () => {
    const read: ReadWorkshop = { manifest: null, doubts: [], files: [file('a'), file('b')], leftOut: [], text: () => '' };
    expect(planRestore(read, new Map([['job', here('a')]]), new Map()).map(({ state }) => state)).toEqual(['same', 'new']);
  });

  it('adds sessions that are not here, and leaves those that are', () => {
    const session = (id: string): WorkshopFile => file('s', null, { content: { kind: 'session', id, name: '', trainee: 'A', title: 'Flat', sprayedAt: '2026-05-01T00:00:00Z', asWritten: digest('s') } });
    const read: ReadWorkshop = { manifest: null, doubts: [], files: [session('new'), session('same'), session('other')], leftOut: [], text: () => '' };
    const rows = planRestore(read, new Map(), new Map([['same', digest('s')], ['other', digest('t')]]));
    expect(rows.map(({ state, proposed }) => [state, proposed])).toEqual([['new', 'add'], ['same', 'skip'], ['other', 'skip']]);
  });

  it('says what a restore would do', () => {
    expect(planSentence(['add', 'add', 'skip', 'replace'])).toBe('Restore would add 2, replace 1, leave 1 out. Nothing has been written yet.');
  });
});
