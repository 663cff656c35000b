import type { FaultKind } from '../../sim/index.ts';

/** Everything the panel canvas can show. SI units, panel coordinates (y up); the canvas turns y. */

/** A film field on the panel's grid, ready for the GPU. */
export interface FieldScene {
  readonly columns: number;
  readonly rows: number;
  readonly cellSize_m: number;
  /** Row-major from the lowest row, length columns * rows; NaN is not drawn. A new array of the same size is one upload into the same texture. */
  readonly values: Float32Array;
  /** Inside share of each cell, 0 to 1; below 0.5 is not drawn. */
  readonly cover: Float32Array;
  /** Value at the first and at the last colour. */
  readonly domain: readonly [number, number];
  /** 256 colours, RGBA bytes, first to last. */
  readonly colours: Uint8Array;
}

export interface PanelScene {
  readonly outline: Float64Array;
  readonly holes: readonly Float64Array[];
  readonly width_m: number;
  readonly height_m: number;
  /** Direction of gravity in the panel, null when level. */
  readonly down_rad: number | null;
}

export interface StrokeScene {
  readonly index: number;
  /** Aim points with fluid on: x0, y0, x1, y1, … m. */
  readonly line: Float64Array;
  readonly label: string;
}

export interface ZoneScene {
  /** Stable key, handed back on a click. */
  readonly key: string;
  /** Short word or letter drawn beside the zone; empty for no tag. */
  readonly label: string;
  readonly kind: FaultKind;
  readonly cells: Uint32Array;
  readonly at_m: readonly [number, number];
}

/** The gun over the panel at one time of a replay, or null. */
export interface GunScene {
  readonly x_m: number;
  readonly y_m: number;
  /** The fan's rim on the panel, x0, y0, … m. */
  readonly rim: Float64Array;
  readonly spraying: boolean;
}

/** The section line, two ends, m. */
export type SectionScene = readonly [x0_m: number, y0_m: number, x1_m: number, y1_m: number];

export interface RulerScene {
  /** Metres per unit shown, e.g. 0.001 for mm, 0.0254 for in. */
  readonly unit_m: number;
  readonly unitName: string;
}

export interface CanvasScene {
  readonly panel: PanelScene;
  /** What Fit shows: left, bottom, right, top, m. At least the panel. */
  readonly fit_m: readonly [left_m: number, bottom_m: number, right_m: number, top_m: number];
  readonly field: FieldScene | null;
  readonly strokes: readonly StrokeScene[];
  readonly selectedStrokes: readonly number[];
  readonly zones: readonly ZoneScene[];
  readonly selectedZone: string | null;
  readonly gun: GunScene | null;
  readonly section: SectionScene;
  readonly ruler: RulerScene;
  readonly theme: 'light' | 'dark';
}

/** What a pointer or key on the canvas tells the app. */
export interface CanvasEvents {
  /** The pointer is over a place on the panel's plane, or has left (null). */
  probe(at_m: readonly [number, number] | null): void;
  section(line: SectionScene): void;
  zone(key: string): void;
  stroke(index: number): void;
}

/** The canvas as the app sees it. */
export interface PanelCanvas {
  /** Shows a scene; parts that are the same object as before are not drawn again. */
  show(scene: CanvasScene): void;
  fit(): void;
  zoomBy(factor: number): void;
  panBy(dx_px: number, dy_px: number): void;
  /** Centres a place and zooms so that about `span_m` is seen. */
  goTo(at_m: readonly [number, number], span_m: number): void;
  /** The picture as it stands, PNG. */
  picture(): Promise<Blob>;
  destroy(): void;
}
