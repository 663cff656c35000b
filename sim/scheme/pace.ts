/**
 * How fast a film dries through the days, as a share of how fast it dries in the air for which its wait is stated: 0.5 where a
 * wait is twice as long. Between two times the logarithm of the pace is a straight line, so a temperature that changes evenly is
 * followed exactly by the trade's rule; before the first time and after the last the pace stays as it is there.
 */
export interface Pace {
  /** Rising, minutes of the wall clock (`base/localTime`). One or more. */
  readonly minutes: readonly number[];
  /** The pace at each of these times, by its place; above 0. Asked as it is needed, since it may cost something to work out. */
  readonly rateAt: (place: number) => number;
}

/** A pace whose values are known already. */
export function paceOf(minutes: readonly number[], rates: readonly number[]): Pace {
  return { minutes, rateAt: (place) => rates[place] as number };
}

/** Below this a step is straight to rounding, and its closed form would divide nothing by nothing. */
const STRAIGHT = 1e-12;

/** The pace at a time. */
export function paceAt(pace: Pace, minute: number): number {
  const { minutes, rateAt } = pace;
  const place = placeOf(minutes, minute);
  const low = rateAt(Math.max(0, place));
  if (place < 0 || place >= minutes.length - 1) return low;
  return low * Math.exp(slopeOf(pace, place) * (minute - (minutes[place] as number)));
}

/**
 * Drying from one time to another, `∫ pace dt`, in minutes of the air for which waits are stated. Exact for the pace as described.
 * @param to not before `from`.
 */
export function dryingBetween(pace: Pace, from: number, to: number): number {
  let [sum, at] = [0, from];
  while (at < to) {
    const { end, slope } = stretchAt(pace, at);
    const until = Math.min(end, to);
    const rate = paceAt(pace, at);
    const span = slope * (until - at);
    sum += Math.abs(span) < STRAIGHT ? rate * (until - at) : (rate * Math.expm1(span)) / slope;
    at = until;
  }
  return sum;
}

/** When the drying from `from` on comes to `need`, minutes of the wall clock: the inverse of `dryingBetween`, exact likewise. */
export function driedAt(pace: Pace, from: number, need: number): number {
  let [left, at] = [need, from];
  while (left > 0) {
    const { end, slope } = stretchAt(pace, at);
    const whole = end === Infinity ? Infinity : dryingBetween(pace, at, end);
    if (left <= whole) {
      const grown = (slope * left) / paceAt(pace, at);
      return at + (Math.abs(grown) < STRAIGHT ? left / paceAt(pace, at) : Math.log1p(grown) / slope);
    }
    left -= whole;
    at = end;
  }
  return at;
}

/** The stretch of one slope that a time lies in or begins. */
function stretchAt(pace: Pace, at: number): { readonly end: number; readonly slope: number } {
  const { minutes } = pace;
  const place = placeOf(minutes, at);
  if (place >= minutes.length - 1) return { end: Infinity, slope: 0 };
  return { end: minutes[place + 1] as number, slope: place < 0 ? 0 : slopeOf(pace, place) };
}

function slopeOf({ minutes, rateAt }: Pace, place: number): number {
  const span = (minutes[place + 1] as number) - (minutes[place] as number);
  return Math.log(rateAt(place + 1) / rateAt(place)) / span;
}

/** Place of the last time not after `minute`; -1 before the first. */
function placeOf(minutes: readonly number[], minute: number): number {
  let [low, high] = [-1, minutes.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((minutes[middle] as number) <= minute) low = middle;
    else high = middle - 1;
  }
  return low;
}
