import { CrosscoatError, type Warning } from '../../base/errors.ts';
import { makeAir, type MoistAir } from '../../air/moistAir.ts';
import type { ColourSpec, Job, SchemeSpec, StepSpec } from '../../job/schema.ts';
import { makeMix } from '../../mix/makeMix.ts';
import type { Mix } from '../../mix/mix.ts';
import { makePanel } from '../../panel/makePanel.ts';
import type { Panel } from '../../panel/panel.ts';
import type { PlannedCoat, PlannedScheme, PlannedStep, Spread } from '../../scheme/planned.ts';
import { exactly, scaled, summed } from '../../scheme/spread.ts';
import { workTime } from '../../scheme/workTime.ts';
import { brushedCoat } from './brushedCoat.ts';
import { sprayedCoat, type SprayedCoat } from './sprayedCoat.ts';

/** Sanding takes what it is stated to take within this share. Assumed. */
const SANDED_WITHIN = 0.5;
const PERCENT = 0.01;

/** What all steps of a scheme share. */
interface Ground {
  readonly job: Job;
  readonly scheme: SchemeSpec;
  readonly air: MoistAir;
  readonly panel: Panel;
  readonly area_m2: number;
  readonly mixOf: (id: string) => Mix;
  readonly sprayed: (coatId: string, mixId: string | undefined) => SprayedCoat;
}

/**
 * A scheme worked out for its panels: each coat's film, liquid and drying, time at work, and what lies on the part after each
 * step. Sprayed coats are laid by the model on the panel that their coat names; other panels of the scheme take the same film. Every
 * coat dries as on a bare backing.
 * @param schemeId the first scheme where not given.
 * @throws CrosscoatError `not-found` for an unknown scheme or a job without one; what settling and laying a coat throw.
 */
export function planScheme(job: Job, schemeId?: string): PlannedScheme {
  const [scheme, schemePlace] = schemeOf(job, schemeId);
  const ground = groundOf(job, scheme);
  const steps: PlannedStep[] = [];
  for (const [k, spec] of scheme.steps.entries()) {
    steps.push(plannedStep(ground, spec, `/schemes/${schemePlace}/steps/${k}`, steps));
  }
  return { scheme, air: ground.air, area_m2: ground.area_m2, steps, warnings: warningsOf(ground.air, steps) };
}

/** The scheme of that id, or the first, and its place. @throws CrosscoatError `not-found`. */
export function schemeOf(job: Job, schemeId?: string): readonly [scheme: SchemeSpec, place: number] {
  const schemes = job.schemes ?? [];
  const place = schemeId === undefined ? 0 : schemes.findIndex(({ id }) => id === schemeId);
  const found = schemes[place];
  if (found !== undefined) return [found, place];
  const known = schemes.length === 0 ? 'the job has none; add one, or begin with a preset' : `it has ${schemes.map(({ id }) => id).join(', ')}; give one of these`;
  throw new CrosscoatError('not-found', `job: ${schemeId === undefined ? 'no scheme of coats' : `scheme "${schemeId}" is not in the job`} (${known})`, { pointer: '/schemes' });
}

function groundOf(job: Job, scheme: SchemeSpec): Ground {
  const places = scheme.panels.map((id) => job.part.panels.findIndex((panel) => panel.id === id));
  const panels = places.map((place) => makePanel(at(job.part.panels, place), `/part/panels/${place}`).panel);
  const coats = new Map<string, SprayedCoat>();
  return {
    job,
    scheme,
    air: makeAir(job.air, '/air'),
    panel: at(panels, 0),
    area_m2: scheme.sides * panels.reduce((sum, { area_m2 }) => sum + area_m2, 0),
    mixOf: (id) => {
      const place = job.mixes.findIndex((mix) => mix.id === id);
      return makeMix(at(job.mixes, place), `/mixes/${place}`);
    },
    // A scheme lays the same coat several times; it is worked out once.
    sprayed: (coatId, mixId) => {
      const key = JSON.stringify([coatId, mixId]);
      const known = coats.get(key) ?? sprayedCoat(job, coatId, mixId);
      coats.set(key, known);
      return known;
    },
  };
}

