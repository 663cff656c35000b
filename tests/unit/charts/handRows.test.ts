import { describe, expect, it } from 'vitest';
import type { MeantStroke, ReportedDebrief, Score, StrokeMeasures, StrokeTrace } from '../../../sim/index.ts';
import { handRows, limitIn } from '../../../src/views/practice/debrief/handRows.ts';

const MEANT: MeantStroke = { source: 'plan', distance_m: 0.2, speed_m_s: 0.4, overlapFraction: 0.5, start_m: [0, 0], end_m: [1, 0] };
const MEASURES: StrokeMeasures = {
  stroke: 0, pass: 0, start_s: 0, duration_s: 2, start_m: [0, 0], end_m: [1, 0], length_m: 1, direction_rad: 0,
  speed: { mean_m_s: 0.4, cv: 0.05, low_m_s: 0.3, high_m_s: 0.5 },
  distance: { mean_m: 0.2, cv: 0, low_m: 0.2, high_m: 0.2 },
  tilt: { mean_rad: 0, worst_rad: 0 },
  overlap: { neighbour: 0, meanFraction: 0.5, mean_m: 0.1, worstFraction: 0.5, worst_m: 0.1, worstAt_m: [0, 0] },
  triggerOn_m: 0.05, triggerOff_m: 0.05, stops: [],
};
const ROWS: Score['rows'] = ([['distance', 0.0125], ['speed', 0.15], ['angle', 0.17], ['overlap', 0.1], ['stops', 0.1]] as const).map(
  ([measure, limit]) => ({ measure, weight: 1, limit, none: 9, value: null, mark: 0, isMet: false, counts: true }),
);

interface Odd {
  readonly measures?: Partial<StrokeMeasures>;
  readonly trace?: Partial<StrokeTrace>;
  readonly meant?: Partial<MeantStroke>;
  readonly rows?: Score['rows'];
}

/** One stroke of 100 samples, as meant but for what is said. */
function row({ measures = {}, trace = {}, meant = {}, rows = ROWS }: Odd): ReturnType<typeof handRows>[number] {
  const fill = (value: number): Float64Array => new Float64Array(100).fill(value);
  const steady: StrokeTrace = {
    stroke: 0, pass: 0, step_s: 0.02, t_s: fill(0), x_m: fill(0), y_m: fill(0), speed_m_s: fill(0.4), distance_m: fill(0.2), tilt_rad: fill(0), overlapFraction: fill(0.5),
  };
  const debrief = {
    score: { total: 0, isPassed: false, rows },
    coat: { strokes: { measures: [{ ...MEASURES, ...measures }] } },
    traces: [{ ...steady, ...trace }],
    meant: [{ ...MEANT, ...meant }],
  } as unknown as ReportedDebrief;
  return handRows(debrief, 'metric')[0]!;
}

const speed = (mean_m_s: number): Odd => ({ measures: { speed: { ...MEASURES.speed, mean_m_s } } });

describe('handRows', () => {
  it('marks nothing of a stroke as meant', () => {
    const { cells } = row({});
    expect(Object.values(cells).map(({ mark }) => mark)).toEqual(Object.values(cells).map(() => null));
    expect(cells.speed).toEqual({ text: '0.4', meant: '0.4', mark: null });
    expect(cells.overlap.text).toBe('50 %');
    expect(cells.stops.text).toBe('-');
  });

  it('says on which side of the band a mean lies', () => {
    expect(row(speed(0.47)).cells.speed.mark).toBe('above');
    expect(row(speed(0.33)).cells.speed.mark).toBe('below');
    expect(row(speed(0.45)).cells.speed.mark).toBeNull();
    expect(row({ measures: { overlap: { ...MEASURES.overlap!, meanFraction: 0.38 } } }).cells.overlap.mark).toBe('below');
  });

  it('calls unsteady what is right on average only', () => {
    const swing = (by: number): Float64Array => Float64Array.from({ length: 100 }, (_, k) => 0.2 + (k % 2 === 0 ? by : -by));
    expect(row({ trace: { distance_m: swing(0.02) } }).cells.distance.mark).toBe('unsteady');
    expect(row({ trace: { distance_m: swing(0.012) } }).cells.distance.mark).toBeNull();
  });

  it('judges off square by what is exceeded for a twentieth of the stroke', () => {
    const tilted = (count: number): Float64Array => Float64Array.from({ length: 100 }, (_, k) => (k < count ? 0.3 : 0.05));
    expect(row({ trace: { tilt_rad: tilted(4) } }).cells.tilt.mark).toBeNull();
    expect(row({ trace: { tilt_rad: tilted(7) } }).cells.tilt).toEqual({ text: '17.2°', meant: '', mark: 'above' });
  });

  it('marks fluid that comes on inside the edge, and stops beyond the limit', () => {
    const { cells } = row({ measures: { triggerOn_m: -0.02, triggerOff_m: null, stops: [{ at_m: [0, 0], start_s: 0, duration_s: 0.3 }] } });
    expect([cells.on.mark, cells.off.mark, cells.stops.mark]).toEqual(['below', null, 'above']);
    expect(cells.stops.text).toBe('1 (0.3 s)');
  });

  it('marks nothing by a measure that the rubric does not have', () => {
    expect(limitIn({ score: { total: 0, isPassed: true, rows: [] } }, 'speed')).toBeNull();
    const { cells } = row({ ...speed(0.9), rows: [] });
    expect(cells.speed.mark).toBeNull();
  });

  it('shows no aim where nothing was meant', () => {
    expect(row({ meant: { overlapFraction: NaN } }).cells.overlap).toEqual({ text: '50 %', meant: '', mark: null });
  });
});
