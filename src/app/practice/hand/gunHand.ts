import type { Pose } from '../../../../sim/index.ts';
import type { TimeSource } from './clock.ts';
import { GamepadInput, type PadSource } from './gamepadInput.ts';
import type { HandSettings, HandView } from './handSettings.ts';
import { HeldGun } from './heldGun.ts';
import { KeyInput } from './keyInput.ts';
import { PointerInput } from './pointerInput.ts';
import { RowWriter } from './rowWriter.ts';
import { listenToWheel } from './wheelInput.ts';

export type { HandSettings, HandView } from './handSettings.ts';
export { KEY_HELP } from './keyCommands.ts';

/** A spray gun held by mouse, touch, pen, keys or gamepad. */
export interface GunHand {
  /** To be called every frame with `performance.now()`: moves on what sends no events. @returns the rows that this call added. */
  tick(now_ms: number): number;
  /** The last row; null before the gun was first put somewhere. */
  readonly pose: Pose | null;
  /** The trigger pad on the screen, 0 to 1. It must lie outside the root, or its touches move the gun too. */
  setPad(trigger: number): void;
  setSettings(settings: HandSettings): void;
  /** Closes the trigger now; what is still held opens it only after it was let go. */
  closeTrigger(): void;
  /** Closes the trigger and lets all devices go. */
  stop(): void;
}

export interface GunHandOptions {
  /** Settings that keys or gamepad changed: fan, pivot, speed of the keys. */
  readonly settingsChanged?: (settings: HandSettings) => void;
  /** The page around the root; a test gives its own. */
  readonly window?: EventTarget;
  readonly document?: EventTarget & { readonly visibilityState: DocumentVisibilityState };
  readonly navigator?: PadSource;
  /** ms, the clock of the events' time stamps. */
  readonly now?: () => number;
}

/**
 * Puts the gun into the hand of whoever works on `root`, which must take the focus (keys) and have
 * `touch-action: none`. Each row goes to `emit` at once, rounded as a recording holds it, its time
 * in seconds from the first and strictly rising.
 */
export function startGunHand(root: HTMLElement, view: HandView, settings: HandSettings, emit: (pose: Pose) => void, options: GunHandOptions = {}): GunHand {
  const { window: page = window, document: tab = document, now = () => performance.now() } = options;
  const gun = new HeldGun(settings, (changed) => options.settingsChanged?.(changed));
  const rows = new RowWriter(gun, emit);
  const placeAtCentre = (): void => {
    if (gun.isPlaced) return;
    const box = root.getBoundingClientRect();
    gun.place(...view.toPanel(box.left + box.width / 2, box.top + box.height / 2));
  };
  const keys = new KeyInput(gun, rows, placeAtCentre);
  const gamepad = new GamepadInput(options.navigator ?? navigator, gun, placeAtCentre);
  const close = (time_ms: number, source: TimeSource): void => {
    rows.catchUp(time_ms, source);
    const wasOpen = gun.trigger.amount > 0;
    gun.trigger.close();
    keys.release();
    if (wasOpen) rows.add(time_ms, source);
  };
  const closeAt = (time_ms: number): void => close(time_ms, 'event');
  const pointer = new PointerInput(root, view, gun, rows, closeAt);

  const listening = new AbortController();
  const { signal } = listening;
  pointer.listen(page, signal);
  keys.listen(root, signal);
  listenToWheel(root, gun, rows, signal);
  page.addEventListener('blur', (event) => closeAt(event.timeStamp), { signal });
  page.addEventListener('pagehide', (event) => closeAt(event.timeStamp), { signal });
  tab.addEventListener('visibilitychange', (event) => tab.visibilityState === 'hidden' && closeAt(event.timeStamp), { signal });

  return {
    tick: (now_ms) => {
      const before = rows.count;
      rows.catchUp(now_ms, 'frame');
      keys.advance(now_ms);
      gamepad.poll(now_ms);
      rows.addIfDue(now_ms);
      return rows.count - before;
    },
    get pose() {
      return rows.pose;
    },
    setPad: (trigger) => {
      const now_ms = now();
      rows.catchUp(now_ms, 'frame');
      gun.trigger.set('pad', Math.max(0, Math.min(1, trigger)));
      rows.add(now_ms, 'frame');
    },
    setSettings: (changed) => gun.setSettings(changed),
    closeTrigger: () => close(now(), 'frame'),
    stop: () => {
      close(now(), 'frame');
      listening.abort();
    },
  };
}
