import { CrosscoatError } from '../../base/errors.ts';
import { nearestWord } from '../../base/nearestWord.ts';
import type { Drill } from './drill.ts';
import { FILM_DRILLS } from './filmDrills.ts';
import { HAND_DRILLS } from './handDrills.ts';

/** Every drill in rising order: the hand on a level board, then what the film asks of it. */
export const DRILLS: readonly Drill[] = [...HAND_DRILLS, ...FILM_DRILLS];

/** A drill by its id. @throws CrosscoatError `not-found` for an unknown one, naming those there are. */
export function drillById(id: string): Drill {
  const found = DRILLS.find((drill) => drill.id === id);
  if (found !== undefined) return found;
  const known = DRILLS.map((drill) => drill.id);
  const near = nearestWord(id, known);
  const guess = near === null ? '' : `did you mean "${near}"? `;
  throw new CrosscoatError('not-found', `drill: there is no drill "${id}"; ${guess}known are ${known.join(', ')}`);
}
