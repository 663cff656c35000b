import type { Stroke, StrokeMeasures } from './stroke.ts';
import type { StrokeTrace } from './traces.ts';

/** One error of a hand over some spraying: its spread, and how far or long it lasts. */
export interface Wander {
  readonly mean: number;
  /** Standard deviation about the mean. */
  readonly deviation: number;
  /** Time over which it forgets itself, s: where its autocorrelation falls to 1/e. NaN where the record is too short. */
  readonly correlation_s: number;
  /** Samples behind it. */
  readonly count: number;
}

/** What a hand did in one session: errors against what was meant. Lengths m, angles rad, speed as a share of what was meant. */
export interface HandSample {
  /** Gun distance less what was meant. */
  readonly distance_m: Wander;
  /** Aim off the stroke's own straight line. */
  readonly across_m: Wander;
  /** Speed over what was meant, less 1. */
  readonly speed: Wander;
  readonly tilt_rad: Wander;
  /** Overlap less what was meant, one value a stroke. */
  readonly overlap: Wander;
}

/** An error along one stroke, evenly timed. */
interface Run {
  readonly errors: Float64Array;
  readonly step_s: number;
}

/** A spread below this (m, rad or share) is rounding, not a hand: a billionth. */
const LEAST_DEVIATION = 1e-9;
/** A record shorter than so many correlation times shows none. */
const LEAST_STRETCHES = 3;

/**
 * How far and how long a hand strayed from what was meant, from its smoothed traces. Each sample
 * counts alike; a stroke with a sample that has no value is left out of that error. Means and
 * deviations are of the record itself (no correction for its length).
 *
 * Correlation: pairs of one stroke only, about the mean of all strokes; the first lag at which the
 * autocorrelation is 1/e or less, straight between lags. NaN where all strokes together are
 * shorter than three of it, where it does not fall that far within a stroke, and for the overlap,
 * which has one value a stroke. About its own mean a record of few correlation times forgets
 * sooner than its hand does: one long rise reads as a quarter of its length.
 *
 * The traces are means over 0.1 s (speeds over 0.2 s, see `smoothTrack`), which shows here: a
 * sensor's noise alone reads as 0.06 s; a rough error (one that turns at once) reads about 0.03 s
 * too long and, at 0.3 s, 5 % too small; a smooth one that lasts 0.3 s, 1 % (speed 2 %) too small,
 * one of 0.16 s, 3 % (6 %). Below 0.1 s a correlation time is the smoothing's, not the hand's.
 *
 * The aim is off a line fitted to the whole stroke, so that drift slower than a stroke is not in it.
 * @param traces of the session's strokes; @param strokes, @param measures the same strokes.
 */
export function handSample(traces: readonly StrokeTrace[], strokes: readonly Stroke[], measures: readonly StrokeMeasures[]): HandSample {
  const meantOf = new Map(strokes.map(({ index, meant }) => [index, meant]));
  const runs = (errorsOf: (trace: StrokeTrace) => Float64Array): Run[] => traces.map((trace) => ({ errors: errorsOf(trace), step_s: trace.step_s }));
  const meant = (stroke: number, key: 'distance_m' | 'speed_m_s' | 'overlapFraction'): number => meantOf.get(stroke)?.[key] ?? NaN;
  const overlaps = measures.map(({ stroke, overlap }) => (overlap?.meanFraction ?? NaN) - meant(stroke, 'overlapFraction'));
  return {
    distance_m: wanderOf(runs(({ stroke, distance_m }) => distance_m.map((value) => value - meant(stroke, 'distance_m')))),
    across_m: wanderOf(runs(offLine_m)),
    speed: wanderOf(runs(({ stroke, speed_m_s }) => speed_m_s.map((value) => value / meant(stroke, 'speed_m_s') - 1))),
    tilt_rad: wanderOf(runs(({ tilt_rad }) => tilt_rad)),
    overlap: wanderOf(overlaps.map((error) => ({ errors: Float64Array.of(error), step_s: NaN }))),
  };
}

/**
 * How early (below 0) or late the fluid opened and closed against what was meant, s: the way along
 * the stroke at the speed meant, two values a stroke. Only where a plan says the places.
 */
export function triggerWander(strokes: readonly Stroke[], measures: readonly StrokeMeasures[]): Wander {
  const meantOf = new Map(strokes.map(({ index, meant }) => [index, meant]));
  const late_s = measures.flatMap(({ stroke, start_m, end_m, direction_rad }) => {
    const meant = meantOf.get(stroke);
    if (meant === undefined) return [];
    const along_s = (place: readonly [number, number], from: readonly [number, number]): number =>
      ((place[0] - from[0]) * Math.cos(direction_rad) + (place[1] - from[1]) * Math.sin(direction_rad)) / meant.speed_m_s;
    return [along_s(start_m, meant.start_m), along_s(end_m, meant.end_m)];
  });
  return wanderOf(late_s.map((error) => ({ errors: Float64Array.of(error), step_s: NaN })));
}

