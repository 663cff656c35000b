import type { LivingFilm } from '../../film/life/state.ts';
import { capAirSpeed_m_s, jetSpeed_m_s } from '../../gun/jet.ts';
import { arrivingFastFraction } from '../livingCoat.ts';
import type { CoatSetting } from '../result.ts';
import { liveColumns, type ColumnStroke } from './columnLife.ts';
import type { LapRipple, StrokeShape } from './lapRipple.ts';
import { lineTime_s, passTime_s, type PassClock } from './lineClock.ts';
import type { PointConditions } from './pointConditions.ts';
import type { PointLanding } from './pointLanding.ts';
import type { SprayPoint } from './sprayPoint.ts';

/** What the columns of one point are worked out from. */
export interface PointParts {
  readonly point: SprayPoint;
  readonly setting: CoatSetting;
  readonly conditions: PointConditions;
  readonly shape: StrokeShape;
  readonly ripple: LapRipple;
  readonly landing: PointLanding;
  readonly clocks: readonly PassClock[];
  readonly stepScale: number;
}

/** Strokes whose centre line is farther away do nothing at a place, in half supports: their air reaches 1.3. */
const STROKE_REACH = 1.3;
/** Two places are set at least this share of a pitch apart, also where the film is even. */
const LEAST_APART = 0.01;

/** The thinnest and the heaviest place of a point's laps, through all that lands on them and blows at them. */
export function pointColumns(parts: PointParts): LivingFilm {
  const { point, setting, conditions, shape, ripple, landing } = parts;
  const { setUp, law, mix } = conditions;
  const first = Math.min(ripple.leastAt, ripple.mostAt);
  const second = Math.max(ripple.leastAt, ripple.mostAt, first + LEAST_APART * ripple.pitch);
  const jet_m_s = jetSpeed_m_s(capAirSpeed_m_s(setUp.capPressure_Pa), point.distance_m);
  return liveColumns({
    law,
    apart_m: (second - first) * landing.halfLength_m,
    strokes: strokesAtPlaces(parts, first, second),
    speed_m_s: point.speed_m_s,
    blast: { halfLength_m: landing.halfLength_m, halfDepth_m: landing.scale * shape.halfDepth_m, speed_m_s: jet_m_s },
    solidsFraction: landing.solids / landing.wet,
    fastFraction: arrivingFastFraction({ ...setting, mix, setUp, plan: { ...setting.plan, distance_m: point.distance_m } }),
    stepScale: parts.stepScale,
  });
}

/** Every stroke that reaches either place, in time: pass by pass, each half its length before and after the place. */
function strokesAtPlaces({ point, shape, ripple, landing, clocks }: PointParts, first: number, second: number): ColumnStroke[] {
  const { pitch } = ripple;
  const { halfLength_m, pitch_m, stroke_m } = landing;
  const low = Math.ceil((first - STROKE_REACH) / pitch);
  const high = Math.floor((second + STROKE_REACH) / pitch);
  const strokes: ColumnStroke[] = [];
  let middle_s = 0;
  for (const clock of clocks) {
    const line_s = lineTime_s(clock, point.speed_m_s, pitch_m);
    const half_s = passTime_s(clock, point.speed_m_s, pitch_m) / 2;
    if (strokes.length > 0) middle_s += half_s;
    for (let k = low; k <= high; k++) {
      strokes.push({
        time_s: middle_s + k * line_s,
        centre_m: (k * pitch - first) * halfLength_m,
        wet_m: [stroke_m * shape.shareAt(first - k * pitch), stroke_m * shape.shareAt(second - k * pitch)],
      });
    }
    middle_s += half_s;
  }
  // On a panel so small that the passes overlap in time, strokes still come one after another.
  return strokes.sort((a, b) => a.time_s - b.time_s);
}
