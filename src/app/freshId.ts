/** An id that is not taken: the stem, then a number. */
export function freshId(stem: string, taken: readonly string[]): string {
  let number = taken.length + 1;
  while (taken.includes(`${stem}-${number}`)) number++;
  return `${stem}-${number}`;
}
