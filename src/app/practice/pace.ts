/** A tick for each so much of travel at the speed that is meant. */
export const TICK_M = 0.1;

/** A line, and how long it is up to each of its points. */
interface Measured {
  readonly line: Float64Array;
  readonly length_m: number;
}

/** Where the pace is after a time: along one guide line after another, with a rest between them. */
export class Pace {
  private readonly lines: readonly Measured[];

  /** @param rest_s between one line's end and the next one's start. */
  constructor(guides: readonly Float64Array[], private readonly speed_m_s: number, private readonly rest_s = 1) {
    this.lines = guides.filter((line) => line.length >= 4).map((line) => ({ line, length_m: lengthOf(line) }));
  }

  /** The place, and how many ticks have sounded; null where there is no line to follow. */
  at(time_s: number): { readonly at_m: readonly [number, number]; readonly ticks: number } | null {
    const whole_s = this.lines.reduce((sum, { length_m }) => sum + length_m / this.speed_m_s + this.rest_s, 0);
    if (!(whole_s > 0)) return null;
    let left_s = time_s % whole_s;
    let ticks = Math.floor(time_s / whole_s) * this.lines.reduce((sum, each) => sum + ticksOf(each), 0);
    for (const each of this.lines) {
      const spray_s = each.length_m / this.speed_m_s;
      if (left_s < spray_s + this.rest_s) {
        const along_m = Math.min(each.length_m, left_s * this.speed_m_s);
        return { at_m: placeAlong(each.line, along_m), ticks: ticks + Math.floor(along_m / TICK_M) };
      }
      left_s -= spray_s + this.rest_s;
      ticks += ticksOf(each);
    }
    return null;
  }
}

function ticksOf({ length_m }: Measured): number {
  return Math.floor(length_m / TICK_M);
}

function lengthOf(line: Float64Array): number {
  let length_m = 0;
  for (let i = 2; i < line.length; i += 2) length_m += step_m(line, i);
  return length_m;
}

function step_m(line: Float64Array, i: number): number {
  return Math.hypot((line[i] as number) - (line[i - 2] as number), (line[i + 1] as number) - (line[i - 1] as number));
}

function placeAlong(line: Float64Array, along_m: number): readonly [number, number] {
  let left_m = along_m;
  for (let i = 2; i < line.length; i += 2) {
    const piece_m = step_m(line, i);
    if (left_m <= piece_m || i + 2 >= line.length) {
      const share = piece_m > 0 ? Math.min(1, left_m / piece_m) : 0;
      const between = (from: number, to: number): number => from + share * (to - from);
      return [between(line[i - 2] as number, line[i] as number), between(line[i - 1] as number, line[i + 1] as number)];
    }
    left_m -= piece_m;
  }
  return [line[0] ?? 0, line[1] ?? 0];
}
