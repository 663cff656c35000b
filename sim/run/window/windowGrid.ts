import type { WindowPlane, WindowSide } from '../../verdict/workingWindow.ts';

/** A side with no more than so many points, its ends kept. */
export function coarser(side: WindowSide, most: number): WindowSide {
  return { ...side, count: Math.min(side.count, most) };
}

/** Values of one plane's points at those of another with the same ends: linear along both axes. */
export function between(values: Float32Array, from: WindowPlane, to: WindowPlane): Float32Array {
  const across = placesOf(from.x.count, to.x.count);
  const along = placesOf(from.y.count, to.y.count);
  const found = new Float32Array(to.x.count * to.y.count);
  along.forEach(([row, up], i) => {
    across.forEach(([column, right], j) => {
      const at = row * from.x.count + column;
      const above = at + from.x.count;
      const low = (values[at] as number) * (1 - right) + (values[at + 1] as number) * right;
      const high = (values[above] as number) * (1 - right) + (values[above + 1] as number) * right;
      found[i * to.x.count + j] = low * (1 - up) + high * up;
    });
  });
  return found;
}

/** For each of `to` even places, the place of `from` below it and the share on the way to the next. */
function placesOf(from: number, to: number): (readonly [low: number, share: number])[] {
  return Array.from({ length: to }, (_, i) => {
    const place = (i * (from - 1)) / (to - 1);
    const low = Math.min(Math.floor(place), from - 2);
    return [low, place - low] as const;
  });
}
