import { findingAt, type SchemeFinding } from '../finding.ts';
import type { PlannedScheme } from '../planned.ts';
import { coatsOf } from './coatsOf.ts';

/** Share of the thinner beyond which a retarder is thought too much: common practice. */
const MOST_RETARDER = 0.25;

/** Film and weight in all against the scheme's own limits, and each coat against what is usual. */
export function amountFindings(plan: PlannedScheme): SchemeFinding[] {
  return [...filmLimit(plan), ...weightLimit(plan), ...coatsOf(plan).flatMap(({ step, coat, stepIndex }) => {
    const { finish, retarderFraction } = coat.mix;
    const most_kg_m2 = finish.heaviestCoat_kg_m2.high;
    return [
      ...(coat.weight_kg_m2.value > most_kg_m2 ? [findingAt(step, stepIndex, 'doubt', { rule: 'heavy-coat', weight_kg_m2: coat.weight_kg_m2.value, most_kg_m2 })] : []),
      ...(retarderFraction > MOST_RETARDER ? [findingAt(step, stepIndex, 'doubt', { rule: 'retarder', share: retarderFraction, most: MOST_RETARDER })] : []),
    ];
  })];
}

/** The first step that passes the limit; a doubt where only its upper end does. */
function filmLimit({ scheme, steps }: PlannedScheme): SchemeFinding[] {
  if (scheme.most_um === undefined) return [];
  const most_m = scheme.most_um * 1e-6;
  const sure = steps.findIndex(({ after_m }) => after_m.value > most_m);
  const k = sure < 0 ? steps.findIndex(({ after_m }) => after_m.high > most_m) : sure;
  const step = steps[k];
  if (step === undefined) return [];
  return [findingAt(step, k, sure < 0 ? 'doubt' : 'stop', { rule: 'too-thick', film_m: sure < 0 ? step.after_m.high : step.after_m.value, most_m })];
}

function weightLimit({ scheme, steps, area_m2 }: PlannedScheme): SchemeFinding[] {
  if (scheme.most_g_m2 === undefined) return [];
  const most_kg_m2 = scheme.most_g_m2 / 1000;
  const sure = steps.findIndex(({ added_kg }) => added_kg.value / area_m2 > most_kg_m2);
  const k = sure < 0 ? steps.findIndex(({ added_kg }) => added_kg.high / area_m2 > most_kg_m2) : sure;
  const step = steps[k];
  if (step === undefined) return [];
  return [findingAt(step, k, sure < 0 ? 'doubt' : 'stop', { rule: 'too-heavy', weight_kg_m2: (sure < 0 ? step.added_kg.high : step.added_kg.value) / area_m2, most_kg_m2 })];
}
