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
/** Paper left around a fitted panel, so that strokes that begin off its edge are seen. */
const FIT_MARGIN_PX = 26;
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

/** The whole panel, centred, with a margin of paper. */
export function fitCamera(frame: Frame, width_m: number, height_m: number): Camera {
  const room = (from: number, to: number): number => {
    const margin = Math.max(FIT_MARGIN_PX, FIT_MARGIN_SHARE * (to - from));
    return Math.max(1, to - from - 2 * margin);
  };
  const scale = Math.min(
    room(frame.left_px, frame.right_px) / width_m,
    room(frame.top_px, frame.bottom_px) / height_m,
  );
  return centredOn(frame, [width_m / 2, height_m / 2], scale);
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
