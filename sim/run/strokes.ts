import type { Warning } from '../base/errors.ts';
import { handOf, wander } from '../stroke/hand.ts';
import { meantFromPlan } from '../stroke/meantFromPlan.ts';
import { measureStrokes } from '../stroke/measure.ts';
import type { Path } from '../stroke/path.ts';
import type { Planned, StrokePlan } from '../stroke/plan.ts';
import { planStrokes } from '../stroke/planStrokes.ts';
import type { Recording } from '../stroke/recordingReader.ts';
import { segmentPath } from '../stroke/segment.ts';
import type { Stroke } from '../stroke/stroke.ts';
import { strokeDoubts } from './doubts.ts';
import { fanWidth_m, fanWidthRatio } from './fan.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';

/**
 * The gun's travel for a coat: the recording's where one is given, its strokes found in it and
 * what was meant taken from the plan; otherwise the plan's, laid by the coat's hand (its errors
 * fixed by the job's seed).
 * @throws CrosscoatError for a plan that cannot be laid.
 */
export function strokesOf(setting: CoatSetting, recording: Pick<Recording, 'path' | 'warnings'> | null = null): CoatStrokes {
  if (recording === null) {
    const planned = byHand(setting, planOf(setting, setting.plan));
    return measured(setting, 'plan', planned.path, planned.strokes, planned.warnings);
  }
  const found = segmentPath(recording.path, { fanWidthPerDistance: fanWidthRatio(setting.setUp, setting.plan.distance_m) });
  const meant = meantFromPlan(recording.path, found.strokes, planOf(setting, setting.plan).strokes);
  return measured(setting, 'recording', recording.path, meant, [...recording.warnings, ...found.warnings]);
}

/** A plan for the coat's panel and gun, laid exactly. */
export function planOf({ panel, setUp }: CoatSetting, plan: StrokePlan): Planned {
  return planStrokes(panel, plan, fanWidth_m(setUp, plan.distance_m), setUp.triggerLag_s);
}

/** A plan as the coat's hand lays it; a steady hand lays the plan itself. */
export function byHand({ coat, job }: CoatSetting, planned: Planned): Planned {
  return wander(planned, handOf(coat.hand), job.seed);
}

function measured(
  setting: CoatSetting,
  source: CoatStrokes['source'],
  path: Path,
  strokes: readonly Stroke[],
  warnings: readonly Warning[],
): CoatStrokes {
  const measures = measureStrokes({
    path,
    strokes,
    panel: setting.panel,
    fanWidthPerDistance: fanWidthRatio(setting.setUp, setting.plan.distance_m),
    triggerLag_s: setting.setUp.triggerLag_s,
  });
  return { source, path, strokes, measures, warnings: [...warnings, ...strokeDoubts(setting, source, measures)] };
}
