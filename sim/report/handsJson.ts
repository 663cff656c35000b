import type { Proportion } from '../base/proportion.ts';
import type { HandsSpread } from '../verdict/handsVerdict.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { HANDS_NOTE, type ReportedHandsTable } from './handsText.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';

/** Set-ups under many hands as one JSON object, best first; chances in per cent with interval and standard error. */
export function handsJson({ coatName, handName, seed, strokes, rows }: ReportedHandsTable): { readonly [key: string]: JsonValue } {
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    note: HANDS_NOTE,
    coatName,
    hand: handName,
    seed,
    strokes,
    count: rows[0]?.verdict.count ?? 0,
    setUps: rows.map(({ setUp, rank, speed_m_s, verdict }) => ({
      setUp: setUp.id,
      name: setUp.name,
      rank,
      speed_m_s: jsonNumber(speed_m_s),
      faultless: chanceJson(verdict.faultless),
      nearlyFaultless: chanceJson(verdict.nearlyFaultless),
      faults: Object.fromEntries(verdict.byKind.map(({ kind, chance }) => [kind, chanceJson(chance)])),
      faultyShare: { ...spreadJson(verdict.faultyShare, 'percent', 0.01), error_percent: jsonNumber(verdict.faultyError, 0.01) },
      film: spreadJson(verdict.film_m, 'um', 1e-6),
      cv: spreadJson(verdict.cv, 'percent', 0.01),
      worst: verdict.worst === null ? null : { x_mm: jsonNumber(verdict.worst.at_m[0], 1e-3), y_mm: jsonNumber(verdict.worst.at_m[1], 1e-3), chance_percent: jsonNumber(verdict.worst.chance, 0.01), fault: verdict.worst.kind },
    })),
  };
}

function chanceJson({ share, low, high, error }: Proportion): JsonValue {
  return { percent: jsonNumber(share, 0.01), low_percent: jsonNumber(low, 0.01), high_percent: jsonNumber(high, 0.01), error_percent: jsonNumber(error, 0.01) };
}

function spreadJson({ mean, deviation, low, high }: HandsSpread, unit: string, size: number): { readonly [key: string]: JsonValue } {
  return { [`mean_${unit}`]: jsonNumber(mean, size), [`deviation_${unit}`]: jsonNumber(deviation, size), [`low_${unit}`]: jsonNumber(low, size), [`high_${unit}`]: jsonNumber(high, size) };
}
