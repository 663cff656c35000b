import { describe, expect, it } from 'vitest';
import { numberTicks, strokePath, tracedStrokes, traceDomain, traceFigures, type TracedStroke } from '../../../src/charts/handTrace.ts';
import type { MeantStroke, StrokeTrace } from '../../../sim/index.ts';

const MEANT: MeantStroke = { source: 'plan', distance_m: 0.2, speed_m_s: 0.4, overlapFraction: NaN, start_m: [0, 0], end_m: [1, 0] };
const of = (...values: number[]): Float64Array => Float64Array.from(values);

function trace(stroke: number, start_s: number, speed: number[]): StrokeTrace {
  const fill = (value: number): Float64Array => new Float64Array(speed.length).fill(value);
  return {
    stroke, pass: 0, step_s: 0.01, t_s: Float64Array.from(speed, (_, k) => start_s + 0.01 * k),
    x_m: fill(0), y_m: fill(0), speed_m_s: Float64Array.from(speed), distance_m: fill(0.21), tilt_rad: fill(0.1), overlapFraction: fill(NaN),
  };
}

function traced(over: Partial<TracedStroke>): TracedStroke {
  return { stroke: 0, t_s: of(0, 1, 2), step_s: 1, values: of(1, 2, 3), meant: 2, low: 1.5, high: 2.5, ...over };
}

describe('tracedStrokes', () => {
  const traces = [trace(0, 0, [0.4, 0.5])];

  it('has the band of the rubric about what was meant', () => {
    const [speed] = tracedStrokes('speed', traces, [MEANT], 0.15);
    expect([speed!.low, speed!.meant, speed!.high].map((value) => Number(value.toPrecision(12)))).toEqual([0.34, 0.4, 0.46]);
    const [distance] = tracedStrokes('distance', traces, [MEANT], 0.0125);
    expect([distance!.low, distance!.high].map((value) => Number(value.toPrecision(12)))).toEqual([0.1875, 0.2125]);
  });

  it('is square from zero', () => {
    const [tilt] = tracedStrokes('tilt', traces, [MEANT], 0.2);
    expect([tilt!.low, tilt!.meant, tilt!.high]).toEqual([0, 0, 0.2]);
  });

  it('has no band where the rubric has no limit or nothing was meant', () => {
    expect(tracedStrokes('tilt', traces, [MEANT], null)[0]!.low).toBeNaN();
    expect(tracedStrokes('overlap', traces, [MEANT], 0.1)[0]!.high).toBeNaN();
    expect(tracedStrokes('speed', traces, [], 0.1)[0]!.meant).toBeNaN();
  });
});

describe('traceFigures', () => {
  it('weighs by time, names the strokes of the extremes, and counts banded time only', () => {
    const figures = traceFigures([
      traced({}),
      traced({ stroke: 4, step_s: 3, values: of(NaN, 6, 6), low: NaN, high: NaN }),
    ]);
    // (1 + 2 + 3) × 1 s and (6 + 6) × 3 s over 9 s.
    expect(figures?.mean).toBeCloseTo(42 / 9, 12);
    expect(figures?.least).toEqual({ value: 1, stroke: 0 });
    expect(figures?.most).toEqual({ value: 6, stroke: 4 });
    expect(figures?.within).toBeCloseTo(1 / 3, 12);
  });

  it('is null without a value', () => {
    expect(traceFigures([])).toBeNull();
    expect(traceFigures([traced({ values: of(NaN) })])).toBeNull();
  });
});

describe('traceDomain', () => {
  it('holds values and bands', () => {
    expect(traceDomain([traced({ high: 9 })], false)).toEqual([1, 9]);
    expect(traceDomain([traced({})], true)).toEqual([0, 3]);
  });

  it('is never empty', () => {
    expect(traceDomain([], false)).toEqual([0, 1]);
    expect(traceDomain([traced({ values: of(2), low: 2, high: 2 })], false)).toEqual([1, 3]);
  });
});

describe('strokePath', () => {
  const y = (value: number): number => 100 - value;

  it('breaks where there is no value', () => {
    expect(strokePath({ t_s: of(0, 1, 2, 3), values: of(1, 2, NaN, 3) }, (t) => t, y)).toBe('M0,99.0L1,98.0M3,97.0');
  });

  it('keeps the peak and the dip of what falls on one pixel', () => {
    const path = strokePath({ t_s: of(0, 0.1, 0.2, 0.3, 1), values: of(5, 50, 1, 6, 7) }, (t) => t, y);
    expect(path).toBe('M0,95.0L0,99.0L0,50.0L0,94.0L1,93.0');
  });

  it('breaks inside a pixel too', () => {
    expect(strokePath({ t_s: of(0, 0.1, 0.2), values: of(1, NaN, 2) }, (t) => t, y)).toBe('M0,99.0M0,98.0');
  });

  it('has no more points than four a pixel', () => {
    const count = 20_000;
    const path = strokePath({ t_s: Float64Array.from({ length: count }, (_, k) => k), values: Float64Array.from({ length: count }, (_, k) => Math.sin(k)) }, (t) => (t / count) * 300, y);
    expect(path.split(/[ML]/).length - 1).toBeLessThanOrEqual(4 * 301);
  });
});

describe('numberTicks', () => {
  const strokes = [0, 1, 2, 3, 4].map((stroke) => ({ stroke, t_s: of(stroke, stroke + 1) }));

  it('leaves out numbers that would touch', () => {
    expect(numberTicks(strokes, (t) => 10 * t, 25, null).map(({ stroke }) => stroke)).toEqual([0, 3]);
  });

  it('never leaves out the chosen one', () => {
    expect(numberTicks(strokes, (t) => 10 * t, 25, 2).map(({ stroke }) => stroke)).toEqual([2]);
    expect(numberTicks(strokes, (t) => 10 * t, 15, 1).map(({ stroke }) => stroke)).toEqual([1, 3]);
  });
});
