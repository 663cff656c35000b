/** A box on the panel's plane: left, bottom, right, top, m. */
export type PanelBox = readonly [left_m: number, bottom_m: number, right_m: number, top_m: number];

/** Strokes are followed this far beyond the panel, in its own widths and heights. */
const MOST_BEYOND = 0.4;
/** The box grows in these shares, so that the view does not stir with every small change of a stroke. */
const STEPS_PER_SIDE = 20;

/**
 * What Fit shows: the panel, and the ends of the strokes that begin or end beside it.
 * @param lines x0, y0, x1, y1, … m, one a stroke.
 */
export function fitBox(width_m: number, height_m: number, lines: readonly Float64Array[]): PanelBox {
  const beyond = [0, 0, 0, 0];
  const reach = (side: number, share: number): void => {
    if (share > (beyond[side] as number)) beyond[side] = share;
  };
  for (const line of lines) {
    if (line.length < 2) continue;
    for (const [x_m, y_m] of [[line[0], line[1]], [line.at(-2), line.at(-1)]] as readonly [number, number][]) {
      reach(0, -x_m / width_m);
      reach(1, -y_m / height_m);
      reach(2, x_m / width_m - 1);
      reach(3, y_m / height_m - 1);
    }
  }
  // A hair less, so that an end on a step does not take the next one by rounding.
  const stepped = beyond.map((share) => Math.min(MOST_BEYOND, Math.ceil(share * STEPS_PER_SIDE - 1e-9) / STEPS_PER_SIDE));
  const [left, bottom, right, top] = stepped as [number, number, number, number];
  return [(0 - left) * width_m, (0 - bottom) * height_m, (1 + right) * width_m, (1 + top) * height_m];
}
