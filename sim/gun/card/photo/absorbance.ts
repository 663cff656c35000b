import { CrosscoatError, type Warning } from '../../../base/errors.ts';
import { type Blocks, cellBlocks } from './blocks.ts';
import type { BareEdges } from './flattenLight.ts';
import { lightAt, type LightSurface, type PhotoPlaces } from './lightSurface.ts';
import { LEAST_LIGHT, readChannel, type ReadChannel } from './readChannel.ts';
import { photoPlace, type SquaredCard } from './squareUp.ts';

/**
 * Assumed: light that reaches the camera however thick the film, share of the paper's: what a gloss film reflects
 * at its surface, ((n-1)/(n+1))² = 0.04 for n = 1.5 (A. Fresnel, from memory).
 */
const STRAY_RATIO = 0.04;
/** Assumed: darkest absorbance above which the lag is said: 5 % there, by which a fan of β1 = 3 reads as 2.87 (tests/published/cardPhoto.test.ts). */
export const DEEP_ABSORBANCE = 0.6;
/** Assumed: more of the bare paper at the brightest value, or of the spot at the darkest, than this, and a colour is not used. Noise that is clipped so far shifts a mean by 0.02 of its standard deviation. */
const MOST_CLIPPED = 0.05;
/** Assumed: bare paper whose colours differ by more than this ratio is said to have a cast. */
const CAST_RATIO = 1.5;
/** Assumed: a darkest place of less absorbance (7 % darker than paper) is lost in the paper's own unevenness. */
const LEAST_ABSORBANCE = 0.03;
const CHANNEL_NAMES = ['red', 'green', 'blue'] as const;

/**
 * How far an absorbance falls short of proportion to film by stray light q: seen is A = log10((1+q)/(10^-T + q)) for a true
 * absorbance T, which starts as T/(1+q) and never comes above log10((1+q)/q) = 1.41.
 * @param absorbance seen, below 1.41. @returns share: 0.04 at A = 0.5, 0.05 at 0.6, 0.13 at 1.
 */
export function darknessLag(absorbance: number): number {
  const inProportion = -Math.log10((1 + STRAY_RATIO) * 10 ** -absorbance - STRAY_RATIO) / (1 + STRAY_RATIO);
  return 1 - absorbance / inProportion;
}

/** Relative film over a card, from its best colour. */
export interface Absorbance {
  /** By cell: -log10 of the light over bare paper's. */
  readonly cells: Float32Array;
  /** By block: median of its cells. */
  readonly blocks: Float64Array;
  /** A block's absorbance above this is film, not the picture's grain or the paper's unevenness. */
  readonly leastFilm: number;
  /** What the darkest part of the spot comes to. */
  readonly top: number;
  readonly warnings: readonly Warning[];
}

/**
 * Darkness as relative film: by A. Beer (1852) and J.H. Lambert (1760; both from memory) the absorbance
 * `-log10(I/I_paper)` of a clear coloured film is in proportion to its thickness. Each colour is set against bare paper
 * of its own, which divides a colour cast out; of the colours that are not clipped that is taken which tells most
 * film apart below `FULL_ABSORBANCE`.
 *
 * Left out: the scatter of a white or filled film, which lags behind proportion sooner, and the camera's own contrast.
 *
 * @param edges of the card that are bare.
 * @throws CrosscoatError `range` for a card without a spot or clipped in every colour, and what `flattenLight` throws.
 */
export function absorbance(card: SquaredCard, blocks: Blocks, edges: BareEdges): Absorbance {
  const places = blockPlaces(card, blocks);
  const blockOfCell = cellBlocks(card, blocks);
  const read = card.channels.map((channel) => readChannel(channel, { blocks, places, blockOfCell, edges }));
  const usable = read.filter(({ whiteFraction, blackFraction }) => whiteFraction <= MOST_CLIPPED && blackFraction <= MOST_CLIPPED);
  const chosen = mostTelling(usable) ?? throwClipped(read);
  if (!(chosen.top >= LEAST_ABSORBANCE)) {
    throw new CrosscoatError('range', `photograph: the darkest place is ${(100 * (1 - 10 ** -chosen.top)).toFixed(1)} % darker than bare paper, less than 7 % (no spot is told from the paper); spray a dark colour on white paper, or set the corners round the spot`);
  }
  return {
    cells: cellAbsorbance(chosen.channel.light, chosen.paper.surface, card),
    blocks: chosen.darkness,
    leastFilm: chosen.leastFilm,
    top: chosen.top,
    warnings: castWarnings(read),
  };
}

/** Where the blocks' middles stand on the photograph. */
function blockPlaces({ columns, rows, view }: SquaredCard, blocks: Blocks): PhotoPlaces {
  const count = blocks.columns * blocks.rows;
  const [x, y] = [new Float64Array(count), new Float64Array(count)];
  for (let block = 0; block < count; block++) {
    const across = (((block % blocks.columns) + 0.5) * columns) / blocks.columns;
    const up = ((Math.floor(block / blocks.columns) + 0.5) * rows) / blocks.rows;
    [x[block], y[block]] = photoPlace(view, across, up);
  }
  return { x, y };
}

function cellAbsorbance(light: Float32Array, surface: LightSurface, { columns, rows, view }: SquaredCard): Float32Array {
  const cells = new Float32Array(light.length);
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, cell++) {
      const [x, y] = photoPlace(view, column + 0.5, row + 0.5);
      cells[cell] = (lightAt(surface, x, y) - Math.log(Math.max(LEAST_LIGHT, light[cell] as number))) / Math.LN10;
    }
  }
  return cells;
}

function mostTelling(read: readonly ReadChannel[]): ReadChannel | null {
  return read.reduce<ReadChannel | null>((most, each) => (most === null || each.worth > most.worth ? each : most), null);
}

function throwClipped(read: readonly ReadChannel[]): never {
  const isWhite = read.some(({ whiteFraction }) => whiteFraction > MOST_CLIPPED);
  const share = Math.max(...read.map(({ whiteFraction, blackFraction }) => (isWhite ? whiteFraction : blackFraction)));
  const percent = (100 * share).toFixed(0);
  throw new CrosscoatError('range', isWhite
    ? `photograph: no colour can be read, and ${percent} % of the bare paper is as bright as a picture can hold, more than ${100 * MOST_CLIPPED} % (overexposed: the fan's thin edges vanish in it); photograph it again, darker`
    : `photograph: no colour can be read, and ${percent} % of the spot is as dark as a picture can hold, more than ${100 * MOST_CLIPPED} % (its film cannot be told apart); photograph it again, lighter, or spray less on the card`);
}

/** Bare paper's colours, set against each other. */
function castWarnings(read: readonly ReadChannel[]): Warning[] {
  const lights = read.map(({ paperLight }) => paperLight);
  const [low, high] = [Math.min(...lights), Math.max(...lights)];
  if (!(high > CAST_RATIO * low)) return [];
  const [lowName, highName] = [low, high].map((value) => CHANNEL_NAMES[lights.indexOf(value)]);
  return [{ code: 'model-limit', text: `photograph: bare paper is ${(high / low).toFixed(1)} times as light in ${highName} as in ${lowName}, a strong colour cast; it was divided out, but daylight and white paper read better`, place: {} }];
}
