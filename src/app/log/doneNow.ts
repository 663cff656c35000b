import type { Done } from '../../../sim/index.ts';
import { nowMoment } from '../nowMoment.ts';
import { state } from '../state.ts';

/** Who changes a record, and when: the person who writes here, else the one who did what it is about. */
export function doneNow({ who }: { readonly who: string }): Done {
  return { at: nowMoment(), who: state.log.peek().who.trim() || who };
}
