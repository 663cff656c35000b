/** A line of the day: a value at each minute. */
export interface DayLine {
  readonly name: string;
  /** Of the class that gives it its stroke: `air`, `film`, `dew`, `surface`. */
  readonly kind: 'air' | 'film' | 'dew' | 'surface';
  readonly values: readonly number[];
}

/** A stretch of minutes. */
export interface DayStretch {
  readonly from_min: number;
  readonly to_min: number;
}

/** Least and most of all lines, with a little room. Never empty. */
export function dayDomain(lines: readonly DayLine[]): readonly [number, number] {
  const all = lines.flatMap(({ values }) => values).filter(Number.isFinite);
  if (all.length === 0) return [0, 1];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max((high - low) * 0.06, 0.5);
  return [low - room, high + room];
}

/** SVG path through the values at their minutes. */
export function dayPath(minutes: readonly number[], values: readonly number[], x: (minute: number) => number, y: (value: number) => number): string {
  return values.map((value, i) => `${i === 0 ? 'M' : 'L'}${x(minutes[i] as number).toFixed(1)},${y(value).toFixed(1)}`).join('');
}

/** Whole hours to be written below, so that they stand at least `apart_px` from one another. */
export function hourTicks(from_min: number, to_min: number, width_px: number, apart_px: number): number[] {
  const most = Math.max(1, Math.floor(width_px / apart_px));
  const step = [60, 120, 180, 240, 360, 720].find((each) => (to_min - from_min) / each <= most) ?? 1440;
  const ticks: number[] = [];
  for (let minute = Math.ceil(from_min / step) * step; minute <= to_min; minute += step) ticks.push(minute);
  return ticks;
}

/** A stretch as drawn: one hour alone has a width too, of half a step to both sides, within the day. */
export function drawnStretch({ from_min, to_min }: DayStretch, minutes: readonly number[]): DayStretch {
  const [first, last] = [minutes[0] ?? from_min, minutes.at(-1) ?? to_min];
  if (to_min > from_min) return { from_min, to_min };
  return { from_min: Math.max(first, from_min - 15), to_min: Math.min(last, to_min + 15) };
}
