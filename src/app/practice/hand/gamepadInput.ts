import { LEAP_MS } from './clock.ts';
import type { HeldGun } from './heldGun.ts';
import { AIR_ONLY } from './trigger.ts';

/** The part of a gamepad that is read, in the browsers' standard layout. */
export interface PadState {
  readonly connected: boolean;
  readonly axes: readonly number[];
  readonly buttons: readonly { readonly pressed: boolean; readonly value: number }[];
}

/** Where gamepads are found; browsers hide them from pages that are not secure. */
export interface PadSource {
  getGamepads?(): readonly (PadState | null)[];
}

const FAN_BUTTON = 3;
const LEFT_BUMPER = 4;
const RIGHT_BUMPER = 5;
const RIGHT_TRIGGER = 7;
/** A stick within this of its middle is let go. */
const DEAD_ZONE = 0.12;
const FULL_SPEED_M_S = 1;
const MOST_TILT_RAD = Math.PI / 4;
const DISTANCE_SPEED_M_S = 0.1;
/** Below this the trigger's own spring is not yet taken up. */
const TRIGGER_SLACK = 0.1;

/** Asking for gamepads takes a browser a millisecond or more; where there is none it is asked this often. */
const LOOK_MS = 500;

/** The gun held by a gamepad, polled every frame: it sends no events. */
export class GamepadInput {
  private before_ms = NaN;
  private isThere = false;
  private looked_ms = -Infinity;
  private fanWasPressed = false;

  constructor(
    private readonly source: PadSource,
    private readonly gun: HeldGun,
    private readonly placeAtCentre: () => void,
  ) {}

  poll(now_ms: number): void {
    const passed_ms = now_ms - this.before_ms;
    this.before_ms = now_ms;
    if (!this.isThere && now_ms - this.looked_ms < LOOK_MS) return;
    this.looked_ms = now_ms;
    const pad = this.source.getGamepads?.().find((one) => one?.connected === true) ?? null;
    this.isThere = pad !== null;
    if (pad === null) this.letGo();
    else this.read(pad, passed_ms > 0 && passed_ms <= LEAP_MS ? passed_ms / 1000 : 0);
  }

  private letGo(): void {
    this.gun.trigger.set('gamepad', 0);
    this.gun.stickTilt.pitch_rad = 0;
    this.gun.stickTilt.yaw_rad = 0;
    this.fanWasPressed = false;
  }

  private read(pad: PadState, step_s: number): void {
    const { gun } = this;
    const right = pad.axes[0] ?? 0;
    const down = pad.axes[1] ?? 0;
    const way_m = travel(right, down) ** 2 * FULL_SPEED_M_S * step_s;
    const pull = triggerOf(pad.buttons[RIGHT_TRIGGER]?.value ?? 0);
    if (way_m > 0 || pull > 0) this.placeAtCentre();
    if (way_m > 0) gun.move((way_m * right) / Math.hypot(right, down), (-way_m * down) / Math.hypot(right, down));
    gun.trigger.set('gamepad', pull);
    this.tilt(pad.axes[2] ?? 0, pad.axes[3] ?? 0);
    const farther = held(pad, RIGHT_BUMPER) - held(pad, LEFT_BUMPER);
    gun.changeDistance(farther * DISTANCE_SPEED_M_S * step_s);
    const fanIsPressed = held(pad, FAN_BUTTON) === 1;
    if (fanIsPressed && !this.fanWasPressed) gun.turnFan();
    this.fanWasPressed = fanIsPressed;
  }

  /** Right yaws the gun as the key D does, up pitches it as W does. */
  private tilt(right: number, down: number): void {
    const way = Math.hypot(right, down);
    const share = way > 0 ? travel(right, down) / way : 0;
    this.gun.stickTilt.pitch_rad = -down * share * MOST_TILT_RAD + 0;
    this.gun.stickTilt.yaw_rad = right * share * MOST_TILT_RAD;
  }
}

/** How far a stick is out, 0 at the rim of the dead zone to 1. */
function travel(right: number, down: number): number {
  return Math.max(0, Math.min(1, (Math.hypot(right, down) - DEAD_ZONE) / (1 - DEAD_ZONE)));
}

/** Air first, then the fluid in proportion, as a gun's trigger does. */
function triggerOf(value: number): number {
  return value < TRIGGER_SLACK ? 0 : Math.max(AIR_ONLY, Math.min(1, value));
}

function held(pad: PadState, button: number): 0 | 1 {
  return pad.buttons[button]?.pressed === true ? 1 : 0;
}
