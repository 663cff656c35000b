import type { Signal } from '@preact/signals';
import type { Problem } from '../problem.ts';
import { state, type Draft } from '../state.ts';

/** Number of fields of a record that are typed wrong, so that what they say is not in it. @param head pointer of the record with its last slash. @param alsoCounts text that is right and still in no record. */
export function wrongFields(head: string, alsoCounts: (pointer: string, draft: Draft) => boolean = () => false): number {
  return Object.entries(state.drafts.value).filter(([pointer, draft]) => pointer.startsWith(head) && (draft.problem !== null || alsoCounts(pointer, draft))).length;
}

/** Whether a signature has to wait for fields that are half typed, which the stage then tells. */
export function refusedAsUnfinished(unfinished: number, told: Signal<Problem | null>): boolean {
  if (unfinished === 0) return false;
  told.value = { title: 'Not signed', text: `${unfinished === 1 ? 'One field is' : `${unfinished} fields are`} half typed or wrong and would be left out; finish or empty what is marked first.`, place: {} };
  return true;
}
