import { computed, signal } from '@preact/signals';
import { DRILLS, ownDrill, parseRubric, USUAL_RUBRIC, type Drill, type LiveValue, type RubricSpec } from '../../../sim/index.ts';
import { coat } from '../document.ts';
import type { PracticePrefs } from '../practicePrefs.ts';
import type { Problem } from '../problem.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';

/** The sheets of practice. */
export const TABS = ['spray', 'debrief', 'progress', 'class'] as const;
export type PracticeTab = (typeof TABS)[number];

/** Choice of the drill that is made from the coat in hand. */
export const OWN_DRILL = 'own';

/** What practice shows. None of it is kept; preferences are, in `state.practice`. */
export const practice = {
  tab: signal<PracticeTab>('spray'),
  problem: signal<Problem | null>(null),
};

/** Changes some of what the reader has set. */
export function setPrefs(changed: Partial<PracticePrefs>): void {
  state.practice.value = { ...state.practice.peek(), ...changed };
}

const chosenId = computed(() => state.practice.value.drill);
const own = computed(() => ownDrill(state.job.value, coat.value.id));

/** The drill chosen: one of the program's, or the coat in hand. The same object as long as it is the same drill. */
export const drill = computed<Drill>(() => {
  if (chosenId.value === OWN_DRILL) return own.value;
  return DRILLS.find((each) => each.id === chosenId.value) ?? (DRILLS[0] as Drill);
});

/** What the panel's colours say: what the reader chose; else, over a film that lies there already, that film, and on a bare panel the film against the target. */
export const shownValue = computed<LiveValue>(() => {
  const { job, coat: id } = drill.value;
  const isOver = (): boolean => job().coats.some((each) => each.id === id && each.over !== undefined);
  return state.practice.value.value ?? (isOver() ? 'wet-now' : 'target');
});

/** The rubric in use: what the reader saved or opened, if it still reads, else the usual one. */
export const rubric = computed<RubricSpec>(() => {
  const kept = state.practice.value.rubric;
  if (kept === null) return USUAL_RUBRIC;
  try {
    return parseRubric(kept);
  } catch (thrown) {
    practice.problem.value = problemOf('Your rubric could not be read, so the usual one is used', thrown);
    return USUAL_RUBRIC;
  }
});

/** A CSS pixel is meant to be a ninety-sixth of an inch; screens differ by a third and more. */
export const NOMINAL_PX_PER_MM = 96 / 25.4;

/** Whether the screen is matched as it is now: another density needs another match. */
export function isMatched({ screen }: PracticePrefs, pixelRatio: number): boolean {
  return screen !== null && screen.pixelRatio === pixelRatio;
}
