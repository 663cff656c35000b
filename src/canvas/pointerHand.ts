/** What the pointer hand does to the canvas. Places are CSS px from the root's upper-left corner. */
export interface HandActions {
  /** What lies under a press; null is empty space. */
  holdAt(x_px: number, y_px: number, touch: boolean): 'section' | null;
  /** The way from the press to where the pointer is now. */
  dragSection(dx_px: number, dy_px: number): void;
  pan(dx_px: number, dy_px: number): void;
  zoom(factor: number, x_px: number, y_px: number): void;
  click(x_px: number, y_px: number, touch: boolean): void;
  hover(x_px: number, y_px: number): void;
  leave(): void;
}

/** A press that moves less than this is a click. */
const CLICK_SLACK_PX = 5;
/** One notch of a wheel (about 100 px) zooms by a fifth. */
const WHEEL_RATE = Math.log(1.2) / 100;
const LINE_PX = 33;

interface Finger {
  x_px: number;
  y_px: number;
  readonly startX_px: number;
  readonly startY_px: number;
}

/**
 * Mouse, pen and fingers on the canvas: press and drag, pinch, wheel, hover. Two fingers pinch and
 * carry; one drags what lies under it, or the paper.
 * @returns a function that stops listening.
 */
export function listenToPointers(root: HTMLElement, actions: HandActions): () => void {
  const fingers = new Map<number, Finger>();
  let held: 'section' | null = null;
  let moved = false;
  const place = (event: MouseEvent): [number, number] => {
    const box = root.getBoundingClientRect();
    return [event.clientX - box.left - root.clientLeft, event.clientY - box.top - root.clientTop];
  };

  const down = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    const [x_px, y_px] = place(event);
    fingers.set(event.pointerId, { x_px, y_px, startX_px: x_px, startY_px: y_px });
    root.setPointerCapture(event.pointerId);
    if (fingers.size > 1) {
      moved = true;
      held = null;
      return;
    }
    moved = false;
    held = actions.holdAt(x_px, y_px, event.pointerType === 'touch');
  };

  const move = (event: PointerEvent): void => {
    const [x_px, y_px] = place(event);
    const finger = fingers.get(event.pointerId);
    if (finger === undefined) {
      actions.hover(x_px, y_px);
      return;
    }
    if (!moved && Math.hypot(x_px - finger.startX_px, y_px - finger.startY_px) < CLICK_SLACK_PX) return;
    moved = true;
    const other = [...fingers.entries()].find(([id]) => id !== event.pointerId)?.[1];
    if (other !== undefined) pinch(actions, finger, other, x_px, y_px);
    else if (held === 'section') actions.dragSection(x_px - finger.startX_px, y_px - finger.startY_px);
    else actions.pan(x_px - finger.x_px, y_px - finger.y_px);
    finger.x_px = x_px;
    finger.y_px = y_px;
  };

  const up = (event: PointerEvent): void => {
    if (!fingers.delete(event.pointerId)) return;
    const [x_px, y_px] = place(event);
    if (event.type === 'pointerup' && !moved && held === null) {
      actions.click(x_px, y_px, event.pointerType === 'touch');
    }
    if (fingers.size === 0) held = null;
  };

  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    const turned_px = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * LINE_PX : event.deltaY;
    actions.zoom(Math.exp(-turned_px * WHEEL_RATE), ...place(event));
  };
  const leave = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse') actions.leave();
  };

  const stop = new AbortController();
  const { signal } = stop;
  root.addEventListener('pointerdown', down, { signal });
  root.addEventListener('pointermove', move, { signal });
  root.addEventListener('pointerup', up, { signal });
  root.addEventListener('pointercancel', up, { signal });
  root.addEventListener('pointerleave', leave, { signal });
  root.addEventListener('wheel', wheel, { signal, passive: false });
  return () => stop.abort();
}

/** One of two fingers moved: zoom about their middle by the change of their spread, and carry the middle. */
function pinch(actions: HandActions, finger: Finger, other: Finger, x_px: number, y_px: number): void {
  const before = Math.hypot(finger.x_px - other.x_px, finger.y_px - other.y_px);
  const after = Math.hypot(x_px - other.x_px, y_px - other.y_px);
  actions.pan((x_px - finger.x_px) / 2, (y_px - finger.y_px) / 2);
  if (before > 1 && after > 1) {
    actions.zoom(after / before, (x_px + other.x_px) / 2, (y_px + other.y_px) / 2);
  }
}
