import { cellCount, type Grid } from '../../sim/base/grid.ts';
import type { PanelGrid } from '../../sim/panel/panelGrid.ts';
import type { SetUp } from '../../sim/gun/setUp.ts';
import type { Path } from '../../sim/stroke/path.ts';
import type { Stroke } from '../../sim/stroke/stroke.ts';

/** A set-up that loses nothing and dries nothing, so that sprayed = landed + missed; fan 300 × 45 mm at 200 mm. */
export function plainSetUp(fan: Partial<SetUp['fan']> = {}, rest: Partial<SetUp> = {}): SetUp {
  return {
    id: 'plain',
    name: 'plain',
    fan: { width_m: 0.3, depth_m: 0.08, atDistance_m: 0.2, origin_m: 0, profile: { family: 'double-beta', beta1: 3, beta2: 3 }, ...fan },
    fluidRate_m3_s: 200e-6 / 60,
    transfer: { efficiencyFraction: 1, atDistance_m: 0.2, decayLength_m: Infinity },
    volumeSolidsFraction: 0.25,
    drops: { meanDiameter_m: 35e-6, spreadRatio: 2, solventSpeedRatio: 0, atViscosity_Pa_s: 0.05, atPressure_Pa: 55e3 },
    capPressure_Pa: 55e3,
    triggerLag_s: 0,
    distanceRange_m: [0.1, 0.4],
    ...rest,
  };
}

/** A rectangular panel that covers its grid wholly. */
export function wholeGrid(columns: number, rows: number, cellSize_m: number): PanelGrid {
  const grid: Grid = { columns, rows, cellSize_m };
  const cells = cellCount(grid);
  return { grid, cover: new Float32Array(cells).fill(1), covered_m2: cells * cellSize_m * cellSize_m };
}

/** One row of a hand-made path; angles and trigger default to square, fan at 90°, full on. */
export interface PathRow {
  readonly t: number;
  readonly x: number;
  readonly y: number;
  readonly z?: number;
  readonly fan?: number;
  readonly pitch?: number;
  readonly yaw?: number;
  readonly trigger?: number;
}

export function pathOf(rows: readonly PathRow[]): Path {
  const column = (value: (row: PathRow) => number) => Float64Array.from(rows, value);
  return {
    count: rows.length,
    t_s: column((row) => row.t),
    x_m: column((row) => row.x),
    y_m: column((row) => row.y),
    z_m: column((row) => row.z ?? 0.2),
    fan_rad: column((row) => row.fan ?? Math.PI / 2),
    pitch_rad: column((row) => row.pitch ?? 0),
    yaw_rad: column((row) => row.yaw ?? 0),
    trigger: Float32Array.from(rows, (row) => row.trigger ?? 1),
  };
}

/** A stroke over rows `firstRow` to `lastRow` with nothing meant. */
export function strokeOf(index: number, firstRow: number, lastRow: number): Stroke {
  return {
    index,
    pass: 0,
    firstRow,
    lastRow,
    meant: { source: 'median', distance_m: NaN, speed_m_s: NaN, overlapFraction: NaN, start_m: [NaN, NaN], end_m: [NaN, NaN] },
  };
}

/** Straight strokes as given, each on from its start to its end, off in between. */
export function strokesPath(
  lines: readonly { readonly from: readonly [number, number]; readonly to: readonly [number, number] }[],
  speed_m_s: number,
  pose: { readonly z?: number; readonly fan?: number } = {},
): { path: Path; strokes: Stroke[] } {
  const rows: PathRow[] = [];
  const strokes: Stroke[] = [];
  let t = 0;
  lines.forEach(({ from, to }, i) => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    rows.push({ t, x: from[0], y: from[1], ...pose, trigger: 1 });
    t += length / speed_m_s;
    rows.push({ t, x: to[0], y: to[1], ...pose, trigger: 0 });
    t += 0.5;
    strokes.push(strokeOf(i, 2 * i, 2 * i + 1));
  });
  return { path: pathOf(rows), strokes };
}
