import type { StrokeLine } from './strokeLine.ts';
import type { Track } from './track.ts';

/** A stroke's course over the panel in its own line's frame, bin by bin along the travel. */
export interface Lateral {
  readonly line: StrokeLine;
  readonly binSize_m: number;
  /** Mean place to the left of the line, and mean slant distance, in bins from `line.from_m`. */
  readonly across_m: Float64Array;
  readonly slant_m: Float64Array;
}

const BIN_M = 0.01;
const MOST_BINS = 2000;

/** Bins a track of 10 mm along its line (2000 bins at most); an empty bin lies straight between its neighbours. */
export function lateralOf(track: Track, line: StrokeLine): Lateral {
  const length_m = line.to_m - line.from_m;
  const bins = Math.max(1, Math.min(MOST_BINS, Math.ceil(length_m / BIN_M)));
  const binSize_m = Math.max(length_m, BIN_M) / bins;
  const across_m = new Float64Array(bins);
  const slant_m = new Float64Array(bins);
  const hits = new Float64Array(bins);
  for (let i = 0; i < track.count; i++) {
    const x = (track.x_m[i] as number) - line.x_m;
    const y = (track.y_m[i] as number) - line.y_m;
    const place = (x * line.dx + y * line.dy - line.from_m) / binSize_m;
    const bin = Math.max(0, Math.min(bins - 1, Math.floor(place)));
    across_m[bin] = (across_m[bin] as number) + y * line.dx - x * line.dy;
    slant_m[bin] = (slant_m[bin] as number) + (track.slant_m[i] as number);
    hits[bin] = (hits[bin] as number) + 1;
  }
  for (let bin = 0; bin < bins; bin++) {
    if (hits[bin] === 0) continue;
    across_m[bin] = (across_m[bin] as number) / (hits[bin] as number);
    slant_m[bin] = (slant_m[bin] as number) / (hits[bin] as number);
  }
  fillEmpty(across_m, hits);
  fillEmpty(slant_m, hits);
  return { line, binSize_m, across_m, slant_m };
}

/** The first and last bins are never empty: they hold the line's ends. */
function fillEmpty(values: Float64Array, hits: Float64Array): void {
  let full = 0;
  for (let bin = 1; bin < values.length; bin++) {
    if (hits[bin] === 0) continue;
    for (let between = full + 1; between < bin; between++) {
      const share = (between - full) / (bin - full);
      values[between] = (values[full] as number) * (1 - share) + (values[bin] as number) * share;
    }
    full = bin;
  }
}

/** The place on the panel of a bin's middle. */
export function placeOfBin(lateral: Lateral, bin: number): readonly [number, number] {
  const { line } = lateral;
  const along = line.from_m + (bin + 0.5) * lateral.binSize_m;
  const across = lateral.across_m[bin] as number;
  return [line.x_m + along * line.dx - across * line.dy, line.y_m + along * line.dy + across * line.dx];
}
