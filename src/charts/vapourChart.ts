/** Least and most shown of a multiple of a limit: whole powers of ten. */
const LEAST_POWER = -3;
const MOST_POWER = 4;

/** Powers of ten that hold the highest of some curves and the limit itself, and two below it. */
export function vapourPowers(curves: readonly ArrayLike<number>[]): readonly [low: number, high: number] {
  let most = 1;
  for (const curve of curves) for (let k = 0; k < curve.length; k++) most = Math.max(most, curve[k] as number);
  const high = Math.min(MOST_POWER, Math.ceil(Math.log10(most) - 1e-9));
  return [Math.max(LEAST_POWER, Math.min(-2, high - 4)), high];
}

/** A line through the ends of minutes, from minute 1 on; what lies under the scale runs along its foot. */
export function vapourPath(curve: ArrayLike<number>, minutes: number, x: (minute: number) => number, y: (value: number) => number): string {
  const last = Math.min(minutes, curve.length);
  let path = '';
  for (let minute = 1; minute <= last; minute++) path += `${minute === 1 ? 'M' : 'L'}${x(minute).toFixed(1)},${y(curve[minute - 1] as number).toFixed(1)}`;
  return path;
}

/** Minutes worth showing: to where the air is low again and a sixth more, or all. */
export function shownMinutes(course: { readonly steps: number; readonly step_s: number; readonly lowAfter_s: number | null }, lay_s: number): number {
  if (course.lowAfter_s === null) return course.steps;
  return Math.min(course.steps, Math.max(10, Math.ceil((7 / 6) * ((lay_s + course.lowAfter_s) / course.step_s))));
}

/** Round minutes for the foot of the chart, five or six of them. */
export function minuteTicks(minutes: number): number[] {
  const step = [1, 2, 5, 10, 15, 20, 30, 60, 120].find((each) => minutes / each <= 6) ?? 240;
  return Array.from({ length: Math.floor(minutes / step) + 1 }, (_, k) => k * step);
}
