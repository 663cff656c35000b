import { packJob, type MainPart } from './jobParts.ts';
import type { InHand } from './inHand.ts';

/** What a window had in hand and not kept when it went: a database answers later, and a page that goes hears no answer. */
export interface LastWord {
  readonly id: string;
  /** Revision that it was made from; null: it was never kept. */
  readonly revision: number | null;
  readonly main: MainPart;
  /** Long parts that are others than those of that revision. */
  readonly parts: readonly (readonly [name: string, value: unknown])[];
  readonly drafts: unknown;
  /** What was being written when the page went, without its long parts: it may have come to be kept. */
  readonly underWay: MainPart | null;
}

/** @param held what is kept, as far as the window knows. @param underWay what is being written, null for nothing. */
export function lastWordOf(now: InHand, held: (InHand & { readonly revision: number }) | undefined, underWay: InHand | null): LastWord {
  const { main, parts } = packJob(now.job);
  const kept = held && packJob(held.job).parts;
  return {
    id: now.id,
    revision: held?.revision ?? null,
    main,
    parts: [...parts].filter(([name, value]) => kept?.get(name) !== value),
    drafts: now.drafts,
    underWay: underWay?.id === now.id ? packJob(underWay.job).main : null,
  };
}
