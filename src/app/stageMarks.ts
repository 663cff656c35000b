import { computed } from '@preact/signals';
import { coat, mix, mixIndex, panel, setUp, setUpIndex, panelIndex, coatIndex } from './document.ts';
import { state, type StageName } from './state.ts';

export type StageMark = 'set' | 'attention' | 'doubt' | 'not-yet';

/** Parts of the job that a stage sets, as pointers. */
const stagePointers = computed<Readonly<Record<StageName, readonly string[]>>>(() => ({
  part: ['/part', '/cell_mm', '/seed'],
  mix: [`/mixes/${mixIndex.value}`, `/coats/${coatIndex.value}/mix`],
  air: ['/air'],
  gun: [`/setUps/${setUpIndex.value}`],
  strokes: [`/coats/${coatIndex.value}`, '/recordings'],
}));

/**
 * How each stage stands. It needs attention where a typed text is no value, where the newest job
 * does not run because of it; a doubt of the model is no error and has a mark of its own; a stage
 * whose part, mix, set-up or coat is not there is not yet done.
 */
export const stageMarks = computed<Readonly<Record<StageName, StageMark>>>(() => ({
  part: markOf('part', panel.value !== undefined && panelIndex.value >= 0),
  mix: markOf('mix', mix.value !== null),
  air: markOf('air', true),
  gun: markOf('gun', setUp.value !== undefined && setUpIndex.value >= 0),
  strokes: markOf('strokes', coat.value !== undefined),
}));

function markOf(stage: StageName, isThere: boolean): StageMark {
  if (!isThere) return 'not-yet';
  const pointers = stagePointers.value[stage];
  const isOurs = (pointer: string): boolean => pointers.some((each) => pointer === each || pointer.startsWith(`${each}/`));
  const wrong = Object.entries(state.drafts.value).filter(([, draft]) => draft.problem !== null);
  if (wrong.some(([pointer]) => isOurs(pointer))) return 'attention';
  const blamed = state.jobProblem.value?.place.pointer;
  if (blamed !== undefined && isOurs(blamed)) return 'attention';
  const doubts = state.film.value?.setting.warnings ?? [];
  return doubts.some(({ place }) => place.pointer !== undefined && isOurs(place.pointer)) ? 'doubt' : 'set';
}
