import { defaultMix, presetById, presetParts, schemeFromPreset, type CoatSpec, type ColourSpec, type Job, type PresetOptions, type SchemeSpec, type StepSpec } from '../../../sim/index.ts';
import { orderedCoat } from '../coatCommands.ts';
import { changeJob } from '../document.ts';
import { freshId } from '../freshId.ts';
import { state } from '../state.ts';
import { missingFor, newStep, STEP_KINDS } from './newStep.ts';
import { lookAtScheme, schemeIndex, shownScheme } from './scheme.ts';
import { dropSchemeDrafts } from './stepCommands.ts';

/** Panels that no scheme covers yet: a panel has one scheme. */
export function freePanels({ part, schemes = [] }: Job): string[] {
  const taken = new Set(schemes.flatMap(({ panels }) => panels));
  return part.panels.map(({ id }) => id).filter((id) => !taken.has(id));
}

/** A scheme from a preset on some panels, with the mixes and the coat that the job lacks for it; one step of undo. */
export function addPreset(presetId: string, panels: readonly string[], options: PresetOptions = {}): void {
  if (panels.length === 0) return;
  const job = withPresetParts(state.job.peek(), presetId, panels);
  const scheme = schemeFromPreset(job, presetById(presetId), { id: freshSchemeId(job), panels: [...panels] }, options);
  addScheme(job, scheme);
}

/** A scheme of one step on some panels, to be written by hand. */
export function addBlank(panels: readonly string[]): void {
  const job = state.job.peek();
  const kind = (['spray', 'brush'] as const).find((each) => missingFor(job, panels, each) === null) ?? 'sand';
  const bare = { panels: [...panels], steps: [] as StepSpec[] };
  if (panels.length > 0) addScheme(job, { id: freshSchemeId(job), name: 'New scheme', sides: 1, clearCoats: 3, ...bare, steps: [newStep(job, bare, kind, [])] });
}

function freshSchemeId({ schemes = [] }: Job): string {
  return freshId('scheme', schemes.map(({ id }) => id));
}

function addScheme(job: Job, scheme: SchemeSpec): void {
  changeJob('Add a scheme', { ...job, schemes: [...(job.schemes ?? []), scheme] });
  lookAtScheme({ scheme: scheme.id, step: '' });
}

/** The job with a mix for each liquid that a preset lacks, and a coat on the first panel where none lies there. */
export function withPresetParts(job: Job, presetId: string, panels: readonly string[]): Job {
  const { missing, coat } = presetParts(job, presetById(presetId), panels);
  const mixes = [...job.mixes];
  for (const { finish, name, thinnerPerFinish } of missing) {
    mixes.push({ ...defaultMix(freshId('mix', mixes.map(({ id }) => id)), name), finish, thinnerPerFinish });
  }
  return { ...job, mixes, coats: coat === null ? [...job.coats, coatOn(job, panels[0] as string)] : job.coats };
}

/** The job's first coat, planned on another panel by a steady hand. */
function coatOn(job: Job, panel: string): CoatSpec {
  const first = job.coats[0] as CoatSpec;
  const name = job.part.panels.find(({ id }) => id === panel)?.name ?? panel;
  const planned = { ...first, id: freshId('coat', job.coats.map(({ id }) => id)), name: `Coat on ${name}`.slice(0, 200), panel, over: undefined, hand: { kind: 'steady' } as const };
  delete planned.recording;
  return orderedCoat(planned);
}

/** Takes the shown scheme out of the job. */
export function removeScheme(): void {
  const job = state.job.peek();
  const gone = schemeIndex.peek();
  if (gone < 0) return;
  dropSchemeDrafts();
  changeJob('Remove a scheme', { ...job, schemes: (job.schemes ?? []).filter((_, k) => k !== gone) });
  lookAtScheme({ scheme: '', step: '' });
}

/**
 * Puts a panel under the shown scheme or takes it out. The last panel stays, and so does one that a sprayed step's coat is planned on.
 */
export function turnPanel(panel: string, on: boolean): void {
  const scheme = shownScheme.peek();
  if (scheme === null) return;
  const panels = on ? [...scheme.panels, panel] : scheme.panels.filter((id) => id !== panel);
  if (panels.length === 0 || (!on && panelInUse(panel))) return;
  const job = state.job.peek();
  changeJob('Panels of the scheme', { ...job, schemes: (job.schemes ?? []).map((each) => (each.id === scheme.id ? { ...each, panels } : each)) });
}

/** Whether a sprayed step of the shown scheme is planned on a panel. */
export function panelInUse(panel: string): boolean {
  const { coats } = state.job.value;
  return (shownScheme.value?.steps ?? []).some((step) => step.kind === 'spray' && coats.find(({ id }) => id === step.coat)?.panel === panel);
}

/** A colour to be named and measured. Assumed: a white of usual hiding. */
export function addColour(): void {
  const job = state.job.peek();
  const colours = job.colours ?? [];
  const id = freshId('colour', colours.map((colour) => colour.id));
  const added: ColourSpec = { id, name: 'White', reflectance_percent: 85, scatter_per_mm: 100, bleeds: false };
  changeJob('Add a colour', { ...job, colours: [...colours, added] });
}

/** Takes a colour out of the job and of the steps that lay it. */
export function removeColour(id: string): void {
  const job = state.job.peek();
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/colours/')));
  const schemes = (job.schemes ?? []).map((scheme) => ({ ...scheme, steps: scheme.steps.map((step) => withoutColour(step, id)) }));
  changeJob('Remove a colour', { ...job, colours: (job.colours ?? []).filter((colour) => colour.id !== id), schemes });
}

function withoutColour(step: StepSpec, id: string): StepSpec {
  if (!('colour' in step) || step.colour !== id) return step;
  const bare = { ...step };
  delete bare.colour;
  return bare;
}

/** Kinds of step that can be added to the shown scheme, each with what is missing for it. */
export function stepChoices(): readonly (readonly [kind: StepSpec['kind'], missing: string | null])[] {
  const scheme = shownScheme.value;
  return STEP_KINDS.map((kind) => [kind, scheme === null ? null : missingFor(state.job.value, scheme.panels, kind)]);
}
