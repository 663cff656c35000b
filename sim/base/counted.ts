/** A count with its noun: `1 row`, `3 rows`. The plural ends in s unless it is given. */
export function counted(count: number, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}
