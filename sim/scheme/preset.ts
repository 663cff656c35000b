import type { StepSpec } from '../job/schema.ts';

/** A liquid that a preset needs: of which finish, and how far thinned where the job has none. */
export interface PresetNeed {
  readonly slot: 'brush' | 'clear' | 'aluminium' | 'colour' | 'lacquer';
  /** Id of the generic finish. */
  readonly finish: string;
  /** Name and thinner of a mix that would do. Common practice. */
  readonly name: string;
  readonly thinnerPerFinish: number;
}

/** What a preset's steps refer to in a job: ids of mixes by slot, and of the coat that says set-up and strokes. */
export interface PresetParts {
  readonly mixes: Readonly<Record<PresetNeed['slot'], string>>;
  readonly coat: string;
}

/** Where a preset leaves a choice. */
export interface PresetOptions {
  /** A fourth clear coat, as the circular wants where the cloth is not taut or the film not glossy. */
  readonly fourthClear?: boolean;
}

/** A scheme to begin from: an example with its sources, never an authority. */
export interface Preset {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly source: string;
  readonly clearCoats: number;
  readonly needs: readonly PresetNeed[];
  readonly steps: (parts: PresetParts, options: PresetOptions) => StepSpec[];
}
