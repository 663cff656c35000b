import { defaultMix, RETARDER, type Job, type MixSpec } from '../../sim/index.ts';
import { blendRows, blendText, readBlend, rowsOf, type BlendRow } from './blendText.ts';
import { orderedCoat } from './coatCommands.ts';
import { changeJob, closeStep, coat, coatIndex, mix, mixIndex } from './document.ts';
import { keepDraft, leaveField } from './fieldText.ts';
import { freshId } from './freshId.ts';
import { pointerOf, withValueAt, type JobPath } from './path.ts';
import { state } from './state.ts';

/** Puts a mix into the cup for the coat in hand; with an empty id the set-up says solids and thinner. */
export function chooseMix(id: string): void {
  changeJob('Choose a mix', withMix(state.job.peek(), id));
}

function withMix(job: Job, id: string): Job {
  return withValueAt(job, ['coats', coatIndex.peek()], orderedCoat({ ...coat.peek(), mix: id === '' ? undefined : id }));
}

/** A new mix for the coat in hand: a copy of the one in its cup, or clear dope with a general thinner. */
export function addMix(): void {
  const job = state.job.peek();
  const id = freshId('mix', job.mixes.map((each) => each.id));
  const original = mix.peek();
  const added: MixSpec = original === null ? defaultMix(id, 'Clear dope, general thinner') : { ...original, id, name: `${original.name}, copy`.slice(0, 200) };
  changeJob('Add a mix', withMix({ ...job, mixes: [...job.mixes, added] }, id));
}

/** Removes the mix in hand; coats that used it go back to what their set-up says. */
export function removeMix(): void {
  const job = state.job.peek();
  const gone = mix.peek()?.id;
  if (gone === undefined) return;
  const laid = stepsWith(job, gone);
  if (laid.length > 0) {
    state.notice.value = { title: 'This mix stays', text: `Steps of a scheme are laid with it: ${laid.join(', ')}. Give them another mix first, on the sheet Steps.`, place: {} };
    return;
  }
  dropMixDrafts();
  const coats = job.coats.map((each) => (each.mix === gone ? orderedCoat({ ...each, mix: undefined }) : each));
  changeJob('Remove a mix', { ...job, mixes: job.mixes.filter(({ id }) => id !== gone), coats });
}

/** Names of the steps of schemes that are laid with a mix. */
function stepsWith(job: Job, mixId: string): string[] {
  return (job.schemes ?? []).flatMap(({ steps }) => steps.filter((step) => (step.kind === 'brush' || step.kind === 'spray') && step.mix === mixId).map(({ name }) => `"${name}"`));
}

/** Mixes move up when one goes, so that a draft would stand in another mix's field. */
function dropMixDrafts(): void {
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/mixes/')));
}

/** Sets one value of the mix in hand. */
export function setInMix(label: string, path: JobPath, value: unknown): void {
  changeJob(label, withValueAt(state.job.peek(), ['mixes', mixIndex.peek(), ...path], value));
}

/** With a retarder, or without. */
export function turnRetarder(on: boolean): void {
  setOptional('Retarder', 'retarder', on ? RETARDER : undefined);
}

/** What a cup reading begins from; the reader types their own. */
const FIRST_READING: NonNullable<MixSpec['cup']> = { kind: 'ford-4', seconds: 20, temperature_C: 21 };

/** With a cup reading, which then says the viscosity, or without. */
export function turnCup(on: boolean): void {
  setOptional('Cup reading', 'cup', on ? { ...FIRST_READING, temperature_C: state.job.peek().air.temperature_C } : undefined);
}

function setOptional<Key extends 'retarder' | 'cup'>(label: string, key: Key, value: MixSpec[Key]): void {
  const now = mix.peek();
  if (now === null) return;
  const next: MixSpec = { ...now };
  if (value === undefined) delete next[key];
  else next[key] = value;
  setInMix(label, [], next);
}

/** The thinner's rows as they stand: as typed, or the job's. */
export function thinnerRows(): readonly BlendRow[] {
  const draft = state.drafts.value[thinnerPointer()];
  return draft === undefined ? rowsOf(mix.value?.thinner ?? []) : blendRows(draft.text);
}

/**
 * Takes the thinner's rows as they now stand. They become the job's thinner as soon as they add to
 * 100 %: until then a change of one share waits for that of another.
 */
export function typeThinner(rows: readonly BlendRow[]): void {
  const pointer = thinnerPointer();
  const read = readBlend(rows);
  keepDraft(pointer, { text: blendText(rows), problem: 'problem' in read ? read.problem : null });
  if ('parts' in read) changeJob('Thinner', withValueAt(state.job.peek(), ['mixes', mixIndex.peek(), 'thinner'], read.parts), pointer);
}

/** The same for a choice or a button, which is a step of its own. */
export function chooseThinner(rows: readonly BlendRow[]): void {
  closeStep();
  typeThinner(rows);
  leaveField(thinnerPointer());
}

/** The place in the job of the thinner in hand. */
export function thinnerPointer(): string {
  return pointerOf(['mixes', mixIndex.value, 'thinner']);
}
