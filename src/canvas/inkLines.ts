import { TONE } from './palette.ts';

export type Tone = keyof typeof TONE;

/** Floats an ink mark takes: from_m (2), to_m (2), fromOffset_px (2), toOffset_px (2), half width, radius, tone. */
export const FLOATS_PER_MARK = 11;

/**
 * A list of ink marks in panel metres with pixel offsets (y up) and pixel widths, so that a zoom
 * changes no data. A mark is a line with round ends; a line of no length is a disc, and with a
 * radius a ring. Later marks lie over earlier ones.
 */
export class InkLines {
  private floats = new Float32Array(64 * FLOATS_PER_MARK);
  count = 0;

  clear(): void {
    this.count = 0;
  }

  /** The marks so far; valid until the next change. */
  data(): Float32Array {
    return this.floats.subarray(0, this.count * FLOATS_PER_MARK);
  }

  line(x0_m: number, y0_m: number, x1_m: number, y1_m: number, width_px: number, tone: Tone): void {
    this.put(x0_m, y0_m, x1_m, y1_m, 0, 0, 0, 0, width_px / 2, 0, tone);
  }

  /** A line of fixed size on the screen between two pixel offsets from a place. */
  stick(
    x_m: number, y_m: number,
    dx0_px: number, dy0_px: number, dx1_px: number, dy1_px: number,
    width_px: number, tone: Tone,
  ): void {
    this.put(x_m, y_m, x_m, y_m, dx0_px, dy0_px, dx1_px, dy1_px, width_px / 2, 0, tone);
  }

  disc(x_m: number, y_m: number, radius_px: number, tone: Tone): void {
    this.put(x_m, y_m, x_m, y_m, 0, 0, 0, 0, radius_px, 0, tone);
  }

  ring(x_m: number, y_m: number, radius_px: number, width_px: number, tone: Tone): void {
    this.put(x_m, y_m, x_m, y_m, 0, 0, 0, 0, width_px / 2, radius_px, tone);
  }

  /** Lines through `points` (x0, y0, x1, y1, … m), shifted by a pixel offset. */
  polyline(
    points: Float64Array, closed: boolean, width_px: number, tone: Tone, dx_px = 0, dy_px = 0,
  ): void {
    const corners = points.length / 2;
    const lines = closed ? corners : corners - 1;
    for (let i = 0; i < lines; i++) {
      const j = (i + 1) % corners;
      this.put(
        points[2 * i] as number, points[2 * i + 1] as number,
        points[2 * j] as number, points[2 * j + 1] as number,
        dx_px, dy_px, dx_px, dy_px, width_px / 2, 0, tone,
      );
    }
  }

  private put(
    x0_m: number, y0_m: number, x1_m: number, y1_m: number,
    dx0_px: number, dy0_px: number, dx1_px: number, dy1_px: number,
    half_px: number, radius_px: number, tone: Tone,
  ): void {
    const at = this.count * FLOATS_PER_MARK;
    if (at + FLOATS_PER_MARK > this.floats.length) {
      const grown = new Float32Array(2 * this.floats.length);
      grown.set(this.floats);
      this.floats = grown;
    }
    const floats = this.floats;
    floats[at] = x0_m;
    floats[at + 1] = y0_m;
    floats[at + 2] = x1_m;
    floats[at + 3] = y1_m;
    floats[at + 4] = dx0_px;
    floats[at + 5] = dy0_px;
    floats[at + 6] = dx1_px;
    floats[at + 7] = dy1_px;
    floats[at + 8] = half_px;
    floats[at + 9] = radius_px;
    floats[at + 10] = TONE[tone];
    this.count++;
  }
}
