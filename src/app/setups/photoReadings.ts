import type { PhotoFan } from '../../../sim/index.ts';

/** The readings of a photograph as a card's text: places in mm from the middle of the fan, film in proportion only. */
export function photoReadingsText({ readings: { place_m, film } }: Pick<PhotoFan, 'readings'>): string {
  const rows = Array.from(place_m, (place, i) => `${shortest(place * 1000, 6)},${shortest(film[i] as number, 4)}`);
  return `x_mm,film\n${rows.join('\n')}\n`;
}

/** With so many figures, and without zeros at the end. */
function shortest(value: number, figures: number): string {
  return String(Number(value.toPrecision(figures)));
}
