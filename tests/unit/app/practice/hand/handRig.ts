import { setMaxListeners } from 'node:events';
import type { Pose } from '../../../../../sim/index.ts';
import type { PadState } from '../../../../../src/app/practice/hand/gamepadInput.ts';
import { startGunHand, type GunHand, type HandSettings } from '../../../../../src/app/practice/hand/gunHand.ts';

/** Node warns from 11 listeners on one signal; a page does not. */
setMaxListeners(30);

export const SETTINGS: HandSettings = {
  meantDistance_m: 0.2,
  fanTurned: false,
  mode: 'free',
  armLength_m: 0.6,
  pivotX_m: 0.5,
  wander: { amount_m: 0, seed: 1 },
  touchTrigger: 'finger',
  keySpeed_m_s: 0.4,
};

/** 1 px is 1 mm; the panel's origin is at (0, 600) of the client area. */
const VIEW = { toPanel: (x: number, y: number) => [x / 1000, (600 - y) / 1000] as const };

/** A root without a page: 800 by 600 px, centre at (0.4, 0.3) m. */
class Root extends EventTarget {
  readonly captured: number[] = [];
  setPointerCapture(id: number): void {
    this.captured.push(id);
  }
  getBoundingClientRect(): { left: number; top: number; width: number; height: number } {
    return { left: 0, top: 0, width: 800, height: 600 };
  }
}

class Tab extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
}

type Fields = Readonly<Record<string, unknown>>;

/** An event with the fields that a browser would have set. */
export function eventOf(type: string, timeStamp: number, fields: Fields = {}): Event {
  const event = new Event(type, { cancelable: true });
  for (const [name, value] of Object.entries({ timeStamp, ...fields })) Object.defineProperty(event, name, { value });
  return event;
}

const POINTER: Fields = {
  pointerId: 1, pointerType: 'mouse', buttons: 0, clientX: 0, clientY: 0, pressure: 0, tiltX: 0, tiltY: 0, twist: 0, shiftKey: false,
};

/** Everything that a test turns and reads; times in ms, as the page's clock has them. */
export class HandRig {
  readonly rows: Pose[] = [];
  readonly settingsSeen: HandSettings[] = [];
  readonly root = new Root();
  readonly window = new EventTarget();
  readonly document = new Tab();
  readonly hand: GunHand;
  pad: PadState | null = null;
  now_ms = 0;

  constructor(settings: Partial<HandSettings> = {}) {
    this.hand = startGunHand(this.root as unknown as HTMLElement, VIEW, { ...SETTINGS, ...settings }, (pose) => this.rows.push(pose), {
      window: this.window,
      document: this.document,
      navigator: { getGamepads: () => [null, this.pad] },
      now: () => this.now_ms,
      settingsChanged: (changed) => this.settingsSeen.push(changed),
    });
  }

  get last(): Pose {
    return this.rows.at(-1)!;
  }

  get triggers(): number[] {
    return this.rows.map((row) => row.trigger);
  }

  pointer(type: string, time_ms: number, fields: Fields = {}): void {
    this.root.dispatchEvent(eventOf(type, time_ms, { ...POINTER, ...fields }));
  }

  /** One move event that carries `samples`, as a browser hands over a frame's worth. */
  frameOf(samples: readonly { readonly time_ms: number; readonly fields: Fields }[]): void {
    const coalesced = samples.map(({ time_ms, fields }) => eventOf('pointermove', time_ms, { ...POINTER, ...fields }));
    const final = samples.at(-1)!;
    this.pointer('pointermove', final.time_ms, { ...final.fields, getCoalescedEvents: () => coalesced });
  }

  key(type: 'keydown' | 'keyup', key: string, time_ms: number, fields: Fields = {}): Event {
    const event = eventOf(type, time_ms, { key, code: codeOf(key), shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, repeat: false, ...fields });
    this.root.dispatchEvent(event);
    this.window.dispatchEvent(eventOf(type, time_ms, { key, repeat: false, ...fields }));
    return event;
  }

  press(key: string, time_ms: number, fields: Fields = {}): void {
    this.key('keydown', key, time_ms, fields);
    this.key('keyup', key, time_ms + 1, fields);
  }

  /** Frames from `from_ms` to `to_ms`, both included where they fit. @returns the rows the frames said they added. */
  run(from_ms: number, to_ms: number, frame_ms = 16): number {
    let added = 0;
    for (let time_ms = from_ms; time_ms <= to_ms; time_ms += frame_ms) {
      this.now_ms = time_ms;
      added += this.hand.tick(time_ms);
    }
    return added;
  }
}

function codeOf(key: string): string {
  if (key === ' ') return 'Space';
  return key.length === 1 ? `Key${key.toUpperCase()}` : key;
}

/** A gamepad in the standard layout with some axes and buttons set. */
export function gamepad(axes: readonly number[], values: Readonly<Record<number, number>> = {}): PadState {
  return {
    connected: true,
    axes,
    buttons: Array.from({ length: 17 }, (_, i) => ({ pressed: (values[i] ?? 0) > 0, value: values[i] ?? 0 })),
  };
}
