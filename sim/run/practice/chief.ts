import type { ChiefFinding } from '../../report/reportedDebrief.ts';
import type { Stroke, StrokeMeasures } from '../../stroke/stroke.ts';
import type { StrokeTrace } from '../../stroke/traces.ts';
import { isLocal, severity_m2 } from '../../verdict/faults.ts';
import type { Score, ScoreRow } from '../../verdict/score.ts';
import type { Fault } from '../../verdict/verdict.ts';
import type { CoatSetting, CoatStrokes } from '../result.ts';
import { strokeError } from './sessionFigures.ts';

/** What the chief finding is chosen from. */
export interface ChiefParts {
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly traces: readonly StrokeTrace[];
  /** Of the film as laid and of its life. */
  readonly faults: readonly Fault[];
  readonly laidFaults: readonly Fault[];
  readonly score: Score;
}

/**
 * The one thing to fix first: the worst fault that comes of something the hand did. A fault of the
 * film's life stands for the fault as laid that it comes of. Where no fault has its cause in the
 * hand, the counted measure farthest from its limit; else that all is met.
 */
export function chiefOf(parts: ChiefParts): ChiefFinding {
  const { strokes, faults, setting, score } = parts;
  if (strokes.strokes.length === 0 && !score.isPassed) return { kind: 'nothing' };
  const severity = (fault: Fault): number => fault.zones.reduce((sum, zone) => sum + severity_m2(zone, setting.target), 0);
  const byHand = faults.filter(({ cause }) => isLocal(cause.kind)).sort((a, b) => severity(b) - severity(a));
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
