import { expect, it } from 'vitest';
import { parseReadings } from '../../../../sim/index.ts';
import { photoReadingsText } from '../../../../src/app/setups/photoReadings.ts';

it('writes readings that come back within their figures', () => {
  const place_m = Float64Array.from({ length: 81 }, (_, i) => (i - 40) * 0.00312345678);
  const film = place_m.map((place) => Math.max(0, 1 - (place / 0.12) ** 2) * 0.734567 - 0.001);
  const text = photoReadingsText({ readings: { place_m, film, unit: '' } });
  expect(text.split('\n')[0]).toBe('x_mm,film');
  const back = parseReadings(text);
  // Six figures of a place and four of a film: half a unit of the last, of the largest.
  for (const [i, place] of place_m.entries()) {
    expect(Math.abs((back.place_m[i] as number) - place)).toBeLessThan(0.5e-5 * Math.abs(place) + 1e-12);
    expect(Math.abs((back.film[i] as number) - (film[i] as number))).toBeLessThan(0.5e-3 * Math.abs(film[i] as number) + 1e-12);
  }
});
