import { AIR_ONLY, FULL } from './trigger.ts';

/** A pen that touches lighter than this lets out air only. Assumed: common pens report 0.05 to 0.1 when they just rest. */
const AIR_PRESSURE = 0.15;
/** From here on the trigger is full. Assumed: a firm line of handwriting; full pressure tires the hand. */
const FULL_PRESSURE = 0.7;
/** A pen lying flatter than this is read as standing so. Assumed: sensors are poor there and the tangent runs away. */
const MOST_LEAN_RAD = (60 * Math.PI) / 180;

/** What a pen's events tell of how it is held. */
export type PenStance = Pick<PointerEvent, 'tiltX' | 'tiltY'> & Partial<Pick<PointerEvent, 'altitudeAngle' | 'azimuthAngle'>>;

/** Where a pen's tail stands over its tip, in m to the right and up for each m off the glass. */
export interface PenLean {
  right: number;
  up: number;
}

/** Pressure to trigger: hovering 0, a light touch air only, then opening in proportion to full. */
export function penTrigger(touches: boolean, pressure: number): number {
  if (!touches) return 0;
  const opening = (pressure - AIR_PRESSURE) / (FULL_PRESSURE - AIR_PRESSURE);
  return AIR_ONLY + (FULL - AIR_ONLY) * Math.max(0, Math.min(1, opening));
}

/** Reads a pen's lean. Altitude and azimuth are finer than the whole degrees of the tilts, but some browsers leave them upright. */
export function readLean(pen: PenStance, lean: PenLean): void {
  const { altitudeAngle, azimuthAngle } = pen;
  if (altitudeAngle !== undefined && azimuthAngle !== undefined && altitudeAngle < Math.PI / 2) {
    const flat = 1 / Math.tan(Math.max(altitudeAngle, Math.PI / 2 - MOST_LEAN_RAD));
    setLean(lean, flat * Math.cos(azimuthAngle), flat * Math.sin(azimuthAngle));
    return;
  }
  setLean(lean, Math.tan((pen.tiltX * Math.PI) / 180), Math.tan((pen.tiltY * Math.PI) / 180));
}

/** Pointer events count down as positive; the panel counts up. */
function setLean(lean: PenLean, right: number, down: number): void {
  const most = Math.tan(MOST_LEAN_RAD);
  const flat = Math.hypot(right, down);
  const kept = flat > most ? most / flat : 1;
  lean.right = right * kept + 0;
  lean.up = -down * kept + 0;
}

/**
 * Pitch and yaw of a gun held as the pen is. The pen is the gun: its tip the nozzle, and the spray
 * leaves along the pen, from tail to tip. So the aim swings to the side away from the tail: a pen
 * whose tail leans to the right sprays to the left. An upright pen is square.
 */
export function yawOfLean(lean: Readonly<PenLean>, fan_rad: number): number {
  return Math.atan(-lean.right * Math.cos(fan_rad) - lean.up * Math.sin(fan_rad));
}

/** @param yaw_rad the lean's own yaw, see `yawOfLean`. */
export function pitchOfLean(lean: Readonly<PenLean>, fan_rad: number, yaw_rad: number): number {
  return Math.atan(Math.cos(yaw_rad) * (lean.right * Math.sin(fan_rad) - lean.up * Math.cos(fan_rad)));
}
