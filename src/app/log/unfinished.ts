import type { Signal } from '@preact/signals';
import type { Problem } from '../problem.ts';
import { state, type Draft } from '../state.ts';

/** Letters of a typed text that are quoted, and texts. */
const QUOTED = 40;
const MOST_QUOTED = 4;

/** What is typed wrong in a record's fields, so that it is not in the record. @param head pointer of the record with its last slash. @param alsoCounts text that is right and still in no record. */
export function wrongFields(head: string, alsoCounts: (pointer: string, draft: Draft) => boolean = () => false): readonly string[] {
  return Object.entries(state.drafts.value).filter(([pointer, draft]) => pointer.startsWith(head) && (draft.problem !== null || alsoCounts(pointer, draft))).map(([, { text }]) => text);
}

/** Whether a signature has to wait for fields that are half typed, which the stage then tells. */
export function refusedAsUnfinished(unfinished: readonly string[], told: Signal<Problem | null>): boolean {
  if (unfinished.length === 0) return false;
  const quoted = unfinished.slice(0, MOST_QUOTED).map((text) => (text.trim() === '' ? 'an empty one' : `“${text.slice(0, QUOTED)}”`));
  const found = [...quoted, ...(unfinished.length > quoted.length ? ['others'] : [])].join(', ');
  told.value = { title: 'Not signed', text: `${unfinished.length === 1 ? 'One field is' : `${unfinished.length} fields are`} half typed or wrong (${found}) and would be left out; finish or empty what is marked first.`, place: {} };
  return true;
}
