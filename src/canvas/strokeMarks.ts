/** A place along a line and the direction of travel there (unit vector, y up). */
export interface TravelMark {
  readonly x_m: number;
  readonly y_m: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * Places along a line about `spacing_m` apart, evenly set and at least one, for direction marks.
 * @param line x0, y0, x1, y1, … m. A line of no length has none.
 */
export function travelMarks(line: Float64Array, spacing_m: number): TravelMark[] {
  const length = lineLength(line);
  if (!(length > 0)) return [];
  const count = Math.max(1, Math.floor(length / spacing_m));
  const marks: TravelMark[] = [];
  let walked = 0;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const x0 = line[i] as number;
    const y0 = line[i + 1] as number;
    const dx = (line[i + 2] as number) - x0;
    const dy = (line[i + 3] as number) - y0;
    const piece = Math.hypot(dx, dy);
    while (piece > 0 && marks.length < count) {
      const next = ((marks.length + 0.5) * length) / count;
      if (next > walked + piece) break;
      const share = (next - walked) / piece;
      marks.push({ x_m: x0 + share * dx, y_m: y0 + share * dy, dx: dx / piece, dy: dy / piece });
    }
    walked += piece;
  }
  return marks;
}

function lineLength(line: Float64Array): number {
  let length = 0;
  for (let i = 0; i + 3 < line.length; i += 2) {
    length += Math.hypot(
      (line[i + 2] as number) - (line[i] as number),
      (line[i + 3] as number) - (line[i + 1] as number),
    );
  }
  return length;
}
