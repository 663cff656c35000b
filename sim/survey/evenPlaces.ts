/** Places taken from some candidates, and which of them each candidate belongs to. */
export interface EvenPlaces {
  /** Indices of the candidates that were taken. */
  readonly taken: readonly number[];
  /** For each candidate the place in `taken` that is nearest to it. */
  readonly owner: Int32Array;
}

/** Rounds of moving each place to the middle of what is nearest to it. */
const ROUNDS = 25;

/**
 * Spreads places evenly over candidates: each the farthest from those before it, then moved to the middle of the candidates
 * nearest to it (S.P. Lloyd, "Least squares quantization in PCM", IEEE Trans. Inf. Theory 28, 1982) and set on the nearest
 * candidate. The same candidates give the same places.
 * @param x_m, @param y_m candidates, at least one. @param count as many as there are candidates at most.
 */
export function evenPlaces(x_m: ArrayLike<number>, y_m: ArrayLike<number>, count: number): EvenPlaces {
  let taken = farthestFirst(x_m, y_m, Math.min(count, x_m.length));
  let owner = ownersOf(x_m, y_m, taken);
  for (let round = 0; round < ROUNDS; round++) {
    const moved = middles(x_m, y_m, taken, owner);
    if (moved.every((index, i) => index === taken[i])) break;
    taken = moved;
    owner = ownersOf(x_m, y_m, taken);
  }
  return { taken, owner };
}

/** The candidate nearest the middle of all, then each the farthest from those before. */
function farthestFirst(x_m: ArrayLike<number>, y_m: ArrayLike<number>, count: number): number[] {
  const all = Array.from({ length: x_m.length }, (_, i) => i);
  const taken = [nearestTo(x_m, y_m, all, meanOf(x_m, all), meanOf(y_m, all))];
  const apart = new Float64Array(x_m.length).fill(Infinity);
  while (taken.length < count) {
    const last = taken[taken.length - 1] as number;
    let far = -1;
    for (let i = 0; i < apart.length; i++) {
      apart[i] = Math.min(apart[i] as number, squared(x_m, y_m, i, x_m[last] as number, y_m[last] as number));
      if (far < 0 || (apart[i] as number) > (apart[far] as number)) far = i;
    }
    taken.push(far);
  }
  return taken;
}

function ownersOf(x_m: ArrayLike<number>, y_m: ArrayLike<number>, taken: readonly number[]): Int32Array {
  const owner = new Int32Array(x_m.length);
  for (let i = 0; i < owner.length; i++) {
    let least = Infinity;
    for (let k = 0; k < taken.length; k++) {
      const place = taken[k] as number;
      const away = squared(x_m, y_m, i, x_m[place] as number, y_m[place] as number);
      if (away < least) [least, owner[i]] = [away, k];
    }
  }
  return owner;
}

function middles(x_m: ArrayLike<number>, y_m: ArrayLike<number>, taken: readonly number[], owner: Int32Array): number[] {
  const groups: number[][] = taken.map(() => []);
  owner.forEach((k, i) => groups[k]?.push(i));
  return groups.map((group, k) => (group.length === 0 ? (taken[k] as number) : nearestTo(x_m, y_m, group, meanOf(x_m, group), meanOf(y_m, group))));
}

function nearestTo(x_m: ArrayLike<number>, y_m: ArrayLike<number>, among: readonly number[], x: number, y: number): number {
  return among.reduce((best, i) => (squared(x_m, y_m, i, x, y) < squared(x_m, y_m, best, x, y) ? i : best));
}

function meanOf(values: ArrayLike<number>, among: readonly number[]): number {
  return among.reduce((sum, i) => sum + (values[i] as number), 0) / among.length;
}

function squared(x_m: ArrayLike<number>, y_m: ArrayLike<number>, i: number, x: number, y: number): number {
  return ((x_m[i] as number) - x) ** 2 + ((y_m[i] as number) - y) ** 2;
}
