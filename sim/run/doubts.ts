import type { Warning } from '../base/errors.ts';
import { wetFromDry } from '../film/arithmetic.ts';
import { fanDepth_m, fanWidth_m } from './fan.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';
import type { StrokeMeasures } from '../stroke/stroke.ts';

/** Cells above this share of the fan's depth blur its edge by more than a few per cent of the film. */
const COARSE_SHARE = 1 / 6;

/** What is doubtful about a coat before a stroke is laid: grid, distance, drops. */
export function settingDoubts(setting: Omit<CoatSetting, 'warnings'>, pointer: string): Warning[] {
  return [...gridDoubts(setting), ...distanceDoubts(setting, pointer), ...dropDoubts(setting, pointer)];
}

function gridDoubts({ panelGrid, setUp, plan }: Omit<CoatSetting, 'warnings'>): Warning[] {
  const depth_m = fanDepth_m(setUp, plan.distance_m);
  const cell_m = panelGrid.grid.cellSize_m;
  if (cell_m <= depth_m * COARSE_SHARE) return [];
  return [
    {
      code: 'coarse-grid',
      text: `The cell of ${mm(cell_m)} mm is more than a sixth of the fan's depth (${mm(depth_m)} mm), so edges and stops are blurred; give a cell of ${mm(Math.max(0.001, depth_m * COARSE_SHARE))} mm or less`,
      place: { pointer: '/cell_mm' },
    },
  ];
}

function distanceDoubts({ setUp, plan }: Omit<CoatSetting, 'warnings'>, pointer: string): Warning[] {
  const [near, far] = setUp.distanceRange_m;
  if (plan.distance_m >= near && plan.distance_m <= far) return [];
  return [
    {
      code: 'distance-range',
      text: `The planned distance of ${mm(plan.distance_m)} mm is not from ${mm(near)} to ${mm(far)} mm, where this set-up's fan may be believed; measure the fan there or plan within`,
      place: { pointer: `${pointer}/plan/distance_mm` },
    },
  ];
}

/** A film thinner than one drop is no film: the drops lie apart, and the model does not see them. */
function dropDoubts({ target, setUp }: Omit<CoatSetting, 'warnings'>, pointer: string): Warning[] {
  const wet_m = target.film === 'dry' ? wetFromDry(target.thickness_m, setUp.volumeSolidsFraction) : target.thickness_m;
  const drop_m = setUp.drops.meanDiameter_m;
  if (wet_m >= drop_m) return [];
  return [
    {
      code: 'model-limit',
      text: `The target of ${um(wet_m)} µm wet is thinner than one mean drop (${um(drop_m)} µm): drops may lie apart and dry before they join, which the film figures do not show`,
      place: { pointer: `${pointer}/target/thickness_um` },
    },
  ];
}

/** What is doubtful about strokes that were recorded or wandered: distance outside the fan's range, strokes beside the panel. */
export function strokeDoubts(setting: CoatSetting, source: CoatStrokes['source'], measures: readonly StrokeMeasures[]): Warning[] {
  const [near, far] = setting.setUp.distanceRange_m;
  // A steady hand goes to the plan's distance, which `settingDoubts` has doubted already.
  const isTold = source === 'plan' && setting.coat.hand.kind === 'steady';
  const outside = isTold ? [] : measures.filter(({ distance }) => distance.low_m < near || distance.high_m > far);
  const beside = measures.filter((stroke) => isBeside(setting, stroke));
  const warnings: Warning[] = [];
  const [firstOutside] = outside;
  if (firstOutside !== undefined) {
    const low = Math.min(...outside.map(({ distance }) => distance.low_m));
    const high = Math.max(...outside.map(({ distance }) => distance.high_m));
    warnings.push({
      code: 'distance-range',
      text: `${counted(outside)} went to ${mm(low)} to ${mm(high)} mm, outside the ${mm(near)} to ${mm(far)} mm where this set-up's fan may be believed; the film there is a guess`,
      place: { stroke: firstOutside.stroke },
    });
  }
  const [firstBeside] = beside;
  if (firstBeside !== undefined) {
    warnings.push({
      code: 'off-panel',
      text: `${counted(beside)} ran wholly beside the panel and laid nothing on it; check the places in the file, and its units`,
      place: { stroke: firstBeside.stroke },
    });
  }
  return warnings;
}

/** Whether the whole fan stays outside the panel's box from one end of the stroke to the other. */
function isBeside(setting: CoatSetting, stroke: StrokeMeasures): boolean {
  const { width_m, height_m } = setting.panel;
  const half_m = fanWidth_m(setting.setUp, stroke.distance.high_m) / 2;
  const xs = [stroke.start_m[0], stroke.end_m[0]];
  const ys = [stroke.start_m[1], stroke.end_m[1]];
  return (
    Math.max(...xs) < -half_m ||
    Math.min(...xs) > width_m + half_m ||
    Math.max(...ys) < -half_m ||
    Math.min(...ys) > height_m + half_m
  );
}

function counted(strokes: readonly StrokeMeasures[]): string {
  const first = (strokes[0] as StrokeMeasures).stroke + 1;
  return strokes.length === 1 ? `Stroke ${first}` : `${strokes.length} strokes (the first is stroke ${first})`;
}

function mm(length_m: number): string {
  return String(Math.round(length_m * 1e4) / 10);
}

function um(length_m: number): string {
  return (length_m * 1e6).toFixed(0);
}
