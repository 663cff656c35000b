import { nearestWord } from '../base/nearestWord.ts';
import { valueWords, type Problem } from './problems.ts';

/** Ids that stand twice in a list. */
export function repeatedIds(pointer: string, items: readonly { readonly id: string }[]): Problem[] {
  const first = new Map<string, number>();
  return items.flatMap(({ id }, i) => {
    const earlier = first.get(id);
    if (earlier === undefined) {
      first.set(id, i);
      return [];
    }
    return [problem(`${pointer}/${i}/id`, `= "${id}" is also the id of ${pointer}/${earlier}; give each its own id`)];
  });
}

/** An id that names nothing in a list, with the near word. */
export function unknownId(pointer: string, id: string, items: readonly { readonly id: string }[], what: string): Problem[] {
  const ids = items.map((item) => item.id);
  if (ids.includes(id)) return [];
  const near = nearestWord(id, ids);
  const some = ids.slice(0, 8).join(', ');
  const advice = near !== null ? `did you mean "${near}"?` : ids.length === 0 ? `the job has no ${what}; add it or leave this key out` : `give one of ${some}`;
  return [problem(pointer, `= ${valueWords(id)} is the id of no ${what}; ${advice}`)];
}

/** A problem at a pointer, whose words follow the pointer. */
export function problem(pointer: string, words: string): Problem {
  return { pointer, text: `${pointer} ${words}` };
}
