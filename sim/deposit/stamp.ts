import type { Spray } from '../gun/spray.ts';
import { amountsAt, type Amounts } from './amounts.ts';
import type { Deposit } from './deposit.ts';
import { fluxAt, type FanTables } from './fanTables.ts';
import type { GunPose } from './fluidSlices.ts';
import { addAmounts, addCollapsedRow, ellipticFluxRow, squareFluxRow, tiltedFluxRow } from './fluxRows.ts';
import { gunView, rowsReached, type GunView } from './gunView.ts';
import { keepBelowZero, keepInCone, type RowSpan } from './rowSpan.ts';

/** One position of the gun, held while `liquid_m3` leaves it. */
export interface Stamp {
  readonly pose: GunPose;
  readonly view: GunView;
  readonly liquid_m3: number;
  readonly amounts: Amounts;
  readonly stroke: number;
}

/**
 * Lays one stamp: each cell gets the flux at its centre times the liquid's three amounts.
 * @param row working memory, one grid row.
 */
export function layStamp(deposit: Deposit, tables: FanTables, stamp: Stamp, row: Float32Array): void {
  const { grid } = deposit;
  const { view, liquid_m3, amounts } = stamp;
  const wet = liquid_m3 * amounts.wet;
  const solids = liquid_m3 * amounts.solids;
  const arrivedDry = liquid_m3 * amounts.arrivedDry;
  const [firstRow, endRow] = rowsReached(view, grid, tables, 1, 1);
  const span: RowSpan = { low: 0, high: 0 };
  if (tables.wholePower > 0) {
    const scale = view.weight * tables.peak_m2;
    for (let r = firstRow; r < endRow; r++) {
      const { u0, du, s0, ds, z0, dz } = rowOf(view, r, grid.cellSize_m);
      span.low = 0;
      span.high = grid.columns;
      keepInCone(span, u0, du, s0, ds, z0, dz);
      addCollapsedRow(deposit, r * grid.columns, span.low, span.high, tables.wholePower, u0, du, s0, ds, z0, dz, scale * wet, scale * solids, scale * arrivedDry);
    }
    return;
  }
  for (let r = firstRow; r < endRow; r++) {
    fluxRow(row, span, view, tables, r, grid.columns, grid.cellSize_m);
    if (span.low >= span.high) continue;
    addAmounts(deposit, r * grid.columns, row, span.low, span.high, wet, solids, arrivedDry);
  }
}

/** u, s and z at column 0 of a grid row, and their steps a column. */
interface ViewedRow {
  readonly u0: number;
  readonly du: number;
  readonly s0: number;
  readonly ds: number;
  readonly z0: number;
  readonly dz: number;
}

function rowOf(view: GunView, r: number, cellSize_m: number): ViewedRow {
  const x0_m = 0.5 * cellSize_m;
  const y_m = (r + 0.5) * cellSize_m;
  return {
    u0: view.u0 + view.ux * x0_m + view.uy * y_m,
    du: view.ux * cellSize_m,
    s0: view.s0 + view.sx * x0_m + view.sy * y_m,
    ds: view.sx * cellSize_m,
    z0: view.z0 + view.zx * x0_m + view.zy * y_m,
    dz: view.zx * cellSize_m,
  };
}

/** Flux per landing liquid along grid row `r` into `row`; `span` becomes the columns that it fills. */
export function fluxRow(row: Float32Array, span: RowSpan, view: GunView, tables: FanTables, r: number, columns: number, cellSize_m: number): void {
  const { u0, du, s0, ds, z0, dz } = rowOf(view, r, cellSize_m);
  span.low = 0;
  span.high = columns;
  if (tables.elliptic) {
    keepInCone(span, u0, du, s0, ds, z0, dz);
    if (span.low < span.high) ellipticFluxRow(row, span.low, span.high, tables, u0, du, s0, ds, z0, dz, view.weight);
    return;
  }
  keepInPyramid(span, u0, du, s0, ds, z0, dz);
  if (span.low >= span.high) return;
  if (view.square) {
    const perHeight = 1 / view.height_m;
    squareFluxRow(row, span.low, span.high, tables, u0 * perHeight, du * perHeight, s0 * perHeight, ds * perHeight, view.weight * perHeight ** 3);
  } else {
    tiltedFluxRow(row, span.low, span.high, tables, u0, du, s0, ds, z0, dz, view.weight);
  }
}

/** Cuts a span to |u| <= z and |s| <= z. */
function keepInPyramid(span: RowSpan, u0: number, du: number, s0: number, ds: number, z0: number, dz: number): void {
  keepBelowZero(span, u0 - z0, du - dz);
  keepBelowZero(span, -u0 - z0, -du - dz);
  keepBelowZero(span, s0 - z0, ds - dz);
  keepBelowZero(span, -s0 - z0, -ds - dz);
}

/** Flux per landing liquid at places (x, y), 1/m², into `out`; all of one length. */
export function stampFluxes(out: Float64Array, view: GunView, tables: FanTables, x_m: Float64Array, y_m: Float64Array): void {
  const { u0, ux, uy, s0, sx, sy, z0, zx, zy, weight } = view;
  for (let i = 0; i < out.length; i++) {
    const x = x_m[i] as number;
    const y = y_m[i] as number;
    const z = z0 + zx * x + zy * y;
    const u = u0 + ux * x + uy * y;
    const s = s0 + sx * x + sy * y;
    out[i] = Math.abs(u) <= z && Math.abs(s) <= z ? (fluxAt(tables, u / z, s / z) * weight) / (z * z * z) : 0;
  }
}

/** A stamp from a pose: its view and what becomes of its liquid at that slant distance. */
export function stampAt(pose: GunPose, tables: FanTables, liquid_m3: number, spray: Spray, stroke: number): Stamp {
  const view = gunView(pose, tables);
  return { pose, view, liquid_m3, amounts: amountsAt(spray, view.slant_m), stroke };
}
