import 'fake-indexeddb/auto';
import { signal } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoJob, withRecording } from '../../../sim/job/demo.ts';
import type { Job } from '../../../sim/job/schema.ts';
import { startAutosave, type Autosave } from '../../../src/storage/autosave.ts';
import { openShelf, type Shelf } from '../../../src/storage/database.ts';
import { packJob, unpackJob } from '../../../src/storage/packJob.ts';

const recorded = (text: string): Job => withRecording(demoJob(), 'by-hand', { id: 'session', name: 'Session', text });

describe('packJob', () => {
  it('gives back the same job, recordings and all', () => {
    const job = recorded('t_s,x_mm\n0,0\n1,1\n');
    expect(unpackJob(packJob(job, new Map()).values)).toEqual(job);
  });

  it('writes a recording once, and again only when its text is another', () => {
    const first = packJob(recorded('a'), new Map());
    expect([...first.values.keys()]).toEqual(['job', 'recording:session']);
    expect([...packJob(recorded('a'), first.recordings).values.keys()]).toEqual(['job']);
    expect([...packJob(recorded('b'), first.recordings).values.keys()]).toEqual(['job', 'recording:session']);
  });

  it('removes the text of a recording that is gone', () => {
    const first = packJob(recorded('a'), new Map());
    expect(packJob(demoJob(), first.recordings).removed).toEqual(['recording:session']);
  });

  it('has nothing to unpack from an empty shelf', () => {
    expect(unpackJob(new Map())).toBeNull();
  });
});

describe('startAutosave', () => {
  let autosave: Autosave | null = null;
  afterEach(() => {
    autosave?.stop();
    vi.useRealTimers();
  });

  it('keeps what changed, and what a second opening reads is what was typed', async () => {
    const shelf = await openShelf('autosave-kept');
    const watched = { job: signal(demoJob()), units: signal('metric') };
    autosave = startAutosave(shelf, watched, () => undefined);
    watched.job.value = recorded('text');
    watched.units.value = 'us';
    await autosave.flush();
    shelf.close();
    const again = await (await openShelf('autosave-kept')).read();
    expect(again.get('units')).toBe('us');
    expect(unpackJob(again)).toEqual(recorded('text'));
  });

  it('writes once for a burst of changes, within 300 ms of the last', async () => {
    vi.useFakeTimers();
    const writes: ReadonlyMap<string, unknown>[] = [];
    const watched = { units: signal('metric') };
    autosave = startAutosave(fakeShelf((values) => Promise.resolve(void writes.push(values))), watched, () => undefined);
    watched.units.value = 'us';
    watched.units.value = 'metric';
    watched.units.value = 'us';
    await vi.advanceTimersByTimeAsync(300);
    expect(writes).toEqual([new Map([['units', 'us']])]);
  });

  it('tells of a failure, keeps the change, and writes it with the next', async () => {
    let isFull = true;
    const writes: ReadonlyMap<string, unknown>[] = [];
    const told: unknown[] = [];
    const shelf = fakeShelf((values) =>
      isFull ? Promise.reject(new Error('quota exceeded')) : Promise.resolve(void writes.push(values)),
    );
    const watched = { units: signal('metric'), theme: signal('light') };
    autosave = startAutosave(shelf, watched, (why) => told.push(why));
    watched.units.value = 'us';
    await autosave.flush();
    expect(told).toEqual([new Error('quota exceeded')]);
    isFull = false;
    watched.theme.value = 'dark';
    await autosave.flush();
    expect(writes[0]).toEqual(new Map([['units', 'us'], ['theme', 'dark']]));
    expect(told.at(-1)).toBeNull();
  });
});

function fakeShelf(write: Shelf['write']): Shelf {
  return { read: () => Promise.resolve(new Map()), write, clear: () => Promise.resolve(), close: () => undefined };
}
