import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../sim/base/noise.ts';
import { MEASURES } from '../../sim/job/measures.ts';
import type { TaskSpec } from '../../sim/job/session.ts';
import { pathWithHabits } from '../../sim/run/demonstrations/handPaths.ts';
import { fanWidthRatio } from '../../sim/run/fan.ts';
import { layCoat } from '../../sim/run/lay.ts';
import { otherFilm } from '../../sim/run/practice/otherFilm.ts';
import { sessionFigures } from '../../sim/run/practice/sessionFigures.ts';
import type { CoatStrokes } from '../../sim/run/result.ts';
import { planOf, strokesOf } from '../../sim/run/strokes.ts';
import { pathFrom, poseAt, type Path, type Pose } from '../../sim/stroke/path.ts';
import { strokeTraces } from '../../sim/stroke/traces.ts';
import type { SessionFigures } from '../../sim/verdict/score.ts';
import { testSetting } from '../unit/run/testJob.ts';

/** Meant: 0.36 m/s, 0.2 m, half overlap, square; fan of 1.25 m width a metre of distance. */
const setting = testSetting({ size_mm: [600, 450], cell_mm: 10, plan: { speed_m_s: 0.36 }, setUp: { triggerLag_ms: 60 } });
const RATIO = fanWidthRatio(setting.setUp, setting.plan.distance_m);
const LAG_S = setting.setUp.triggerLag_s;
const planned = planOf(setting, setting.plan);
const film = otherFilm(setting, setting, planned, { watch_s: 0 });
const laid = layCoat(setting, planned);
const TASK: TaskSpec = { id: 'own', title: 'Straight', coat: 'coat', counts: [...MEASURES], watch_s: 0, wait_s: 0 };

interface Hand {
  readonly speed_m_s: number;
  readonly overlap: number;
  readonly distance_m: number;
  readonly tilt_rad: number;
}

interface Sensor {
  readonly rate_Hz: number;
  readonly noise_m: number;
  readonly seed: number;
}

/** Measured places lie evenly within ± the noise of the true ones. The path holds its ends, so the gun moves on for longer than the windows. */
function sampled(path: Path, { rate_Hz, noise_m, seed }: Sensor): Path {
  const random = seededRandom(seed);
  const noise = () => noise_m * (2 * random() - 1);
  const end_s = path.t_s[path.count - 1] as number;
  const rows: Pose[] = [];
  for (let i = 0; i / rate_Hz <= end_s; i++) {
    const pose = poseAt(path, i / rate_Hz);
    rows.push({ ...pose, x_m: pose.x_m + noise(), y_m: pose.y_m + noise(), z_m: pose.z_m + noise() });
  }
  return pathFrom(rows);
}

/** The gun opens and closes this far outside the panel, and moves for this long before and after. */
const OUTSIDE_M = 0.1;
const RUN_S = 0.4;

/** Straight strokes to and fro over the whole panel, from its lower edge up. The gun tilts along its travel, its aim where it is meant. */
function straight({ speed_m_s, overlap, distance_m, tilt_rad }: Hand): Path {
  const { width_m, height_m } = setting.panel;
  const pitch_m = (1 - overlap) * RATIO * distance_m;
  const z_m = distance_m * Math.cos(tilt_rad);
  const rows: Pose[] = [];
  let t_s = 0;
  for (let k = 0; k * pitch_m <= height_m; k++) {
    const way = k % 2 === 0 ? 1 : -1;
    const middle_s = RUN_S + (width_m / 2 + OUTSIDE_M) / speed_m_s;
    // The fan stands upright, so the aim lies z tan θ toward -x of the foot.
    const row = (at_s: number, trigger: number): Pose => ({
      t_s: t_s + at_s, x_m: width_m / 2 + way * (at_s - middle_s) * speed_m_s + z_m * Math.tan(tilt_rad), y_m: k * pitch_m, z_m, fan_rad: Math.PI / 2, pitch_rad: tilt_rad, yaw_rad: 0, trigger,
    });
    rows.push(row(0, 0), row(RUN_S, 1), row(2 * middle_s - RUN_S, 0), row(2 * middle_s, 0));
    t_s += 2 * middle_s + 0.5;
  }
  return pathFrom(rows);
}

function found(path: Path): { readonly strokes: CoatStrokes; readonly figures: SessionFigures } {
  const strokes = strokesOf(setting, { path, warnings: [] });
  const traces = strokeTraces({ ...strokes, fanWidthPerDistance: RATIO, triggerLag_s: LAG_S });
  return { strokes, figures: sessionFigures({ task: TASK, setting, strokes, traces, laid, faults: [], sprayed: film, planned: film }) };
}

const NOISE_M = 0.5e-3;
const sensors: fc.Arbitrary<Sensor> = fc.record({
  rate_Hz: fc.integer({ min: 60, max: 1000 }),
  noise_m: fc.double({ min: 0, max: NOISE_M, noNaN: true }),
  seed: fc.integer({ min: 1, max: 1e6 }),
});
const hands: fc.Arbitrary<Hand> = fc.record({
  speed_m_s: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  overlap: fc.double({ min: 0.3, max: 0.7, noNaN: true }),
  distance_m: fc.double({ min: 0.15, max: 0.3, noNaN: true }),
  tilt_rad: fc.double({ min: 0, max: 0.35, noNaN: true }),
});

