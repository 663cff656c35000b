import { CrosscoatError } from '../../base/errors.ts';
import { nearestWord } from '../../base/nearestWord.ts';
import type { Demonstration } from './demonstration.ts';
import { MIX_LESSONS } from './mixLessons.ts';
import { STROKE_LESSONS } from './strokeLessons.ts';

/** Every demonstration, those of the hand first. */
export const DEMONSTRATIONS: readonly Demonstration[] = [...STROKE_LESSONS, ...MIX_LESSONS];

/** A demonstration by its id. @throws CrosscoatError `not-found` for an unknown one, with the near word. */
export function demonstrationById(id: string): Demonstration {
  const found = DEMONSTRATIONS.find((demonstration) => demonstration.id === id);
  if (found !== undefined) return found;
  const known = DEMONSTRATIONS.map((demonstration) => demonstration.id);
  const near = nearestWord(id, known);
  const advice = near === null ? `known are ${known.join(', ')}` : `did you mean "${near}"?`;
  throw new CrosscoatError('not-found', `demonstrate: there is no demonstration "${id}"; ${advice}`);
}
