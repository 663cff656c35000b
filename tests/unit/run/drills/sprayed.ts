import { USUAL_RUBRIC } from '../../../../sim/job/rubric.ts';
import type { Job } from '../../../../sim/job/schema.ts';
import { pathWithHabits, type StrokeHabit } from '../../../../sim/run/demonstrations/handPaths.ts';
import { taskOf, type Drill } from '../../../../sim/run/drills/drill.ts';
import { debriefSession, type Debrief } from '../../../../sim/run/practice/debrief.ts';
import type { CoatSetting } from '../../../../sim/run/result.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import { planOf } from '../../../../sim/run/strokes.ts';
import { pathFrom, poseOfRow, type Path, type Pose } from '../../../../sim/stroke/path.ts';
import type { Planned } from '../../../../sim/stroke/plan.ts';
import { writeRecording } from '../../../../sim/stroke/writeRecording.ts';

/** A drill settled, with what its plan lays. */
export interface Ready {
  readonly drill: Drill;
  readonly job: Job;
  readonly setting: CoatSetting;
  readonly planned: Planned;
}

export function ready(drill: Drill): Ready {
  const job = drill.job();
  const setting = settleCoat(job, drill.coat);
  return { drill, job, setting, planned: planOf(setting, setting.plan) };
}

/** The rows of a path, to be changed. */
export function rowsOf(path: Path): Pose[] {
  return Array.from({ length: path.count }, (_, row) => poseOfRow(path, row));
}

/** A session in which the gun went along `path`, marked by the usual rubric. */
export function debriefed({ drill, job }: Ready, path: Path): Debrief {
  const strokes = [...writeRecording(path)].join('');
  return debriefSession({ sessionVersion: 1, id: 's', trainee: '', name: 'session', sprayedAt: '2026-01-01T00:00:00Z', task: taskOf(drill), job, strokes }, USUAL_RUBRIC);
}

/** The measures that a session was asked for and has not met. */
export function missed({ score }: Debrief): string[] {
  return score.rows.filter(({ counts, isMet }) => counts && !isMet).map(({ measure }) => measure);
}

/** The plan with a pause, trigger off, after some of its strokes. */
export function paused({ path, strokes }: Planned, pause_s: number, isAfter: (stroke: number) => boolean): Path {
  const late = new Map(strokes.filter(({ index }) => isAfter(index)).map(({ lastRow }) => [lastRow, pause_s]));
  let late_s = 0;
  return pathFrom(rowsOf(path).map((row, i) => {
    // The run-out comes first: the gun is put away moving.
    late_s += late.get(i - 2) ?? 0;
    return { ...row, t_s: row.t_s + late_s };
  }));
}

/** Whether a stroke is the last of its pass and another pass follows. */
export function endsPass({ strokes }: Planned, stroke: number): boolean {
  const next = strokes[stroke + 1];
  return next !== undefined && next.pass !== strokes[stroke]?.pass;
}

/** The plan with the waits that the task asks for. */
export function asAsked({ drill, planned }: Ready): Path {
  return paused(planned, drill.wait_s, (stroke) => endsPass(planned, stroke));
}

/** The plan with a habit of the hand on some strokes. */
export function withHabit({ setting, planned }: Ready, habit: StrokeHabit, isOn: (stroke: number) => boolean = () => true): Path {
  return pathWithHabits(planned, setting.setUp.triggerLag_s, (stroke) => (isOn(stroke) ? habit : null));
}

/** Only some strokes of a plan, in the order given: each moved in time to follow the one before by a second. */
export function inOrder({ path, strokes }: Planned, order: readonly number[]): Path {
  const rows = rowsOf(path);
  let now_s = 0;
  return pathFrom(order.flatMap((index) => {
    const stroke = strokes[index];
    if (stroke === undefined) throw new Error(`there is no stroke ${index}`);
    const own = rows.slice(stroke.firstRow - 1, stroke.lastRow + 2);
    const from_s = own[0]?.t_s ?? NaN;
    const moved = own.map((row) => ({ ...row, t_s: row.t_s - from_s + now_s }));
    now_s = (moved.at(-1)?.t_s ?? NaN) + 1;
    return moved;
  }));
}
