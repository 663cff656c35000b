import { counted } from '../base/counted.ts';
import { NEWTONS_PER_METRE_PER_LB_IN } from '../base/force.ts';
import type { PlannedCoat, PlannedStep, Spread } from '../scheme/planned.ts';
import type { ReportedScheme, ReportedStrength } from './reportedScheme.ts';
import { ALUMINIUM_GROUND_WORDS, LAYER_WORDS } from './schemeWords.ts';
import { shown, shownNumber, shownRoughPercent, shownTime, shownUnit, shownWeight, type Quantity, type UnitSystem } from './units.ts';

/** A number with its spread: `24 µm (17 to 31)`; without one where all are the same. */
export function spreadWords({ value, low, high }: Spread, quantity: Quantity, system: UnitSystem): string {
  const [least, most] = [shownNumber(low, quantity, system), shownNumber(high, quantity, system)];
  return least === most ? shown(value, quantity, system) : `${shown(value, quantity, system)} (${least} to ${most})`;
}

/** Head of the table of steps. */
export function stepHead(system: UnitSystem): string[] {
  return ['step', `its own dry ${shownUnit('film', system).name}`, 'after it: dry', 'added', 'dry to touch', 'for a coat', 'wait'];
}

/** One row a step: its own film, film and weight after it, drying in the job's air, the stated wait. */
export function stepRow({ spec, coat, after_m, added_kg }: PlannedStep, k: number, system: UnitSystem): string[] {
  return [
    `${k + 1}. ${spec.name}`,
    coat === null ? (spec.kind === 'sand' ? `-${shownNumber(spec.removes_um * 1e-6, 'film', system)}` : '') : shownNumber(coat.dry_m.value, 'film', system),
    shown(after_m.value, 'film', system),
    shownWeight(added_kg.value, system),
    coat === null ? '' : dryWords(coat.touchDry_s),
    coat === null ? '' : dryWords(coat.recoat_s),
    spec.wait_h === 0 ? '' : shownTime(spec.wait_h * 3600),
  ];
}

/** What lies on the part when a step is done, with all before it: `after it: 58 µm dry, 94 g added`. */
export function afterWords({ after_m, added_kg }: Pick<PlannedStep, 'after_m' | 'added_kg'>, system: UnitSystem): string {
  return `after it: ${shown(after_m.value, 'film', system)} dry, ${shownWeight(added_kg.value, system)} added`;
}

/** When a film is dry, or that it is not in the time watched. */
export function dryWords(time_s: number | null): string {
  return time_s === null ? 'not seen' : shownTime(time_s);
}

/** Film, liquid and weight by kind of film. */
export interface LayerSum {
  readonly layer: PlannedCoat['layer'];
  readonly coats: number;
  readonly film_m: number;
  readonly liquid_m3: number;
  readonly weight_kg: number;
}

/** The ledger: one row for each kind of film that is laid, before any sanding. */
export function layerSums({ steps }: ReportedScheme['plan']): LayerSum[] {
  const sums = new Map<PlannedCoat['layer'], LayerSum>();
  for (const { coat, area_m2 } of steps) {
    if (coat === null) continue;
    const before = sums.get(coat.layer) ?? { layer: coat.layer, coats: 0, film_m: 0, liquid_m3: 0, weight_kg: 0 };
    sums.set(coat.layer, {
      layer: coat.layer,
      coats: before.coats + 1,
      film_m: before.film_m + coat.dry_m.value,
      liquid_m3: before.liquid_m3 + coat.liquid_m3.value,
      weight_kg: before.weight_kg + coat.weight_kg_m2.value * area_m2,
    });
  }
  return [...sums.values()];
}

/** The ledger as a table, with its head. */
export function ledgerRows(report: ReportedScheme, system: UnitSystem): string[][] {
  return [
    ['by kind of film', 'coats', 'dry film', 'liquid as mixed', 'weight of the film'],
    ...layerSums(report.plan).map(({ layer, coats, film_m, liquid_m3, weight_kg }) =>
      [LAYER_WORDS[layer], String(coats), shown(film_m, 'film', system), shown(liquid_m3, 'volume', system), shown(weight_kg, 'part-weight', system)]),
  ];
}

