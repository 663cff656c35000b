import { CrosscoatError } from '../base/errors.ts';
import type { Job, SchemeSpec, StepSpec } from '../job/schema.ts';
import type { Preset, PresetNeed, PresetOptions, PresetParts } from './preset.ts';
import { circularSteps } from './presetCircular.ts';
import { lacquerSteps } from './presetLacquer.ts';

/** Why there are two: one for each kind of part that this program is for. */
export const PRESETS: readonly Preset[] = [
  {
    id: 'ac-43-13',
    name: 'Natural fibre, after FAA AC 43.13-1B',
    note: 'Two brushed and one sprayed clear, two aluminium, three colour. An example to edit, not an authority: the approved data for the part and the dope maker’s sheet come first.',
    source: 'after FAA AC 43.13-1B, chapter 2; films, and what is marked so, are ours',
    clearCoats: 3,
    needs: [
      { slot: 'brush', finish: 'clear-dope', name: 'Clear dope for the brush, 4:1', thinnerPerFinish: 0.25 },
      { slot: 'clear', finish: 'clear-dope', name: 'Clear dope for the gun, 3:1', thinnerPerFinish: 0.33 },
      { slot: 'aluminium', finish: 'aluminium-dope', name: 'Aluminium dope, 3:1', thinnerPerFinish: 0.33 },
      { slot: 'colour', finish: 'colour-dope', name: 'Colour dope, 3:1', thinnerPerFinish: 0.33 },
    ],
    steps: circularSteps,
  },
  {
    id: 'lacquer',
    name: 'Plain lacquer panel, three coats',
    note: 'Three sprayed coats on a sealed or primed panel, sanded before the last. Common practice; the product sheet comes first.',
    source: 'common practice; no single source',
    clearCoats: 0,
    needs: [{ slot: 'lacquer', finish: 'lacquer', name: 'Lacquer, 3:1', thinnerPerFinish: 0.33 }],
    steps: lacquerSteps,
  },
];

/** A preset by its id. @throws CrosscoatError `not-found`. */
export function presetById(id: string): Preset {
  const found = PRESETS.find((preset) => preset.id === id);
  if (found !== undefined) return found;
  throw new CrosscoatError('not-found', `preset "${id}" is unknown; give one of ${PRESETS.map((preset) => preset.id).join(', ')}`);
}

/** What a preset finds in a job, and what it misses. */
export interface FoundParts {
  readonly mixes: Readonly<Partial<Record<PresetNeed['slot'], string>>>;
  readonly coat: string | null;
  readonly missing: readonly PresetNeed[];
}

/**
 * The job's mixes and coat that a preset would use on some panels: for the brush the thickest mix of the
 * finish, for the gun the thinnest; the first coat on one of the panels that is planned and lies on nothing.
 */
export function presetParts({ mixes, coats }: Job, { needs }: Preset, panels: readonly string[]): FoundParts {
  const found: Partial<Record<PresetNeed['slot'], string>> = {};
  for (const { slot, finish } of needs) {
    const ranked = mixes.filter((mix) => mix.finish === finish).sort((a, b) => a.thinnerPerFinish - b.thinnerPerFinish);
    const id = (slot === 'brush' ? ranked[0] : ranked.at(-1))?.id;
    if (id !== undefined) found[slot] = id;
  }
  const onPanel = coats.filter(({ panel, over }) => panels.includes(panel) && over === undefined);
  const coat = onPanel.find(({ recording }) => recording === undefined) ?? onPanel[0];
  return { mixes: found, coat: coat?.id ?? null, missing: needs.filter(({ slot }) => found[slot] === undefined) };
}

/**
 * A preset as a scheme of a job for some of its panels.
 * @throws CrosscoatError `not-found` where the job lacks a mix of a finish, or a coat on one of the panels.
 */
export function schemeFromPreset(job: Job, preset: Preset, { id, panels }: Pick<SchemeSpec, 'id' | 'panels'>, options: PresetOptions = {}): SchemeSpec {
  const { mixes, coat, missing } = presetParts(job, preset, panels);
  if (missing.length > 0) {
    throw new CrosscoatError('not-found', `preset "${preset.id}": the job has no mix of ${[...new Set(missing.map(({ finish }) => finish))].join(', ')}; add one first`, { pointer: '/mixes' });
  }
  if (coat === null) {
    throw new CrosscoatError('not-found', `preset "${preset.id}": the job has no coat on ${panels.join(', ')} that lies on nothing; add one first, for its set-up and strokes`, { pointer: '/coats' });
  }
  const clearCoats = preset.clearCoats + (options.fourthClear === true ? 1 : 0);
  return {
    id, name: preset.name, note: preset.note, source: preset.source, panels: [...panels], sides: 1, clearCoats,
    steps: preset.steps({ mixes: mixes as PresetParts['mixes'], coat }, options),
  };
}

/** Coats of a scheme that cover the panels whole: what people count. */
export function wholeCoatCount(steps: readonly StepSpec[]): number {
  return steps.filter((step) => (step.kind === 'brush' || step.kind === 'spray') && step.share_percent >= 99).length;
}
