import { MOST_PASTE_KG_M3 } from '../aluminiumLight.ts';
import { findingAt, type SchemeFinding } from '../finding.ts';
import type { PlannedScheme } from '../planned.ts';
import { coatsOf, isDopedFabric, wholeCoats, type CoatStep } from './coatsOf.ts';

/** Coats to brush before the gun comes out. */
const BRUSHED_FIRST = 2;
const LEAST_ALUMINIUM = 2;
/** A weighed 3 oz to the gallon comes to 22.47 g/L; shown as 22.5. */
const PASTE_SLACK = 1.001;

/** Which coats there are, how many, in which order, and what is in them. */
export function coatOrderFindings(plan: PlannedScheme): SchemeFinding[] {
  const coats = coatsOf(plan);
  return [
    ...(isDopedFabric(plan) ? [...countFindings(plan, coats), ...layerFindings(coats), ...firstCoatFindings(plan)] : []),
    ...clearOverColour(coats),
    ...dopeFindings(coats),
    ...coats.flatMap(({ step, coat, stepIndex }) =>
      coat.paste_kg_m3 !== null && coat.paste_kg_m3 > MOST_PASTE_KG_M3 * PASTE_SLACK
        ? [findingAt(step, stepIndex, 'stop', { rule: 'paste', paste_kg_m3: coat.paste_kg_m3, most_kg_m3: MOST_PASTE_KG_M3 }, 'paste_g_L')]
        : []),
  ];
}

function countFindings(plan: PlannedScheme, coats: readonly CoatStep[]): SchemeFinding[] {
  const clear = wholeCoats(plan, 'clear');
  const least = plan.scheme.clearCoats;
  const at = clear.at(-1) ?? coats[0];
  const firstColour = coats.find(({ coat }) => coat.layer === 'colour');
  const aluminium = wholeCoats(plan, 'aluminium').filter(({ stepIndex }) => firstColour === undefined || stepIndex < firstColour.stepIndex);
  return [
    ...(at !== undefined && clear.length < least ? [findingAt(at.step, at.stepIndex, 'stop', { rule: 'few-clear', count: clear.length, least })] : []),
    ...(firstColour !== undefined && aluminium.length < LEAST_ALUMINIUM
      ? [findingAt(firstColour.step, firstColour.stepIndex, 'stop', { rule: 'few-aluminium', count: aluminium.length })]
      : []),
  ];
}

/** Aluminium belongs over clear and under colour. */
function layerFindings(coats: readonly CoatStep[]): SchemeFinding[] {
  const first = (layer: string): number => coats.find(({ coat }) => coat.layer === layer)?.stepIndex ?? Infinity;
  const [clear, colour] = [first('clear'), first('colour')];
  return coats.filter(({ coat }) => coat.layer === 'aluminium').flatMap(({ step, stepIndex }) => [
    ...(stepIndex < clear ? [findingAt(step, stepIndex, 'stop', { rule: 'aluminium-before-clear' })] : []),
    ...(stepIndex > colour ? [findingAt(step, stepIndex, 'stop', { rule: 'aluminium-after-colour' })] : []),
  ]);
}

function firstCoatFindings(plan: PlannedScheme): SchemeFinding[] {
  return wholeCoats(plan, 'clear').slice(0, BRUSHED_FIRST).flatMap(({ step, stepIndex }, k) =>
    step.spec.kind === 'spray' ? [findingAt(step, stepIndex, 'doubt', { rule: 'first-coat-sprayed', nth: k + 1 })] : []);
}

/** Clear over colour has its uses; the step's remark should say which. */
function clearOverColour(coats: readonly CoatStep[]): SchemeFinding[] {
  const colour = coats.find(({ coat }) => coat.layer === 'colour')?.stepIndex ?? Infinity;
  return coats.flatMap(({ step, coat, stepIndex }) =>
    coat.layer === 'clear' && stepIndex > colour && (step.spec.note ?? '').trim() === '' ? [findingAt(step, stepIndex, 'doubt', { rule: 'clear-over-colour' })] : []);
}

/** Nitrate over butyrate, as far as names tell. */
function dopeFindings(coats: readonly CoatStep[]): SchemeFinding[] {
  const says = ({ step, coat }: CoatStep, word: RegExp): boolean => word.test(step.spec.name) || word.test(coat.mix.name);
  const beneath = coats.find((each) => says(each, /butyrate/i));
  if (beneath === undefined) return [];
  return coats.filter((each) => each.stepIndex > beneath.stepIndex && says(each, /nitrate/i) && !says(each, /butyrate/i))
    .map(({ step, stepIndex }) => findingAt(step, stepIndex, 'stop', { rule: 'nitrate-over-butyrate', beneath: beneath.step.spec.name }));
}
