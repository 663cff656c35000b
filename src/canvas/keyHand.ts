/** What keys do while the canvas itself has the focus. */
export interface KeyActions {
  pan(dx_px: number, dy_px: number): void;
  zoom(factor: number): void;
  fit(): void;
  /** Steps the probe by cells, x right and y up. */
  stepProbe(columns: number, rows: number): void;
  /** Chooses what lies under the probe. */
  choose(): void;
  clearProbe(): void;
}

export const KEY_HELP =
  'Arrow keys move the view, plus and minus zoom, 0 fits the panel. ' +
  'Shift with an arrow key steps the probe one cell; Enter chooses the zone or stroke under it; Escape puts the probe away. ' +
  'Tab goes to the ends of the section line.';

const PAN_PX = 60;
const ZOOM = 1.25;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** @returns true when the key meant something here. */
export function actOnKey(event: KeyboardEvent, actions: KeyActions): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  const arrow = ARROWS[event.key];
  if (arrow !== undefined) {
    if (event.shiftKey) actions.stepProbe(arrow[0], arrow[1]);
    else actions.pan(-arrow[0] * PAN_PX, arrow[1] * PAN_PX);
    return true;
  }
  switch (event.key) {
    case '+':
    case '=':
      actions.zoom(ZOOM);
      return true;
    case '-':
    case '_':
      actions.zoom(1 / ZOOM);
      return true;
    case '0':
      actions.fit();
      return true;
    case 'Enter':
      actions.choose();
      return true;
    case 'Escape':
      actions.clearProbe();
      return true;
    default:
      return false;
  }
}
