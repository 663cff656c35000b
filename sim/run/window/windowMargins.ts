import { faultAt, type WindowFault, type WindowMap, type WindowMargin, type WindowMargins, type WindowSide } from '../../verdict/workingWindow.ts';
import { sideValue } from './sideValue.ts';

/**
 * From a place to the window's rim along its row and its column of the map (the nearest ones; the
 * place itself may lie between points). Between the last point inside and the first outside the rim is
 * where the worst slack, taken as a straight line, is 0.
 */
export function marginsFrom(map: WindowMap, { x, y }: { readonly x: number; readonly y: number }): WindowMargins {
  const column = Math.round(placeOn(map.x, x));
  const row = Math.round(placeOn(map.y, y));
  const isInside = lineState(map, row * map.x.count + column).limit === null;
  if (!isInside) return { x: null, y: null };
  const across = (i: number) => lineState(map, row * map.x.count + i);
  const along = (i: number) => lineState(map, i * map.x.count + column);
  return {
    x: { less: marginOn(map.x, x, column, -1, across), more: marginOn(map.x, x, column, 1, across) },
    y: { less: marginOn(map.y, y, row, -1, along), more: marginOn(map.y, y, row, 1, along) },
  };
}

/** What bounds a window at a point of the map, null inside it. */
interface PointState {
  readonly limit: WindowFault | 'distance-range' | null;
  readonly at: number;
  readonly map: WindowMap;
}

function lineState(map: WindowMap, at: number): PointState {
  const limit = map.inRange[at] === 0 ? 'distance-range' : faultAt(map, at);
  return { limit, at, map };
}

function marginOn(side: WindowSide, from: number, start: number, step: 1 | -1, stateAt: (place: number) => PointState): WindowMargin {
  for (let place = start + step; place >= 0 && place < side.count; place += step) {
    const state = stateAt(place);
    if (state.limit === null) continue;
    const rim = place - step * (1 - crossing(stateAt(place - step), state));
    return { by: Math.max(0, step * (sideValue(side, rim) - from)), limit: state.limit };
  }
  return { by: Math.max(0, step < 0 ? from - side.low : side.high - from), limit: 'plane' };
}

/** Share of the way from a point inside to one outside at which the outer one's fault begins; none of it for a distance out of range. */
function crossing(inner: PointState, outer: PointState): number {
  if (outer.limit === 'distance-range' || outer.limit === null) return 0;
  const slack = outer.map.slack[outer.limit];
  const [within, beyond] = [slack[inner.at] as number, slack[outer.at] as number];
  return within / (within - beyond);
}

function placeOn({ low, high, count }: WindowSide, value: number): number {
  return ((value - low) / (high - low)) * (count - 1);
}