describe('a straight session', () => {
  it('shows its speed, distance, tilt and overlap within 2 %, stroke by stroke', () => {
    fc.assert(
      fc.property(hands, sensors, (hand, sensor) => {
        const { strokes } = found(sampled(straight(hand), sensor));
        const pitch_m = (1 - hand.overlap) * RATIO * hand.distance_m;
        expect(strokes.strokes).toHaveLength(Math.floor(setting.panel.height_m / pitch_m) + 1);
        strokes.measures.forEach(({ speed, distance, tilt, overlap, stops, triggerOn_m, triggerOff_m }, i) => {
          expect(Math.abs(speed.mean_m_s / hand.speed_m_s - 1)).toBeLessThan(0.02);
          expect(Math.abs(distance.mean_m / hand.distance_m - 1)).toBeLessThan(0.02);
          expect(tilt.mean_rad).toBeCloseTo(hand.tilt_rad, 6);
          expect(stops).toEqual([]);
          // The fluid follows the trigger by the lag, and the trigger is seen up to one sample late; places are good to a millimetre.
          const [lag_m, late_m] = [LAG_S * hand.speed_m_s, hand.speed_m_s / sensor.rate_Hz];
          expect(Math.abs((triggerOn_m ?? NaN) - (OUTSIDE_M - lag_m - late_m / 2))).toBeLessThan(late_m / 2 + 1e-3);
          expect(Math.abs((triggerOff_m ?? NaN) - (OUTSIDE_M + lag_m + late_m / 2))).toBeLessThan(late_m / 2 + 1e-3);
          if (i === 0) return;
          expect(overlap?.neighbour).toBe(i - 1);
          expect(Math.abs((overlap?.meanFraction ?? NaN) / hand.overlap - 1)).toBeLessThan(0.02);
        });
      }),
      { numRuns: 40, seed: 1 },
    );
  });

  it('is as far off what was meant as it was made: distance, speed, angle and overlap', () => {
    fc.assert(
      fc.property(hands, sensors, (hand, sensor) => {
        const { figures } = found(sampled(straight(hand), sensor));
        const { plan } = setting;
        // Noise n adds in squares: √(off² + n²) - off is at most n. A window of 0.1 s keeps 0.5 mm / √3 / √6 = 0.12 mm of it in
        // place, of height and aim √2 of that; a speed is two windows' difference over 0.1 s, √2 · 1.2 mm/s a component.
        const slack = 2 * NOISE_M / Math.sqrt(18);
        expect(Math.abs((figures.distance ?? NaN) - Math.abs(hand.distance_m - plan.distance_m))).toBeLessThan(2 * slack);
        expect(Math.abs((figures.speed ?? NaN) - Math.abs(hand.speed_m_s / plan.speed_m_s - 1))).toBeLessThan((2 * slack) / 0.1 / plan.speed_m_s);
        expect(figures.angle).toBeCloseTo(hand.tilt_rad, 6);
        expect(Math.abs((figures.overlap ?? NaN) - Math.abs(hand.overlap - plan.overlapFraction))).toBeLessThan(0.02);
        expect(figures.stops).toBe(0);
        // 100 mm outside, less the lag's travel where fluid comes on, more where it goes off: ± 36 mm at most.
        expect(figures.trigger).toBe(1);
      }),
      { numRuns: 40, seed: 2 },
    );
  });
});

describe('a stop of 0.7 s', () => {
  it('is 0.7 s within 2 %, where it was, wherever along the stroke and however it is sampled', () => {
    fc.assert(
      fc.property(sensors, fc.integer({ min: 10, max: 30 }), (sensor, piece) => {
        // A habit's stroke is written in forty pieces, and stops between two.
        const share = piece / 40;
        const path = pathWithHabits(planned, LAG_S, (stroke) => (stroke === 1 ? { stop: { share, duration_s: 0.7 } } : null));
        const { strokes, figures } = found(sampled(path, sensor));
        expect(strokes.measures.map(({ stops }) => stops.length)).toEqual(strokes.measures.map((_, i) => Number(i === 1)));
        expect(Math.abs((strokes.measures[1]?.stops[0]?.duration_s ?? NaN) - 0.7)).toBeLessThan(0.02 * 0.7);
        expect(figures.stops).toBe(strokes.measures[1]?.stops[0]?.duration_s);
        const { firstRow, lastRow } = planned.strokes[1] ?? { firstRow: 0, lastRow: 0 };
        const x_m = (planned.path.x_m[firstRow] as number) * (1 - share) + (planned.path.x_m[lastRow] as number) * share;
        expect(Math.abs((strokes.measures[1]?.stops[0]?.at_m[0] ?? NaN) - x_m)).toBeLessThan(2e-3);
      }),
      { numRuns: 40, seed: 3 },
    );
  });
});
