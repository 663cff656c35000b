import { performance } from 'node:perf_hooks';

/** Times of one piece of work, ms. */
export interface Measured {
  readonly min_ms: number;
  readonly median_ms: number;
  readonly runs: number;
}

/**
 * Times `work`: warm-up of at least `warmUp_ms`, then `runs` timed runs.
 * @param work returns a number that depends on all it did. @throws Error where that is not finite.
 */
export function measure(work: () => number, runs = 15, warmUp_ms = 400): Measured {
  const start_ms = performance.now();
  do checkFinite(work());
  while (performance.now() - start_ms < warmUp_ms);
  const times_ms: number[] = [];
  for (let i = 0; i < runs; i++) {
    const from_ms = performance.now();
    const result = work();
    times_ms.push(performance.now() - from_ms);
    checkFinite(result);
  }
  times_ms.sort((a, b) => a - b);
  return { min_ms: times_ms[0] as number, median_ms: times_ms[runs >> 1] as number, runs };
}

function checkFinite(result: number): void {
  if (!Number.isFinite(result)) throw new Error(`the work gave ${result}, not a finite number: its time means nothing`);
}

/** Prints rows under their keys, numbers as they are given. */
export function printTable(title: string, rows: readonly Readonly<Record<string, string | number>>[]): void {
  const keys = Object.keys(rows[0] ?? {});
  const lines = [keys, ...rows.map((row) => keys.map((key) => String(row[key])))];
  const widths = keys.map((_, i) => Math.max(...lines.map((line) => (line[i] as string).length)));
  console.log(`\n${title}`);
  for (const line of lines) {
    console.log(line.map((text, i) => (i === 0 ? text.padEnd(widths[i] as number) : text.padStart(widths[i] as number))).join('  '));
  }
}
