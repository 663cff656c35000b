import { describe, expect, it } from 'vitest';
import { MEASURES } from '../../../../sim/job/measures.ts';
import type { TaskSpec } from '../../../../sim/job/session.ts';
import type { OtherFilm } from '../../../../sim/report/reportedDebrief.ts';
import { layCoat } from '../../../../sim/run/lay.ts';
import { otherFilm } from '../../../../sim/run/practice/otherFilm.ts';
import { sessionFigures, strokeError, type SessionParts } from '../../../../sim/run/practice/sessionFigures.ts';
import { planOf, strokesOf } from '../../../../sim/run/strokes.ts';
import type { Stroke, StrokeMeasures } from '../../../../sim/stroke/stroke.ts';
import type { StrokeTrace } from '../../../../sim/stroke/traces.ts';
import { FAULT } from '../../report/sampleCoat.ts';
import { distanceTrace, MEANT, strokesLike } from '../../stroke/handTraces.ts';
import { testSetting } from '../testJob.ts';

const setting = testSetting({ size_mm: [400, 250], cell_mm: 10 });
const planned = planOf(setting, setting.plan);
const laid = layCoat(setting, planned);
const film = otherFilm(setting, setting, planned, { watch_s: 0 });
const asLaid = strokesOf(setting);
const TASK: TaskSpec = { id: 'own', title: 'Own', coat: 'coat', counts: [...MEASURES], watch_s: 0, wait_s: 0 };

/** A session of made-up strokes; what is not given is as planned. Meant: 0.3 m/s, 0.2 m, half overlap. */
function figuresOf(traces: readonly StrokeTrace[], measures: readonly Partial<StrokeMeasures>[] = [], over: Partial<SessionParts> = {}) {
  const whole = traces.map((_, i) => ({ overlap: null, triggerOn_m: null, triggerOff_m: null, stops: [], ...measures[i] }) as unknown as StrokeMeasures);
  const strokes = { ...asLaid, strokes: strokesLike(traces.length), measures: whole };
  return sessionFigures({ task: TASK, setting, strokes, traces, laid, faults: [], sprayed: film, planned: film, ...over });
}

/** A stroke of so many samples whose speed is given, all else as meant. */
function speedTrace(speeds_m_s: readonly number[], step_s = 0.01): StrokeTrace {
  return { ...distanceTrace(0, speeds_m_s.map(() => 0), step_s), speed_m_s: Float64Array.from(speeds_m_s) };
}

function steady(stroke: number): StrokeTrace {
  return distanceTrace(stroke, Array<number>(100).fill(0));
}

function lapping(meanFraction: number): Partial<StrokeMeasures> {
  return { overlap: { neighbour: 0, meanFraction, mean_m: 0, worstFraction: meanFraction, worst_m: 0, worstAt_m: [0, 0] } };
}

describe('figures of the hand', () => {
  it('distance and speed are root mean squares over time, whichever way they are off', () => {
    expect(figuresOf([distanceTrace(0, [0.03, -0.03, 0.04, -0.04])]).distance).toBeCloseTo(Math.sqrt((2 * 0.0009 + 2 * 0.0016) / 4), 12);
    expect(figuresOf([speedTrace([0.36, 0.24, 0.3, 0.3])]).speed).toBeCloseTo(Math.sqrt((2 * 0.04) / 4), 12);
  });

  it('weigh a sample by the time that it stands for', () => {
    const { distance } = figuresOf([distanceTrace(0, [0.03, 0.03], 0.005), distanceTrace(1, [0, 0, 0], 0.01)]);
    expect(distance).toBeCloseTo(Math.sqrt((0.01 * 0.0009) / 0.04), 12);
  });

  it('angle is what is exceeded for a twentieth of the time, in whatever order', () => {
    const tilt_rad = Float64Array.from({ length: 101 }, (_, i) => ((i * 37) % 101) / 100);
    expect(figuresOf([{ ...distanceTrace(0, Array<number>(101).fill(0)), tilt_rad }]).angle).toBeCloseTo(0.95, 12);
    expect(tilt_rad[1]).toBeCloseTo(0.37, 12);
  });

  it('overlap is over the strokes that lap another: a stroke without a neighbour, or without a meaning, is left out', () => {
    const traces = [steady(0), steady(1), steady(2)];
    expect(figuresOf(traces, [{}, lapping(0.6), lapping(0.2)]).overlap).toBeCloseTo(Math.sqrt((0.01 + 0.09) / 2), 12);
    const strokes = { ...asLaid, strokes: strokesLike(2).map((stroke, i): Stroke => (i === 1 ? { ...stroke, meant: { ...MEANT, overlapFraction: NaN } } : stroke)), measures: [{ stops: [], ...lapping(0.4) }, { stops: [], ...lapping(0.9) }] as unknown as StrokeMeasures[] };
    expect(figuresOf(traces.slice(0, 2), [], { strokes }).overlap).toBeCloseTo(0.1, 12);
  });

  it('stops are added up over all strokes', () => {
    const stop = (duration_s: number) => ({ at_m: [0, 0] as const, start_s: 0, duration_s });
    expect(figuresOf([steady(0), steady(1)], [{ stops: [stop(0.7), stop(0.2)] }, { stops: [stop(0.4)] }]).stops).toBeCloseTo(1.3, 12);
  });

  it.each([
    ['60 mm outside', 0.06, 0.06, 1],
    ['on the edge itself, to a place’s half millimetre', -0.0009, 0, 1],
    ['inside the edge at one end', -0.0011, 0.06, 0.5],
    ['farther out than paint is worth, at both', 0.151, 0.2, 0],
    ['just not too far', 0.15, 0.149, 1],
    ['at a hole’s edge at one end, none at the other', 0.05, null, 1],
  ])('trigger: %s', (_, triggerOn_m, triggerOff_m, share) => {
    expect(figuresOf([steady(0)], [{ triggerOn_m, triggerOff_m }]).trigger).toBe(share);
  });

  it('trigger: a gun that stands where fluid comes on, or goes off, has that end wrong', () => {
    const ends = { triggerOn_m: 0.05, triggerOff_m: 0.05 };
    const still = (from: number, to: number) => speedTrace(Array.from({ length: 100 }, (_, k) => (k >= from && k <= to ? 0.1 : 0.3)));
    expect(figuresOf([still(0, 10)], [ends]).trigger).toBe(0.5);
    expect(figuresOf([still(90, 99)], [ends]).trigger).toBe(0.5);
    expect(figuresOf([still(30, 60)], [ends]).trigger).toBe(1);
    expect(figuresOf([speedTrace(Array<number>(100).fill(0.15))], [ends]).trigger).toBe(1);
  });

  it('are none without strokes, and trigger and overlap are none where no stroke shows them', () => {
    const none = figuresOf([]);
    expect([none.distance, none.speed, none.angle, none.overlap, none.trigger, none.stops, none.time]).toEqual(Array(7).fill(null));
    const shown = figuresOf([steady(0)]);
    expect([shown.overlap, shown.trigger]).toEqual([null, null]);
    expect([shown.distance, shown.speed, shown.stops]).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12), 0]);
  });
});

