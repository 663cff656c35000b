import { CrosscoatError, type Warning } from '../../../base/errors.ts';
import { connectedRegions } from '../../../base/regions.ts';
import type { Absorbance } from './absorbance.ts';
import { type Blocks, spread } from './blocks.ts';
import type { BareEdges } from './flattenLight.ts';

/** Assumed: a dark place apart with less of the film than this, against the greatest, is a blot and not one of a split fan's halves. */
const BLOT_RATIO = 0.15;
/** Assumed: a spot that is still this dark at the card's edge, against its darkest, has left the card. */
const OFF_CARD_RATIO = 0.1;

/** Where the spot is. All by block. */
export interface FoundSpot {
  /** 1 where film shows. */
  readonly isFilm: Uint8Array;
  /** The same with its neighbours: everything of the spot is in it, its thinnest edge too. */
  readonly isSpot: Uint8Array;
  /** Blots beside the spot, with their neighbours. */
  readonly isBlot: Uint8Array;
  readonly warnings: readonly Warning[];
}

/**
 * The spot among what is darker than paper: the connected place that holds most film, with others that hold at
 * least 15 % as much (the halves of a split fan). The rest is called a blot and left out, with a warning.
 * @throws CrosscoatError `geometry` where the spot reaches an edge that should be bare with more than 10 % of its darkest.
 */
export function findSpot({ blocks: film, leastFilm }: Absorbance, blocks: Blocks, edges: BareEdges): FoundSpot {
  const places = connectedPlaces(film, leastFilm, blocks);
  const amounts = places.map((place) => place.reduce((sum, block) => sum + (film[block] as number), 0));
  const most = Math.max(...amounts);
  const isFilm = new Uint8Array(film.length);
  const isBlot = new Uint8Array(film.length);
  let blots = 0;
  for (const [i, place] of places.entries()) {
    const isPart = (amounts[i] as number) >= BLOT_RATIO * most;
    // A lone dark block is the picture's grain or a speck, not worth a word.
    if (!isPart && place.length > 1) blots++;
    for (const block of place) (isPart ? isFilm : isBlot)[block] = 1;
  }
  const isSpot = spread(isFilm, blocks);
  const warnings = [...blotWarnings(blots), ...edgeWarnings(film, isFilm, blocks, edges)];
  return { isFilm, isSpot, isBlot: spread(isBlot, blocks).map((blot, block) => (isSpot[block] === 1 ? 0 : blot)), warnings };
}

/** Blocks above a limit that touch by a side or a corner, place by place. */
function connectedPlaces(film: Float64Array, least: number, { columns, rows }: Blocks): Uint32Array[] {
  const { count, start, cells } = connectedRegions(Uint8Array.from(film, (here) => (here > least ? 1 : 0)), columns, rows);
  return Array.from({ length: count }, (_, i) => cells.subarray(start[i], start[i + 1]));
}

function blotWarnings(blots: number): Warning[] {
  if (blots === 0) return [];
  const what = blots === 1 ? 'a dark place beside the spot was left out as a blot; look whether it is' : `${blots} dark places beside the spot were left out as blots; look whether one is`;
  return [{ code: 'model-limit', text: `photograph: ${what} part of the fan`, place: {} }];
}

function edgeWarnings(film: Float64Array, isFilm: Uint8Array, { columns, rows }: Blocks, edges: BareEdges): Warning[] {
  let [atEdge, top] = [0, 0];
  for (let block = 0; block < film.length; block++) {
    if (isFilm[block] === 0) continue;
    const [column, row] = [block % columns, Math.floor(block / columns)];
    const besideX = edges !== 'beside-y' && (row === 0 || row === rows - 1);
    const besideY = edges !== 'beside-x' && (column === 0 || column === columns - 1);
    top = Math.max(top, film[block] as number);
    if (besideX || besideY) atEdge = Math.max(atEdge, film[block] as number);
  }
  if (atEdge === 0) return [];
  const text = `photograph: the spot reaches the edge of what is squared up with ${((100 * atEdge) / top).toFixed(1)} % of its darkest`;
  if (atEdge > OFF_CARD_RATIO * top) {
    throw new CrosscoatError('geometry', `${text}, more than ${100 * OFF_CARD_RATIO} % (the fan is off the card, and its width cannot be known); spray on a larger card, or set the corners wider`);
  }
  return [{ code: 'model-limit', text: `${text}; its width may be more than what is read`, place: {} }];
}
