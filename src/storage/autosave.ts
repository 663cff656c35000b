import { effect, type Signal } from '@preact/signals';
import type { Shelf } from './database.ts';
import { packJob } from './packJob.ts';
import type { Job } from '../../sim/index.ts';

/** Typing is saved at most this long after the last key. */
const DEBOUNCE_MS = 250;

export interface Autosave {
  /** Writes what has changed now; resolves when it is kept. */
  flush(): Promise<void>;
  stop(): void;
}

/** What autosave watches: signals by key; the key `job` is packed so that recordings are written once. */
export type Watched = Readonly<Record<string, Signal<unknown>>>;

/**
 * Keeps `watched` on `shelf` as it changes: at most 250 ms after the last change, and at once
 * when the page is hidden or left. A failure is told through `failed` (null: all is kept again)
 * and tried again with the next change.
 */
export function startAutosave(shelf: Shelf, watched: Watched, failed: (why: unknown) => void): Autosave {
  const changed = new Set<string>();
  let keptRecordings = new Map<string, string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> = Promise.resolve();

  const write = async (): Promise<void> => {
    const keys = [...changed];
    changed.clear();
    if (keys.length === 0) return;
    const values = new Map<string, unknown>();
    const removed: string[] = [];
    let recordings = keptRecordings;
    for (const key of keys) {
      const value = watched[key]?.peek();
      if (key !== 'job') values.set(key, value);
      else {
        const packed = packJob(value as Job, keptRecordings);
        for (const [name, part] of packed.values) values.set(name, part);
        removed.push(...packed.removed);
        recordings = packed.recordings;
      }
    }
    try {
      await shelf.write(values, removed);
      keptRecordings = recordings;
      failed(null);
    } catch (why) {
      for (const key of keys) changed.add(key);
      failed(why);
    }
  };

  const flush = (): Promise<void> => {
    clearTimeout(timer);
    writing = writing.then(write);
    return writing;
  };

  const stops = Object.keys(watched).map((key) => {
    let first = true;
    return effect(() => {
      void watched[key]?.value;
      if (first) {
        first = false;
        return;
      }
      changed.add(key);
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), DEBOUNCE_MS);
    });
  });

  return {
    flush,
    stop: () => {
      clearTimeout(timer);
      for (const stop of stops) stop();
    },
  };
}
