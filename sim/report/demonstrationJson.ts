import { ESTIMATE_STATEMENT } from './cautions.ts';
import { demonstrationSentence } from './demonstrationText.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';
import type { ReportedDemonstration, ReportedSide } from './reportedDemonstration.ts';
import type { UnitSystem } from './units.ts';

/** A demonstration as one JSON object; keys carry their unit. @param system of the sentence alone. */
export function demonstrationJson(run: ReportedDemonstration, system: UnitSystem): { readonly [key: string]: JsonValue } {
  const { id, title, question, caution, knob, fault } = run.demonstration;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    id,
    title,
    question,
    caution,
    knob: { name: knob.name, unit: knob.unit, value: run.sides[0]?.knob ?? null, wrong: knob.wrong, cured: knob.cured, low: knob.low, high: knob.high },
    fault,
    sentence: demonstrationSentence(run, system),
    sides: run.sides.map(sideJson),
    moments: run.moments.map((sides) => sides.map(sideJson)),
  };
}

function sideJson({ id, title, knob, time_s, figures, faults }: ReportedSide): JsonValue {
  return {
    id,
    title,
    knob,
    time_s: jsonNumber(time_s),
    heaviestWet_um: jsonNumber(figures.heaviest_m, 1e-6),
    thinnestWet_um: jsonNumber(figures.thinnest_m, 1e-6),
    meanWet_um: jsonNumber(figures.mean_m, 1e-6),
    meanDry_um: jsonNumber(figures.meanDry_m, 1e-6),
    cv_percent: jsonNumber(figures.cv, 0.01),
    inTarget_percent: jsonNumber(figures.inTargetFraction, 0.01),
    longestRun_mm: jsonNumber(figures.longestRun_m, 1e-3),
    ripple_um: jsonNumber(figures.peel_m, 1e-6),
    rippleWord: figures.peelWord,
    arrivedDry_percent: jsonNumber(figures.dryFraction, 0.01),
    blushMargin_C: jsonNumber(figures.blushMargin_K),
    solventBeneath_percent: jsonNumber(figures.trappedFraction, 0.01),
    touchDry_min: figures.touchDry_s === null ? null : jsonNumber(figures.touchDry_s, 60),
    lost_L: jsonNumber(figures.lost_m3, 1e-3),
    faults,
  };
}
