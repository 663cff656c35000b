import type { StrokeMeasures } from '../stroke/stroke.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';

const MM = 1e-3;
const DEGREE = Math.PI / 180;
const PERCENT = 0.01;

/** Technique measures of one stroke; `number` and `pass` from 1, units in the keys. */
export function strokeJson(measure: StrokeMeasures): JsonValue {
  const { speed, distance, tilt } = measure;
  return {
    number: measure.stroke + 1,
    pass: measure.pass + 1,
    start_s: jsonNumber(measure.start_s),
    duration_s: jsonNumber(measure.duration_s),
    start_mm: pointJson(measure.start_m),
    end_mm: pointJson(measure.end_m),
    length_mm: jsonNumber(measure.length_m, MM),
    direction_deg: jsonNumber(measure.direction_rad, DEGREE),
    speed_m_s: spreadJson(speed.mean_m_s, speed.cv, speed.low_m_s, speed.high_m_s, 1),
    distance_mm: spreadJson(distance.mean_m, distance.cv, distance.low_m, distance.high_m, MM),
    tilt_deg: { mean: jsonNumber(tilt.mean_rad, DEGREE), worst: jsonNumber(tilt.worst_rad, DEGREE) },
    ...overlapJson(measure.overlap),
    triggerOn_mm: measure.triggerOn_m === null ? null : jsonNumber(measure.triggerOn_m, MM),
    triggerOff_mm: measure.triggerOff_m === null ? null : jsonNumber(measure.triggerOff_m, MM),
    stops: measure.stops.map((stop) => ({
      at_mm: pointJson(stop.at_m),
      start_s: jsonNumber(stop.start_s),
      duration_s: jsonNumber(stop.duration_s),
    })),
  };
}

/** A place as x, y in mm. */
export function pointJson(at_m: readonly [number, number]): JsonValue {
  return [jsonNumber(at_m[0], MM), jsonNumber(at_m[1], MM)];
}

function spreadJson(mean: number, cv: number, low: number, high: number, unit: number): JsonValue {
  return { mean: jsonNumber(mean, unit), cv: jsonNumber(cv), low: jsonNumber(low, unit), high: jsonNumber(high, unit) };
}

/** Overlap in per cent of the fan's full width and in mm, and the stroke it was measured against. */
function overlapJson(overlap: StrokeMeasures['overlap']): { readonly [key: string]: JsonValue } {
  if (overlap === null) return { overlapWith: null, overlap_percent: null, overlap_mm: null };
  return {
    overlapWith: overlap.neighbour + 1,
    overlap_percent: {
      mean: jsonNumber(overlap.meanFraction, PERCENT),
      worst: jsonNumber(overlap.worstFraction, PERCENT),
      worstAt_mm: pointJson(overlap.worstAt_m),
    },
    overlap_mm: { mean: jsonNumber(overlap.mean_m, MM), worst: jsonNumber(overlap.worst_m, MM) },
  };
}
