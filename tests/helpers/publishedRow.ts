import { expect, it } from 'vitest';

/** One value that someone else has published, derived or computed, and how near ours must come. */
export interface PublishedRow {
  /** Author, year, title, equation or page; or "identity" or "reference computation" with how it was made. */
  readonly source: string;
  readonly quantity: string;
  readonly expected: number;
  /** Absolute. */
  readonly tolerance: number;
  /** What the tolerance follows from. */
  readonly why: string;
  readonly ours: () => number;
}

/** One test a row; prints ours beside theirs once all have run. */
export function testPublished(rows: readonly PublishedRow[]): void {
  const printed: Record<string, number | string>[] = [];
  for (const [i, row] of rows.entries()) {
    it(`${row.quantity} = ${row.expected}`, () => {
      const ours = row.ours();
      printed.push({ quantity: row.quantity, published: row.expected, ours, difference: ours - row.expected, tolerance: row.tolerance });
      if (i === rows.length - 1) console.table(printed);
      expect(Math.abs(ours - row.expected), `${row.source}; ${row.why}`).toBeLessThanOrEqual(row.tolerance);
    });
  }
}

/** Half a unit in the last of `digits` decimals: all that a printed value says. */
export function lastDigit(digits: number): number {
  return 0.5 * 10 ** -digits * (1 + 1e-9);
}