/** Film and weight at the end, against the scheme's limits where it has any. */
export function totalSentences({ plan }: ReportedScheme, system: UnitSystem): string[] {
  const last = plan.steps.at(-1);
  if (last === undefined) return [];
  const { most_um, most_g_m2 } = plan.scheme;
  const perArea = { value: last.added_kg.value / plan.area_m2, low: last.added_kg.low / plan.area_m2, high: last.added_kg.high / plan.area_m2 };
  return [
    `At the end ${spreadWords(last.after_m, 'film', system)} dry film where all coats lie${most_um === undefined ? '; no limit is typed' : `, limit ${shown(most_um * 1e-6, 'film', system)}`}.`,
    `It adds ${spreadWords(last.added_kg, 'part-weight', system)} on ${shown(plan.area_m2, 'panel-area', system)}, which is ${spreadWords(perArea, 'areal-weight', system)}${most_g_m2 === undefined ? '; no limit is typed' : `, limit ${shown(most_g_m2 / 1000, 'areal-weight', system)}`}. Moving surfaces must be checked for balance after refinishing.`,
  ];
}

/** How each colour hides what is beneath it. */
export function hidingSentences({ hiding }: ReportedScheme, system: UnitSystem): string[] {
  return hiding.map(({ run, hiding_m, contrast, seenContrast, coatsToHide, moreCoats, moreWeight_kg_m2 }) => {
    const over = run.beneath?.name ?? (run.isOverAluminium ? ALUMINIUM_GROUND_WORDS : 'black and white, as what is beneath has no stated colour');
    const laid = `${run.colour.name} over ${over}: ${counted(run.coats, 'coat')}, ${shown(run.film_m, 'film', system)} dry, contrast ${contrast.toFixed(3)}${seenContrast === null ? '' : ` (${seenContrast.toFixed(3)} as seen with a glossy face)`}.`;
    if (!Number.isFinite(hiding_m)) return `${laid} By its stated optics it never hides.`;
    const needs = `It hides, at 0.98, from ${shown(hiding_m, 'film', system)}: ${counted(coatsToHide, 'such coat')}`;
    return moreCoats === 0 ? `${laid} ${needs}.` : `${laid} ${needs}, ${moreCoats} more than planned, for another ${shown(moreWeight_kg_m2, 'areal-weight', system)}.`;
  });
}

/** Light through the aluminium, as a guess beside the test that decides. */
export function lightSentence({ light }: ReportedScheme, system: UnitSystem): string | null {
  if (light === null) return null;
  const paste = light.isPasteStated ? '' : ' Where the paste is not stated it is taken as the most allowed.';
  return `${counted(light.coats, 'aluminium coat')}, ${shown(light.film_m, 'film', system)} dry, may let ${shownRoughPercent(light.through.value)} of light through (${shownRoughPercent(light.through.low)} to ${shownRoughPercent(light.through.high)}: flakes differ).${paste}`;
}

/** What a cloth must still bear, for the record. */
export function strengthSentences(strength: readonly ReportedStrength[], system: UnitSystem): string[] {
  const words = (N_m: number): string => (system === 'us' ? `${Number((N_m / NEWTONS_PER_METRE_PER_LB_IN).toFixed(1))} lb/in` : `${Number((N_m / 1000).toFixed(1))} kN/m (${Number((N_m / NEWTONS_PER_METRE_PER_LB_IN).toFixed(1))} lb/in)`);
  return strength.map(({ name, new_N_m, floor_N_m, source }) => `${name}: new ${words(new_N_m)}, in use not below ${words(floor_N_m)} (70 %; ${source}).`);
}

/** What the figures of strength are for, and what they are not. */
export const STRENGTH_NOTE =
  'For the record only (AC 43.13-1B 2-30, 2-33). Below a wing loading of 9 lb/ft² and a never-exceed speed of 160 mph intermediate cloth will do, and 46 lb/in is the floor whatever cloth is fitted; 45.5 is printed as 46. The cloth itself is tested, and a licensed person decides.';
