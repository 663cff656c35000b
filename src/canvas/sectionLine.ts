import { type Camera, toScreen } from './camera.ts';
import type { PanelScene, SectionScene } from './scene.ts';

/** What of the section line is held: an end, or the whole of it. */
export type SectionPart = 'start' | 'end' | 'middle';

/** The line with a part moved, each end kept on the panel's bounding box. */
export function movedSection(
  line: SectionScene, part: SectionPart, dx_m: number, dy_m: number, panel: PanelScene,
): SectionScene {
  const [x0, y0, x1, y1] = line;
  const within = (low: number, at: number, high: number): number => Math.min(high, Math.max(low, at));
  if (part === 'start') {
    return [within(0, x0 + dx_m, panel.width_m), within(0, y0 + dy_m, panel.height_m), x1, y1];
  }
  if (part === 'end') {
    return [x0, y0, within(0, x1 + dx_m, panel.width_m), within(0, y1 + dy_m, panel.height_m)];
  }
  // The whole line moves only as far as both ends have room, so that it keeps its length.
  const dx = within(-Math.min(x0, x1), dx_m, panel.width_m - Math.max(x0, x1));
  const dy = within(-Math.min(y0, y1), dy_m, panel.height_m - Math.max(y0, y1));
  return [x0 + dx, y0 + dy, x1 + dx, y1 + dy];
}

/** Which part a pixel holds: an end within its 44 px target, else the line within `reach_px`. */
export function sectionPartAt(
  line: SectionScene, camera: Camera, x_px: number, y_px: number, reach_px: number,
): SectionPart | null {
  const HANDLE_REACH_PX = 22;
  const start = toScreen(camera, line[0], line[1]);
  const end = toScreen(camera, line[2], line[3]);
  const toStart = Math.hypot(x_px - start[0], y_px - start[1]);
  const toEnd = Math.hypot(x_px - end[0], y_px - end[1]);
  if (Math.min(toStart, toEnd) <= HANDLE_REACH_PX) return toStart < toEnd ? 'start' : 'end';
  return distanceToSegment(x_px, y_px, start, end) <= reach_px ? 'middle' : null;
}

export function distanceToSegment(
  x: number, y: number, a: readonly [number, number], b: readonly [number, number],
): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / square));
  return Math.hypot(x - a[0] - share * dx, y - a[1] - share * dy);
}
