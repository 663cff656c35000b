import type { FilmMap } from './cardPhoto.ts';

/** Axes laid through the spot: x along the fan's long axis, y to the left of it. */
export interface SpotFrame {
  /** Its middle, m from the map's lower left. */
  readonly middleX_m: number;
  readonly middleY_m: number;
  readonly angle_rad: number;
}

/** Film summed in even steps along a frame's x, absorbance times m². */
export interface FilmSums {
  readonly lowest_m: number;
  readonly step_m: number;
  /** By place: film, film times y, film times y². */
  readonly film: Float64Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
}

/** Film of the marked cells: its mean place and spread, in the map's axes. */
export interface FilmMoments {
  readonly x_m: number;
  readonly y_m: number;
  readonly xx_m2: number;
  readonly xy_m2: number;
  readonly yy_m2: number;
}

export function filmMoments({ columns, cellSize_m, film }: FilmMap, marked: Uint8Array): FilmMoments {
  let [mass, x, y, xx, xy, yy] = [0, 0, 0, 0, 0, 0];
  for (let cell = 0; cell < film.length; cell++) {
    if (marked[cell] === 0) continue;
    const here = film[cell] as number;
    const column = (cell % columns) + 0.5;
    const row = Math.floor(cell / columns) + 0.5;
    mass += here;
    x += here * column;
    y += here * row;
    xx += here * column * column;
    xy += here * column * row;
    yy += here * row * row;
  }
  const [meanX, meanY] = [x / mass, y / mass];
  const area_m2 = cellSize_m * cellSize_m;
  return {
    x_m: meanX * cellSize_m,
    y_m: meanY * cellSize_m,
    xx_m2: (xx / mass - meanX * meanX) * area_m2,
    xy_m2: (xy / mass - meanX * meanY) * area_m2,
    yy_m2: (yy / mass - meanY * meanY) * area_m2,
  };
}

/** A rectangle in a frame. */
export interface FrameBox {
  readonly low: readonly [x_m: number, y_m: number];
  readonly high: readonly [x_m: number, y_m: number];
}

/** The box that holds the marked cells. */
export function boxOf({ columns, cellSize_m }: FilmMap, marked: Uint8Array, { middleX_m, middleY_m, angle_rad }: SpotFrame): FrameBox {
  const [cos, sin] = [Math.cos(angle_rad), Math.sin(angle_rad)];
  let [lowX, lowY, highX, highY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let cell = 0; cell < marked.length; cell++) {
    if (marked[cell] === 0) continue;
    const east_m = ((cell % columns) + 0.5) * cellSize_m - middleX_m;
    const north_m = (Math.floor(cell / columns) + 0.5) * cellSize_m - middleY_m;
    const [x_m, y_m] = [east_m * cos + north_m * sin, north_m * cos - east_m * sin];
    lowX = Math.min(lowX, x_m);
    lowY = Math.min(lowY, y_m);
    highX = Math.max(highX, x_m);
    highY = Math.max(highY, y_m);
  }
  // Half a cell wider, so that no limit runs through a row of middles and rounding cannot choose among them.
  const half_m = cellSize_m / 2;
  return { low: [lowX - half_m, lowY - half_m], high: [highX + half_m, highY + half_m] };
}

/**
 * Whether film is summed over y as it is, or so weighted that it fades in and out, (1-t²)² over the box: for film that
 * is cut off by the box, where a turned lattice of cells would else make a ripple of half a per cent.
 */
export type Weighting = 'even' | 'fading';

/** Mean of the fading weight over a box. */
const MEAN_FADING = 8 / 15;
/** As few places as a bent line can be laid through. */
const FEWEST_PLACES = 3;

/**
 * Film of the marked cells of a box, summed over y at even places from its low to its high x: `most` of them, or fewer
 * where they would stand closer than cells. A cell's
 * film is shared between the two places it lies between, in inverse proportion to its distance from them, which
 * widens a profile's variance by step²/6; how many cells shared in a place, counted with the fading weight, says
 * what area a cell stands for there, so that the lattice of cells makes no ripple. Off the card there is no film.
 */
