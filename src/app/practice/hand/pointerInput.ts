import type { HandView } from './handSettings.ts';
import type { HeldGun } from './heldGun.ts';
import { penTrigger, readLean } from './penHand.ts';
import type { RowWriter } from './rowWriter.ts';
import { AIR_ONLY, FULL } from './trigger.ts';

const MAIN_BUTTON = 1;
const SECONDARY_BUTTON = 2;
/** Way of a second finger, or of a pen with its barrel button, to distance. Assumed: a hand's span goes through the usual distances. */
const DISTANCE_M_PX = 0.001;

/** What a pointer has hold of, and where it was last. */
interface Hold {
  readonly id: number;
  readonly type: string;
}
interface Lever {
  readonly id: number;
  y_px: number;
}

/**
 * Mouse, pen and fingers. One pointer holds the gun and every one of its samples becomes a row;
 * any other is ignored, but for a second finger, whose vertical way changes the distance. A mouse
 * that pulls no trigger gives way to a pen or a finger, since it may just lie there.
 *
 * The root must have `touch-action: none`, or the browser takes the fingers for scrolling.
 */
export class PointerInput {
  private holder: Hold | null = null;
  private secondFinger: Lever | null = null;
  /** Where the pen was when the barrel button was last seen held in the air. */
  private barrelY_px: number | null = null;
  private mouseButtons = 0;

  constructor(
    private readonly root: HTMLElement,
    private readonly view: HandView,
    private readonly gun: HeldGun,
    private readonly rows: RowWriter,
    private readonly closeAt: (time_ms: number) => void,
  ) {}

  listen(window: EventTarget, signal: AbortSignal): void {
    const { root } = this;
    root.addEventListener('pointerdown', (event) => this.down(event), { signal });
    root.addEventListener('pointermove', (event) => this.move(event), { signal });
    root.addEventListener('pointerup', (event) => this.up(event), { signal });
    root.addEventListener('pointercancel', (event) => this.lose(event), { signal });
    root.addEventListener('lostpointercapture', (event) => this.loseCapture(event), { signal });
    root.addEventListener('pointerleave', (event) => this.leave(event), { signal });
    root.addEventListener('contextmenu', (event) => event.preventDefault(), { signal });
    for (const type of ['keydown', 'keyup']) window.addEventListener(type, (event) => this.shift(event as KeyboardEvent), { signal });
  }

  private down(event: PointerEvent): void {
    if (this.isSecondFinger(event)) {
      this.secondFinger = { id: event.pointerId, y_px: event.clientY };
      this.root.setPointerCapture(event.pointerId);
      return;
    }
    if (!this.holds(event)) return;
    this.root.setPointerCapture(event.pointerId);
    this.sample(event);
  }

  private move(event: PointerEvent): void {
    if (this.secondFinger?.id === event.pointerId) {
      // No row of its own: its samples lie between those of the first finger and come after them.
      this.gun.changeDistance((this.secondFinger.y_px - event.clientY) * DISTANCE_M_PX);
      this.secondFinger.y_px = event.clientY;
      return;
    }
    if (!this.holds(event)) return;
    const samples = event.getCoalescedEvents?.() ?? [];
    if (samples.length === 0) this.sample(event);
    for (const sample of samples) this.sample(sample);
  }

  private up(event: PointerEvent): void {
    if (this.secondFinger?.id === event.pointerId) this.secondFinger = null;
    if (this.holder?.id !== event.pointerId) return;
    this.sample(event);
    if (event.pointerType === 'touch') this.holder = null;
  }

  private lose(event: PointerEvent): void {
    if (this.secondFinger?.id === event.pointerId) this.secondFinger = null;
    if (this.holder?.id !== event.pointerId) return;
    this.closeAt(event.timeStamp);
    this.holder = null;
    this.barrelY_px = null;
  }

  /** Capture also ends after every release of a button; only one that is lost in mid-pull closes the trigger. */
  private loseCapture(event: PointerEvent): void {
    if (this.gun.trigger.of('pointer') > 0) this.lose(event);
  }

