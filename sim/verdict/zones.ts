import type { Warning } from '../base/errors.ts';
import type { Film } from '../film/film.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import { DRY_KINDS, dryCodes, FILM_KINDS, filmCodes } from './classes.ts';
import { isLack, judgedFilm, limitOf, marginOf } from './judged.ts';
import { connectedRegions, joinNearRegions } from '../base/regions.ts';
import type { Target } from './target.ts';
import type { FaultKind, Zone } from './verdict.ts';

/**
 * Zones of one kind with a gap below this are one zone. Assumed: about three drop spacings of a
 * wet comb's width; below it a finisher sees and mends one place, not two.
 */
export const JOIN_GAP_m = 0.006;

/** Zones below this are left out and counted. Assumed: 1 cm², smaller than a gauge's spot. */
export const LEAST_ZONE_m2 = 1e-4;

/** The zones of a film, and what was left out. */
export interface FoundZones {
  readonly zones: readonly Zone[];
  readonly warnings: readonly Warning[];
}

/**
 * The connected regions of each fault: holiday, thin lap, heavy spot, dry spray.
 *
 * Cells at least half covered are judged (`filmCodes`, `dryCodes`); regions touch by a side or a
 * corner; regions of one kind nearer than `JOIN_GAP_m` are joined; those under `LEAST_ZONE_m2`
 * are dropped, with one warning that says how many and how much area. Within one kind zones are
 * disjoint; a dry-spray zone may lie over a thin or heavy one. Order: kind, then lowest cell.
 */
export function findZones(film: Film, panelGrid: PanelGrid, target: Target): FoundZones {
  const codes = filmCodes(film, panelGrid, target);
  const dry = dryCodes(film, panelGrid, target, codes);
  const maps: FaultMap[] = [{ codes, kinds: FILM_KINDS, values: judgedFilm(film, target) }];
  if (dry.includes(1)) maps.push({ codes: dry, kinds: DRY_KINDS, values: dryShares(film, dry) });
  return zonesOfMaps(maps, panelGrid, target);
}

/** Cells at fault: code 0 is none, code n the n-th of `kinds`; `values` are judged. All of the panel's grid. */
export interface FaultMap {
  readonly codes: Uint8Array;
  readonly kinds: readonly FaultKind[];
  readonly values: Float32Array;
}

/** The zones of some maps, in their order, and what was left out. */
export function zonesOfMaps(maps: readonly FaultMap[], { grid, cover }: PanelGrid, target: Target): FoundZones {
  const tally: Tally = { zones: [], small: 0, smallArea_m2: 0 };
  const shape = { cover, columns: grid.columns, rows: grid.rows, cell_m: grid.cellSize_m };
  for (const { codes, kinds, values } of maps) collectZones(tally, shape, codes, kinds, values, target);
  return { zones: tally.zones, warnings: smallZoneWarnings(tally) };
}

interface Tally {
  readonly zones: Zone[];
  small: number;
  smallArea_m2: number;
}

interface Shape {
  readonly cover: Float32Array;
  readonly columns: number;
  readonly rows: number;
  readonly cell_m: number;
}

function dryShares(film: Film, dry: Uint8Array): Float32Array {
  const share = new Float32Array(dry.length);
  for (let cell = 0; cell < dry.length; cell++) {
    if (dry[cell] === 0) continue;
    share[cell] = (film.arrivedDry_m[cell] as number) / (film.wet_m[cell] as number);
  }
  return share;
}

/** Adds the zones of one code map to the tally, kind by kind. */
function collectZones(
  tally: Tally,
  shape: Shape,
  codes: Uint8Array,
  kinds: readonly FaultKind[],
  values: Float32Array,
  target: Target,
): void {
  const { columns, rows, cell_m } = shape;
  const regions = connectedRegions(codes, columns, rows);
  const group = joinNearRegions(regions, columns, rows, JOIN_GAP_m / cell_m);
  const members = new Map<number, Uint32Array[]>();
  for (let region = 0; region < regions.count; region++) {
    const cells = regions.cells.subarray(regions.start[region], regions.start[region + 1]);
    const root = group[region] as number;
    const together = members.get(root);
    if (together === undefined) members.set(root, [cells]);
    else together.push(cells);
  }
  for (let code = 1; code <= kinds.length; code++) {
    for (const [root, parts] of members) {
      if (regions.code[root] !== code) continue;
      const area_m2 = coveredArea_m2(parts, shape);
      if (area_m2 < LEAST_ZONE_m2) {
        tally.small++;
        tally.smallArea_m2 += area_m2;
      } else {
        tally.zones.push(makeZone(kinds[code - 1] as FaultKind, parts, area_m2, shape, values, target));
      }
    }
  }
}

