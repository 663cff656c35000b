import { effect, type Signal } from '@preact/signals';
import type { Shelf } from './database.ts';
import { startSaver } from './saver.ts';

export interface Autosave {
  /** Writes what has changed now; resolves when it is kept. */
  flush(): Promise<void>;
  /** What would be lost if the page went now, by key. Answers at once. */
  unsaved(): readonly (readonly [key: string, value: unknown])[];
  stop(): void;
}

/** What autosave watches: signals by key. */
export type Watched = Readonly<Record<string, Signal<unknown>>>;

/**
 * Keeps `watched` on `shelf` as it changes, within 300 ms. A failure is told through `failed` (null: all is kept again) and tried
 * again, by itself and with the next change.
 */
export function startAutosave(shelf: Shelf, watched: Watched, failed: (why: unknown) => void): Autosave {
  const changed = new Set<string>();
  const unsaved = (): [string, unknown][] => [...changed].map((key) => [key, watched[key]?.peek()]);
  const saver = startSaver(async () => {
    const values = new Map(unsaved());
    if (values.size === 0) return true;
    try {
      await shelf.write(values);
      // What changed meanwhile is still to be written.
      for (const [key, value] of values) if (watched[key]?.peek() === value) changed.delete(key);
      failed(null);
      return true;
    } catch (why) {
      failed(why);
      return false;
    }
  });

  const stops = Object.keys(watched).map((key) => {
    let first = true;
    return effect(() => {
      void watched[key]?.value;
      if (first) {
        first = false;
        return;
      }
      changed.add(key);
      saver.soon();
    });
  });

  return {
    flush: saver.now,
    unsaved,
    stop: () => {
      saver.stop();
      for (const stop of stops) stop();
    },
  };
}
