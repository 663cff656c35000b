/** A measured stroke as text: a line for each place, `place, film`. */
export function tableText(place_mm: readonly number[], film: readonly number[]): string {
  return place_mm.map((place, i) => `${place}, ${film[i] ?? 0}`).join('\n');
}

export type MeasuredStroke = { readonly place_mm: number[]; readonly film: number[] };

/** A measured stroke from text, or which line is wrong and why. */
export function readTable(text: string): MeasuredStroke | { readonly problem: string } {
  const place_mm: number[] = [];
  const film: number[] = [];
  for (const [i, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const numbers = line.trim().split(/[\s,;]+/).map(Number);
    const [place, thickness] = numbers;
    if (numbers.length !== 2 || place === undefined || thickness === undefined || !numbers.every(Number.isFinite)) {
      return { problem: `Line ${i + 1}, "${line.trim()}", is not two numbers; give place in mm, film` };
    }
    if (thickness < 0) return { problem: `Line ${i + 1}: film ${thickness} is below 0` };
    const before = place_mm.at(-1);
    if (before !== undefined && place <= before) {
      return { problem: `Line ${i + 1}: place ${place} does not lie beyond ${before}; give places rising` };
    }
    place_mm.push(place);
    film.push(thickness);
  }
  if (film.length < 3) return { problem: `${film.length} places are too few; give at least 3, one a line` };
  if (Math.max(...film) === 0) return { problem: 'Every film is 0; give at least one reading above it' };
  return { place_mm, film };
}