function coveredArea_m2(parts: readonly Uint32Array[], shape: Shape): number {
  let covered = 0;
  for (const cells of parts) {
    for (let i = 0; i < cells.length; i++) covered += shape.cover[cells[i] as number] as number;
  }
  return covered * shape.cell_m * shape.cell_m;
}

function makeZone(
  kind: FaultKind,
  parts: readonly Uint32Array[],
  area_m2: number,
  shape: Shape,
  values: Float32Array,
  target: Target,
): Zone {
  const cells = packedCells(parts);
  const { columns, cell_m } = shape;
  let left = Infinity;
  let right = -Infinity;
  for (let i = 0; i < cells.length; i++) {
    const column = (cells[i] as number) % columns;
    if (column < left) left = column;
    if (column > right) right = column;
  }
  const worstCell = worstCellOf(kind, cells, values, columns);
  const bottom = Math.floor((cells[0] as number) / columns);
  const top = Math.floor((cells[cells.length - 1] as number) / columns);
  const worst = values[worstCell] as number;
  return {
    kind,
    area_m2,
    at_m: centreOf(worstCell, columns, cell_m),
    box_m: [left * cell_m, bottom * cell_m, (right + 1) * cell_m, (top + 1) * cell_m],
    worst,
    limit: limitOf(kind, target),
    margin: marginOf(kind, worst, target),
    cells,
  };
}

/**
 * The cell of the worst value; of several equal ones (a bare corner is all zero) the one nearest
 * their middle, so that a marker stands in the fault and a mirrored film gives a mirrored place.
 */
function worstCellOf(kind: FaultKind, cells: Uint32Array, values: Float32Array, columns: number): number {
  const sign = isLack(kind) ? -1 : 1;
  let worst = -Infinity;
  for (let i = 0; i < cells.length; i++) {
    worst = Math.max(worst, sign * (values[cells[i] as number] as number));
  }
  const ties = cells.filter((cell) => sign * (values[cell] as number) === worst);
  let column = 0;
  let row = 0;
  for (const cell of ties) {
    column += (cell % columns) / ties.length;
    row += Math.floor(cell / columns) / ties.length;
  }
  let best = ties[0] as number;
  let nearest = Infinity;
  for (const cell of ties) {
    const away = Math.hypot((cell % columns) - column, Math.floor(cell / columns) - row);
    if (away < nearest) {
      nearest = away;
      best = cell;
    }
  }
  return best;
}

/** All cells of the parts in one rising list. */
function packedCells(parts: readonly Uint32Array[]): Uint32Array {
  let count = 0;
  for (const cells of parts) count += cells.length;
  const packed = new Uint32Array(count);
  let at = 0;
  for (const cells of parts) {
    packed.set(cells, at);
    at += cells.length;
  }
  return packed.sort();
}

/** Centre of a cell on the panel, m. */
export function centreOf(cell: number, columns: number, cell_m: number): readonly [number, number] {
  const row = Math.floor(cell / columns);
  return [(cell - row * columns + 0.5) * cell_m, (row + 0.5) * cell_m];
}

function smallZoneWarnings(tally: Tally): Warning[] {
  if (tally.small === 0) return [];
  const area_cm2 = (tally.smallArea_m2 * 1e4).toFixed(1);
  const many = tally.small === 1 ? '1 zone' : `${tally.small} zones`;
  const each = tally.small === 1 ? '' : ' each';
  return [
    {
      code: 'small-zones-dropped',
      text: `${many} of less than ${LEAST_ZONE_m2 * 1e4} cm²${each} (${area_cm2} cm² in all) left out of the list of faults; they still count in the film figures`,
      place: {},
    },
  ];
}
