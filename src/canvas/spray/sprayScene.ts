import type { GunScene, PanelScene } from '../scene.ts';
import type { Patch } from './patchTexture.ts';

/** A film that changes in place. Row-major from the lowest row. */
export interface WetScene {
  readonly columns: number;
  readonly rows: number;
  readonly cellSize_m: number;
  readonly values: Float32Array;
  /** See `ShownFilm.look` of the model. */
  readonly look: Float32Array;
  readonly cover: Float32Array;
  readonly domain: readonly [number, number];
  /** 256 colours, RGBA bytes. */
  readonly colours: Uint8Array;
}

/** What stands still while somebody sprays. */
export interface SprayScene {
  readonly panel: PanelScene;
  /** What is in view, left, bottom, right, top, m. */
  readonly fit_m: readonly [number, number, number, number];
  readonly wet: WetScene;
  /** Lines to spray along, x0, y0, x1, y1, … m; none where they are put away. */
  readonly guides: readonly Float64Array[];
  readonly theme: 'light' | 'dark';
}

/** What moves with the hand. */
export interface SprayMoment {
  readonly gun: GunScene | null;
  /** Edges of the last strokes, each a line. */
  readonly edges: readonly Float64Array[];
  /** Where the pace says the gun should be, on the guide; null without. */
  readonly pace_m: readonly [number, number] | null;
}

/** The canvas of a session under way, as the app sees it. */
export interface SprayCanvas {
  /** Takes pointers and keys, and has the size of what is drawn. */
  readonly root: HTMLElement;
  show(scene: SprayScene): void;
  /** Another film, or other colours, in the same place. */
  showFilm(wet: WetScene): void;
  /** Notes that a block of cells has changed. */
  touch(patch: Patch): void;
  /** Sends the blocks that have changed. */
  upload(): void;
  /** Draws; call it once a frame, after `upload`. */
  draw(moment: SprayMoment): void;
  /** A fixed scale, CSS px a metre of panel, or null to fit the window. */
  setScale(pxPerM: number | null): void;
  /** Whether the drawing is larger than the window, at a fixed scale. */
  readonly isLarger: boolean;
  /** Moves such a drawing by shares of the window. */
  panBy(x: number, y: number): void;
  /** CSS px a metre as drawn now. */
  readonly pxPerM: number;
  /** A place of the client area on the panel's plane, m. */
  toPanel(clientX: number, clientY: number): readonly [number, number];
  destroy(): void;
}
