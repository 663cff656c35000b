import { ESTIMATE_STATEMENT } from './cautions.ts';
import { chiefSentence, markSentence, whatIfSentence } from './debriefText.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { MEASURE_WORDS } from './measureWords.ts';
import type { OtherFilm, ReportedDebrief, ReportedWhatIf } from './reportedDebrief.ts';
import { coatWarnings } from './reported.ts';
import { RESULT_VERSION } from './reportJson.ts';
import { strokeJson } from './strokeJson.ts';
import type { UnitSystem } from './units.ts';

/** One unit of a measure as it is written, SI. */
const UNIT_SIZE = { mm: 1e-3, percent: 0.01, deg: Math.PI / 180, s: 1 } as const;

/** A debrief as one JSON object; keys carry their unit, a measure's unit stands beside it. @param system of the sentences alone. */
export function debriefJson(debrief: ReportedDebrief, whatIfs: readonly ReportedWhatIf[], system: UnitSystem): { readonly [key: string]: JsonValue } {
  const { task, trainee, name, score, sprayed, planned, coat } = debrief;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    task: task.id,
    title: task.title,
    trainee,
    name,
    sentence: chiefSentence(debrief, system),
    verdict: markSentence(debrief, system),
    total_percent: jsonNumber(score.total, 0.01),
    passed: score.isPassed,
    measures: score.rows.map(({ measure, value, limit, none, mark, weight, isMet, counts }) => {
      const { unit } = MEASURE_WORDS[measure];
      const size = UNIT_SIZE[unit];
      return {
        measure,
        unit,
        value: value === null ? null : jsonNumber(value, size),
        limit: jsonNumber(limit, size),
        none: jsonNumber(none, size),
        mark_percent: jsonNumber(mark, 0.01),
        weight: jsonNumber(weight),
        met: isMet,
        asked: counts,
      };
    }),
    sprayed: filmJson(sprayed),
    planned: filmJson(planned),
    whatIf: whatIfs.map((one) => ({ habit: one.habit, strokes: one.strokes, sentence: whatIfSentence(one, debrief, system), ...filmJson(one.other) })),
    strokes: coat.strokes.measures.map(strokeJson),
    warnings: coatWarnings(coat).map(({ code, text }) => ({ code, text })),
  };
}

function filmJson({ figures, inTargetFraction, account, duration_s, areas_m2 }: OtherFilm): { readonly [key: string]: JsonValue } {
  return {
    mean_um: jsonNumber(figures.mean_m, 1e-6),
    cv_percent: jsonNumber(figures.cv, 0.01),
    inTarget_percent: jsonNumber(inTargetFraction, 0.01),
    sprayed_mL: jsonNumber(account.sprayed_m3, 1e-6),
    duration_s: jsonNumber(duration_s),
    faults_mm2: Object.fromEntries(Object.entries(areas_m2).map(([kind, area_m2]) => [kind, jsonNumber(area_m2, 1e-6)])),
  };
}
