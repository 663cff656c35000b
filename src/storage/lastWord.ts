import type { InHand } from './inHand.ts';
import { packJob, type MainPart } from './jobParts.ts';

/** A job without the long parts that are as they are kept. */
export interface ShortJob {
  readonly main: MainPart;
  /** Long parts that are others than those kept. */
  readonly parts: readonly (readonly [name: string, value: unknown])[];
}

/** What a window had in hand and not kept when it went: a database answers later, and a page that goes hears no answer. */
export interface LastWord extends ShortJob {
  readonly id: string;
  /** Revision that it was made from; null: it was never kept. */
  readonly revision: number | null;
  readonly drafts: unknown;
  /** What was being written when the page went: it may have come to be kept. */
  readonly underWay: ShortJob | null;
}

/** @param held what is kept, as far as the window knows. @param underWay what is being written, null for nothing. */
export function lastWordOf(now: InHand, held: (InHand & { readonly revision: number }) | undefined, underWay: InHand | null): LastWord {
  const kept = held && packJob(held.job).parts;
  const shortOf = ({ job }: InHand): ShortJob => {
    const { main, parts } = packJob(job);
    return { main, parts: [...parts].filter(([name, value]) => kept?.get(name) !== value) };
  };
  return { id: now.id, revision: held?.revision ?? null, ...shortOf(now), drafts: now.drafts, underWay: underWay?.id === now.id ? shortOf(underWay) : null };
}
