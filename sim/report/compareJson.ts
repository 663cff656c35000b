import { ESTIMATE_STATEMENT } from './cautions.ts';
import { COMPARED_WORDS } from './comparedWords.ts';
import { COMPARE_NOTE } from './compareText.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';
import type { ComparedRow, ReportedComparison, ReportedLaidSide } from './reportedComparison.ts';

/**
 * Set-ups side by side as one JSON object. Each figure has its value and half interval, their unit in the
 * keys (`wet_um`, `within_um`); an endless margin is null.
 */
export function compareJson({ coat, panel, strokes, watched_s, sides, rows }: ReportedComparison): { readonly [key: string]: JsonValue } {
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    note: COMPARE_NOTE,
    coat: coat.id,
    coatName: coat.name,
    panel: panel.id,
    panelName: panel.name,
    strokes,
    watched_s: jsonNumber(watched_s),
    sides: sides.map((side, place) => (side.problem === null ? sideJson(side, rows, place) : { setUp: side.setUp.id, name: side.setUp.name, problem: side.problem })),
  };
}

function sideJson({ setUp, figures, faults, assumed, isOutsideRange, warnings }: ReportedLaidSide, rows: readonly ComparedRow[], place: number): JsonValue {
  const shown = rows.map(({ name, best, isTie }): [string, JsonValue] => {
    const { key, unit, size } = COMPARED_WORDS[name];
    const { value, within, isOutsideRange: isOutside } = figures[name];
    const isBest = best.includes(place);
    return [key, { [`${key}_${unit}`]: jsonNumber(value, size), [`within_${unit}`]: jsonNumber(within, size), best: isBest, noDifference: isBest && isTie, outsideRange: isOutside }];
  });
  return {
    setUp: setUp.id,
    name: setUp.name,
    problem: null,
    outsideRange: isOutsideRange,
    notMeasured: assumed,
    figures: Object.fromEntries(shown),
    faults,
    warnings: warnings.map(warningJson),
  };
}
