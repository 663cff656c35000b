/** Where the pieces of earlier versions lie that a window may still ask for; the service worker looks here last (.build/installable.ts). */
const EARLIER = 'crosscoat-earlier';
/** Every window holds a lock of this name and its version's for as long as it is open. */
const LOCK = 'crosscoat version ';

/** Names this window's version: the page's first script, whose name changes when anything of the build does. */
function ownVersion(): string {
  return document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.src ?? '';
}

/** Tells other windows which version runs here, until this window is closed. */
export function holdVersion(): void {
  void navigator.locks?.request(LOCK + ownVersion(), { mode: 'shared' }, () => new Promise<never>(() => undefined));
}

/**
 * Copies all pieces that the service worker keeps now, the running version's among them: once a newer version
 * has taken over, a window that still runs this one finds there what it has not opened yet.
 */
export async function putPiecesAside(scope: string): Promise<void> {
  const [from, to] = [await caches.open(`workbox-precache-v2-${scope}`), await caches.open(EARLIER)];
  for (const request of await from.keys()) {
    const piece = request.url.includes('/assets/') ? await from.match(request) : undefined;
    if (piece !== undefined) await to.put(request, piece);
  }
}

/** Lets go of earlier versions' pieces where no window runs one any more. */
export async function forgetEarlierPieces(): Promise<void> {
  if (navigator.locks === undefined) return;
  const { held = [] } = await navigator.locks.query();
  const isEarlierOpen = held.some(({ name = '' }) => name.startsWith(LOCK) && name !== LOCK + ownVersion());
  if (!isEarlierOpen) await caches.delete(EARLIER);
}
