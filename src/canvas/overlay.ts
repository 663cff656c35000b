import type { Camera, Frame } from './camera.ts';
import type { Palette } from './palette.ts';
import type { RulerScene } from './scene.ts';

/** What the text and handles over the map are placed by. */
export interface OverlayView {
  readonly camera: Camera;
  readonly frame: Frame;
  readonly width_px: number;
  readonly height_px: number;
  readonly palette: Palette;
  readonly ruler: RulerScene;
}

/** Widths of the rulers' bands along the left and the lower edge. */
export const RULER_LEFT_PX = 50;
export const RULER_BOTTOM_PX = 28;

/** Sizes of lettering, CSS px. */
export const TICK_TEXT_PX = 16;
export const LABEL_TEXT_PX = 16;

export function drawingFrame(width_px: number, height_px: number): Frame {
  return { left_px: RULER_LEFT_PX, top_px: 0, right_px: width_px, bottom_px: height_px - RULER_BOTTOM_PX };
}

/** A box on the screen: left, top, width, height, px. */
export type Box = readonly [left_px: number, top_px: number, width_px: number, height_px: number];

/**
 * Gives each label the first of its boxes that covers neither a taken box nor an earlier label;
 * null where there is none. Earlier labels go before later ones.
 */
export function placeBoxes(choices: readonly (readonly Box[])[], taken: readonly Box[]): (Box | null)[] {
  const kept = [...taken];
  return choices.map((boxes) => {
    const free = boxes.find((box) => !kept.some((other) => boxesMeet(box, other)));
    if (free !== undefined) kept.push(free);
    return free ?? null;
  });
}

function boxesMeet(a: Box, b: Box): boolean {
  return a[0] < b[0] + b[2] && b[0] < a[0] + a[2] && a[1] < b[1] + b[3] && b[1] < a[1] + a[3];
}
