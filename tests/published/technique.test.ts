import { describe } from 'vitest';
import { measureStrokes } from '../../sim/stroke/measure.ts';
import { aimOf } from '../../sim/stroke/path.ts';
import type { StrokePlan } from '../../sim/stroke/plan.ts';
import { planStrokes } from '../../sim/stroke/planStrokes.ts';
import { testPublished, type PublishedRow } from '../helpers/publishedRow.ts';
import { rectangle } from '../unit/stroke/panels.ts';

const DEGREE = Math.PI / 180;
const basePlan: StrokePlan = { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0, order: 'serpentine', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: false };

/** A gun swung about a pivot behind it: aim and slant. */
function swung(radius_m: number, swing_deg: number) {
  const swing = swing_deg * DEGREE;
  return aimOf({ x_m: radius_m * Math.sin(swing), y_m: 0, z_m: radius_m + 0.2 - radius_m * Math.cos(swing), fan_rad: Math.PI / 2, pitch_rad: -swing, yaw_rad: 0 });
}

function linesOver(height_m: number, width_m: number, overlapFraction: number): number {
  return planStrokes(rectangle(1, height_m), { ...basePlan, overlapFraction, firstStroke_m: width_m / 2 }, width_m, 0).strokes.length;
}

/** How far before the place where fluid opens the plan pulls the trigger. */
function triggerLead_mm(speed_m_s: number, lag_s: number): number {
  const { path, strokes } = planStrokes(rectangle(1, 0.5), { ...basePlan, speed_m_s }, 0.25, lag_s);
  const { firstRow, meant } = strokes[0]!;
  return (meant.start_m[0] - path.x_m[firstRow]!) * 1000;
}

function measuredOverlap_percent(): number {
  const panel = rectangle(1, 0.75);
  const planned = planStrokes(panel, basePlan, 0.25, 0.05);
  const measures = measureStrokes({ path: planned.path, strokes: planned.strokes, panel, fanWidthPerDistance: 0.25 / 0.2, triggerLag_s: 0.05 });
  return measures[2]!.overlap!.meanFraction * 100;
}

const SWING = 'geometry of a gun swung about a pivot at R + D from a flat panel: x = (R + D) tan φ, L = (R + D)/cos φ - R';
const DELAY = 'distance travelled in the delay: speed · delay';

const rows: PublishedRow[] = [
  ...([[0.35, 10, 97], [0.35, 15, 147], [0.35, 20, 200], [0.35, 30, 318], [0.35, 45, 550], [0.6, 10, 141], [0.6, 20, 291], [0.6, 30, 462], [0.6, 45, 800]] as const).map(([radius, swing, value]) => ({
    source: SWING, quantity: `aim off square, R ${radius} m, ${swing} deg, mm`, expected: value, ours: () => swung(radius, swing).x_m * 1000, tolerance: 0.5, why: 'the value is given to whole mm',
  })),
  ...([[0.3, 0.05, 15], [0.3, 0.1, 30], [0.3, 0.15, 45], [0.45, 0.05, 22.5], [0.45, 0.1, 45], [0.45, 0.15, 67.5]] as const).map(([speed, lag, value]) => ({
    source: DELAY, quantity: `trigger before fluid, ${speed} m/s, ${lag * 1000} ms, mm`, expected: value, ours: () => triggerLead_mm(speed, lag), tolerance: 1e-9, why: 'exact but for rounding',
  })),
  { source: 'passes to cover a height: ceil((H - W)/(W (1 - o))) + 1', quantity: 'passes, H 1.5 m, W 0.25 m, 50 %', expected: 11, ours: () => linesOver(1.5, 0.25, 0.5), tolerance: 0, why: 'a count' },
  { source: 'FAA AC 43.13-1B (1998, change 1 2001), paragraph 2-20: each pass overlaps the last by half the fan width', quantity: 'overlap measured on a plan of 50 %, %', expected: 50, ours: measuredOverlap_percent, tolerance: 1e-6, why: 'exact but for rounding' },
];

describe('technique beside published and derived values', () => {
  testPublished(rows);
});
