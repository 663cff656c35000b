import type { Deposit } from './deposit.ts';

/**
 * The inside of a stroke that runs with the grid: over columns `[lowColumn, highColumn)` and rows
 * `[lowRow, highRow)` its film depends on the row alone (`along` = 'rows') or on the column alone.
 * `flux` holds one value a row (or column) of that range, liquid per area, m.
 */
export interface Band {
  readonly along: 'rows' | 'columns';
  readonly lowColumn: number;
  readonly highColumn: number;
  readonly lowRow: number;
  readonly highRow: number;
  readonly liquid_m: Float64Array;
  readonly wet: number;
  readonly solids: number;
  readonly arrivedDry: number;
}

/**
 * Film is counted in whole steps of 2^-60 m (1e-18 m) while bands are summed, so that a sum of
 * film up to 2^-7 m (8 mm) is exact and what is taken off where a band ends leaves nothing behind.
 */
const STEPS_PER_M = 2 ** 60;

function wholeSteps(film_m: number): number {
  return Math.round(film_m * STEPS_PER_M) / STEPS_PER_M;
}

/** Running sums of one amount while rows are walked upward. */
interface Running {
  readonly out: Float32Array;
  readonly share: (band: Band) => number;
  /** Change of film from one column to the next, of bands along the rows. */
  readonly change: Float64Array;
  /** Film of the bands along the columns that are open in this row. */
  readonly open: Float64Array;
}

/**
 * Lays bands with one visit a cell for all of them together: along a row they add up as
 * differences, across rows they open and close. Cost: cells + bands × (rows + columns).
 */
export function layBands(deposit: Deposit, bands: readonly Band[]): void {
  if (bands.length === 0) return;
  const { columns, rows } = deposit.grid;
  const shares: readonly (readonly [Float32Array, (band: Band) => number])[] = [
    [deposit.wet_m, (band) => band.wet],
    [deposit.solids_m, (band) => band.solids],
    [deposit.arrivedDry_m, (band) => band.arrivedDry],
  ];
  const running: Running[] = shares
    .filter(([, share]) => bands.some((band) => share(band) > 0))
    .map(([out, share]) => ({ out, share, change: new Float64Array(columns + 1), open: new Float64Array(columns) }));
  const first = bands.reduce((low, band) => Math.min(low, band.lowRow), rows);
  const end = bands.reduce((high, band) => Math.max(high, band.highRow), 0);
  for (let row = first; row < end; row++) {
    for (const band of bands) noteBand(band, row, running);
    for (const one of running) addRunning(one.out, row * columns, one.change, one.open, columns);
  }
}

/** Enters a band into the running sums where it matters in this row. */
function noteBand(band: Band, row: number, running: readonly Running[]): void {
  if (row < band.lowRow || row > band.highRow) return;
  for (const { share, change, open } of running) {
    const factor = share(band);
    if (band.along === 'rows') {
      if (row === band.highRow) continue;
      const film_m = wholeSteps((band.liquid_m[row - band.lowRow] as number) * factor);
      change[band.lowColumn] = (change[band.lowColumn] as number) + film_m;
      change[band.highColumn] = (change[band.highColumn] as number) - film_m;
    } else if (row === band.lowRow || row === band.highRow) {
      const sign = row === band.lowRow ? 1 : -1;
      for (let c = band.lowColumn; c < band.highColumn; c++) {
        open[c] = (open[c] as number) + sign * wholeSteps((band.liquid_m[c - band.lowColumn] as number) * factor);
      }
    }
  }
}

/** Adds one row of running sums and clears its changes. */
function addRunning(out: Float32Array, offset: number, change: Float64Array, open: Float64Array, columns: number): void {
  let level_m = 0;
  for (let c = 0; c < columns; c++) {
    level_m += change[c] as number;
    change[c] = 0;
    out[offset + c] = (out[offset + c] as number) + level_m + (open[c] as number);
  }
  change[columns] = 0;
}
