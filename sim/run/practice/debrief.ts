import type { Measure } from '../../job/measures.ts';
import type { RubricSpec } from '../../job/rubric.ts';
import type { SessionSpec } from '../../job/session.ts';
import { coatFaults } from '../../report/reported.ts';
import type { ReportedDebrief } from '../../report/reportedDebrief.ts';
import { strokeTraces } from '../../stroke/traces.ts';
import { rubricFromSpec, scoreSession } from '../../verdict/score.ts';
import { runLife, type LifeOptions } from '../coatLife.ts';
import { fanWidthRatio } from '../fan.ts';
import { judgeCoat } from '../judge.ts';
import { judgeLife } from '../judgeLife.ts';
import { layCoat } from '../lay.ts';
import { readRecording } from '../readRecording.ts';
import type { CoatSetting, CoatStrokes } from '../result.ts';
import { settleCoat } from '../settle.ts';
import { planOf, strokesOf } from '../strokes.ts';
import { chiefOf } from './chief.ts';
import { coarseSetting, otherFilm, pathTime_s, type WatchedFilm } from './otherFilm.ts';
import { sessionFigures } from './sessionFigures.ts';

/** A session looked through, with what spraying it again needs. */
export interface Debrief extends ReportedDebrief {
  readonly sprayed: WatchedFilm;
  readonly planned: WatchedFilm;
  readonly setting: CoatSetting;
  readonly coarse: CoatSetting;
  readonly strokes: CoatStrokes;
}

/** Measures of the hand: one stroke shows them as well as ten, so a task that counts them asks for all its strokes. */
const HAND_MEASURES: readonly Measure[] = ['distance', 'speed', 'angle', 'overlap', 'trigger', 'stops'];

/** How a session is looked through. */
export interface DebriefOptions extends Pick<LifeOptions, 'shouldStop'> {
  /** Side of a grid cell, mm; the job's own where not given. */
  readonly cell_mm?: number;
}

/**
 * Looks a practice session through: its strokes measured, its film laid, judged and watched, marked
 * by a rubric, beside the film of the planned strokes. Causes are sought; no cure is tried, since
 * `whatIf` answers for the habits. The same path gives the same verdict as `runJob` on the same job.
 * @throws CrosscoatError for strokes that cannot be read or a coat that cannot be settled; `cancelled`.
 */
export function debriefSession(session: SessionSpec, rubric: RubricSpec, options: DebriefOptions = {}): Debrief {
  const { task, job, trainee, name } = session;
  const stop = options.shouldStop === undefined ? {} : { shouldStop: options.shouldStop };
  const setting = settleCoat(job, task.coat, options.cell_mm === undefined ? {} : { cell_mm: options.cell_mm });
  const coarse = coarseSetting(setting);
  const strokes = strokesOf(setting, readRecording([session.strokes], `${name}.csv`));
  const laid = layCoat(setting, strokes, stop);
  const { verdict } = judgeCoat(setting, strokes, laid, { ...stop, cures: false });
  const life = runLife(setting, strokes, { ...stop, until_s: pathTime_s(strokes.path) + task.watch_s });
  const watched = judgeLife(life, strokes, { ...stop, cures: false, laidFaults: verdict.faults });
  // A task that does not watch the film has nothing to doubt of its life.
  const lifeVerdict = task.watch_s > 0 ? watched : { ...watched, warnings: [] };
  const traces = strokeTraces({ ...strokes, fanWidthPerDistance: fanWidthRatio(setting.setUp, setting.plan.distance_m), triggerLag_s: setting.setUp.triggerLag_s });
  const watch = { ...stop, watch_s: task.watch_s };
  const sprayed = otherFilm(setting, coarse, strokes, { ...watch, known: { laid, life } });
  const plan = planOf(setting, setting.plan);
  const planned = otherFilm(setting, coarse, plan, watch);
  const strokesAsked = task.counts.some((measure) => HAND_MEASURES.includes(measure)) ? plan.strokes.length : 0;
  const faults = [...verdict.faults, ...lifeVerdict.faults];
  const figures = sessionFigures({ task, setting, strokes, traces, laid, faults, sprayed, planned });
  const coat = { setting, strokes, laid, verdict, life: { verdict: lifeVerdict, moments: [] } };
  const meant = strokes.strokes.map((stroke) => stroke.meant);
  return { task, trainee, name, coat, meant, figures, strokesAsked, ...marked({ task, setting, strokes, traces, figures, coat, strokesAsked }, rubric), sprayed, planned, traces, setting, coarse, strokes };
}

/** The same session marked by another rubric; nothing is sprayed again. */
export function markAgain(debrief: Debrief, rubric: RubricSpec): Debrief {
  return { ...debrief, ...marked(debrief, rubric) };
}

type MarkedParts = Pick<Debrief, 'task' | 'setting' | 'strokes' | 'traces' | 'figures' | 'coat' | 'strokesAsked'>;

function marked({ task, setting, strokes, traces, figures, coat, strokesAsked }: MarkedParts, rubric: RubricSpec): Pick<Debrief, 'score' | 'chief'> {
  const scored = scoreSession(figures, rubricFromSpec(rubric), task.counts);
  const share = strokesAsked === 0 ? 1 : Math.min(1, strokes.strokes.length / strokesAsked);
  const score = { ...scored, total: share * scored.total, isPassed: scored.isPassed && share === 1 };
  return { score, chief: chiefOf({ task, setting, strokes, traces, faults: coatFaults(coat), score, laidFaults: coat.verdict.faults }) };
}
