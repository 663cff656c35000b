import { seededRandom } from '../../sim/base/noise.ts';
import { emptyDeposit } from '../../sim/deposit/emptyDeposit.ts';
import { fanTables } from '../../sim/deposit/fanTables.ts';
import { layPath } from '../../sim/deposit/layPath.ts';
import type { LayMethod } from '../../sim/deposit/pieces.ts';
import { layStamp, stampAt } from '../../sim/deposit/stamp.ts';
import { stampTable } from '../../sim/deposit/stampTable.ts';
import { makeSpray } from '../../sim/gun/makeSpray.ts';
import { plainSetUp, strokesPath, wholeGrid } from '../helpers/sprayCases.ts';
import { measure, printTable } from './measure.ts';

const SEED = 20_260;
const COLUMNS = 1500;
const ROWS = 750;
const CELL_M = 2e-3;
const STROKES = 100;
const panelGrid = wholeGrid(COLUMNS, ROWS, CELL_M);
const spray = makeSpray(plainSetUp({ width_m: 0.25, depth_m: 0.0375 }));

/** Million cells a second. */
const rate = (cells: number, ms: number) => (cells / ms / 1e3).toFixed(0);

function benchTable(): void {
  const columns = 2000;
  const rows = 1000;
  const [wide, high, count] = [150, 40, 20_000];
  const out = new Float32Array(columns * rows);
  const table = new Float32Array(wide * high).map((_, i) => Math.sin(i) ** 2 * 1e-6);
  const random = seededRandom(SEED);
  const scattered = Array.from({ length: count }, () => [Math.floor(random() * (columns - wide)), Math.floor(random() * (rows - high))] as const);
  const path = Array.from({ length: count }, (_, i) => [(2 * i) % (columns - wide), (20 * Math.floor((2 * i) / (columns - wide))) % (rows - high)] as const);
  const lay = (places: typeof scattered) => () => {
    for (const [column, row] of places) stampTable(out, columns, rows, table, wide, high, column, row);
    return out[500_500] as number;
  };
  const cells = wide * high * count;
  printTable('stamps from a table, 150 × 40 cells, 20,000 a run', ([['random', scattered], ['path', path]] as const).map(([name, places]) => {
    const { min_ms, median_ms } = measure(lay(places), 9);
    return { places: name, 'min ms': min_ms.toFixed(1), 'median ms': median_ms.toFixed(1), 'Mcells/s': rate(cells, median_ms) };
  }));
}

function benchGeneral(): void {
  const tables = fanTables(spray.footprint);
  const deposit = emptyDeposit(panelGrid.grid);
  const row = new Float32Array(COLUMNS);
  const count = 1000;
  const cells = (count * Math.PI * tables.halfLength_m * tables.halfDepth_m) / (CELL_M * CELL_M);
  const rows = ([['square', 0], ['tilted 10°', Math.PI / 18]] as const).map(([name, pitch_rad]) => {
    const random = seededRandom(SEED);
    const stamps = Array.from({ length: count }, () => stampAt(
      { x_m: 0.3 + 2.4 * random(), y_m: 0.3 + 0.9 * random(), z_m: 0.2, fan_rad: Math.PI * random(), pitch_rad, yaw_rad: 0.5 * pitch_rad },
      tables, 1e-9, spray, 0));
    const { min_ms, median_ms } = measure(() => {
      for (const stamp of stamps) layStamp(deposit, tables, stamp, row);
      return deposit.wet_m[500_500] as number;
    });
    return { gun: name, 'min ms': min_ms.toFixed(1), 'median ms': median_ms.toFixed(1), 'Mcells/s': rate(cells, median_ms) };
  });
  printTable('stamps computed at any pose, 1000 a run, cells inside the fan', rows);
}

/** Strokes side by side across the grid's middle, at an angle, each long enough to leave the panel. */
function coat(angle_rad: number) {
  const cos = Math.cos(angle_rad);
  const sin = Math.sin(angle_rad);
  const width_m = COLUMNS * CELL_M;
  const height_m = ROWS * CELL_M;
  const half_m = 0.5 * (width_m * Math.abs(cos) + height_m * Math.abs(sin)) + 0.05;
  const breadth_m = width_m * Math.abs(sin) + height_m * Math.abs(cos);
  const lines = Array.from({ length: STROKES }, (_, i) => {
    const offset_m = breadth_m * ((i + 0.5) / STROKES - 0.5);
    const centre = [width_m / 2 - sin * offset_m, height_m / 2 + cos * offset_m] as const;
    return {
      from: [centre[0] - cos * half_m, centre[1] - sin * half_m] as const,
      to: [centre[0] + cos * half_m, centre[1] + sin * half_m] as const,
    };
  });
  return strokesPath(lines, 0.4, { fan: angle_rad + Math.PI / 2 });
}

function benchCoat(): void {
  const rows = ([['with the rows', 0], ['with the columns', Math.PI / 2], ['slanted 30°', Math.PI / 6]] as const).map(([name, angle]) => {
    const { path, strokes } = coat(angle);
    const lay = (method: LayMethod) => () => {
      const deposit = emptyDeposit(panelGrid.grid);
      layPath({ deposit, panelGrid, path, strokes, spray, method });
      return deposit.wet_m[500_500] as number;
    };
    const closed = measure(lay('auto'), 9);
    const stamped = measure(lay('stamp'), 3, 100);
    return {
      strokes: name,
      'closed min ms': closed.min_ms.toFixed(1),
      'closed median ms': closed.median_ms.toFixed(1),
      'stamped min ms': stamped.min_ms.toFixed(0),
      'stamped median ms': stamped.median_ms.toFixed(0),
      'times faster': (stamped.median_ms / closed.median_ms).toFixed(1),
    };
  });
  printTable(`a coat of ${STROKES} strokes on ${COLUMNS} × ${ROWS} cells, fan 250 × 37.5 mm, whole layPath`, rows);
}

benchTable();
benchGeneral();
benchCoat();
