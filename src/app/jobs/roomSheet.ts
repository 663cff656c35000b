import { keepNow } from '../keeping/openKeptJob.ts';
import { room } from '../keeping/keeping.ts';
import { lookAtRoom } from '../keeping/room.ts';
import { jobs } from './jobs.ts';

/** Looks how much room there is, for the sheet. */
export async function readRoom(): Promise<void> {
  await keepNow().catch(() => undefined);
  await lookAtRoom();
}

/** Asks the browser never to clear this page's storage by itself. */
export async function askToKeep(): Promise<void> {
  // Pages that came without TLS from another machine have no storage manager.
  const manager = (navigator as { readonly storage?: StorageManager }).storage;
  const persisted = (await manager?.persist?.().catch(() => false)) ?? false;
  room.value = { ...room.peek(), persisted };
  jobs.told.value = persisted
    ? 'The browser will not clear what is kept here by itself.'
    : 'The browser did not agree. Browsers agree sooner for a page that is used often, is installed, or is among the bookmarks.';
}
