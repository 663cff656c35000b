import type { CardReadings } from '../cardReadings.ts';
import type { FilmMap, PhotoSpot } from './cardPhoto.ts';
import type { FilmSums, FrameBox, SpotFrame } from './spotFrame.ts';

/** Most places across the fan. Their step, some 1.3 of the width over 80, widens a profile's variance by less than 0.1 %. */
export const PLACES = 81;
/** Bare card beside the fan that is read too, share of its width: the fit's fog is known by it. */
const BESIDE_RATIO = 0.15;

/** What one kind of spot reads as. */
export interface ReadSpot {
  readonly spot: PhotoSpot;
  readonly readings: CardReadings;
  /** Doubts in words, without the name of the picture. */
  readonly doubts: readonly string[];
}

/** A spot's box with bare card beside it along the long axis, as far as the card goes, and other limits across that axis. */
export function readingBox(spot: FrameBox, across: readonly [low_m: number, high_m: number], map: FilmMap, frame: SpotFrame): FrameBox {
  const beside_m = BESIDE_RATIO * (spot.high[0] - spot.low[0]);
  const [low, high] = [spot.low[0], spot.high[0]];
  return {
    low: [Math.min(low, Math.max(low - beside_m, -reachOnCard(map, frame, -1))), across[0]],
    high: [Math.max(high, Math.min(high + beside_m, reachOnCard(map, frame, 1))), across[1]],
  };
}

/** From the frame's middle along (1) or against (-1) its x to the card's edge. */
function reachOnCard({ columns, rows, cellSize_m }: FilmMap, { middleX_m, middleY_m, angle_rad }: SpotFrame, sign: number): number {
  const to = (middle_m: number, size_m: number, slope: number) => (slope > 0 ? (size_m - middle_m) / slope : slope < 0 ? -middle_m / slope : Infinity);
  return Math.min(to(middleX_m, columns * cellSize_m, sign * Math.cos(angle_rad)), to(middleY_m, rows * cellSize_m, sign * Math.sin(angle_rad)));
}

/** Sums as readings: the mean film over the box's extent across its long axis. */
export function readingsOf({ lowest_m, step_m, film }: FilmSums, { low, high }: FrameBox): CardReadings {
  const area_m2 = step_m * (high[1] - low[1]);
  return {
    place_m: Float64Array.from(film, (_, i) => lowest_m + i * step_m),
    film: Float64Array.from(film, (sum) => sum / area_m2),
    unit: '',
  };
}
