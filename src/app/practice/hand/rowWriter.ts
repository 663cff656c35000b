import { wanderNoise, type Pose } from '../../../../sim/index.ts';
import { LEAP_MS, RisingClock, type TimeSource } from './clock.ts';
import type { HeldGun } from './heldGun.ts';
import { roundedPose } from './roundedPose.ts';
import type { DraftPose } from './wristPose.ts';

/**
 * A gun without news for so long is written down as standing, so that its stop is not read as a slow
 * slide: a frame, or half as long again as the device lets pass between two moves, up to a limit. A
 * slow device would otherwise be read as a gun that stands between its moves.
 */
const STANDING_MS = 16;
const PATIENCE = 1.5;
const MOST_STANDING_MS = 80;
/** Gaps between moves that are remembered. */
const GAPS = 9;
/** It is then said to stand until so long ago: a move since then may still be on its way to the page. */
const BEHIND_MS = 8;
/** How long an error of the distance lasts. Assumed, as for the wander of a planned hand. */
const WANDER_S = 1.3;
const DISTANCE_CHANNEL = 0;
/** However the distance wanders, the nozzle stays off the panel by this. */
const CLEAR_M = 0.01;
const TURN_RAD = 2 * Math.PI;

/** Writes the held gun down as rows of a recording, each handed on at once. */
export class RowWriter {
  private readonly clock = new RisingClock();
  private readonly draft = emptyDraft();
  /** The gun as last written, before wander and rounding. */
  private readonly written = emptyDraft();
  private last: Pose | null = null;
  private rows = 0;
  private readonly gaps_ms: number[] = [];
  private moved_ms = NaN;
  private standing_ms = STANDING_MS;
  private noise: (place: number, channel: number) => number;
  private seed: number;

  constructor(
    private readonly gun: HeldGun,
    private readonly emit: (pose: Pose) => void,
  ) {
    this.seed = gun.settings.wander.seed;
    this.noise = wanderNoise(this.seed);
  }

  get pose(): Pose | null {
    return this.last;
  }

  get count(): number {
    return this.rows;
  }

  /** To be called before the gun is changed: where the time has leapt since the last row, the trigger closes there. */
  catchUp(time_ms: number, source: TimeSource): void {
    if (this.last === null || this.clock.passed_ms(time_ms, source) <= LEAP_MS) return;
    this.gun.trigger.forget();
    if (this.last.trigger === 0) return;
    this.written.trigger = 0;
    this.handOn({ ...this.last, t_s: this.clock.justAfter(), trigger: 0 });
  }

  /** A row of the gun as it is now, if it has a place yet. */
  add(time_ms: number, source: TimeSource): void {
    if (!this.gun.isPlaced) return;
    this.gun.describe(this.draft);
    if (source === 'event') this.noteGap(time_ms);
    this.write(time_ms, source);
  }

  /** A row if the gun has changed since the last, or has stood for its while. */
  addIfDue(time_ms: number): void {
    if (!this.gun.isPlaced) return;
    this.gun.describe(this.draft);
    // A frame far behind the last row tells of a clock set back, and is written like one far ahead.
    const passed_ms = this.clock.passed_ms(time_ms, 'frame');
    const stands = isSame(this.draft, this.written);
    if (stands && Math.abs(passed_ms) < this.standing_ms) return;
    this.write(stands && passed_ms > 0 && passed_ms <= LEAP_MS ? time_ms - BEHIND_MS : time_ms, 'frame');
  }

  /** The middle gap of the last moves counts: a pause among them does not make the device a slow one. */
  private noteGap(time_ms: number): void {
    const gap_ms = time_ms - this.moved_ms;
    this.moved_ms = time_ms;
    if (!(gap_ms > 0 && gap_ms < LEAP_MS)) return;
    this.gaps_ms.push(gap_ms);
    if (this.gaps_ms.length < GAPS) return;
    const middle_ms = [...this.gaps_ms].sort((a, b) => a - b)[GAPS >> 1] as number;
    this.standing_ms = Math.min(MOST_STANDING_MS, Math.max(STANDING_MS, PATIENCE * middle_ms));
    this.gaps_ms.shift();
  }

  private write(time_ms: number, source: TimeSource): void {
    const { draft } = this;
    Object.assign(this.written, draft);
    draft.t_s = this.clock.read(time_ms, source);
    draft.z_m = Math.max(CLEAR_M, draft.z_m + this.wander_m(draft.t_s));
    // Rows are read linearly, so the angle goes on from the last row rather than jump by a turn.
    if (this.last !== null) draft.fan_rad -= TURN_RAD * Math.round((draft.fan_rad - this.last.fan_rad) / TURN_RAD);
    this.handOn(roundedPose(draft));
  }

  private wander_m(t_s: number): number {
    const { amount_m, seed } = this.gun.settings.wander;
    if (amount_m === 0) return 0;
    if (seed !== this.seed) {
      this.seed = seed;
      this.noise = wanderNoise(seed);
    }
    return amount_m * this.noise(t_s / WANDER_S, DISTANCE_CHANNEL);
  }

  private handOn(pose: Pose): void {
    this.last = pose;
    this.rows++;
    this.emit(pose);
  }
}

function emptyDraft(): DraftPose {
  return { t_s: 0, x_m: 0, y_m: 0, z_m: 0, fan_rad: 0, pitch_rad: 0, yaw_rad: 0, trigger: 0 };
}

function isSame(a: Readonly<Pose>, b: Readonly<Pose>): boolean {
  return (
    a.x_m === b.x_m &&
    a.y_m === b.y_m &&
    a.z_m === b.z_m &&
    a.fan_rad === b.fan_rad &&
    a.pitch_rad === b.pitch_rad &&
    a.yaw_rad === b.yaw_rad &&
    a.trigger === b.trigger
  );
}
