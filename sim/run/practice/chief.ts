import type { Measure } from '../../job/measures.ts';
import type { TaskSpec } from '../../job/session.ts';
import type { ChiefFinding } from '../../report/reportedDebrief.ts';
import type { Stroke, StrokeMeasures } from '../../stroke/stroke.ts';
import type { StrokeTrace } from '../../stroke/traces.ts';
import { isLocal, severity_m2 } from '../../verdict/faults.ts';
import type { Score, ScoreRow } from '../../verdict/score.ts';
import type { CauseKind, Fault } from '../../verdict/verdict.ts';
import type { CoatSetting, CoatStrokes } from '../result.ts';
import { strokeError } from './sessionFigures.ts';

/** What the chief finding is chosen from. */
export interface ChiefParts {
  readonly task: TaskSpec;
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly traces: readonly StrokeTrace[];
  /** Of the film as laid and of its life. */
  readonly faults: readonly Fault[];
  readonly laidFaults: readonly Fault[];
  readonly score: Score;
}

/** The measure that a habit shows in. */
const SHOWN_BY: Readonly<Partial<Record<CauseKind, Measure>>> = {
  stop: 'stops',
  speed: 'speed',
  distance: 'distance',
  angle: 'angle',
  overlap: 'overlap',
  trigger: 'trigger',
};
/** Measures of the film: any habit spoils them. */
const FILM_MEASURES: readonly Measure[] = ['coverage', 'evenness', 'runs', 'dry-laps', 'dust'];

/**
 * The one thing to fix first: the worst fault that comes of something the hand did, and that the
 * task is about. A fault of the film's life stands for the fault as laid that it comes of. Where no
 * fault has its cause in the hand, the counted measure farthest from its limit; else that all is met.
 */
export function chiefOf(parts: ChiefParts): ChiefFinding {
  const { strokes, faults, setting, score } = parts;
  if (strokes.strokes.length === 0 && !score.isPassed) return { kind: 'nothing' };
  const severity = (fault: Fault): number => fault.zones.reduce((sum, zone) => sum + severity_m2(zone, setting.target), 0);
  const byHand = faults.filter(({ cause }) => isAskedFor(cause.kind, parts.task)).sort((a, b) => severity(b) - severity(a));
  const [worst] = byHand;
  if (worst !== undefined) {
    const fault = parts.laidFaults.find(({ cause }) => cause === worst.cause) ?? worst;
    const run = faults.find(({ kind, cause }) => kind === 'run' && cause === fault.cause)?.zones[0] ?? null;
    return { kind: 'fault', fault, run };
  }
  const missed = score.rows.filter(({ counts, isMet }) => counts && !isMet).sort((a, b) => a.mark - b.mark)[0];
  if (missed === undefined) return { kind: 'met' };
  return { kind: 'measure', row: missed, stroke: worstStroke(missed, parts) };
}

/** Whether a cause lies in the hand and spoils something that the task counts. */
function isAskedFor(kind: CauseKind, { counts }: TaskSpec): boolean {
  const measure = SHOWN_BY[kind];
  return isLocal(kind) && (counts.some((each) => FILM_MEASURES.includes(each)) || (measure !== undefined && counts.includes(measure)));
}

/** The stroke that shows a measure of the hand most; null for a measure of the film. */
function worstStroke({ measure }: ScoreRow, { traces, strokes }: ChiefParts): number | null {
  let worst: number | null = null;
  let most = 0;
  traces.forEach((trace, i) => {
    const error = strokeError(measure, trace, strokes.strokes[i] as Stroke, strokes.measures[i] as StrokeMeasures);
    if (!(error > most)) return;
    most = error;
    worst = trace.stroke;
  });
  return worst;
}
