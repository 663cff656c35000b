import { ESTIMATE_STATEMENT } from './cautions.ts';
import { drillCoat, type ReportedDrill } from './drillText.ts';
import type { JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';

/**
 * A drill as one JSON object; keys carry their unit as in the job file. Its job is left out.
 * @param number its place in the list, from 1.
 */
export function drillJson(drill: ReportedDrill, number: number): { readonly [key: string]: JsonValue } {
  const { id, title, task, criterion, evidence, source, caution, coat, counts, watch_s, wait_s } = drill;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    number,
    id,
    title,
    task,
    criterion,
    evidence,
    source,
    caution,
    coat,
    measures: counts,
    watch_s,
    wait_s,
    ...meantJson(drill),
  };
}

function meantJson(drill: ReportedDrill): { readonly [key: string]: JsonValue } {
  const spec = drillCoat(drill);
  if (spec === null) return {};
  const { plan, target } = spec;
  return {
    meant: { distance_mm: plan.distance_mm, speed_m_s: plan.speed_m_s, overlap_percent: plan.overlap_percent, cross: plan.cross },
    target: { film: target.film, thickness_um: target.thickness_um, min_percent: target.min_percent, max_percent: target.max_percent },
  };
}
