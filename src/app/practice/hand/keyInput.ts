import { LEAP_MS } from './clock.ts';
import type { HeldGun } from './heldGun.ts';
import { heldCommandOf, stepOf, type HeldCommand } from './keyCommands.ts';
import { KeyRamp } from './keyRamp.ts';
import type { RowWriter } from './rowWriter.ts';
import { AIR_ONLY, FULL } from './trigger.ts';

/** The gun held by the keyboard alone, while the root itself has the focus. */
export class KeyInput {
  private readonly ramp = new KeyRamp();
  /** Keys that are down, by their place on the keyboard: Shift may change a key's name before it comes up. */
  private readonly down = new Map<string, HeldCommand | 'step'>();
  private shift = false;
  private before_ms = NaN;

  constructor(
    private readonly gun: HeldGun,
    private readonly rows: RowWriter,
    private readonly placeAtCentre: () => void,
  ) {}

  listen(root: HTMLElement, signal: AbortSignal): void {
    root.addEventListener('keydown', (event) => event.target === root && this.press(event), { signal });
    root.addEventListener('keyup', (event) => this.letGo(event), { signal });
    root.addEventListener('blur', (event) => this.leave(event), { signal });
  }

  /** Moves the gun on to `now_ms` by the keys as they are. */
  advance(now_ms: number): void {
    const passed_ms = now_ms - this.before_ms;
    if (passed_ms < 0 && passed_ms >= -LEAP_MS) return;
    this.before_ms = now_ms;
    // What happened to the keys meanwhile is not known.
    if (Math.abs(passed_ms) > LEAP_MS) this.release();
    if (!(passed_ms > 0 && passed_ms <= LEAP_MS) || !this.gun.isPlaced) return;
    const right = this.held('right') - this.held('left');
    const up = this.held('up') - this.held('down');
    const both = Math.max(1, Math.hypot(right, up));
    this.ramp.advance(passed_ms / 1000, right / both, up / both, this.gun.settings.keySpeed_m_s);
    this.gun.move(this.ramp.right_m, this.ramp.up_m);
  }

  /** Lets all keys go and stops the gun. */
  release(): void {
    this.down.clear();
    this.ramp.stop();
    this.gun.trigger.set('keys', 0);
  }

  private press(event: KeyboardEvent): void {
    // While Meta is down some systems do not tell when another key comes up.
    if (event.key === 'Meta') this.release();
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Shift' && this.down.size > 0) this.change(event, () => undefined);
    const command = heldCommandOf(event.key);
    const step = stepOf(event.key);
    if (command === undefined && step === undefined) return;
    event.preventDefault();
    if (event.repeat || this.down.has(placeOf(event))) return;
    this.change(event, () => {
      this.placeAtCentre();
      this.down.set(placeOf(event), command ?? 'step');
      step?.(this.gun);
    });
  }

  private letGo(event: KeyboardEvent): void {
    const matters = event.key === 'Shift' ? this.down.size > 0 : this.down.has(placeOf(event));
    if (!matters) return;
    this.change(event, () => this.down.delete(placeOf(event)));
  }

  /** The focus goes elsewhere, and with it the news of keys coming up. */
  private leave(event: Event): void {
    if (this.down.size === 0) return;
    this.rows.catchUp(event.timeStamp, 'event');
    this.advance(event.timeStamp);
    this.release();
    this.rows.add(event.timeStamp, 'event');
  }

  private change(event: KeyboardEvent, act: () => void): void {
    this.rows.catchUp(event.timeStamp, 'event');
    this.advance(event.timeStamp);
    act();
    this.shift = event.shiftKey;
    const pull = this.held('spray') === 1 && !this.shift ? FULL : Math.max(this.held('spray'), this.held('air')) * AIR_ONLY;
    this.gun.trigger.set('keys', pull);
    this.rows.add(event.timeStamp, 'event');
  }

  private held(command: HeldCommand): 0 | 1 {
    for (const one of this.down.values()) if (one === command) return 1;
    return 0;
  }
}

function placeOf(event: KeyboardEvent): string {
  return event.code === '' ? event.key : event.code;
}
