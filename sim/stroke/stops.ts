import type { Stop } from './stroke.ts';
import type { Track } from './track.ts';

/** Assumed: slower than both is standing. */
const STILL_M_S = 0.05;
const STILL_SHARE = 0.25;
/** Against a stroke whose own speed is no guide because it hardly moved. */
const LEAST_SPEED_M_S = 0.08;
/** Shorter ones are a hesitation. */
const SHORTEST_S = 0.15;
/** The clock of a stop is read as the gun passes this far beyond its place, and twice as far. */
const GATE_M = 0.02;
/** Smoothing rounds a corner over 0.05 s of travel; the gate stands outside that. */
const ROUNDED_S = 0.06;

/**
 * Places where the aim point stood still with fluid on: slower than 0.05 m/s and than a quarter of
 * the stroke's own brisk speed (its 90th percentile), for more than 0.15 s. The smoothing hides the
 * first and last tenth of a second of a stop, so its clock runs between the times at which the
 * travel on either side, drawn straight on, meets the place.
 */
export function findStops(track: Track): Stop[] {
  const speed = track.vx_m_s.map((vx, i) => Math.hypot(vx, track.vy_m_s[i] as number));
  const brisk = Float64Array.from(speed).sort()[Math.floor(0.9 * (speed.length - 1))] as number;
  const limit = Math.min(STILL_M_S, STILL_SHARE * Math.max(brisk, LEAST_SPEED_M_S));
  const gate_m = Math.max(GATE_M, ROUNDED_S * brisk);
  const stops: Stop[] = [];
  for (let i = 0; i < track.count; i++) {
    if (!((speed[i] as number) < limit)) continue;
    const first = i;
    while (i + 1 < track.count && (speed[i + 1] as number) < limit) i++;
    const stop = clockStop(track, first, i, gate_m);
    if (stop.duration_s > SHORTEST_S) stops.push(stop);
  }
  return stops;
}

function clockStop(track: Track, first: number, last: number, gate_m: number): Stop {
  const middle = (first + last) >> 1;
  const x_m = mean(track.x_m, first, last);
  const y_m = mean(track.y_m, first, last);
  const away_m = (i: number) => Math.hypot((track.x_m[i] as number) - x_m, (track.y_m[i] as number) - y_m);
  const start_s = arrival_s(track, away_m, middle, -1, gate_m);
  const end_s = arrival_s(track, away_m, middle, 1, gate_m);
  return { at_m: [x_m, y_m], start_s, duration_s: end_s - start_s };
}

function mean(values: Float64Array, first: number, last: number): number {
  let sum = 0;
  for (let i = first; i <= last; i++) sum += values[i] as number;
  return sum / (last - first + 1);
}

/** When the travel on one side of a stop, drawn straight on through both gates, meets its place; the track's end where it does not go so far. */
function arrival_s(track: Track, away_m: (i: number) => number, from: number, way: 1 | -1, gate_m: number): number {
  const gateTime = (distance_m: number): number => {
    let i = from;
    while (i + way >= 0 && i + way < track.count && away_m(i) < distance_m) i += way;
    const beyond = away_m(i);
    if (beyond < distance_m || i === from) return NaN;
    const before = away_m(i - way);
    return i - (way * (beyond - distance_m)) / (beyond - before);
  };
  const near = gateTime(gate_m);
  const far = gateTime(2 * gate_m);
  const end = way > 0 ? track.count - 1 : 0;
  const met = Number.isNaN(far) ? (Number.isNaN(near) ? end : near) : 2 * near - far;
  return track.start_s + Math.min(track.count - 1, Math.max(0, met)) * track.step_s;
}
