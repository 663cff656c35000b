import { zoneRim, type Grid, type ReportedDebrief, type StrokeLine, type Zone } from '../../../../sim/index.ts';

/** Left, bottom, right, top, m. */
export type Box = readonly [left_m: number, bottom_m: number, right_m: number, top_m: number];

/** Ground seen about a place, and beyond the panel's edge, so that strokes open and close in the picture, m. */
const ABOUT_M = 0.12;
const BEYOND_M = 0.08;
/** A crop is no wider than this many times its height, nor higher than its width: a stroke is long and thin. */
const WIDEST = 2.5;

/** The place and the strokes that the chief sentence speaks of. */
export interface ChiefPlace {
  readonly box: Box;
  readonly at_m: readonly [number, number] | null;
  readonly strokes: readonly number[];
  /** Rims of the zones spoken of. */
  readonly rims: readonly Float64Array[];
}

/** Where to look for the chief finding; the whole panel where it has no place. */
export function chiefPlace({ chief, coat }: ReportedDebrief, lines: readonly StrokeLine[]): ChiefPlace {
  const { panel, panelGrid } = coat.setting;
  const whole = wholeBox(panel);
  if (chief.kind === 'fault') {
    const zones = [chief.fault.zones[0], chief.run].filter((zone): zone is Zone => zone !== null && zone !== undefined);
    // The strokes of that cause are the plan's, which were not sprayed.
    const strokes = chief.fault.cause.kind === 'missing-stroke' ? [] : chief.fault.cause.strokes;
    const box = zones.length === 0 ? whole : crop(zones.map(({ box_m }) => box_m).reduce(joined), whole);
    return { box, at_m: zones[0]?.at_m ?? null, strokes, rims: zones.flatMap(({ cells }) => zoneRim(cells, panelGrid.grid)) };
  }
  const stroke = chief.kind === 'measure' ? chief.stroke : null;
  const line = lines.find(({ index }) => index === stroke)?.line;
  if (stroke === null || line === undefined || line.length < 2) return { box: whole, at_m: null, strokes: [], rims: [] };
  return { box: crop(lineBox(line), whole), at_m: null, strokes: [stroke], rims: [] };
}

/** The panel with a little beyond its edge. */
export function wholeBox({ width_m, height_m }: { readonly width_m: number; readonly height_m: number }): Box {
  return [-BEYOND_M, -BEYOND_M, width_m + BEYOND_M, height_m + BEYOND_M];
}

/** A box on whole cells, with the cells it begins and ends at. */
export interface CellBox {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

export function cellBox([left, bottom, right, top]: Box, { cellSize_m }: Pick<Grid, 'cellSize_m'>): CellBox {
  const column = Math.floor(left / cellSize_m);
  const row = Math.floor(bottom / cellSize_m);
  return { column, row, columns: Math.max(1, Math.ceil(right / cellSize_m) - column), rows: Math.max(1, Math.ceil(top / cellSize_m) - row) };
}

/** The first point of a line that lies in a box, `inset_m` from its rim; null where none does. */
export function firstInside(line: ArrayLike<number>, [left, bottom, right, top]: Box, inset_m: number): readonly [number, number] | null {
  for (let i = 0; i + 1 < line.length; i += 2) {
    const [x, y] = [line[i] as number, line[i + 1] as number];
    if (x >= left + inset_m && x <= right - inset_m && y >= bottom + inset_m && y <= top - inset_m) return [x, y];
  }
  return null;
}

/** What a box shows with ground about it, not too slender, within the whole. */
function crop([left, bottom, right, top]: Box, whole: Box): Box {
  const about = Math.max(ABOUT_M, (right - left) / 4, (top - bottom) / 4);
  const width = right - left + 2 * about;
  const height = Math.max(top - bottom + 2 * about, width / WIDEST);
  const middle: readonly [number, number] = [(left + right) / 2, (bottom + top) / 2];
  const half: readonly [number, number] = [Math.max(width, height) / 2, height / 2];
  return [
    Math.max(whole[0], middle[0] - half[0]),
    Math.max(whole[1], middle[1] - half[1]),
    Math.min(whole[2], middle[0] + half[0]),
    Math.min(whole[3], middle[1] + half[1]),
  ];
}

function joined(a: Box, b: Box): Box {
  return [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])];
}

function lineBox(line: ArrayLike<number>): Box {
  let box: Box = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i + 1 < line.length; i += 2) {
    const [x, y] = [line[i] as number, line[i + 1] as number];
    box = joined(box, [x, y, x, y]);
  }
  return box;
}
