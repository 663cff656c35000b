import { signal } from '@preact/signals';
import { keepNow } from '../keeping/openKeptJob.ts';
import { forgetEarlierPieces, holdVersion, putPiecesAside } from './versions.ts';

/** A page that stays open asks for a newer version when it is looked at again, at most this often. */
const ASK_AGAIN_MS = 3_600_000;

/** What the reader is told of versions and of the network. */
export const offline = {
  /** A newer version is ready: it waits, or another window has started it; null where there is none. */
  newer: signal<'waits' | 'elsewhere' | null>(null),
  hasNetwork: signal(navigator.onLine),
  /** Whether everything of the page is kept here, so that nothing needs a network. */
  isWhole: signal(false),
};

let registration: ServiceWorkerRegistration | undefined;
let isAsked = false;

/**
 * Keeps the whole page in this browser, and says when a newer version is there. Nothing starts by itself: the
 * newer one waits until the reader asks for it, or until no window runs this one any more.
 */
export async function keepOffline(): Promise<void> {
  addEventListener('online', () => (offline.hasNetwork.value = true));
  addEventListener('offline', () => (offline.hasNetwork.value = false));
  // Not there in every browser, and not on a page without https.
  if (navigator.serviceWorker === undefined) return;
  const { serviceWorker } = navigator;
  holdVersion();
  offline.isWhole.value = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', takenOver);
  try {
    registration = await serviceWorker.register(new URL('sw.js', document.baseURI), { updateViaCache: 'none' });
  } catch {
    // Without it the page works as it is, from the network.
    return;
  }
  // A browser that is told to have none answers with nothing.
  if (registration === undefined) return;
  await forgetEarlierPieces();
  follow(registration);
}

function follow(followed: ServiceWorkerRegistration): void {
  const look = (): void => {
    if (followed.waiting !== null && navigator.serviceWorker.controller !== null) offline.newer.value = 'waits';
  };
  look();
  followed.addEventListener('updatefound', () => followed.installing?.addEventListener('statechange', look));
  let asked_ms = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - asked_ms < ASK_AGAIN_MS) return;
    asked_ms = Date.now();
    followed.update().catch(() => undefined);
  });
}

function takenOver(): void {
  if (isAsked) return location.reload();
  // The first one to serve this window is no newer version.
  if (offline.isWhole.value) offline.newer.value = 'elsewhere';
  offline.isWhole.value = true;
}

/** Starts the newer version, by the reader's wish: what is unsaved is saved first, and other windows go on with theirs. */
export async function startNewer(): Promise<void> {
  await keepNow();
  const waiting = registration?.waiting;
  if (registration === undefined || waiting === null || waiting === undefined) return location.reload();
  await putPiecesAside(registration.scope);
  isAsked = true;
  waiting.postMessage({ type: 'SKIP_WAITING' });
}
