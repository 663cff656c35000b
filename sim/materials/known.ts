import { CrosscoatError, type Place } from '../base/errors.ts';
import { nearestWord } from '../base/nearestWord.ts';

/**
 * The entry of a table by its id.
 * @param what what the table holds, for the message: `solvent`.
 * @throws CrosscoatError `schema` for an unknown id, with the near word and all known ones.
 */
export function knownEntry<T extends { readonly id: string }>(table: readonly T[], id: string, what: string, place: Place = {}): T {
  const found = table.find((entry) => entry.id === id);
  if (found !== undefined) return found;
  const ids = table.map((entry) => entry.id);
  const near = nearestWord(id, ids);
  const where = place.pointer === undefined ? '' : `${place.pointer}: `;
  const meant = near === null ? '' : `did you mean "${near}"? `;
  throw new CrosscoatError('schema', `${where}unknown ${what} "${id}"; ${meant}known are ${ids.join(', ')}`, place);
}