  /** A mouse may leave while keys or a gamepad spray on; a pen that leaves is lifted off its work. */
  private leave(event: PointerEvent): void {
    if (event.pointerType === 'pen' || this.gun.trigger.of('pointer') > 0) this.lose(event);
    else if (this.holder?.id === event.pointerId) this.holder = null;
  }

  /** Shift pressed or let go while the mouse stands still, which sends no event. */
  private shift(event: KeyboardEvent): void {
    if (event.key !== 'Shift' || event.repeat || this.holder?.type !== 'mouse' || this.mouseButtons === 0) return;
    this.rows.catchUp(event.timeStamp, 'event');
    this.gun.trigger.set('pointer', mouseTrigger(this.mouseButtons, event.type === 'keydown'));
    this.rows.add(event.timeStamp, 'event');
  }

  private isSecondFinger(event: PointerEvent): boolean {
    return event.pointerType === 'touch' && this.holder?.type === 'touch' && this.holder.id !== event.pointerId && this.secondFinger === null;
  }

  /** Whether the gun is, or comes, into the hand of this pointer. One that was pressed before is not let in half-way. */
  private holds(event: PointerEvent): boolean {
    if (this.holder?.id === event.pointerId) return true;
    if (this.holder !== null && !this.givesWay(this.holder, event)) return false;
    if (event.type !== 'pointerdown' && event.buttons !== 0) return false;
    this.holder = { id: event.pointerId, type: event.pointerType };
    this.gun.trigger.set('pointer', 0);
    return true;
  }

  private givesWay(holder: Hold, newcomer: PointerEvent): boolean {
    return holder.type === 'mouse' && newcomer.pointerType !== 'mouse' && this.gun.trigger.of('pointer') === 0;
  }

  private sample(event: PointerEvent): void {
    this.rows.catchUp(event.timeStamp, 'event');
    if (event.pointerType === 'pen') this.readPen(event);
    else this.readPlain(event);
    this.rows.add(event.timeStamp, 'event');
  }

  private readPlain(event: PointerEvent): void {
    const { gun } = this;
    gun.forgetPen();
    this.place(event);
    if (event.pointerType === 'touch') {
      const pulls = gun.settings.touchTrigger === 'finger' && (event.buttons & MAIN_BUTTON) !== 0;
      gun.trigger.set('pointer', pulls ? FULL : 0);
      return;
    }
    this.mouseButtons = event.buttons;
    gun.trigger.set('pointer', mouseTrigger(event.buttons, event.shiftKey));
  }

  /**
   * Browsers give no height of a hovering pen, so the gun's distance cannot follow it; the barrel
   * button makes the hovering pen a lever instead, and the gun stands meanwhile.
   */
  private readPen(event: PointerEvent): void {
    const { gun } = this;
    const touches = event.pressure > 0 || (event.buttons & MAIN_BUTTON) !== 0;
    const isLever = !touches && (event.buttons & SECONDARY_BUTTON) !== 0 && gun.isPlaced;
    if (isLever) {
      gun.changeDistance(((this.barrelY_px ?? event.clientY) - event.clientY) * DISTANCE_M_PX);
      this.barrelY_px = event.clientY;
    } else {
      this.barrelY_px = null;
      this.place(event);
    }
    readLean(event, gun.penLean);
    gun.penTwist_rad = (event.twist * Math.PI) / 180;
    gun.trigger.set('pointer', penTrigger(touches, event.pressure));
  }

  private place(event: PointerEvent): void {
    const [x_m, y_m] = this.view.toPanel(event.clientX, event.clientY);
    this.gun.place(x_m, y_m);
  }
}

/** Like a gun's trigger: the secondary button, or Shift, stops at air; the main button goes through to full. */
function mouseTrigger(buttons: number, shift: boolean): number {
  if ((buttons & MAIN_BUTTON) !== 0) return shift ? AIR_ONLY : FULL;
  return (buttons & SECONDARY_BUTTON) !== 0 ? AIR_ONLY : 0;
}
