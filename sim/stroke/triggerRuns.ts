import { counted } from '../base/counted.ts';
import type { Warning } from '../base/errors.ts';
import { fluidShare } from '../base/trigger.ts';
import { aimOf, type Path, poseOfRow } from './path.ts';

/** Rows from the one that opens the trigger to the one that closes it (or the path's last). */
export interface TriggerRun {
  readonly firstRow: number;
  readonly lastRow: number;
}

/** Assumed: no finger lets go and pulls again in less; a bouncing switch does. */
const CHATTER_S = 0.06;
/** An opening as short as that which also travels less than this is a bounce, not a stroke. */
const CHATTER_M = 0.01;

/**
 * Where fluid is on: off-times under 60 ms are bridged, then on-times under 60 ms that travel less
 * than 10 mm are left out. Either is told once, with its count. The path keeps its trigger.
 */
export function triggerRuns(path: Path): { runs: TriggerRun[]; warnings: Warning[] } {
  const runs: TriggerRun[] = [];
  let bridged = 0;
  for (const run of rawRuns(path)) {
    const last = runs.at(-1);
    if (last === undefined || elapsed_s(path, last.lastRow, run.firstRow) >= CHATTER_S) {
      runs.push(run);
      continue;
    }
    bridged++;
    runs[runs.length - 1] = { firstRow: last.firstRow, lastRow: run.lastRow };
  }
  const kept = runs.filter((run) => elapsed_s(path, run.firstRow, run.lastRow) >= CHATTER_S || travel_m(path, run) >= CHATTER_M);
  return { runs: kept, warnings: chatterWarning(bridged, runs.length - kept.length) };
}

function rawRuns(path: Path): TriggerRun[] {
  const runs: TriggerRun[] = [];
  let firstRow = -1;
  for (let i = 0; i < path.count; i++) {
    const isOn = fluidShare(path.trigger[i] as number) > 0;
    if (isOn && firstRow < 0) firstRow = i;
    if (isOn || firstRow < 0) continue;
    runs.push({ firstRow, lastRow: i });
    firstRow = -1;
  }
  if (firstRow >= 0 && firstRow < path.count - 1) runs.push({ firstRow, lastRow: path.count - 1 });
  return runs;
}

function elapsed_s(path: Path, from: number, to: number): number {
  return (path.t_s[to] as number) - (path.t_s[from] as number);
}

function travel_m(path: Path, run: TriggerRun): number {
  const from = aimOf(poseOfRow(path, run.firstRow));
  const to = aimOf(poseOfRow(path, run.lastRow));
  return Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m);
}

function chatterWarning(bridged: number, dropped: number): Warning[] {
  if (bridged + dropped === 0) return [];
  const held = bridged === 0 ? [] : [`${counted(bridged, 'gap')} under 60 ms taken as held`];
  const brief = dropped === 0 ? [] : [`${counted(dropped, 'opening')} under 60 ms and 10 mm not counted as a stroke`];
  return [
    {
      code: 'trigger-chatter',
      text: `The trigger chattered: ${[...held, ...brief].join(', ')}`,
      place: {},
    },
  ];
}
