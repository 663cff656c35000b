import { describe, expect, it } from 'vitest';
import { checkPhotoFile, isPhoto, keptSize } from '../../../../src/app/setups/photoFile.ts';

describe('a photograph of a card', () => {
  it('is told from readings by its kind or its name', () => {
    expect(isPhoto({ name: 'card.JPG', type: '' })).toBe(true);
    expect(isPhoto({ name: 'scan', type: 'image/png' })).toBe(true);
    expect(isPhoto({ name: 'readings.csv', type: 'text/csv' })).toBe(false);
  });

  it('is a PNG or a JPEG of at most 20 MB', () => {
    expect(() => checkPhotoFile({ name: 'card.png', type: 'image/png', size: 20e6 })).not.toThrow();
    expect(() => checkPhotoFile({ name: 'card.gif', type: 'image/gif', size: 10 })).toThrow(/card\.gif is no PNG or JPEG/);
    expect(() => checkPhotoFile({ name: 'card', type: '', size: 10 })).toThrow(/says nothing of its kind/);
    expect(() => checkPhotoFile({ name: 'card.jpg', type: 'image/jpeg', size: 20.4e6 })).toThrow(/20\.4 MB, more than 20 MB/);
    expect(() => checkPhotoFile({ name: 'card.jpg', type: 'image/jpeg', size: NaN })).toThrow(/more than 20 MB/);
  });

  it('is kept at its size up to 12 megapixels, and scaled down in proportion above', () => {
    expect(keptSize(4000, 3000, 'a')).toEqual([4000, 3000]);
    const [width, height] = keptSize(8000, 6000, 'a');
    expect(width * height).toBeLessThanOrEqual(12e6);
    expect(width * height).toBeGreaterThan(0.999 * 12e6);
    // Both sides are cut to whole pixels, so the proportion moves by less than a pixel of the shorter side.
    expect(Math.abs(width / height - 8 / 6)).toBeLessThan(2 / height);
  });

  it('is no sliver', () => {
    expect(() => keptSize(63, 400, 'strip.png')).toThrow(/strip\.png is 63 × 400 px/);
    expect(() => keptSize(400_000, 100, 'strip.png')).toThrow(/less than 64 px/);
  });
});
