import { batch, computed } from '@preact/signals';
import type { CoatSpec, Job, MixSpec, PanelSpec, SetUpSpec } from '../../sim/index.ts';
import { freshJobId } from '../storage/freshJobId.ts';
import { forgetFilm } from './forgetFilm.ts';
import { pathOf, valueAt } from './path.ts';
import { state } from './state.ts';

/** Steps of undo kept; a job is shared by reference between steps, so a step costs little. */
const HISTORY_STEPS = 200;

let openKey: string | null = null;

/**
 * Makes `next` the job, undoable under `label`. Changes with the same `key` that follow each
 * other (typing in one field) are one step, until `closeStep`.
 */
export function changeJob(label: string, next: Job, key: string | null = null): void {
  const before = state.job.peek();
  if (next === before) return;
  batch(() => {
    if (key === null || key !== openKey) {
      const past = [...state.past.peek(), { job: before, label }];
      state.past.value = past.slice(-HISTORY_STEPS);
    }
    openKey = key;
    state.future.value = [];
    state.job.value = next;
  });
}

/**
 * Puts another job in place of the one in hand, as a step that can be undone. Nothing of the old one's film stays on the screen; the
 * browser keeps both, `next` under an id of its own where none is given.
 */
export function replaceJob(label: string, next: Job, id = freshJobId()): void {
  batch(() => {
    closeStep();
    state.drafts.value = {};
    state.past.value = [...state.past.peek(), { job: state.job.peek(), label, replaces: state.jobId.peek() }].slice(-HISTORY_STEPS);
    state.future.value = [];
    forgetFilm();
    state.jobId.value = id;
    state.job.value = next;
  });
}

/** Ends the step that typing keeps open, so that the next change is a step of its own. */
export function closeStep(): void {
  openKey = null;
}

/** Puts the job back before the last change. A draft goes only where its field's value moves. */
export function undo(): void {
  move(state.past, state.future);
}

export function redo(): void {
  move(state.future, state.past);
}

function move(from: typeof state.past, to: typeof state.past): void {
  const step = from.peek().at(-1);
  if (step === undefined) return;
  closeStep();
  batch(() => {
    from.value = from.peek().slice(0, -1);
    to.value = [...to.peek(), { ...step, job: state.job.peek(), ...(step.replaces !== undefined && { replaces: state.jobId.peek() }) }];
    if (step.replaces !== undefined) {
      forgetFilm();
      state.jobId.value = step.replaces;
    }
    dropMovedDrafts(step.job);
    state.job.value = step.job;
  });
}

function dropMovedDrafts(next: Job): void {
  const before = state.job.peek();
  const kept = Object.entries(state.drafts.peek()).filter(([pointer]) =>
    Object.is(valueAt(before, pathOf(pointer)), valueAt(next, pathOf(pointer))),
  );
  state.drafts.value = Object.fromEntries(kept);
}

/** The coat in hand: the chosen one, or the first. */
export const coat = computed<CoatSpec>(() => {
  const coats = state.job.value.coats;
  return coats.find((each) => each.id === state.coatId.value) ?? (coats[0] as CoatSpec);
});

export const coatIndex = computed(() => state.job.value.coats.indexOf(coat.value));

export const setUpIndex = computed(() => indexOf(state.job.value.setUps, coat.value.setUp));

export const setUp = computed(() => state.job.value.setUps[setUpIndex.value] as SetUpSpec);

/** -1 where the coat names no mix: its set-up says what is in the cup. */
export const mixIndex = computed(() => state.job.value.mixes.findIndex(({ id }) => id === coat.value.mix));

export const mix = computed<MixSpec | null>(() => state.job.value.mixes[mixIndex.value] ?? null);

export const panelIndex = computed(() => indexOf(state.job.value.part.panels, coat.value.panel));

export const panel = computed(() => state.job.value.part.panels[panelIndex.value] as PanelSpec);

function indexOf(list: readonly { readonly id: string }[], id: string): number {
  return Math.max(0, list.findIndex((each) => each.id === id));
}
