import { PNG } from 'pngjs';
import { expect, it } from 'vitest';
import type { Io } from '../../../src/cli/io.ts';
import { readPng } from '../../../src/cli/pngFile.ts';
import { withChecksums } from '../../soak/fuzz/pngChecksums.ts';

const good = Uint8Array.from(PNG.sync.write(new PNG({ width: 24, height: 16 })));

function stating(width: number, height: number): Uint8Array {
  const bytes = Uint8Array.from(good);
  const view = new DataView(bytes.buffer);
  view.setUint32(16, width);
  view.setUint32(20, height);
  return withChecksums(bytes);
}

const read = (bytes: Uint8Array): Promise<{ width: number; height: number }> => readPng({ bytes: () => Promise.resolve(bytes) } as unknown as Io, 'card.png');

it('reads a picture', async () => {
  expect(await read(good)).toMatchObject({ width: 24, height: 16 });
});

// A few dozen bytes that claim gigabytes kept the decoder busy for 25 s (found by soak:imports, seed 1).
it.each([
  [60_000, 45_000, /60000 × 45000 pixels are more than 100 million; give a smaller copy/],
  [9000, 9000, /says it has 9000 × 9000 pixels, more than its \d+ bytes can hold/],
] as const)('refuses %i × %i pixels in a few dozen bytes before it decodes them', async (width, height, words) => {
  const start_ms = performance.now();
  await expect(read(stating(width, height))).rejects.toThrow(words);
  expect(performance.now() - start_ms).toBeLessThan(500);
});

it('says what is no picture', async () => {
  await expect(read(new Uint8Array(10))).rejects.toThrow(/card\.png: not a PNG that can be read/);
});
