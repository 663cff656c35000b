import { CrosscoatError } from '../../../base/errors.ts';
import { type Blocks, spread } from './blocks.ts';
import { fitLight, lightAt, type LightSurface, type PhotoPlaces } from './lightSurface.ts';

/** Which edges of the card are bare: all round a burst, beside a stroke along x or y. */
export type BareEdges = 'all' | 'beside-x' | 'beside-y';

/** Blocks in from an edge with which the search for bare paper begins. */
const RIM_BLOCKS = 3;
/** The rim is first fitted at this quantile: film on a part of it hardly pulls it down, since film only darkens. */
const RIM_QUANTILE = 0.75;
/** Assumed: paper is even to this share of its light (natural logarithm); also about a step of an 8-bit picture's paper. */
export const PAPER_UNEVEN = 0.01;
/** A block darker than the paper by more of its noise than this is not paper. */
const PAPER_SIGMAS = 3;
const RIM_ROUNDS = 20;
const CARD_ROUNDS = 40;
/** Assumed: least share of the card that must be bare for its light to be known. */
const LEAST_BARE = 0.15;
/** Assumed: what is lighter than bare paper by this (natural logarithm) is none, and so much of it means that the paper was not found. */
const LIGHTER = 0.05;
const MOST_LIGHTER = 0.04;
/** Median of a standard normal deviate without its sign. */
const NORMAL_MEDIAN = 0.6745;

/** The light that bare paper would send. */
export interface PaperLight {
  /** Its natural logarithm. */
  readonly surface: LightSurface;
  /** By block: 1 where the paper is bare. */
  readonly isBare: Uint8Array;
  /** By block: natural logarithm of bare paper's light over the light seen; about 0 where bare. */
  readonly darkness: Float64Array;
  /** Standard deviation of `darkness` by the picture's grain. */
  readonly noise: number;
}

/**
 * How the light falls off over the card: a smooth surface (`LightSurface`) through the logarithm of the light on bare paper. It
 * begins with the rim (quantile regression, R. Koenker and G. Bassett, "Regression Quantiles", Econometrica 46(1)
 * 33-50, 1978, from memory; by reweighted least squares), goes on over the card with what is as light as the surface
 * says, and leaves out what is darker with its neighbours (the faint edge of the spot); what is lighter, such as glare, is held
 * down by P. Huber's weights ("Robust Estimation of a Location Parameter", Ann. Math. Statist. 35, 1964, from memory).
 *
 * @param light natural logarithm of the light of one colour by block. @param places of the blocks on the photograph.
 * @param edges those that are bare to begin with.
 * @throws CrosscoatError `geometry` where less than 15 % of the card is bare, or more than 4 % of it lighter than what was taken for bare.
 */
export function flattenLight(light: Float64Array, places: PhotoPlaces, blocks: Blocks, edges: BareEdges): PaperLight {
  const rim = rimOf(blocks, edges);
  const noise = grainNoise(light, blocks, rim);
  const tolerance = Math.max(PAPER_UNEVEN, PAPER_SIGMAS * noise);
  const start = rimSurface(light, places, rim, tolerance);
  const { surface, isBare } = cardSurface(light, places, blocks, start, tolerance);
  const darkness = light.map((value, block) => surfaceAt(surface, places, block) - value);
  checkLighter(darkness);
  return { surface, isBare, darkness, noise };
}

/** 1 within `RIM_BLOCKS` of a bare edge. */
function rimOf({ columns, rows }: Blocks, edges: BareEdges): Uint8Array {
  return Uint8Array.from({ length: columns * rows }, (_, block) => {
    const [column, row] = [block % columns, Math.floor(block / columns)];
    const besideX = edges !== 'beside-y' && Math.min(row, rows - 1 - row) < RIM_BLOCKS;
    const besideY = edges !== 'beside-x' && Math.min(column, columns - 1 - column) < RIM_BLOCKS;
    return besideX || besideY ? 1 : 0;
  });
}

/** Standard deviation of the rim's blocks by their second differences along it, which a smooth fall-off of light hardly enters. */
function grainNoise(values: Float64Array, { columns, rows }: Blocks, rim: Uint8Array): number {
  const differences: number[] = [];
  const take = (block: number, step: number) => {
    if (rim[block - step] === 0 || rim[block] === 0 || rim[block + step] === 0) return;
    differences.push(Math.abs((values[block - step] as number) - 2 * (values[block] as number) + (values[block + step] as number)));
  };
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (column > 0 && column < columns - 1) take(row * columns + column, 1);
      if (row > 0 && row < rows - 1) take(row * columns + column, columns);
    }
  }
  differences.sort((a, b) => a - b);
  return (differences[differences.length >> 1] ?? 0) / (NORMAL_MEDIAN * Math.sqrt(6));
}

/** The surface that three quarters of the rim lie below. */
function rimSurface(values: Float64Array, places: PhotoPlaces, rim: Uint8Array, tolerance: number): LightSurface {
  const weights = Float64Array.from(rim);
  let surface = fitLight(places, values, weights);
  for (let round = 0; round < RIM_ROUNDS; round++) {
    for (let block = 0; block < values.length; block++) {
      if (rim[block] === 0) continue;
      const above = (values[block] as number) - surfaceAt(surface, places, block);
      weights[block] = (above > 0 ? RIM_QUANTILE : 1 - RIM_QUANTILE) / Math.max(Math.abs(above), tolerance / 10);
    }
    surface = fitLight(places, values, weights);
  }
  return surface;
}

/** Takes in what is as light as the surface says, until no block changes. */
function cardSurface(values: Float64Array, places: PhotoPlaces, blocks: Blocks, start: LightSurface, tolerance: number): { surface: LightSurface; isBare: Uint8Array } {
  let surface = start;
  let isBare = new Uint8Array(values.length);
  for (let round = 0; round < CARD_ROUNDS; round++) {
    const above = values.map((value, block) => value - surfaceAt(surface, places, block));
    const isDark = spread(Uint8Array.from(above, (value) => (value < -tolerance ? 1 : 0)), blocks);
    const isSame = isBare.every((bare, block) => bare === 1 - (isDark[block] as number));
    isBare = isDark.map((dark) => 1 - dark);
    checkBare(isBare);
    if (isSame) break;
    surface = fitLight(places, values, above.map((value, block) => (isBare[block] === 0 ? 0 : Math.min(1, tolerance / Math.max(value, tolerance)))));
  }
  return { surface, isBare };
}

function checkBare(isBare: Uint8Array): void {
  const share = isBare.reduce((sum, bare) => sum + bare, 0) / isBare.length;
  if (share >= LEAST_BARE) return;
  throw new CrosscoatError('geometry', `photograph: ${(100 * share).toFixed(0)} % of the card is bare paper, less than ${100 * LEAST_BARE} % (the light over it cannot be known); photograph more bare card round the spot, or set the corners wider`);
}

function checkLighter(darkness: Float64Array): void {
  const share = darkness.filter((value) => value < -LIGHTER).length / darkness.length;
  if (share <= MOST_LIGHTER) return;
  throw new CrosscoatError('geometry', `photograph: ${(100 * share).toFixed(0)} % of the card is lighter than what was taken for bare paper, more than ${100 * MOST_LIGHTER} % (film nearly to the card's edge, or glare); show more bare card round the spot, or take the picture without glare`);
}

function surfaceAt(surface: LightSurface, { x, y }: PhotoPlaces, block: number): number {
  return lightAt(surface, x[block] as number, y[block] as number);
}
