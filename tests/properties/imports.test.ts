import { describe, expect, it } from 'vitest';
import { fuzzReader } from '../soak/fuzz/fuzzReader.ts';
import { fuzzedReaders } from '../soak/fuzz/readers.ts';

/** A sample in every run; `npm run soak:imports` reads a hundred thousand. */
const COUNT = 250;

describe('a spoiled file', () => {
  it.each(fuzzedReaders())('never crashes, hangs or runs in the reader of: $name', async (reader) => {
    const figures = await fuzzReader(reader, COUNT, 20261128);
    expect(figures.defects).toEqual([]);
    expect(figures.read + figures.refused).toBe(COUNT);
    expect(figures.refused).toBeGreaterThan(COUNT / 10);
  });
});