export function filmSums(map: FilmMap, marked: Uint8Array, frame: SpotFrame, box: FrameBox, most: number, weighting: Weighting = 'even'): FilmSums {
  const { low, high } = box;
  const [middle_m, half_m] = [(low[1] + high[1]) / 2, (high[1] - low[1]) / 2];
  const count = Math.max(FEWEST_PLACES, Math.min(most, 1 + Math.floor((high[0] - low[0]) / map.cellSize_m)));
  const step_m = (high[0] - low[0]) / (count - 1);
  const [cells, film, first, second] = Array.from({ length: 4 }, () => new Float64Array(count)) as [Float64Array, Float64Array, Float64Array, Float64Array];
  const add = (place: number, share: number, y_m: number, here: number, fading: number) => {
    if (place < 0 || place >= count) return;
    cells[place] = (cells[place] as number) + share * fading;
    film[place] = (film[place] as number) + share * here;
    first[place] = (first[place] as number) + share * here * y_m;
    second[place] = (second[place] as number) + share * here * y_m * y_m;
  };
  eachInBox(map, frame, { low: [low[0] - step_m, low[1]], high: [high[0] + step_m, high[1]] }, (x_m, y_m, cell) => {
    const fading = (1 - ((y_m - middle_m) / half_m) ** 2) ** 2;
    const weight = weighting === 'fading' ? fading : 1;
    const here = cell >= 0 && marked[cell] === 1 ? weight * (map.film[cell] as number) : 0;
    const at = (x_m - low[0]) / step_m;
    const place = Math.floor(at);
    add(place, place + 1 - at, y_m, here, fading);
    add(place + 1, at - place, y_m, here, fading);
  });
  for (let place = 0; place < count; place++) {
    // A cell beyond an end shares in the end's place as one inside does, so that every place stands for a step.
    const area_m2 = (step_m * 2 * half_m * (weighting === 'fading' ? 1 : MEAN_FADING)) / (cells[place] as number);
    for (const sums of [film, first, second]) sums[place] = (sums[place] as number) * area_m2;
  }
  return { lowest_m: low[0], step_m, film, first, second };
}

/** Calls with each lattice place in a box, m, and its cell, -1 off the card. */
function eachInBox({ columns, rows, cellSize_m }: FilmMap, { middleX_m, middleY_m, angle_rad }: SpotFrame, { low, high }: FrameBox, take: (x_m: number, y_m: number, cell: number) => void): void {
  const [cos, sin] = [Math.cos(angle_rad), Math.sin(angle_rad)];
  const corners = [low[0], high[0]].flatMap((x) => [low[1], high[1]].map((y) => [middleX_m + x * cos - y * sin, middleY_m + x * sin + y * cos] as const));
  const limits = (axis: 0 | 1) => {
    const places = corners.map((corner) => corner[axis] / cellSize_m);
    return [Math.floor(Math.min(...places)), Math.ceil(Math.max(...places))] as const;
  };
  const [lowColumn, highColumn] = limits(0);
  const [lowRow, highRow] = limits(1);
  for (let row = lowRow; row < highRow; row++) {
    for (let column = lowColumn; column < highColumn; column++) {
      const east_m = (column + 0.5) * cellSize_m - middleX_m;
      const north_m = (row + 0.5) * cellSize_m - middleY_m;
      const x_m = east_m * cos + north_m * sin;
      const y_m = north_m * cos - east_m * sin;
      if (x_m < low[0] || x_m > high[0] || y_m < low[1] || y_m > high[1]) continue;
      const isOn = column >= 0 && column < columns && row >= 0 && row < rows;
      take(x_m, y_m, isOn ? row * columns + column : -1);
    }
  }
}
