import { checkRange } from '../../base/check.ts';
import { CrosscoatError } from '../../base/errors.ts';
import { WINDOW_FAULTS, type PointFilm, type SprayPoint, type WindowAxis, type WindowFault, type WindowMap, type WindowPlane } from '../../verdict/workingWindow.ts';
import type { CoatSetting } from '../result.ts';
import { predictorFor, type PredictOptions } from './predictPoints.ts';
import { sideValue } from './sideValue.ts';
import { statedPoint, withAxis } from './sprayPoint.ts';
import { between, coarser } from './windowGrid.ts';

/** Points a side beyond which planes whose every point needs a law of its own are interpolated. */
const MOST_LAWS = 25;
/** Most points a side. */
const MOST_POINTS = 400;
/** Ends nearer than this share are one value; no axis has values as large as the other. */
const LEAST_SPAN = 1e-6;
const MOST_VALUE = 1e4;

/** The map of a plane through the coat as stated, all at once. @throws as `windowStrips`. */
export function mapWindow(setting: CoatSetting, plane: WindowPlane, options: PredictOptions = {}): WindowMap {
  const strips = windowStrips(setting, plane, options);
  for (;;) {
    const next = strips.next();
    if (next.done === true) return next.value;
  }
}

/**
 * The map of a plane, row by row: after each the number of rows that are done is given out, and the map
 * itself at the end.
 *
 * Where both axes change the film's law (thinner with temperature), at most 25 × 25 points are predicted
 * and the slacks between them are interpolated along both axes, right to 0.02 of a limit over the usual
 * ranges; all other planes are predicted at every point.
 * @throws CrosscoatError `range` for ends or counts that make no plane, or a point that cannot be sprayed;
 * `limit` for one axis given twice; `cancelled`.
 */
export function* windowStrips(setting: CoatSetting, plane: WindowPlane, options: PredictOptions = {}): Generator<number, WindowMap> {
  checkPlane(plane);
  const through = statedPoint(setting);
  const predictor = predictorFor(setting);
  const rough = needsLaws(plane) ? { x: coarser(plane.x, MOST_LAWS), y: coarser(plane.y, MOST_LAWS) } : plane;
  const map = emptyMap(rough, through);
  for (let row = 0; row < rough.y.count; row++) {
    const points = Array.from({ length: rough.x.count }, (_, column) => pointOf(rough, through, column, row));
    predictor(points, options).forEach((film, column) => fill(map, row * rough.x.count + column, film));
    yield row + 1;
  }
  return rough.x.count === plane.x.count && rough.y.count === plane.y.count ? map : refined(map, plane);
}

function needsLaws({ x, y }: WindowPlane): boolean {
  const changing: readonly WindowAxis[] = ['thinner', 'temperature'];
  return changing.includes(x.axis) && changing.includes(y.axis);
}

/** Temperature first: a humidity given with it is that of the warmed air. */
function pointOf({ x, y }: WindowPlane, through: SprayPoint, column: number, row: number): SprayPoint {
  const across = (point: SprayPoint) => withAxis(point, x.axis, sideValue(x, column));
  const along = (point: SprayPoint) => withAxis(point, y.axis, sideValue(y, row));
  return y.axis === 'temperature' ? across(along(through)) : along(across(through));
}

function emptyMap(plane: WindowPlane, through: SprayPoint): WindowMap {
  const points = plane.x.count * plane.y.count;
  const slack = Object.fromEntries(WINDOW_FAULTS.map((fault) => [fault, new Float32Array(points)])) as Record<WindowFault, Float32Array>;
  return { ...plane, through, faults: WINDOW_FAULTS, codes: new Uint8Array(points), slack, inRange: new Uint8Array(points), interpolated: false };
}

function fill({ codes, slack, inRange }: WindowMap, at: number, film: PointFilm): void {
  for (const fault of WINDOW_FAULTS) slack[fault][at] = film.slack[fault];
  codes[at] = worstCode(slack, at);
  inRange[at] = film.distanceInRange ? 1 : 0;
}

function worstCode(slack: WindowMap['slack'], at: number): number {
  let code = 0;
  let least = 0;
  WINDOW_FAULTS.forEach((fault, i) => {
    const here = slack[fault][at] as number;
    if (here >= least) return;
    least = here;
    code = i + 1;
  });
  return code;
}

/** A map on a finer grid. The axes that need laws leave the distance alone, so that is in range everywhere or nowhere. */
function refined(rough: WindowMap, plane: WindowPlane): WindowMap {
  const map = { ...emptyMap(plane, rough.through), interpolated: true };
  for (const fault of WINDOW_FAULTS) map.slack[fault].set(between(rough.slack[fault], rough, plane));
  map.inRange.fill(rough.inRange[0] as number);
  for (let at = 0; at < map.codes.length; at++) map.codes[at] = worstCode(map.slack, at);
  return map;
}

function checkPlane({ x, y }: WindowPlane): void {
  if (x.axis === y.axis) throw new CrosscoatError('limit', `window: both sides are ${x.axis}, which makes no plane; give two different axes`);
  for (const [side, { axis, low, high, count }] of [['x', x], ['y', y]] as const) {
    checkRange({ name: `window: points along ${side}`, value: count, low: 2, high: MOST_POINTS, advice: 'give a count such as 100' });
    checkRange({ name: `window: high end of ${axis}`, value: high, low: low + LEAST_SPAN * Math.abs(low), high: MOST_VALUE, why: 'it must lie above the low end', advice: 'give the lower value first' });
  }
}
