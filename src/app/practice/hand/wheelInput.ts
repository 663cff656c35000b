import type { HeldGun } from './heldGun.ts';
import type { RowWriter } from './rowWriter.ts';

const NOTCH_M = 0.01;
/** What browsers send for one notch, in each unit of `deltaMode`: pixels (100 to 120), lines, pages. */
const NOTCH: readonly number[] = [100, 3, 1];

/** Wheel up: farther from the panel. With Control it is the page's zoom, and left alone. */
export function listenToWheel(root: HTMLElement, gun: HeldGun, rows: RowWriter, signal: AbortSignal): void {
  const turn = (event: WheelEvent): void => {
    if (event.ctrlKey) return;
    event.preventDefault();
    rows.catchUp(event.timeStamp, 'event');
    gun.changeDistance(-notches(event) * NOTCH_M);
    rows.add(event.timeStamp, 'event');
  };
  root.addEventListener('wheel', turn, { signal, passive: false });
}

/** Whole notches of a wheel; a touch pad's finer way is taken as it comes. */
function notches(event: WheelEvent): number {
  // Some systems turn the wheel sideways while Shift (air only) is held.
  const turned = (event.deltaY !== 0 ? event.deltaY : event.deltaX) / (NOTCH[event.deltaMode] ?? 1);
  return Math.abs(turned) < 1 ? turned : Math.round(turned);
}
