import type { Warning } from '../base/errors.ts';
import type { PaintAccount } from '../deposit/deposit.ts';
import type { Target } from '../verdict/target.ts';
import type { FilmFigures } from '../verdict/verdict.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { faultJson } from './faultJson.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { lifeJson } from './lifeReport.ts';
import { coatFaults, coatWarnings, lostPaint_m3, type ReportedCoat } from './reported.ts';
import type { ReportedJob } from './reportText.ts';
import { verdictSentence } from './sentences.ts';
import { pointJson, strokeJson } from './strokeJson.ts';

/** Version of the result object, apart from the job file's. */
export const RESULT_VERSION = 1;

const UM = 1e-6;
const ML = 1e-6;
const PERCENT = 0.01;

/**
 * The result of a job as one JSON object: a panel entry for each coat, with figures, faults and
 * technique measures. Units are in the keys; strokes and passes are numbered from 1; every number
 * is finite or null.
 */
export function reportJson(coats: readonly ReportedCoat[], job: ReportedJob): { readonly [key: string]: JsonValue } {
  return {
    schemaVersion: RESULT_VERSION,
    job: job.name,
    seed: job.seed,
    estimate: ESTIMATE_STATEMENT,
    curesTried: job.curesTried ?? true,
    warnings: uniqueWarnings([...(job.warnings ?? []), ...coats.flatMap(coatWarnings)]).map(warningJson),
    panels: coats.map(coatJson),
  };
}

function coatJson(coat: ReportedCoat): JsonValue {
  const { setting, strokes, verdict, laid } = coat;
  return {
    panel: setting.panel.id,
    panelName: setting.panel.name,
    area_mm2: jsonNumber(setting.panel.area_m2, 1e-6),
    coat: setting.coat.id,
    coatName: setting.coat.name,
    setUp: setting.setUp.id,
    cell_mm: jsonNumber(setting.panelGrid.grid.cellSize_m, 1e-3),
    laidBy: strokes.source,
    sentence: verdictSentence(coat, 'metric'),
    film: { wet: filmJson(verdict.wet), dry: filmJson(verdict.dry) },
    target: targetJson(setting.target),
    inTargetFraction: jsonNumber(verdict.inTargetFraction),
    paint: paintJson(laid.account),
    ...(coat.life === undefined ? {} : { life: lifeJson(coat.life) }),
    faults: coatFaults(coat).map((fault) => faultJson(fault, setting.target)),
    strokes: strokes.measures.map(strokeJson),
    warnings: coatWarnings(coat).map(warningJson),
  };
}

function filmJson(film: FilmFigures): JsonValue {
  return {
    mean_um: jsonNumber(film.mean_m, UM),
    min_um: jsonNumber(film.min_m, UM),
    max_um: jsonNumber(film.max_m, UM),
    cv: jsonNumber(film.cv),
  };
}

function targetJson(target: Target): JsonValue {
  const limit_um = (share: number) => jsonNumber(share * target.thickness_m, UM);
  return {
    film: target.film,
    thickness_um: jsonNumber(target.thickness_m, UM),
    min_um: limit_um(target.minFraction),
    max_um: limit_um(target.maxFraction),
    holiday_um: limit_um(target.holidayFraction),
    dry_percent: jsonNumber(target.dryFraction, PERCENT),
  };
}

function paintJson(account: PaintAccount): JsonValue {
  return {
    sprayed_mL: jsonNumber(account.sprayed_m3, ML),
    landed_mL: jsonNumber(account.landed_m3, ML),
    lost_mL: jsonNumber(lostPaint_m3(account), ML),
    fog_mL: jsonNumber(account.fog_m3, ML),
    missed_mL: jsonNumber(account.missed_m3, ML),
    flight_mL: jsonNumber(account.flight_m3, ML),
  };
}

/** Each text once, in order. */
function uniqueWarnings(warnings: readonly Warning[]): Warning[] {
  return [...new Map(warnings.map((warning) => [warning.text, warning])).values()];
}

/** A warning with its place; strokes are numbered from 1 there too. */
export function warningJson({ code, text, place }: Warning): JsonValue {
  const { file, pointer, row, column, stroke, at_m } = place;
  return {
    code,
    text,
    place: {
      ...(file === undefined ? {} : { file }),
      ...(pointer === undefined ? {} : { pointer }),
      ...(row === undefined ? {} : { row }),
      ...(column === undefined ? {} : { column }),
      ...(stroke === undefined ? {} : { stroke: stroke + 1 }),
      ...(at_m === undefined ? {} : { at_mm: pointJson(at_m) }),
    },
  };
}
