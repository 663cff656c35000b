import { signal } from '@preact/signals';
import { parseSession } from '../../../sim/index.ts';
import { openSessions, type KeptSession, type ListedSession, type SessionDraft, type SessionShelf } from '../../storage/sessions.ts';
import { problemOf, type Problem } from '../problem.ts';
import { saveSession, saveStrokes } from './sessionFiles.ts';

/** The practice sessions of this browser, as the page knows them. */
export const keptSessions = {
  /** Newest first. */
  list: signal<readonly ListedSession[]>([]),
  /** Whether the list was read, so that an empty one means no sessions. */
  isRead: signal(false),
  /** Why storage did not do what was asked; null when it did. */
  problem: signal<Problem | null>(null),
  /** Sprayed, and not in the browser's storage: the page offers each as a file. */
  notKept: signal<readonly KeptSession[]>([]),
  /** Removed since the page was loaded, the last one last: they can be put back. */
  removed: signal<readonly KeptSession[]>([]),
};

let open: () => Promise<SessionShelf> = openSessions;
let opened: Promise<SessionShelf> | null = null;

/** Reads what the browser keeps. Called when practice is opened; again is harmless. */
export async function openKeptSessions(opening?: () => Promise<SessionShelf>): Promise<void> {
  if (opening !== undefined) open = opening;
  await attempt('The practice sessions kept in this browser could not be read', refresh);
}

/** Lets go of the storage. What is not kept stays on offer. */
export async function closeKeptSessions(): Promise<void> {
  const closing = opened;
  opened = null;
  keptSessions.list.value = [];
  keptSessions.isRead.value = false;
  keptSessions.removed.value = [];
  await closing?.then((shelf) => shelf.close(), () => undefined);
}

/** Keeps a session. Where storage refuses, it stays in `notKept`: nothing sprayed is lost. @returns whether it is kept. */
export async function keepSession(kept: KeptSession): Promise<boolean> {
  const isKept = await attempt('The session was not kept in this browser; save it as a file', async (shelf) => {
    await shelf.put(kept);
    await refresh(shelf);
  });
  const others = keptSessions.notKept.peek().filter(({ session }) => session.id !== kept.session.id);
  keptSessions.notKept.value = isKept ? others : [...others, kept];
  return isKept;
}

/** Tries to keep what was refused before. */
export async function keepAgain(): Promise<void> {
  for (const kept of keptSessions.notKept.peek()) await keepSession(kept);
}

/** Saves a session that was not kept as a file; it is then no longer on offer. */
export function saveNotKept(kept: KeptSession): void {
  saveSession(kept.session);
  keptSessions.notKept.value = keptSessions.notKept.peek().filter((each) => each !== kept);
}

/** A kept session whole, an older job upgraded; null where it cannot be read, which `problem` tells. */
export async function readKept(id: string): Promise<KeptSession | null> {
  let found: KeptSession | null = null;
  await attempt('The session could not be opened', async (shelf) => {
    const kept = await wholeOf(shelf, id);
    found = { ...kept, session: parseSession(kept.session) };
  });
  return found;
}

export async function renameSession(id: string, name: string): Promise<void> {
  await attempt('The session was not renamed', async (shelf) => {
    await shelf.rename(id, name);
    await refresh(shelf);
  });
}

/** Removes a session; `putBack` undoes it until the page is closed. */
export async function removeSession(id: string): Promise<void> {
  await attempt('The session was not removed', async (shelf) => {
    const kept = await wholeOf(shelf, id);
    await shelf.remove(id);
    keptSessions.removed.value = [...keptSessions.removed.peek(), kept];
    await refresh(shelf);
  });
}

/** Puts back the session that was removed last. */
export async function putBack(): Promise<void> {
  const last = keptSessions.removed.peek().at(-1);
  if (last === undefined) return;
  await attempt('The session was not put back', async (shelf) => {
    await shelf.put(last);
    keptSessions.removed.value = keptSessions.removed.peek().filter((each) => each !== last);
    await refresh(shelf);
  });
}

/** Saves a kept session as a file that can be opened elsewhere. */
export async function saveKeptSession(id: string): Promise<void> {
  const kept = await readKept(id);
  if (kept !== null) saveSession(kept.session);
}

/** Saves the strokes of a kept session as a table. */
export async function saveKeptStrokes(id: string): Promise<void> {
  const kept = await readKept(id);
  if (kept !== null) saveStrokes(kept.session);
}

const NOT_BEING_KEPT = 'The session under way is not being kept; it is safe while this page stays open';

/** Keeps the session under way as far as it is. @param stamp by which it can be added to. @returns whether it is kept. */
export function keepDraft(draft: SessionDraft, stamp?: string): Promise<boolean> {
  return attempt(NOT_BEING_KEPT, (shelf) => shelf.putDraft(draft, stamp));
}

/** Puts rows behind the draft of `stamp` as its piece `index`. @returns whether they are kept: not where another session has become the draft meanwhile. */
export async function addToDraft(stamp: string, index: number, rows: string): Promise<boolean> {
  let isAdded = false;
  await attempt(NOT_BEING_KEPT, async (shelf) => {
    isAdded = await shelf.addToDraft(stamp, index, rows);
  });
  return isAdded;
}

/** What was under way when the page was last closed; null where nothing was. */
export async function readDraft(): Promise<SessionDraft | null> {
  let found: SessionDraft | null = null;
  await attempt('The session under way could not be read', async (shelf) => {
    found = await shelf.readDraft();
  });
  return found;
}

export async function clearDraft(): Promise<void> {
  await attempt('The session under way was not cleared', (shelf) => shelf.clearDraft());
}

async function refresh(shelf: SessionShelf): Promise<void> {
  keptSessions.list.value = await shelf.list();
  keptSessions.isRead.value = true;
}

async function wholeOf(shelf: SessionShelf, id: string): Promise<KeptSession> {
  const kept = await shelf.get(id);
  if (kept === null) throw new Error('there is no such session any more; it was removed, perhaps in another window');
  return kept;
}

/** Does one thing with the storage, opened at need; tells where that fails. @returns whether it was done. */
async function attempt(title: string, act: (shelf: SessionShelf) => Promise<void>): Promise<boolean> {
  try {
    opened ??= open();
    await act(await opened.catch(forget));
    keptSessions.problem.value = null;
    return true;
  } catch (thrown) {
    keptSessions.problem.value = problemOf(title, thrown);
    return false;
  }
}

/** A storage that did not open is asked for again the next time. */
function forget(why: unknown): never {
  opened = null;
  throw why;
}
