import { state } from '../state.ts';
import { room, type Room } from './keeping.ts';

/** Looked at this often at most. */
const PAUSE_MS = 30_000;
/** Of the room that the browser gives, from which it is told. Assumed: leaves time to save jobs as files. */
const FULL_SHARE = 0.8;

let looked_ms = -Infinity;
let hasAsked = false;
let isTold = false;

/** Looks how much room is left, asks the browser once to keep what is here when there is something to lose, and tells when it gets tight. */
export async function lookAtRoom(): Promise<void> {
  const hasWork = state.past.peek().some(({ replaces }) => replaces === undefined);
  const asks = hasWork && !hasAsked;
  if (!asks && performance.now() - looked_ms < PAUSE_MS) return;
  looked_ms = performance.now();
  hasAsked ||= asks;
  // Pages that came without TLS from another machine have no storage manager.
  const manager = (navigator as { readonly storage?: StorageManager }).storage;
  const { usage, quota } = (await manager?.estimate?.().catch(() => undefined)) ?? {};
  const persisted = await (asks ? manager?.persist?.() : manager?.persisted?.())?.catch(() => null);
  room.value = { persisted: persisted ?? null, usage_B: usage ?? null, quota_B: quota ?? null, privateGuess: await privateGuess(manager, quota) };
  tellTight(room.value);
}

/**
 * Signs of a private window, none of them promised by anybody (from memory, and measured in Chromium): Firefox and Safari refuse
 * the page's private files there, and Chromium then has room for less than twice the heap that it allows a script.
 */
async function privateGuess(manager: StorageManager | undefined, quota: number | undefined): Promise<Room['privateGuess']> {
  const heap_B = (performance as { readonly memory?: { readonly jsHeapSizeLimit: number } }).memory?.jsHeapSizeLimit;
  if (quota !== undefined && heap_B !== undefined && quota < 2 * heap_B) return 'likely';
  return (await manager?.getDirectory?.().then(() => false, () => true)) === true ? 'likely' : 'unknown';
}

function tellTight({ usage_B, quota_B }: Room): void {
  if (usage_B === null || quota_B === null || usage_B < FULL_SHARE * quota_B) {
    isTold = false;
    return;
  }
  // Another message is not pushed aside; the next look tells it.
  if (isTold || state.notice.peek() !== null) return;
  isTold = true;
  const megabytes = (bytes: number): string => `${Math.round(bytes / 1e6).toLocaleString('en')} MB`;
  state.notice.value = {
    title: `The room that the browser gives this page is ${Math.round((100 * usage_B) / quota_B)} % full`,
    text: `${megabytes(usage_B)} of ${megabytes(quota_B)}. Save jobs that you no longer need as files and remove them on the sheet Jobs, before something cannot be kept.`,
    place: {},
  };
}