/**
 * Several sessions of one hand as one sample: as if their samples lay together. Means and
 * deviations are combined exactly; correlation times are averaged by count over the sessions that
 * have one, since the strokes of a session never follow those of another.
 */
export function pooledHand(samples: readonly HandSample[]): HandSample {
  const pooled = (key: keyof HandSample): Wander => pooledWander(samples.map((sample) => sample[key]));
  return { distance_m: pooled('distance_m'), across_m: pooled('across_m'), speed: pooled('speed'), tilt_rad: pooled('tilt_rad'), overlap: pooled('overlap') };
}

function pooledWander(wanders: readonly Wander[]): Wander {
  const seen = wanders.filter(({ count }) => count > 0);
  const count = seen.reduce((sum, each) => sum + each.count, 0);
  const mean = seen.reduce((sum, each) => sum + each.mean * (each.count / count), 0);
  const variance = seen.reduce((sum, each) => sum + (each.deviation ** 2 + (each.mean - mean) ** 2) * (each.count / count), 0);
  const lasting = seen.filter(({ correlation_s }) => Number.isFinite(correlation_s));
  const weight = lasting.reduce((sum, each) => sum + each.count, 0);
  const correlation_s = lasting.reduce((sum, each) => sum + each.correlation_s * each.count, 0) / weight;
  return count === 0 ? wanderOf([]) : { mean, deviation: Math.sqrt(variance), correlation_s, count };
}

/** Spread and correlation of an error over its strokes; samples without a value are left out. */
function wanderOf(runs: readonly Run[]): Wander {
  const known = runs.filter(({ errors }) => errors.every((error) => Number.isFinite(error)));
  const count = known.reduce((sum, { errors }) => sum + errors.length, 0);
  const mean = known.reduce((sum, { errors }) => errors.reduce((part, error) => part + error, sum), 0) / count;
  const centred = known.map(({ errors, step_s }) => ({ errors: errors.map((error) => error - mean), step_s }));
  const variance = centred.reduce((sum, { errors }) => errors.reduce((part, error) => part + error * error, sum), 0) / count;
  return { mean, deviation: Math.sqrt(variance), correlation_s: correlation_s(centred, count, variance), count };
}

/** The lag at which the autocorrelation of centred runs falls to 1/e; NaN where they do not show it. */
function correlation_s(runs: readonly Run[], count: number, variance: number): number {
  if (!(Math.sqrt(variance) > LEAST_DEVIATION)) return NaN;
  const step_s = runs.reduce((sum, run) => sum + run.step_s * run.errors.length, 0) / count;
  const longest = runs.reduce((most, { errors }) => Math.max(most, errors.length - 1), 0);
  const most = count / LEAST_STRETCHES;
  let before = 1;
  for (let lag = 1; lag <= Math.min(longest, Math.ceil(most)); lag++) {
    const here = laggedMean(runs, lag) / variance;
    const passed = lag - (1 / Math.E - here) / (before - here);
    if (here <= 1 / Math.E) return passed <= most ? passed * step_s : NaN;
    before = here;
  }
  return NaN;
}

/** Mean product of the samples `lag` apart, none across strokes. */
function laggedMean(runs: readonly Run[], lag: number): number {
  let sum = 0;
  let pairs = 0;
  for (const { errors } of runs) {
    for (let i = lag; i < errors.length; i++) sum += (errors[i] as number) * (errors[i - lag] as number);
    pairs += Math.max(0, errors.length - lag);
  }
  return sum / pairs;
}

/** Places of a trace to the left of the straight line that fits it best: least squares of the square distance. */
function offLine_m({ x_m, y_m }: StrokeTrace): Float64Array {
  const count = x_m.length;
  const middleX_m = x_m.reduce((sum, x) => sum + x, 0) / count;
  const middleY_m = y_m.reduce((sum, y) => sum + y, 0) / count;
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    const x = (x_m[i] as number) - middleX_m;
    const y = (y_m[i] as number) - middleY_m;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const axis_rad = Math.atan2(2 * xy, xx - yy) / 2;
  const onward = ((x_m[count - 1] as number) - (x_m[0] as number)) * Math.cos(axis_rad) + ((y_m[count - 1] as number) - (y_m[0] as number)) * Math.sin(axis_rad);
  const [dx, dy] = onward < 0 ? [-Math.cos(axis_rad), -Math.sin(axis_rad)] : [Math.cos(axis_rad), Math.sin(axis_rad)];
  return y_m.map((y, i) => (y - middleY_m) * dx - ((x_m[i] as number) - middleX_m) * dy);
}
