import type { Panel, Polygon } from '../../../sim/index.ts';

/** A panel drawn to scale: where its places come on a picture with y down. */
export interface PanelFit {
  readonly width_px: number;
  readonly height_px: number;
  readonly px_per_m: number;
  /** Left and top margin. */
  readonly left_px: number;
  readonly top_px: number;
  readonly panelHeight_m: number;
}

/** Room for the figures of the rulers, left and below, and for the marks at the other edges, px. */
const LEFT_PX = 56;
const BOTTOM_PX = 34;
const RIM_PX = 18;

/** The largest scale at which a panel fits into a box, and the size of its picture there. */
export function fitPanel({ width_m, height_m }: Pick<Panel, 'width_m' | 'height_m'>, boxWidth_px: number, boxHeight_px: number): PanelFit {
  const px_per_m = Math.max(1, Math.min((boxWidth_px - LEFT_PX - RIM_PX) / width_m, (boxHeight_px - BOTTOM_PX - RIM_PX) / height_m));
  return {
    width_px: LEFT_PX + width_m * px_per_m + RIM_PX,
    height_px: RIM_PX + height_m * px_per_m + BOTTOM_PX,
    px_per_m,
    left_px: LEFT_PX,
    top_px: RIM_PX,
    panelHeight_m: height_m,
  };
}

/** Where a place on the panel comes on the picture, px. */
export function pictureOf({ px_per_m, left_px, top_px, panelHeight_m }: PanelFit, [x_m, y_m]: readonly [number, number]): readonly [number, number] {
  return [left_px + x_m * px_per_m, top_px + (panelHeight_m - y_m) * px_per_m];
}

/** The place on the panel of a point of the picture, m. */
export function placeOfPicture({ px_per_m, left_px, top_px, panelHeight_m }: PanelFit, [x_px, y_px]: readonly [number, number]): readonly [number, number] {
  return [(x_px - left_px) / px_per_m, panelHeight_m - (y_px - top_px) / px_per_m];
}

/** A closed ring as SVG path data. */
export function ringPath(fit: PanelFit, ring: Polygon): string {
  const corners: string[] = [];
  for (let i = 0; i + 1 < ring.length; i += 2) corners.push(pictureOf(fit, [ring[i] as number, ring[i + 1] as number]).map((value) => value.toFixed(1)).join(','));
  return `M${corners.join('L')}Z`;
}

/** Steps of the keyboard's cross: plain, and with Shift, m. */
const STEP_M = 0.01;
const LONG_STEP_M = 0.05;
const WAYS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

/** Where an arrow key takes the cross, held on the panel's box and on whole millimetres; null for a key that moves nothing. */
export function crossAfter(key: string, isLong: boolean, [x_m, y_m]: readonly [number, number], { width_m, height_m }: Pick<Panel, 'width_m' | 'height_m'>): readonly [number, number] | null {
  const way = WAYS[key];
  if (way === undefined) return null;
  const step = isLong ? LONG_STEP_M : STEP_M;
  return [wholeMillimetres(x_m + way[0] * step, width_m), wholeMillimetres(y_m + way[1] * step, height_m)];
}

/** A length in whole millimetres between 0 and the most there is. */
export function wholeMillimetres(value_m: number, most_m: number): number {
  return Math.min(most_m, Math.max(0, Math.round(value_m * 1000) / 1000));
}
