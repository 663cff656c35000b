import type { InHand } from './inHand.ts';
import type { JobNews, JobNewsLine } from './jobNews.ts';
import { JobConflict, type JobStore, type KeptJob } from './jobStore.ts';
import { lastWordOf, type LastWord } from './lastWord.ts';
import type { JobHead } from './stores.ts';
import { startSaver } from './saver.ts';

/** What a keeper asks and tells of its window. */
export interface KeeperWindow {
  inHand(): InHand;
  /** Nobody sees it: what others wrote can wait until somebody does. */
  isHidden(): boolean;
  /** A write was refused; null: all is kept again. */
  failed(why: unknown): void;
  kept(): void;
  /** `late` can no longer be written to its job, in whose place there is `there` (null: nothing any more). Resolves when it is kept as a job of its own. */
  keepAside(late: InHand, there: JobHead | null): Promise<void>;
  /** Another window wrote the job in hand. The window may `hold` that and have it in hand, as long as it `isClean`: nothing is unsaved. */
  takeOver(kept: KeptJob, isClean: () => boolean): Promise<void>;
  /** The job in hand, all kept, was removed by another window. */
  removed(): void;
  /** Another window has the job in hand open too. */
  openElsewhere(): void;
}

export interface JobKeeper {
  /** The window has this from now on, which is what is kept as `revision`. */
  hold(inHand: InHand, revision: number): void;
  /** The window's job, its drafts or both may have changed. */
  changed(): void;
  /** Asks the other windows whether they have the job in hand open. */
  ask(): void;
  /** Looks whether another window wrote the job in hand, which a window that slept has not heard. */
  look(): Promise<void>;
  flush(): Promise<void>;
  /** What would be lost if the window went now. Answers at once. */
  lastWords(): readonly LastWord[];
  stop(): void;
}

/**
 * Keeps the job in hand as it changes, within 300 ms. Two windows on one job can never overwrite each other: each write names the
 * revision it started from, and what comes too late is kept at once as a job of its own. Longer than functions are here, and whole: what
 * is held and what is unsaved are read and changed by writing, looking and hearing alike, and apart they would hand the two around.
 */
export function startJobKeeper(store: JobStore, news: JobNewsLine, window: KeeperWindow): JobKeeper {
  /** What is known to be kept, as this window last wrote or read it. */
  const held = new Map<string, InHand & { readonly revision: number }>();
  const unsaved = new Map<string, InHand>();
  let underWay: InHand | null = null;

  const isKept = ({ id, job, drafts }: InHand): boolean => {
    const kept = held.get(id);
    return kept?.job === job && kept.drafts === drafts;
  };

  const write = async (inHand: InHand): Promise<void> => {
    const before = held.get(inHand.id);
    try {
      if (before !== undefined && before.job === inHand.job) {
        await store.putDrafts(inHand.id, inHand.drafts);
        held.set(inHand.id, { ...before, drafts: inHand.drafts });
      } else {
        const { id, revision } = await store.put(inHand.id, inHand.job, before?.revision ?? null, { drafts: inHand.drafts });
        held.set(id, { ...inHand, revision });
        news.tell({ id, revision });
        window.kept();
      }
    } catch (why) {
      if (!(why instanceof JobConflict)) throw why;
      // Until it is kept aside it stays unsaved, and is tried again.
      await window.keepAside(inHand, why.there);
      unsaved.delete(inHand.id);
    }
  };

  const saver = startSaver(async () => {
    let hasWritten = false;
    try {
      for (const [id, inHand] of [...unsaved]) {
        if (!isKept(inHand)) {
          underWay = inHand;
          await write(inHand);
          hasWritten = true;
        }
        if (unsaved.get(id) === inHand) unsaved.delete(id);
      }
      if (hasWritten) window.failed(null);
      return true;
    } catch (why) {
      window.failed(why);
      return false;
    } finally {
      underWay = null;
    }
  });

  const isClean = (): boolean => isKept(window.inHand());

  const look = async (): Promise<void> => {
    if (!isClean()) return saver.now();
    const { id } = window.inHand();
    const head = await store.head(id);
    if (head === null || head.revision <= (held.get(id)?.revision ?? 0)) return;
    const kept = await store.read(id);
    const isStillClean = (): boolean => window.inHand().id === id && isClean();
    if (kept !== null) await window.takeOver(kept, isStillClean);
    // What was typed meanwhile finds the conflict when it is written.
    if (!isClean()) await saver.now();
  };
  let looking: Promise<void> = Promise.resolve();
  const lookInTurn = (): Promise<void> => (looking = looking.then(look).catch((why: unknown) => window.failed(why)));

  const hear = ({ id, revision, asks, isOpen }: JobNews): void => {
    if (id !== window.inHand().id) return;
    if (asks) news.tell({ id, isOpen: true });
    if (isOpen) window.openElsewhere();
    if (revision === null && isClean()) window.removed();
    else if (revision !== undefined && !window.isHidden()) void lookInTurn();
  };
  news.listen(hear);

  return {
    hold: (inHand, revision) => held.set(inHand.id, { ...inHand, revision }),
    changed: () => {
      const inHand = window.inHand();
      if (isKept(inHand) && !unsaved.has(inHand.id)) return;
      unsaved.set(inHand.id, inHand);
      saver.soon();
    },
    ask: () => news.tell({ id: window.inHand().id, asks: true }),
    look: lookInTurn,
    flush: saver.now,
    lastWords: () => [...unsaved.values()].filter((each) => !isKept(each)).map((each) => lastWordOf(each, held.get(each.id), underWay)),
    stop: () => {
      saver.stop();
      news.close();
    },
  };
}
