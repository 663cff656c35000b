import type { CanvasScene } from './scene.ts';

/** Panel metres to screen pixels, y turned: `px = originX_px + x_m pxPerM`, `py = originY_px - y_m pxPerM`. */
export interface Camera {
  readonly pxPerM: number;
  readonly originX_px: number;
  readonly originY_px: number;
}

/** The part of the view that is not under the rulers, CSS pixels from the upper-left corner. */
export interface Frame {
  readonly left_px: number;
  readonly top_px: number;
  readonly right_px: number;
  readonly bottom_px: number;
}

/** Bounds of `pxPerM`: 20 m across a small screen to 0.02 mm a pixel. */
const FURTHEST_PX_PER_M = 10;
const CLOSEST_PX_PER_M = 50_000;
/** Paper left around what is fitted: to the sides for a stroke's number of three digits beside its start. */
const FIT_SIDE_PX = 40;
const FIT_END_PX = 26;
const FIT_MARGIN_SHARE = 0.06;

export function toScreen(camera: Camera, x_m: number, y_m: number): [x_px: number, y_px: number] {
  return [camera.originX_px + x_m * camera.pxPerM, camera.originY_px - y_m * camera.pxPerM];
}

export function toPanel(camera: Camera, x_px: number, y_px: number): [x_m: number, y_m: number] {
  return [(x_px - camera.originX_px) / camera.pxPerM, (camera.originY_px - y_px) / camera.pxPerM];
}

/** The camera that shows a place at the frame's middle. */
function centredOn(frame: Frame, at_m: readonly [number, number], pxPerM: number): Camera {
  const scale = Math.min(CLOSEST_PX_PER_M, Math.max(FURTHEST_PX_PER_M, pxPerM));
  return {
    pxPerM: scale,
    originX_px: (frame.left_px + frame.right_px) / 2 - at_m[0] * scale,
    originY_px: (frame.top_px + frame.bottom_px) / 2 + at_m[1] * scale,
  };
}

/** A whole box, centred, with a margin of paper. */
export function fitCamera(frame: Frame, box_m: CanvasScene['fit_m']): Camera {
  const room = (from: number, to: number, least_px: number): number => {
    const margin = Math.max(least_px, FIT_MARGIN_SHARE * (to - from));
    return Math.max(1, to - from - 2 * margin);
  };
  const [left_m, bottom_m, right_m, top_m] = box_m;
  const scale = Math.min(
    room(frame.left_px, frame.right_px, FIT_SIDE_PX) / (right_m - left_m),
    room(frame.top_px, frame.bottom_px, FIT_END_PX) / (top_m - bottom_m),
  );
  return centredOn(frame, [(left_m + right_m) / 2, (bottom_m + top_m) / 2], scale);
}

/** A place at the middle with about `span_m` seen across the shorter side. */
export function placeCamera(frame: Frame, at_m: readonly [number, number], span_m: number): Camera {
  const side = Math.min(frame.right_px - frame.left_px, frame.bottom_px - frame.top_px);
  return centredOn(frame, at_m, Math.max(1, side) / span_m);
}

/** Nearer or further by `factor`, the place under the given pixel staying where it is. */
export function zoomAbout(camera: Camera, factor: number, x_px: number, y_px: number): Camera {
  const scale = Math.min(CLOSEST_PX_PER_M, Math.max(FURTHEST_PX_PER_M, camera.pxPerM * factor));
  const held = scale / camera.pxPerM;
  return {
    pxPerM: scale,
    originX_px: x_px + (camera.originX_px - x_px) * held,
    originY_px: y_px + (camera.originY_px - y_px) * held,
  };
}

export function movedCamera(camera: Camera, dx_px: number, dy_px: number): Camera {
  return { ...camera, originX_px: camera.originX_px + dx_px, originY_px: camera.originY_px + dy_px };
}
