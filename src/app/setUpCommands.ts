import type { Job, SetUpSpec } from '../../sim/index.ts';
import { changeJob, coatIndex, setUp } from './document.ts';
import { freshId } from './freshId.ts';
import { withValueAt } from './path.ts';
import { state } from './state.ts';

/** Uses another set-up for the coat in hand. */
export function chooseSetUp(id: string): void {
  changeJob('Choose a set-up', withValueAt(state.job.peek(), ['coats', coatIndex.peek(), 'setUp'], id));
}

/** A copy of the set-up in hand, used by the coat in hand. */
export function duplicateSetUp(): void {
  const job = state.job.peek();
  const original = setUp.peek();
  const copy: SetUpSpec = {
    ...original,
    id: freshId('set-up', job.setUps.map(({ id }) => id)),
    name: `${original.name}, copy`.slice(0, 200),
  };
  const more: Job = { ...job, setUps: [...job.setUps, copy] };
  changeJob('Copy a set-up', withValueAt(more, ['coats', coatIndex.peek(), 'setUp'], copy.id));
}

/** Removes the set-up in hand; coats that used it take the first that is left. */
export function removeSetUp(): void {
  const job = state.job.peek();
  const gone = setUp.peek().id;
  const left = job.setUps.filter(({ id }) => id !== gone);
  const [first] = left;
  if (first === undefined) return;
  const coats = job.coats.map((coat) => (coat.setUp === gone ? { ...coat, setUp: first.id } : coat));
  changeJob('Remove a set-up', { ...job, setUps: left, coats });
}

export type Profile = SetUpSpec['fan']['profile'];
export type Family = Profile['family'];

/** A profile of a family with plain values to begin from. */
export function newProfile(family: Family, width_mm: number): Profile {
  switch (family) {
    case 'double-beta':
      return { family, beta1: 3, beta2: 3 };
    case 'flat-top':
      return { family, taper_mm: Math.round(width_mm / 5) };
    case 'table': {
      const half = Math.round(width_mm / 2);
      return { family, place_mm: [-half, -half / 2, 0, half / 2, half], film: [0, 60, 100, 60, 0] };
    }
    case 'gaussian':
    case 'parabola':
    case 'triangle':
    case 'cosine-squared':
      return { family };
  }
}