function plannedStep(ground: Ground, spec: StepSpec, pointer: string, before: readonly PlannedStep[]): PlannedStep {
  const share = spec.kind === 'brush' || spec.kind === 'spray' || spec.kind === 'mask' ? spec.share_percent * PERCENT : 1;
  const area_m2 = ground.area_m2 * share;
  const coat = coatOf(ground, spec, area_m2);
  const last = before.at(-1);
  const change_m = spec.kind === 'sand' ? removed(spec.removes_um * 1e-6) : (coat?.dry_m ?? exactly(0));
  return {
    spec,
    pointer,
    area_m2,
    coat,
    ...workTime(spec, area_m2, coat?.spray_s ?? 0),
    wait_s: spec.wait_h * 3600,
    latest_s: spec.latest_h === undefined ? null : spec.latest_h * 3600,
    after_m: notBelow0(summed([last?.after_m ?? exactly(0), change_m])),
    added_kg: notBelow0(summed([last?.added_kg ?? exactly(0), addedBy(spec, coat, area_m2, change_m, before)])),
  };
}

/** Film that sanding takes, as a negative change. */
function removed(by_m: number): Spread {
  return { value: -by_m, low: -by_m * (1 + SANDED_WITHIN), high: -by_m * (1 - SANDED_WITHIN) };
}

/** Weight that a step adds; sanding takes it from the coat on top. */
function addedBy(spec: StepSpec, coat: PlannedCoat | null, area_m2: number, change_m: Spread, before: readonly PlannedStep[]): Spread {
  if (coat !== null) return scaled(coat.weight_kg_m2, area_m2);
  if (spec.kind === 'fix') return exactly((spec.weight_g ?? 0) / 1000);
  if (spec.kind !== 'sand') return exactly(0);
  const top = before.findLast((step) => step.coat !== null)?.coat;
  return scaled(change_m, area_m2 * (top?.mix.finish.solidsDensity_kg_m3.value ?? 0));
}

function notBelow0({ value, low, high }: Spread): Spread {
  return { value: Math.max(0, value), low: Math.max(0, low), high: Math.max(0, high) };
}

function coatOf(ground: Ground, spec: StepSpec, area_m2: number): PlannedCoat | null {
  if (spec.kind !== 'brush' && spec.kind !== 'spray') return null;
  const { job, air, panel, scheme } = ground;
  const said = { layer: spec.layer, colour: colourOf(job, spec.colour), paste_kg_m3: spec.paste_g_L ?? null };
  if (spec.kind === 'brush') {
    const backing = at(job.part.panels, job.part.panels.findIndex(({ id }) => id === scheme.panels[0])).backing;
    return { ...said, mixId: spec.mix, ...brushedCoat({ step: spec, mix: ground.mixOf(spec.mix), air, panel, backing, area_m2 }) };
  }
  const { setting, film, liquid_m, spray_s_m2 } = ground.sprayed(spec.coat, spec.mix);
  return {
    ...said,
    ...film,
    mix: setting.mix,
    mixId: spec.mix ?? setting.coat.mix ?? null,
    coatId: spec.coat,
    setUpName: setting.setUp.name,
    liquid_m3: scaled(liquid_m, area_m2),
    spray_s: spray_s_m2 * area_m2,
  };
}

function colourOf({ colours = [] }: Job, id: string | undefined): ColourSpec | null {
  return colours.find((colour) => colour.id === id) ?? null;
}

/** Each doubt once. */
function warningsOf(air: MoistAir, steps: readonly PlannedStep[]): Warning[] {
  const all = [...air.warnings, ...steps.flatMap(({ coat }) => coat?.mix.warnings ?? [])];
  return [...new Map(all.map((warning) => [warning.text, warning])).values()];
}

function at<T>(list: readonly T[], place: number): T {
  return list[place] as T;
}