describe('figures of the film', () => {
  const bare = layCoat(setting, { path: planned.path, strokes: [] }, { until_s: 0 });

  it('coverage is the share of the panel with the least film that the target allows', () => {
    expect(figuresOf([steady(0)]).coverage).toBe(1);
    expect(figuresOf([], [], { laid: bare }).coverage).toBe(0);
    const half = { ...laid, film: { ...laid.film, wet_m: laid.film.wet_m.map((_, cell) => (cell % setting.panelGrid.grid.columns < 20 ? 0.8 : 0.799) * setting.target.thickness_m) } };
    // Half of the 40 columns, single precision's rounding of the limit apart.
    const target = { ...setting.target, minFraction: 0.7995 };
    expect(figuresOf([], [], { laid: half, setting: { ...setting, target } }).coverage).toBeCloseTo(0.5, 12);
  });

  it('runs, dry laps and dust are areas of their faults over the panel’s', () => {
    const faults = [
      { ...FAULT, kind: 'run', area_m2: 0.001 },
      { ...FAULT, kind: 'run', area_m2: 0.002 },
      { ...FAULT, kind: 'dry-lap', area_m2: 0.01 },
      { ...FAULT, kind: 'dry-spray', area_m2: 0.004 },
      { ...FAULT, kind: 'heavy-spot', area_m2: 0.05 },
    ] as const;
    const { runs, 'dry-laps': dryLaps, dust } = figuresOf([], [], { faults });
    expect([runs, dryLaps, dust]).toEqual([expect.closeTo(0.03, 9), expect.closeTo(0.1, 9), expect.closeTo(0.04, 9)]);
  });

  it('paint and time are what lies beyond the plan: nothing below it, and the task’s wait is allowed', () => {
    const took = (duration_s: number, sprayed_m3: number, wait_s = 0) => {
      const sprayed: OtherFilm = { ...film, duration_s };
      const { paint, time } = figuresOf([steady(0)], [], { sprayed, laid: { ...laid, account: { ...laid.account, sprayed_m3 } }, task: { ...TASK, wait_s } });
      return [paint, time];
    };
    const { duration_s, account: { sprayed_m3 } } = film;
    expect(took(duration_s, sprayed_m3)).toEqual([expect.closeTo(0, 6), expect.closeTo(0, 12)]);
    expect(took(1.5 * duration_s, 1.2 * sprayed_m3)).toEqual([expect.closeTo(0.2, 6), expect.closeTo(0.5, 12)]);
    expect(took(0.5 * duration_s, 0.1 * sprayed_m3)).toEqual([0, 0]);
    expect(took(duration_s + 60, sprayed_m3, 60)[1]).toBeCloseTo(0, 12);
  });

  it('evenness is the deviation over the mean, none without film', () => {
    expect(figuresOf([]).evenness).toBe(film.figures.cv);
    expect(figuresOf([], [], { sprayed: { ...film, figures: { mean_m: 0, min_m: 0, max_m: 0, cv: 0 } } }).evenness).toBeNull();
  });
});

describe('how far one stroke is off', () => {
  const [stroke] = strokesLike(1) as [Stroke];
  const off = { ...distanceTrace(0, Array<number>(100).fill(0.03)), speed_m_s: new Float64Array(100).fill(0.24), tilt_rad: new Float64Array(100).fill(0.2) };
  const measures = { ...lapping(0.2), triggerOn_m: -0.05, triggerOff_m: 0.05, stops: [{ at_m: [0, 0], start_s: 0, duration_s: 0.4 }] } as unknown as StrokeMeasures;

  it.each([['distance', 0.03], ['speed', 0.2], ['angle', 0.2], ['overlap', 0.3], ['stops', 0.4], ['trigger', 1]] as const)('%s', (measure, error) => {
    expect(strokeError(measure, off, stroke, measures)).toBeCloseTo(error, 12);
  });

  it('is no number for a measure of the film, or an overlap with nothing', () => {
    for (const measure of ['coverage', 'evenness', 'runs', 'dry-laps', 'dust', 'paint', 'time'] as const) expect(strokeError(measure, off, stroke, measures)).toBeNaN();
    expect(strokeError('overlap', off, stroke, { ...measures, overlap: null })).toBeNaN();
  });
});
