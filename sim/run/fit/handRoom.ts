import type { PredictOptions } from '../window/predictPoints.ts';
import { axisValue, withAxis, type PointFilm, type SprayPoint, type WindowFault } from '../window/sprayPoint.ts';
import { axisStep } from '../window/windowSteps.ts';
import { LAID_DISTANCES_M, LAID_SPEEDS_M_S } from './fitAxes.ts';
import type { FitTry, Weighing } from './fitTries.ts';
import { handShare, nearestFault, roomsOf } from './rooms.ts';

/** What a hand does not hold still while it sprays. */
const HAND_AXES = ['distance', 'speed'] as const;

/** How far one axis may be off one way before a fault begins. */
export interface HandRoom {
  readonly axis: (typeof HAND_AXES)[number];
  readonly way: 'less' | 'more';
  /** SI; three steps of the axis at most: farther was not looked. */
  readonly by: number;
  /** The same in steps of the axis: 25 mm, a tenth of the speed. */
  readonly steps: number;
  /** What lies there; null where nothing does as far as was looked. */
  readonly fault: WindowFault | 'distance-range' | null;
}

/** Places looked at, in steps of the axis: as far as is told. */
const TOLD_STEPS = [0.5, 1, 2, 3] as const;
/** As far as more room counts, by `ENOUGH_ROOM`: half of the whole two steps. */
export const COUNTED_STEPS = [0.5, 1] as const;

/**
 * Room for the hand at a try: how far distance and speed may be off, everything else held, the
 * speed too where the distance is off. Between two places that were looked at, the worst room is taken as a
 * straight line. Leaving the distances that the set-up may be believed for ends the room.
 * @param far where it is looked, in steps, rising.
 */
export function handRooms(one: FitTry, { ignored }: Weighing, options: PredictOptions, far: readonly number[] = TOLD_STEPS): HandRoom[] {
  const { kind, point, rooms } = one;
  const looks = HAND_AXES.flatMap((axis) => (['less', 'more'] as const).map((way) => ({ axis, way, steps: looked(point, axis, way, far) })));
  const points = looks.flatMap(({ axis, way, steps }) => steps.map((step) => withAxis(point, axis, axisValue(point, axis) + (way === 'less' ? -step : step) * axisStep(point, axis))));
  const films = kind.predict(points, options);
  const roomAt = (film: PointFilm): Look => {
    const there = roomsOf(film, kind.setting.target);
    const fault = nearestFault(there, ignored);
    return film.distanceInRange || there[fault] < 0 ? { room: there[fault], fault } : { room: -Infinity, fault: 'distance-range' };
  };
  return looks.map(({ axis, way, steps }, i) => {
    const seen = films.slice(i * steps.length, (i + 1) * steps.length).map((film, k) => ({ ...roomAt(film), steps: steps[k] as number }));
    const found = rim(rooms[nearestFault(rooms, ignored)], seen);
    return { axis, way, by: found.steps * axisStep(point, axis), ...found };
  });
}

interface Look {
  readonly room: number;
  readonly fault: HandRoom['fault'];
}

/** Steps looked at, within what the model lays. */
function looked(point: SprayPoint, axis: HandRoom['axis'], way: HandRoom['way'], far: readonly number[]): number[] {
  const [low, high] = axis === 'distance' ? LAID_DISTANCES_M : LAID_SPEEDS_M_S;
  const value = axisValue(point, axis);
  const most = Math.max(0, way === 'less' ? value - low : high - value) / axisStep(point, axis);
  return far.map((steps) => Math.min(steps, most));
}

/** Where the worst room comes to nothing. */
function rim(here: number, seen: readonly (Look & { readonly steps: number })[]): Pick<HandRoom, 'steps' | 'fault'> {
  let [from, before] = [0, here];
  if (before < 0) return { steps: 0, fault: null };
  for (const { room, fault, steps } of seen) {
    if (room < 0) return { steps: Number.isFinite(room) ? from + ((steps - from) * before) / (before - room) : from, fault };
    [from, before] = [steps, room];
  }
  return { steps: from, fault: null };
}

/** Room for the hand as it weighs beside the room to faults. */
export function leastHandRoom(rooms: readonly HandRoom[]): number {
  return Math.min(1, ...rooms.map(({ steps }) => handShare(steps)));
}
