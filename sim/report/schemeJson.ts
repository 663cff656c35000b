import { ALUMINIUM_REFLECTANCE } from '../materials/aluminiumFilm.ts';
import type { StepSpec } from '../job/schema.ts';
import type { PlannedCoat, PlannedStep, Spread } from '../scheme/planned.ts';
import type { Preset } from '../scheme/preset.ts';
import { NEWTONS_PER_METRE_PER_LB_IN } from '../base/force.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';
import type { ReportedScheme } from './reportedScheme.ts';
import { schemeFindingWords } from './schemeRuleWords.ts';
import { layerSums } from './schemeSections.ts';
import { COAT_DEFINITIONS, FIELD_LIGHT_RULE, NOT_CHECKED } from './schemeWords.ts';
import type { UnitSystem } from './units.ts';

type JsonRecord = { readonly [key: string]: JsonValue };

/** A scheme worked out as one JSON object: µm, g/m², mL, kg, s; its sentences in the reader's units. */
export function schemeJson({ plan, findings, hiding, light, strength }: ReportedScheme, system: UnitSystem): JsonRecord {
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    scheme: plan.scheme.id,
    name: plan.scheme.name,
    source: plan.scheme.source ?? null,
    panels: [...plan.scheme.panels],
    area_m2: jsonNumber(plan.area_m2),
    steps: plan.steps.map(stepJson),
    ledger: layerSums(plan).map(({ layer, coats, film_m, liquid_m3, weight_kg }) => ({ layer, coats, dry_um: jsonNumber(film_m, 1e-6), liquid_mL: jsonNumber(liquid_m3, 1e-6), weight_kg: jsonNumber(weight_kg) })),
    findings: findings.map((finding) => ({ rule: finding.rule, severity: finding.severity, step: finding.stepIndex, pointer: finding.pointer, source: finding.source, ...schemeFindingWords(finding, system) })),
    hiding: hiding.map(({ run, hiding_m, contrast, coatsToHide, moreCoats, moreWeight_kg_m2 }) => ({
      colour: run.colour.id, over: run.beneath?.id ?? null, overAluminium: run.isOverAluminium ? { taken_percent: jsonNumber(ALUMINIUM_REFLECTANCE.value, 0.01), source: ALUMINIUM_REFLECTANCE.source } : null, coats: run.coats, dry_um: jsonNumber(run.film_m, 1e-6), contrast: jsonNumber(contrast),
      hides_um: jsonNumber(hiding_m, 1e-6), coatsToHide: jsonNumber(coatsToHide), moreCoats: jsonNumber(moreCoats), moreWeight_g_m2: jsonNumber(moreWeight_kg_m2, 1e-3),
    })),
    light: light === null ? null : { coats: light.coats, dry_um: jsonNumber(light.film_m, 1e-6), ...spreadJson('through_percent', light.through, 0.01), isPasteStated: light.isPasteStated, rule: FIELD_LIGHT_RULE },
    strength: strength.map(({ name, new_N_m, floor_N_m, source }) => ({ name, new_lb_in: jsonNumber(new_N_m, NEWTONS_PER_METRE_PER_LB_IN), floor_lb_in: jsonNumber(floor_N_m, NEWTONS_PER_METRE_PER_LB_IN), source })),
    definitions: Object.fromEntries(COAT_DEFINITIONS),
    notChecked: [...NOT_CHECKED],
    warnings: plan.warnings.map(({ code, text, place }) => ({ code, text, pointer: place.pointer ?? null })),
  };
}

function stepJson({ spec, pointer, area_m2, coat, work_s, wait_s, latest_s, after_m, added_kg }: PlannedStep): JsonRecord {
  return {
    id: spec.id, kind: spec.kind, name: spec.name, source: spec.source ?? null, pointer,
    area_m2: jsonNumber(area_m2), work_s: jsonNumber(work_s), wait_s: jsonNumber(wait_s), latest_s: latest_s === null ? null : jsonNumber(latest_s),
    ...spreadJson('after_um', after_m, 1e-6), ...spreadJson('added_kg', added_kg, 1),
    coat: coat === null ? null : coatJson(coat),
  };
}

function coatJson(coat: PlannedCoat): JsonRecord {
  return {
    layer: coat.layer, finish: coat.mix.finish.id, mix: coat.mixId, coat: coat.coatId, colour: coat.colour?.id ?? null,
    ...spreadJson('wet_um', coat.wet_m, 1e-6), ...spreadJson('dry_um', coat.dry_m, 1e-6), ...spreadJson('weight_g_m2', coat.weight_kg_m2, 1e-3), ...spreadJson('liquid_mL', coat.liquid_m3, 1e-6),
    landed_percent: jsonNumber(coat.landedFraction, 0.01),
    touchDry_s: coat.touchDry_s === null ? null : jsonNumber(coat.touchDry_s),
    recoat_s: coat.recoat_s === null ? null : jsonNumber(coat.recoat_s),
    film: `${coat.filmOrigin.kind}: ${coat.filmOrigin.words}`,
    drying: `${coat.dryOrigin.kind}: ${coat.dryOrigin.words}`,
  };
}

/** `dry_um`, `dryLow_um`, `dryHigh_um` of a key and its unit. */
function spreadJson(key: string, { value, low, high }: Spread, unit: number): JsonRecord {
  const at = key.indexOf('_');
  const named = (end: string): string => `${key.slice(0, at)}${end}${key.slice(at)}`;
  return { [key]: jsonNumber(value, unit), [named('Low')]: jsonNumber(low, unit), [named('High')]: jsonNumber(high, unit) };
}

/** A preset's steps as they would stand in a job, with what it needs. */
export function presetJson({ id, name, note, source, clearCoats, needs }: Preset, steps: readonly StepSpec[]): JsonRecord {
  return {
    schemaVersion: RESULT_VERSION, estimate: ESTIMATE_STATEMENT, preset: id, name, note, source, clearCoats,
    needs: needs.map((need) => ({ ...need })),
    steps: JSON.parse(JSON.stringify(steps)) as JsonValue,
  };
}
