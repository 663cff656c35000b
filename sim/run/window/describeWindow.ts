import { connectedRegions } from '../../base/regions.ts';
import { faultAt, WINDOW_FAULTS, type FoundWindow, type WindowDescription, type WindowFault, type WindowMap, type WindowPlace, type WindowSide } from '../../verdict/workingWindow.ts';
import { sideValue } from './sideValue.ts';
import { axisValue } from './sprayPoint.ts';
import { marginsFrom } from './windowMargins.ts';
import { axisStep } from './windowSteps.ts';

/**
 * Size, best place and margins of a mapped window.
 *
 * A point belongs to it where no fault is predicted and its distance is one that the set-up may be believed
 * for; points that touch by a side or a corner are one window. Its rim is made of the points that do not
 * belong to it and of the plane's own edge, beyond which nothing is known. The best-centred place is the
 * point whose nearest rim is farthest, along both axes together, each measured in its own step
 * (`axisStep`: 25 mm, 10 %, 10 points, 3 K). Good to one point of the map; margins are interpolated.
 */
export function describeWindow(map: WindowMap): WindowDescription {
  const inside = map.codes.map((code, at) => (code === 0 && map.inRange[at] === 1 ? 1 : 0));
  const points = inside.length;
  const stated = { x: held(map.x, axisValue(map.through, map.x.axis)), y: held(map.y, axisValue(map.through, map.y.axis)) };
  const at = pointAt(map, stated);
  const nearest = leastBad(map);
  return {
    share: countOf(inside) / points,
    outOfRangeShare: 1 - countOf(map.inRange) / points,
    stated,
    statedFault: faultAt(map, at),
    statedMargins: marginsFrom(map, stated),
    window: foundWindow(map, inside, stated),
    nearest: placeOf(map, nearest),
    nearestFaults: faultsAt(map, nearest),
  };
}

function foundWindow(map: WindowMap, inside: Uint8Array, stated: WindowPlace): FoundWindow | null {
  const regions = connectedRegions(inside, map.x.count, map.y.count);
  if (regions.count === 0) return null;
  const at = pointAt(map, stated);
  const holdsStated = inside[at] === 1;
  const chosen = (regions.label[holdsStated ? at : nearestInside(map, inside, stated)] as number) - 1;
  const cells = regions.cells.subarray(regions.start[chosen], regions.start[chosen + 1]);
  const { cell, clearance } = bestCentred(map, inside, cells);
  const places = Array.from(cells, (each) => placeOf(map, each));
  const best = placeOf(map, cell);
  return {
    share: cells.length / inside.length,
    x: endsOf(places.map(({ x }) => x)),
    y: endsOf(places.map(({ y }) => y)),
    holdsStated,
    best,
    bestClearance_steps: clearance,
    bestMargins: marginsFrom(map, best),
  };
}

/** By a loop: a map has more points than a call may have arguments. */
function endsOf(values: readonly number[]): readonly [low: number, high: number] {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) [low, high] = [Math.min(low, value), Math.max(high, value)];
  return [low, high];
}

/** One point of either side in steps of its axis. */
function pointSteps({ x, y, through }: WindowMap): readonly [across: number, along: number] {
  return [spacing(x) / axisStep(through, x.axis), spacing(y) / axisStep(through, y.axis)];
}

/** Of some cells the one farthest from every point outside, the plane's edge among them half a point beyond its last. */
function bestCentred(map: WindowMap, inside: Uint8Array, cells: Uint32Array): { readonly cell: number; readonly clearance: number } {
  const { count: columns } = map.x;
  const { count: rows } = map.y;
  const [across, along] = pointSteps(map);
  const rim = rimOf(inside, columns, rows);
  let best = { cell: cells[0] as number, clearance: -1 };
  for (const cell of cells) {
    const row = Math.floor(cell / columns);
    const column = cell - row * columns;
    let squared = Math.min((Math.min(column, columns - 1 - column) + 0.5) * across, (Math.min(row, rows - 1 - row) + 0.5) * along) ** 2;
    for (let i = 0; i < rim.length && squared > best.clearance ** 2; i += 2) {
      const dx = ((rim[i] as number) - column) * across;
      const dy = ((rim[i + 1] as number) - row) * along;
      squared = Math.min(squared, dx * dx + dy * dy);
    }
    if (squared > best.clearance ** 2 || best.clearance < 0) best = { cell, clearance: Math.sqrt(squared) };
  }
  return best;
}

/** Columns and rows, in pairs, of the points outside that touch a point inside by a side. */
function rimOf(inside: Uint8Array, columns: number, rows: number): number[] {
  const rim: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column;
      if (inside[at] === 1) continue;
      const touches =
        (column > 0 && inside[at - 1] === 1) || (column < columns - 1 && inside[at + 1] === 1) || (row > 0 && inside[at - columns] === 1) || (row < rows - 1 && inside[at + columns] === 1);
      if (touches) rim.push(column, row);
    }
  }
  return rim;
}

function nearestInside(map: WindowMap, inside: Uint8Array, { x, y }: WindowPlace): number {
  const { through } = map;
  const [stepX, stepY] = [axisStep(through, map.x.axis), axisStep(through, map.y.axis)];
  let nearest = -1;
  let least = Infinity;
  inside.forEach((is, at) => {
    if (is === 0) return;
    const place = placeOf(map, at);
    const away = Math.hypot((place.x - x) / stepX, (place.y - y) / stepY);
    if (away >= least) return;
    least = away;
    nearest = at;
  });
  return nearest;
}

/** The point whose worst slack is largest, of those in range where there are any. */
function leastBad(map: WindowMap): number {
  const anyInRange = map.inRange.includes(1);
  let best = 0;
  let most = -Infinity;
  for (let at = 0; at < map.codes.length; at++) {
    if (anyInRange && map.inRange[at] === 0) continue;
    const worst = Math.min(...WINDOW_FAULTS.map((fault) => map.slack[fault][at] as number));
    if (worst <= most) continue;
    most = worst;
    best = at;
  }
  return best;
}

function faultsAt(map: WindowMap, at: number): { fault: WindowFault; slack: number }[] {
  return WINDOW_FAULTS.map((fault) => ({ fault, slack: map.slack[fault][at] as number }))
    .filter(({ slack }) => slack < 0)
    .sort((a, b) => a.slack - b.slack);
}

function pointAt(map: WindowMap, { x, y }: WindowPlace): number {
  const column = Math.round((x - map.x.low) / spacing(map.x));
  const row = Math.round((y - map.y.low) / spacing(map.y));
  return row * map.x.count + column;
}

function placeOf(map: WindowMap, at: number): WindowPlace {
  const row = Math.floor(at / map.x.count);
  return { x: sideValue(map.x, at - row * map.x.count), y: sideValue(map.y, row) };
}

function spacing({ low, high, count }: WindowSide): number {
  return (high - low) / (count - 1);
}

function held({ low, high }: WindowSide, value: number): number {
  return Math.min(high, Math.max(low, value));
}

function countOf(marks: Uint8Array): number {
  return marks.reduce((sum, mark) => sum + mark, 0);
}
