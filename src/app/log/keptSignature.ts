import type { Signal } from '@preact/signals';
import { momentShown, takenBack, type Recorded } from '../../../sim/index.ts';
import type { Problem } from '../problem.ts';

/** Whether a record may not be removed since its history holds a signature that was taken back, and nothing else does; the stage then tells. */
export function refusedAsOnceSigned({ name, history }: Recorded & { readonly name: string }, told: Signal<Problem | null>): boolean {
  const last = history.map(takenBack).findLast((found) => found !== null);
  if (last === undefined) return false;
  told.value = {
    title: 'Nothing was removed',
    text: `${last.signed.who} signed “${name}” on ${momentShown(last.signed.at)}, and it was reopened since. Its history keeps that signature and the reason, which would go with it; correct it and sign it again instead.`,
    place: {},
  };
  return true;
}
