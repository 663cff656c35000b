import type { HeldGun } from './heldGun.ts';

export const KEY_HELP =
  'Arrow keys move the gun. Space pulls the trigger; Shift with Space, or X, gives air only. ' +
  'Page Up and Page Down, or ] and [, take the gun 5 mm farther and nearer. ' +
  'D and A yaw the gun, W and S pitch it, 2° a press; R sets it square. F turns the fan. ' +
  'Comma and full stop move the pivot of the arm 0.1 m to the left and right. ' +
  'Plus and minus change the speed of the arrow keys by 0.05 m/s.';

/** Keys that act for as long as they are held. */
export type HeldCommand = 'left' | 'right' | 'up' | 'down' | 'spray' | 'air';

const HELD: Readonly<Record<string, HeldCommand>> = {
  arrowleft: 'left',
  arrowright: 'right',
  arrowup: 'up',
  arrowdown: 'down',
  ' ': 'spray',
  x: 'air',
};

const DISTANCE_STEP_M = 0.005;
const TILT_STEP_RAD = (2 * Math.PI) / 180;
const PIVOT_STEP_M = 0.1;
const SPEED_STEP_M_S = 0.05;
/** Assumed: from creeping to the fastest that a hand sprays. */
const SLOWEST_M_S = 0.05;
const FASTEST_M_S = 2;

const STEPS: Readonly<Record<string, (gun: HeldGun) => void>> = {
  pageup: (gun) => gun.changeDistance(DISTANCE_STEP_M),
  pagedown: (gun) => gun.changeDistance(-DISTANCE_STEP_M),
  ']': (gun) => gun.changeDistance(DISTANCE_STEP_M),
  '[': (gun) => gun.changeDistance(-DISTANCE_STEP_M),
  d: (gun) => turn(gun, 0, 1),
  a: (gun) => turn(gun, 0, -1),
  w: (gun) => turn(gun, 1, 0),
  s: (gun) => turn(gun, -1, 0),
  r: square,
  f: (gun) => gun.turnFan(),
  ',': (gun) => movePivot(gun, -1),
  '.': (gun) => movePivot(gun, 1),
  '+': (gun) => changeSpeed(gun, 1),
  '=': (gun) => changeSpeed(gun, 1),
  '-': (gun) => changeSpeed(gun, -1),
  _: (gun) => changeSpeed(gun, -1),
};

export function heldCommandOf(key: string): HeldCommand | undefined {
  return HELD[key.toLowerCase()];
}

export function stepOf(key: string): ((gun: HeldGun) => void) | undefined {
  return STEPS[key.toLowerCase()];
}

function turn({ keyTilt }: HeldGun, pitchSteps: number, yawSteps: number): void {
  keyTilt.pitch_rad += pitchSteps * TILT_STEP_RAD;
  keyTilt.yaw_rad += yawSteps * TILT_STEP_RAD;
}

function square({ keyTilt }: HeldGun): void {
  keyTilt.pitch_rad = 0;
  keyTilt.yaw_rad = 0;
}

function movePivot(gun: HeldGun, steps: number): void {
  gun.changeSettings({ pivotX_m: tidy(gun.settings.pivotX_m + steps * PIVOT_STEP_M) });
}

function changeSpeed(gun: HeldGun, steps: number): void {
  const speed_m_s = tidy(gun.settings.keySpeed_m_s + steps * SPEED_STEP_M_S);
  gun.changeSettings({ keySpeed_m_s: Math.max(SLOWEST_M_S, Math.min(FASTEST_M_S, speed_m_s)) });
}

/** Keeps 0.1 + 0.2 at 0.3 on the page. */
function tidy(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
