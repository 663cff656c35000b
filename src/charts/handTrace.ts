import type { Measure, MeantStroke, StrokeTrace } from '../../sim/index.ts';

/** What a trace shows of the hand. */
export type HandQuantity = 'speed' | 'distance' | 'tilt' | 'overlap';

/** The measure that a quantity is marked by. */
export const MEASURE_OF: Readonly<Record<HandQuantity, Measure>> = { speed: 'speed', distance: 'distance', tilt: 'angle', overlap: 'overlap' };

/** One quantity along one stroke, SI. */
export interface TracedStroke {
  /** 0-based, in time. */
  readonly stroke: number;
  readonly t_s: Float64Array;
  readonly step_s: number;
  /** NaN where there is none. */
  readonly values: Float64Array;
  /** What was meant, and the band that the rubric allows; NaN where nothing was meant or is asked. */
  readonly meant: number;
  readonly low: number;
  readonly high: number;
}

/**
 * One quantity of every stroke with its band.
 * @param meant by the traces' order.
 * @param limit of the rubric: m, rad, a share of the speed, or a share of the fan's width; null where it asks for none.
 */
export function tracedStrokes(quantity: HandQuantity, traces: readonly StrokeTrace[], meant: readonly MeantStroke[], limit: number | null): TracedStroke[] {
  return traces.map((trace, i) => {
    const middle = meantValue(quantity, meant[i]);
    const half = limit === null ? NaN : quantity === 'speed' ? limit * middle : limit;
    return {
      stroke: trace.stroke,
      t_s: trace.t_s,
      step_s: trace.step_s,
      values: valuesOf(quantity, trace),
      meant: middle,
      low: quantity === 'tilt' ? 0 * half : middle - half,
      high: middle + half,
    };
  });
}

function meantValue(quantity: HandQuantity, meant: MeantStroke | undefined): number {
  if (quantity === 'tilt') return 0;
  if (meant === undefined) return NaN;
  if (quantity === 'speed') return meant.speed_m_s;
  return quantity === 'distance' ? meant.distance_m : meant.overlapFraction;
}

function valuesOf(quantity: HandQuantity, trace: StrokeTrace): Float64Array {
  switch (quantity) {
    case 'speed':
      return trace.speed_m_s;
    case 'distance':
      return trace.distance_m;
    case 'tilt':
      return trace.tilt_rad;
    case 'overlap':
      return trace.overlapFraction;
  }
}

/** A value and the stroke that shows it. */
export interface Extreme {
  readonly value: number;
  readonly stroke: number;
}

/** Traces in figures. */
export interface TraceFigures {
  /** Over the time with fluid on. */
  readonly mean: number;
  readonly least: Extreme;
  readonly most: Extreme;
  /** Share of the time within the band, of the strokes that have one; NaN where none has. */
  readonly within: number;
}

/** Null where no stroke has a value. */
export function traceFigures(strokes: readonly TracedStroke[]): TraceFigures | null {
  let [sum, time_s, banded_s, within_s] = [0, 0, 0, 0];
  let least: Extreme = { value: Infinity, stroke: 0 };
  let most: Extreme = { value: -Infinity, stroke: 0 };
  for (const { stroke, values, step_s, low, high } of strokes) {
    const hasBand = !Number.isNaN(low);
    for (const value of values) {
      if (Number.isNaN(value)) continue;
      sum += value * step_s;
      time_s += step_s;
      if (value < least.value) least = { value, stroke };
      if (value > most.value) most = { value, stroke };
      if (!hasBand) continue;
      banded_s += step_s;
      if (value >= low && value <= high) within_s += step_s;
    }
  }
  return time_s > 0 ? { mean: sum / time_s, least, most, within: within_s / banded_s } : null;
}

/** What a chart spans upwards: every value and band, and zero where the quantity begins there. */
export function traceDomain(strokes: readonly TracedStroke[], fromZero: boolean): readonly [number, number] {
  let [least, most] = fromZero ? [0, 0] : [Infinity, -Infinity];
  for (const { values, meant, low, high } of strokes) {
    for (const value of [meant, low, high]) {
      if (value < least) least = value;
      if (value > most) most = value;
    }
    for (const value of values) {
      if (value < least) least = value;
      if (value > most) most = value;
    }
  }
  return most > least ? [least, most] : Number.isFinite(most) ? [most - 1, most + 1] : [0, 1];
}

/**
 * SVG path of one stroke's values. Where several fall on one pixel across, the first, the least, the
 * most and the last are kept, so that no peak is lost. Broken where there is no value.
 */
export function strokePath({ t_s, values }: Pick<TracedStroke, 't_s' | 'values'>, x: (t_s: number) => number, y: (value: number) => number): string {
  const columns: PixelColumn[] = [];
  let isBroken = true;
  for (let k = 0; k < values.length; k++) {
    const value = values[k] as number;
    if (Number.isNaN(value)) {
      isBroken = true;
      continue;
    }
    const at_px = Math.round(x(t_s[k] as number));
    const column = columns.at(-1);
    if (column === undefined || isBroken || column.at_px !== at_px) columns.push({ at_px, isStart: isBroken, first: value, low: value, high: value, last: value });
    else take(column, value);
    isBroken = false;
  }
  return columns.map((column) => columnPath(column, y)).join('');
}

/** The values that share a pixel. */
interface PixelColumn {
  readonly at_px: number;
  readonly isStart: boolean;
  readonly first: number;
  low: number;
  high: number;
  last: number;
}

function take(column: PixelColumn, value: number): void {
  column.low = Math.min(column.low, value);
  column.high = Math.max(column.high, value);
  column.last = value;
}

function columnPath({ at_px, isStart, first, low, high, last }: PixelColumn, y: (value: number) => number): string {
  const kept = [first, low, high, last].filter((value, i, all) => i === 0 || value !== all[i - 1]);
  return kept.map((value, i) => `${i === 0 && isStart ? 'M' : 'L'}${at_px},${y(value).toFixed(1)}`).join('');
}

/** Where a stroke's number stands. */
export interface NumberTick {
  readonly stroke: number;
  readonly at_px: number;
}

/** Numbers of strokes in the middle of their time; those nearer than `apart_px` to the one before are left out, never the chosen one. */
export function numberTicks(strokes: readonly Pick<TracedStroke, 'stroke' | 't_s'>[], x: (t_s: number) => number, apart_px: number, chosen: number | null): NumberTick[] {
  const all = strokes.flatMap(({ stroke, t_s }) => (t_s.length === 0 ? [] : [{ stroke, at_px: x(((t_s[0] as number) + (t_s[t_s.length - 1] as number)) / 2) }]));
  const fixed = all.find(({ stroke }) => stroke === chosen);
  const kept: NumberTick[] = [];
  for (const tick of all) {
    const before = kept.at(-1);
    if (tick !== fixed) {
      if (before !== undefined && tick.at_px - before.at_px < apart_px) continue;
      if (fixed !== undefined && Math.abs(tick.at_px - fixed.at_px) < apart_px) continue;
    }
    kept.push(tick);
  }
  return kept;
}
