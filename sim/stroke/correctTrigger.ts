import { checkRange } from '../base/check.ts';
import type { Panel } from '../panel/panel.ts';
import { measureStrokes } from './measure.ts';
import { aimOf, type Pose } from './path.ts';
import { type LaidPath, PathDraft } from './pathDraft.ts';
import type { Stroke, StrokeMeasures } from './stroke.ts';

/** The gun is moving this long before the trigger and after the fluid. */
const RUN_IN_S = 0.1;
/** Rows this near to the stroke's line belong to its run-in or run-out. */
const ON_LINE_M = 0.05;
/** Slowest way to a new row. */
const LEAST_STEP_S = 0.02;

/** What the edge is measured with. */
export interface TriggerSetting {
  readonly panel: Panel;
  readonly fanWidthPerDistance: number;
  readonly triggerLag_s: number;
}

/**
 * The path with the fluid of the chosen strokes opening and closing at least `lead_m` outside the
 * edge, where it did so less far out: the stroke is carried straight on at its mean speed, with a
 * run-in or run-out, in place of the rows that lay there. Ends that never meet an edge stay, and
 * so do ends already farther out. Later rows move in time. @throws `range` for a lead outside 0 to 1 m.
 */
export function triggerPastEdge(laid: LaidPath, chosen: readonly number[], lead_m: number, setting: TriggerSetting): LaidPath {
  checkRange({ name: 'triggerPastEdge: lead', value: lead_m, low: 0, high: 1, unit: 'm', advice: 'give a lead such as 0.05 m' });
  const measures = measureStrokes({ ...laid, ...setting });
  const draft = new PathDraft(laid);
  for (const index of [...chosen].sort((a, b) => a - b)) {
    const measure = measures[index] as StrokeMeasures;
    if (measure.triggerOn_m !== null && measure.triggerOn_m < lead_m) openEarlier(draft, laid, index, measure, lead_m - measure.triggerOn_m);
    if (measure.triggerOff_m !== null && measure.triggerOff_m < lead_m) closeLater(draft, laid, index, measure, lead_m - measure.triggerOff_m);
  }
  return draft.finish();
}

function openEarlier(draft: PathDraft, laid: LaidPath, index: number, measure: StrokeMeasures, earlier_m: number): void {
  const { firstRow } = laid.strokes[index] as Stroke;
  const first = draft.poses[firstRow] as Pose;
  const speed_m_s = measure.speed.mean_m_s;
  const runIn_m = earlier_m + RUN_IN_S * speed_m_s;
  const lowest = laid.strokes[index - 1]?.lastRow ?? -1;
  let row = firstRow - 1;
  while (row > lowest && isReplaced(first, draft.poses[row] as Pose, measure, -runIn_m)) draft.drop(row--);
  const runIn = { ...along(first, measure, -runIn_m), trigger: 0 };
  const onset = { ...along(first, measure, -earlier_m), trigger: first.trigger };
  const before = draft.poses[row];
  draft.insert(firstRow, [
    { pose: runIn, after_s: before === undefined ? 0 : Math.max(LEAST_STEP_S, apart_m(before, runIn) / speed_m_s) },
    { pose: onset, after_s: RUN_IN_S, begins: index },
  ]);
  draft.steps_s[firstRow] = earlier_m / speed_m_s;
}

function closeLater(draft: PathDraft, laid: LaidPath, index: number, measure: StrokeMeasures, later_m: number): void {
  const { lastRow } = laid.strokes[index] as Stroke;
  const last = draft.poses[lastRow] as Pose;
  const speed_m_s = measure.speed.mean_m_s;
  // The fluid runs on for the lag after the trigger: the run-out leaves room for it.
  const lag_m = Math.max(0, measure.start_s + measure.duration_s - (laid.path.t_s[lastRow] as number)) * speed_m_s;
  const runOut_m = later_m + lag_m + RUN_IN_S * speed_m_s;
  const highest = laid.strokes[index + 1]?.firstRow ?? laid.path.count;
  let row = lastRow + 1;
  while (row < highest && isReplaced(last, draft.poses[row] as Pose, measure, runOut_m)) draft.drop(row++);
  const runOut = { ...along(last, measure, runOut_m), trigger: 0 };
  const close = { ...along(last, measure, later_m), trigger: 0 };
  draft.poses[lastRow] = { ...last, trigger: (draft.poses[lastRow - 1] as Pose).trigger };
  draft.insert(lastRow + 1, [
    { pose: close, after_s: later_m / speed_m_s, ends: index },
    { pose: runOut, after_s: (runOut_m - later_m) / speed_m_s },
  ]);
  const after = draft.poses[row];
  if (after !== undefined) draft.steps_s[row] = Math.max(LEAST_STEP_S, apart_m(runOut, after) / speed_m_s);
}

/** A pose carried along the stroke's direction. */
function along(pose: Pose, measure: StrokeMeasures, way_m: number): Pose {
  return { ...pose, x_m: pose.x_m + way_m * Math.cos(measure.direction_rad), y_m: pose.y_m + way_m * Math.sin(measure.direction_rad) };
}

/** Whether a row lies on the stroke's line between its end and `way_m` beyond. */
function isReplaced(end: Pose, pose: Pose, measure: StrokeMeasures, way_m: number): boolean {
  const from = aimOf(end);
  const aim = aimOf(pose);
  const dx = Math.cos(measure.direction_rad);
  const dy = Math.sin(measure.direction_rad);
  const x = aim.x_m - from.x_m;
  const y = aim.y_m - from.y_m;
  const share = (x * dx + y * dy) / way_m;
  return share <= 1 && Math.abs(y * dx - x * dy) < ON_LINE_M;
}

function apart_m(a: Pose, b: Pose): number {
  const from = aimOf(a);
  const to = aimOf(b);
  return Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m);
}
