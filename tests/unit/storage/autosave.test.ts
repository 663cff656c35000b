import 'fake-indexeddb/auto';
import { signal } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { startAutosave, type Autosave } from '../../../src/storage/autosave.ts';
import { openShelf, type Shelf } from '../../../src/storage/database.ts';

describe('startAutosave', () => {
  let autosave: Autosave | null = null;
  afterEach(() => {
    autosave?.stop();
    vi.useRealTimers();
  });

  it('keeps what changed, and what a second opening reads is what was typed', async () => {
    const shelf = await openShelf('autosave-kept');
    const watched = { theme: signal('light'), units: signal('metric') };
    autosave = startAutosave(shelf, watched, () => undefined);
    watched.units.value = 'us';
    await autosave.flush();
    shelf.close();
    const again = await (await openShelf('autosave-kept')).read();
    expect(again).toEqual(new Map([['units', 'us']]));
  });

  it('writes while somebody types without a pause, never more than 300 ms after the first unsaved change', async () => {
    vi.useFakeTimers();
    const writes: unknown[] = [];
    const watched = { today: signal(0) };
    autosave = startAutosave(fakeShelf((values) => Promise.resolve(void writes.push(values.get('today')))), watched, () => undefined);
    for (let key = 1; key <= 40; key++) {
      watched.today.value = key;
      await vi.advanceTimersByTimeAsync(50);
    }
    // A key each 50 ms for 2 s: were the wait to start anew, nothing would be written.
    expect(writes.length).toBeGreaterThanOrEqual(6);
    expect(writes.at(-1)).toBeGreaterThanOrEqual(40 - 300 / 50);
  });

  it('has one write under way at a time, and the next follows with what changed meanwhile', async () => {
    vi.useFakeTimers();
    const order: string[] = [];
    const watched = { today: signal('') };
    const slow: Shelf['write'] = async (values) => {
      order.push(`begin ${String(values.get('today'))}`);
      await new Promise((resolve) => setTimeout(resolve, 1000));
      order.push(`end ${String(values.get('today'))}`);
    };
    autosave = startAutosave(fakeShelf(slow), watched, () => undefined);
    watched.today.value = 'a';
    await vi.advanceTimersByTimeAsync(300);
    watched.today.value = 'b';
    await vi.advanceTimersByTimeAsync(300);
    watched.today.value = 'c';
    await vi.advanceTimersByTimeAsync(5000);
    expect(order).toEqual(['begin a', 'end a', 'begin c', 'end c']);
  });

  it('says at once what is not kept yet, also while it is being written', async () => {
    let arrive = (): void => undefined;
    const watched = { today: signal('') };
    autosave = startAutosave(fakeShelf(() => new Promise<void>((resolve) => (arrive = resolve))), watched, () => undefined);
    expect(autosave.unsaved()).toEqual([]);
    watched.today.value = 'a';
    const writing = autosave.flush();
    await Promise.resolve();
    watched.today.value = 'b';
    arrive();
    await writing;
    expect(autosave.unsaved()).toEqual([['today', 'b']]);
    const next = autosave.flush();
    await Promise.resolve();
    expect(autosave.unsaved()).toEqual([['today', 'b']]);
    arrive();
    await next;
    expect(autosave.unsaved()).toEqual([]);
  });

  it('tries again by itself what was refused', async () => {
    vi.useFakeTimers();
    let isFull = true;
    const told: unknown[] = [];
    const watched = { units: signal('metric') };
    autosave = startAutosave(fakeShelf(() => (isFull ? Promise.reject(new Error('full')) : Promise.resolve())), watched, (why) => told.push(why));
    watched.units.value = 'us';
    await vi.advanceTimersByTimeAsync(300);
    expect(told).toHaveLength(1);
    isFull = false;
    await vi.advanceTimersByTimeAsync(3000);
    expect(told.at(-1)).toBeNull();
  });

  it('writes once for a burst of changes, within 300 ms of the first', async () => {
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
