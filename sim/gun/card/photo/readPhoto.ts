import { CrosscoatError, type Warning } from '../../../base/errors.ts';
import { absorbance, darknessLag, DEEP_ABSORBANCE } from './absorbance.ts';
import { blocksOf, cellBlocks } from './blocks.ts';
import { burstSpot } from './burstSpot.ts';
import type { CardPhoto, FilmMap, PhotoFan, PhotoTask } from './cardPhoto.ts';
import { checkPhoto } from './checkPhoto.ts';
import { findSpot } from './findSpot.ts';
import type { BareEdges } from './flattenLight.ts';
import { FULL_ABSORBANCE } from './readChannel.ts';
import { mendSpecks } from './specks.ts';
import { LONGER_SIDE_CELLS, squareUp } from './squareUp.ts';
import { strokeSpot } from './strokeSpot.ts';

/** Assumed: shares of the spot that is full, and of the card that is specks, above which it is said. */
const FULL_WORTH_SAYING = 0.01;
const SPECKS_WORTH_SAYING = 0.005;
/** Assumed: a fan of fewer cells across is read coarsely, and of fewer still shows no shape. */
const COARSE_CELLS = 60;
const FEWEST_CELLS = 20;

/** How finely a card is read. */
export interface PhotoOptions {
  /** Most cells along the card's longer side. */
  readonly longerSideCells?: number;
}

/**
 * The fan from a photograph of a test card: squared up by its corners, set against bare paper, darkness taken as
 * relative film, and the film summed across the spot. What comes out has no unit and no scale of its own: it shows the
 * fan's shape and width, not how thick its film is.
 *
 * @throws CrosscoatError `geometry` for a spot less than 20 cells wide; what `checkPhoto`, `absorbance`, `flattenLight` and
 *   `findSpot` throw.
 */
export function readPhoto(photo: CardPhoto, task: PhotoTask, { longerSideCells = LONGER_SIDE_CELLS }: PhotoOptions = {}): PhotoFan {
  const corners = checkPhoto(photo, task);
  const card = squareUp(photo, corners, task.size_m, longerSideCells);
  const blocks = blocksOf(card);
  const edges = bareEdges(task);
  const dark = absorbance(card, blocks, edges);
  const found = findSpot(dark, blocks, edges);
  const { cells, speckFraction } = mendSpecks(dark.cells, card);
  const map: FilmMap = { columns: card.columns, rows: card.rows, cellSize_m: card.cellSize_m, film: cells };
  const blockOfCell = cellBlocks(card, blocks);
  const byCell = (marked: Uint8Array) => cellMarks(marked, blockOfCell);
  const isSpot = byCell(found.isSpot);
  const isClean = byCell(found.isBlot.map((blot) => 1 - blot));
  const { spot, readings, doubts } = task.kind === 'burst' ? burstSpot(map, isSpot, isClean) : strokeSpot(map, isSpot, isClean, task.strokeAlong ?? 'x');
  checkSize(spot.width_m / map.cellSize_m);
  const fullFraction = shareFull(cells, byCell(found.isFilm));
  const said = [...doubts, ...darkDoubts(fullFraction, dark.top), ...grainDoubts(speckFraction), ...coarseDoubts(spot.width_m / map.cellSize_m)];
  const warnings: Warning[] = said.map((text) => ({ code: 'model-limit', text: `photograph: ${text}`, place: {} }));
  return { readings, spot, map, fullFraction, warnings: [...dark.warnings, ...found.warnings, ...warnings] };
}

/** A stroke may run off the card at its ends. */
function bareEdges({ kind, strokeAlong }: PhotoTask): BareEdges {
  if (kind === 'burst') return 'all';
  return strokeAlong === 'y' ? 'beside-y' : 'beside-x';
}

function checkSize(cells: number): void {
  if (cells >= FEWEST_CELLS) return;
  throw new CrosscoatError('geometry', `photograph: the spot is ${cells.toFixed(0)} cells wide on the squared card, fewer than ${FEWEST_CELLS} (too small to show a fan's shape); set the corners nearer round it, or take the picture from nearer`);
}

function cellMarks(marked: Uint8Array, blockOfCell: Uint32Array): Uint8Array {
  const marks = new Uint8Array(blockOfCell.length);
  for (let cell = 0; cell < marks.length; cell++) marks[cell] = marked[blockOfCell[cell] as number] as number;
  return marks;
}

function shareFull(film: Float32Array, isFilm: Uint8Array): number {
  let [full, all] = [0, 0];
  for (let cell = 0; cell < film.length; cell++) {
    if (isFilm[cell] === 0) continue;
    all++;
    if ((film[cell] as number) > FULL_ABSORBANCE) full++;
  }
  return full / all;
}

function darkDoubts(share: number, top: number): string[] {
  if (!(share > FULL_WORTH_SAYING)) {
    if (!(top > DEEP_ABSORBANCE)) return [];
    return [`at the darkest ${(100 * (1 - 10 ** -top)).toFixed(0)} % of the light is taken, where film may read ${(100 * darknessLag(Math.min(top, FULL_ABSORBANCE))).toFixed(0)} % too thin and the fan so much flatter; a shorter burst, or a thinner colour, reads better`];
  }
  return [`${(100 * share).toFixed(0)} % of the spot is so dark that more film hardly shows (absorbance above ${FULL_ABSORBANCE}), so that the fan reads flatter than it is; spray less on the card, or thin the colour`];
}

function grainDoubts(share: number): string[] {
  if (!(share > SPECKS_WORTH_SAYING)) return [];
  return [`${(100 * share).toFixed(1)} % of the card was specks and was mended from what is round them; use a clean card`];
}

function coarseDoubts(cells: number): string[] {
  if (cells >= COARSE_CELLS) return [];
  return [`the fan is only ${cells.toFixed(0)} cells wide on the squared card; set the corners nearer round it`];
}
