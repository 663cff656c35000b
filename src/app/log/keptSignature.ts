import type { Signal } from '@preact/signals';
import { momentShown, takenBack, type Recorded } from '../../../sim/index.ts';
import type { Problem } from '../problem.ts';

/** Whether a record may not be removed since it is signed, or its history holds a signature that was taken back; the stage then tells. */
export function refusedAsOnceSigned({ name, signed, history }: Recorded & { readonly name: string }, told: Signal<Problem | null>): boolean {
  const last = signed ?? history.map(takenBack).findLast((found) => found !== null)?.signed;
  if (last === undefined) return false;
  const why = signed === undefined ? 'and it was reopened since. Its history keeps that signature and the reason, which would go with it; correct it and sign it again instead.' : 'so it is locked and stays.';
  told.value = { title: 'Nothing was removed', text: `${last.who} signed “${name}” on ${momentShown(last.at)}, ${why}`, place: {} };
  return true;
}
