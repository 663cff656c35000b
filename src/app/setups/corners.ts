/** A place on a photograph, px: x right, y down. */
export type PhotoPlace = readonly [x_px: number, y_px: number];

/** The corners of what is to be squared up, as seen: lower left, lower right, upper right, upper left. */
export type Corners = readonly [PhotoPlace, PhotoPlace, PhotoPlace, PhotoPlace];

export const CORNER_WORDS = ['lower left', 'lower right', 'upper right', 'upper left'] as const;

/** Corners begin this far in, share of the side, where they can be taken hold of. */
const FIRST_INSET = 0.1;

/** Shift makes a step of the keyboard this many pixels. */
const LONG_STEP_PX = 10;

export function firstCorners(width_px: number, height_px: number): Corners {
  const [left, right] = [FIRST_INSET * width_px, (1 - FIRST_INSET) * width_px].map(Math.round) as [number, number];
  const [top, bottom] = [FIRST_INSET * height_px, (1 - FIRST_INSET) * height_px].map(Math.round) as [number, number];
  return [[left, bottom], [right, bottom], [right, top], [left, top]];
}

/** The corners with one of them elsewhere, held within the photograph. */
export function withCorner(corners: Corners, corner: number, [x, y]: PhotoPlace, width_px: number, height_px: number): Corners {
  const place: PhotoPlace = [clamped(x, width_px), clamped(y, height_px)];
  return corners.map((each, i) => (i === corner ? place : each)) as unknown as Corners;
}

function clamped(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}

const KEY_STEPS: Readonly<Record<string, PhotoPlace>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1],
};

/** How far a key moves a corner, px of the photograph; null for a key that moves none. */
export function cornerStep(key: string, isLong: boolean): PhotoPlace | null {
  const step = KEY_STEPS[key];
  if (step === undefined) return null;
  const size = isLong ? LONG_STEP_PX : 1;
  return [step[0] * size, step[1] * size];
}
