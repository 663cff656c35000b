import type { Interval } from '../gun/card/fanFit.ts';
import { CARD_NOTE, type ReportedCard } from './cardText.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';

/** A test card as one JSON object: `profile`, `width_mm`, `beta1`, `offset_mm` and the others, each with its 95 % interval. */
export function cardJson({ fits, chosen, intervals, spot, faults, warnings }: ReportedCard): { readonly [key: string]: JsonValue } {
  const number = (value: number | null, interval: Interval | null, unit = 1): JsonValue =>
    value === null ? null : { value: jsonNumber(value, unit), low: interval === null ? null : jsonNumber(interval.low, unit), high: interval === null ? null : jsonNumber(interval.high, unit) };
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    note: CARD_NOTE,
    readings: fits.readings.film.length,
    filmUnit: fits.readings.unit,
    profile: chosen.family,
    width_mm: number(chosen.width_m, intervals.width, 1e-3),
    beta1: number(chosen.beta1, intervals.beta1),
    taper_mm: number(chosen.taper_m, intervals.taper, 1e-3),
    offset_mm: number(chosen.offset_m, intervals.offset, 1e-3),
    imbalance: number(chosen.imbalance, intervals.imbalance),
    fog: number(chosen.fog, intervals.fog),
    rms: jsonNumber(chosen.rms),
    families: fits.fits.map(({ family, aicc, behind, weight }) => ({ family, aicc: jsonNumber(aicc), behind: jsonNumber(behind), weight_percent: jsonNumber(weight, 0.01) })),
    notTold: fits.tied,
    spot: spot === null ? null : { width_mm: jsonNumber(spot.width_m, 1e-3), depth_mm: spot.depth_m === null ? null : jsonNumber(spot.depth_m, 1e-3), bend_percent: spot.bendFraction === null ? null : jsonNumber(spot.bendFraction, 0.01), widthVariation_percent: spot.widthVariationFraction === null ? null : jsonNumber(spot.widthVariationFraction, 0.01) },
    faults: faults.map(({ kind, strength, limit, causes, tests }) => ({ fault: kind, strength: jsonNumber(strength), limit: jsonNumber(limit), causes, tests })),
    warnings: warnings.map(warningJson),
  };
}
