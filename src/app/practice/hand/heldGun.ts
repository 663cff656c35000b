import { FARTHEST_M, NEAREST_M, type HandSettings } from './handSettings.ts';
import { pitchOfLean, yawOfLean, type PenLean } from './penHand.ts';
import { Trigger } from './trigger.ts';
import { swingWithArm, type DraftPose } from './wristPose.ts';

/** Assumed: past this the spray hardly meets the panel; a recording's reader shuts the trigger at 85°. */
const MOST_TILT_RAD = (80 * Math.PI) / 180;

interface Tilt {
  pitch_rad: number;
  yaw_rad: number;
}

/** The gun as the devices hold it at this moment. They change it; `RowWriter` writes it down. */
export class HeldGun {
  readonly trigger = new Trigger();
  /** Turned by keys; stays as left. */
  readonly keyTilt: Tilt = { pitch_rad: 0, yaw_rad: 0 };
  /** By the gamepad's stick; square when let go. */
  readonly stickTilt: Tilt = { pitch_rad: 0, yaw_rad: 0 };
  readonly penLean: PenLean = { right: 0, up: 0 };
  /** Pen turned about its own axis, clockwise as the person sees it. */
  penTwist_rad = 0;

  /** Where the hand points: the nozzle's foot, or the place on the arm's arc. NaN before it was first put somewhere. */
  private x_m = NaN;
  private y_m = NaN;
  private distance_m: number;

  constructor(
    private current: HandSettings,
    private readonly settingsChanged: (settings: HandSettings) => void,
  ) {
    this.distance_m = held(current.meantDistance_m);
  }

  get settings(): HandSettings {
    return this.current;
  }

  get isPlaced(): boolean {
    return !Number.isNaN(this.x_m);
  }

  place(x_m: number, y_m: number): void {
    this.x_m = x_m;
    this.y_m = y_m;
  }

  move(right_m: number, up_m: number): void {
    this.x_m += right_m;
    this.y_m += up_m;
  }

  changeDistance(by_m: number): void {
    this.distance_m = held(this.distance_m + by_m);
  }

  /** New settings from the page. The distance of the hand stays unless another one is meant. */
  setSettings(settings: HandSettings): void {
    if (settings.meantDistance_m !== this.current.meantDistance_m) this.distance_m = held(settings.meantDistance_m);
    this.current = settings;
  }

  /** Settings changed by the hand itself; the page is told. */
  changeSettings(changed: Partial<HandSettings>): void {
    this.current = { ...this.current, ...changed };
    this.settingsChanged(this.current);
  }

  turnFan(): void {
    this.changeSettings({ fanTurned: !this.current.fanTurned });
  }

  /** No pen holds the gun: it stands as keys and stick have it. */
  forgetPen(): void {
    this.penLean.right = 0;
    this.penLean.up = 0;
    this.penTwist_rad = 0;
  }

  /** Writes place, angles and trigger into `draft`; the time is the caller's. */
  describe(draft: DraftPose): void {
    const fan_rad = (this.current.fanTurned ? 0 : Math.PI / 2) - this.penTwist_rad;
    const penYaw_rad = yawOfLean(this.penLean, fan_rad);
    draft.x_m = this.x_m;
    draft.y_m = this.y_m;
    draft.z_m = this.distance_m;
    draft.fan_rad = fan_rad;
    draft.pitch_rad = tilted(this.keyTilt.pitch_rad + this.stickTilt.pitch_rad + pitchOfLean(this.penLean, fan_rad, penYaw_rad));
    draft.yaw_rad = tilted(this.keyTilt.yaw_rad + this.stickTilt.yaw_rad + penYaw_rad);
    draft.trigger = this.trigger.amount;
    if (this.current.mode === 'free') return;
    swingWithArm(draft, this.current);
    draft.pitch_rad = tilted(draft.pitch_rad);
    draft.yaw_rad = tilted(draft.yaw_rad);
  }
}

function held(distance_m: number): number {
  return Math.max(NEAREST_M, Math.min(FARTHEST_M, distance_m));
}

function tilted(angle_rad: number): number {
  return Math.max(-MOST_TILT_RAD, Math.min(MOST_TILT_RAD, angle_rad));
}
