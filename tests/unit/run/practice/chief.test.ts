import { describe, expect, it } from 'vitest';
import { MEASURES, type Measure } from '../../../../sim/job/measures.ts';
import { USUAL_RUBRIC } from '../../../../sim/job/rubric.ts';
import { chiefSentence, markSentence } from '../../../../sim/report/debriefText.ts';
import { pathWithHabits } from '../../../../sim/run/demonstrations/handPaths.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { chiefOf, type ChiefParts } from '../../../../sim/run/practice/chief.ts';
import { markAgain, type Debrief } from '../../../../sim/run/practice/debrief.ts';
import { planOf } from '../../../../sim/run/strokes.ts';
import { pathFrom, type Path } from '../../../../sim/stroke/path.ts';
import type { CauseKind, Fault } from '../../../../sim/verdict/verdict.ts';
import { makeSession } from '../../../helpers/session.ts';
import { debriefed, inOrder, ready, rowsOf, withHabit, type Ready } from '../drills/sprayed.ts';

/** A drill on coarse cells, asked for by some measures; all where none are given. */
function asked(id: string, counts: readonly Measure[] = MEASURES): Ready {
  const one = ready(drillById(id));
  return { ...one, job: { ...one.job, cell_mm: 8 }, drill: { ...one.drill, counts: [...counts] } };
}

/** Recorded 100 times a second, so that no row is missed. */
function sprayed(one: Ready, path: Path): Debrief {
  return debriefed(one, makeSession({ planned: { ...one.planned, path }, seed: 1, rate_Hz: 100, noise_m: 0, noise_rad: 0 }));
}

/** Level, 600 × 500 mm, six strokes on y = 0, 100 … 500 mm; meant 0.36 m/s, 200 mm, half overlap, 60 mm outside. */
const LEVEL = asked('half-overlap');

function faultOf({ chief }: Debrief): Fault {
  if (chief.kind !== 'fault') throw new Error(`the chief finding is ${chief.kind}`);
  return chief.fault;
}

function expectCause(debrief: Debrief, kind: CauseKind, found: number, within: number): void {
  const { cause } = faultOf(debrief);
  expect(cause.kind).toBe(kind);
  expect(Math.abs(cause.found - found)).toBeLessThan(within);
}

/** What the sentence says there is too much of, %. */
function tooMuch_percent(sentence: string): number {
  return Number(/: ([\d.]+) % too much film there, over [\d.]+ cm²/.exec(sentence)?.[1]);
}

describe('the chief finding', () => {
  it('is a stop that ran: where, how long, how much, and when the run began', () => {
    const one = asked('upright');
    const debrief = sprayed(one, withHabit(one, { stop: { share: 0.5, duration_s: 0.7 } }, (stroke) => stroke === 3));
    expectCause(debrief, 'stop', 0.7, 0.014);
    const sentence = chiefSentence(debrief, 'metric');
    expect(sentence).toMatch(/^Your stroke 4 stood still for 0\.7 s with the fluid on in the middle: \d+ % too much film there, over [\d.]+ cm², and a run began at [\d.]+ s\.$/);
    expect(Math.abs(tooMuch_percent(sentence) - 100 * (debrief.sprayed.figures.max_m / 90e-6 - 1))).toBeLessThan(0.51);
    const { run } = debrief.chief as Extract<Debrief['chief'], { kind: 'fault' }>;
    // The middle of the fourth stroke, at x = 250, y = 300 mm: within the fan, which stands across the travel (250 × 50 mm).
    const [x_m, y_m] = run?.run?.start_m ?? [NaN, NaN];
    expect(Math.abs(x_m - 0.25)).toBeLessThan(0.025 + 0.008);
    expect(Math.abs(y_m - 0.3)).toBeLessThan(0.125);
    expect(debrief.coat.life?.verdict.faults.find(({ kind }) => kind === 'run')?.cause).toBe(faultOf(debrief).cause);
  });

  it('is a slow speed: which stroke, what and what was meant', () => {
    const debrief = sprayed(LEVEL, withHabit(LEVEL, { pace: 0.6 }, (stroke) => stroke === 2));
    expectCause(debrief, 'speed', 0.216, 0.02 * 0.216);
    const sentence = chiefSentence(debrief, 'metric');
    expect(sentence).toMatch(/^Your stroke 3 slowed to 0\.21\d m\/s \(0\.36 m\/s was meant\) in the middle: /);
    expect(Math.abs(tooMuch_percent(sentence) - 100 * (debrief.sprayed.figures.max_m / 50e-6 - 1))).toBeLessThan(0.51);
  });

  it('is a distance', () => {
    const debrief = sprayed(LEVEL, withHabit(LEVEL, { distance_m: 0.34 }, (stroke) => stroke >= 1 && stroke <= 3));
    expectCause(debrief, 'distance', 0.34, 0.02 * 0.34);
    const { zones: [worst] } = faultOf(debrief);
    expect(worst!.worst).toBeGreaterThanOrEqual(debrief.sprayed.figures.min_m);
    const percent = (100 * worst!.worst) / 50e-6;
    expect(chiefSentence(debrief, 'metric')).toMatch(new RegExp(`^Your strokes? [2-4].* drifted out to 340 mm \\(200 mm was meant\\) .*: only ${percent.toFixed(1).replace(/\.0$/, '')} % of the film there, over [\\d.]+ cm²\\.$`));
    expect(chiefSentence(debrief, 'us')).toMatch(/drifted out to 13\.4 in \(7\.87 in was meant\)/);
  });

  it('is an overlap', () => {
    const debrief = sprayed(LEVEL, planOf(LEVEL.setting, { ...LEVEL.setting.plan, overlapFraction: 0.2 }).path);
    expectCause(debrief, 'overlap', 0.2, 0.004);
    expect(chiefSentence(debrief, 'metric')).toMatch(/^Your strokes? \d.* lapped the one beside by (20|19\.\d|20\.\d) % \(50 % was meant\) .*: only [\d.]+ % of the film there, over [\d.]+ cm²\.$/);
  });

  it('is a trigger pulled 80 mm inside the edge', () => {
    const debrief = sprayed(LEVEL, lateBy(LEVEL, 0.14));
    // A row every 10 ms: the trigger is seen up to 3.6 mm late.
    expectCause(debrief, 'trigger', -0.08, 0.0037);
    expect(chiefSentence(debrief, 'metric')).toMatch(/^Your strokes? \d.* worked the trigger 8[0-3](\.\d)? mm inside the edge (at the (left|right) edge|near the (lower|upper) (left|right) corner): only [\d.]+ % of the film there, over [\d.]+ cm²\.$/);
  });

  it('is a stroke that was never sprayed, by its number in the plan', () => {
    const debrief = sprayed(LEVEL, inOrder(LEVEL.planned, [0, 1, 3, 4, 5]));
    expect(faultOf(debrief).cause).toMatchObject({ kind: 'missing-stroke', strokes: [2] });
    expect(chiefSentence(debrief, 'metric')).toMatch(/^Stroke 3 of the plan was not sprayed in the middle: only [\d.]+ % of the film there, over [\d.]+ cm²\.$/);
  });

  it('is that nothing was sprayed, and then nothing is passed', () => {
    const debrief = sprayed(LEVEL, pathFrom(rowsOf(LEVEL.planned.path).map((row) => ({ ...row, trigger: 0 }))));
    expect(debrief.chief).toEqual({ kind: 'nothing' });
    expect(debrief.score.isPassed).toBe(false);
    expect(chiefSentence(debrief, 'metric')).toMatch(/^The trigger was never held for long enough/);
  });

  it('is that all is met, beside what the plan would give', () => {
    const debrief = sprayed(LEVEL, LEVEL.planned.path);
    expect(debrief.chief).toEqual({ kind: 'met' });
    expect(chiefSentence(debrief, 'metric')).toBe('All that this task asks for is met. 100 % of the panel is inside the limits, 100 % as planned.');
    expect(markSentence(debrief, 'metric')).toBe('100 of 100: passed.');
  });

  it('is a measure where the film is good: the one farthest from its limit, and the stroke that shows it most', () => {
    const off = new Map([[3, 0.222], [4, 0.23]]);
    const debrief = sprayed(LEVEL, pathWithHabits(LEVEL.planned, LEVEL.setting.setUp.triggerLag_s, (stroke) => (off.has(stroke) ? { distance_m: off.get(stroke)! } : null)));
    expect(debrief.coat.verdict.faults).toHaveLength(0);
    // √((22² + 30²) / 6) = 15.2 mm; the gun takes a moment from one distance to the other.
    expect(debrief.chief).toMatchObject({ kind: 'measure', row: { measure: 'distance' }, stroke: 4 });
    expect(chiefSentence(debrief, 'metric')).toMatch(/^Gun distance first: 15(\.\d)? mm against a limit of 12\.5 mm, most in stroke 5 \(/);
  });
});

describe('what a task asks for', () => {
  const oneSlow = withHabit(LEVEL, { pace: 0.6 }, (stroke) => stroke === 2);

  it('leaves a fault out that comes of another habit than those that count', () => {
    const counting = (counts: readonly Measure[]) => sprayed({ ...LEVEL, drill: { ...LEVEL.drill, counts: [...counts] } }, oneSlow);
    expect(counting(['distance', 'angle'])).toMatchObject({ chief: { kind: 'met' }, score: { isPassed: true } });
    expect(counting(['distance', 'speed']).chief).toMatchObject({ kind: 'fault', fault: { cause: { kind: 'speed' } } });
    expect(counting(['evenness']).chief).toMatchObject({ kind: 'fault', fault: { cause: { kind: 'speed' } } });
  });

  it('is not called met where the rubric leaves it out', () => {
    const rows = USUAL_RUBRIC.rows.filter(({ measure }) => measure !== 'paint');
    const debrief = markAgain(sprayed(LEVEL, LEVEL.planned.path), { ...USUAL_RUBRIC, rows });
    expect(debrief.score.isPassed).toBe(false);
    expect(chiefSentence(debrief, 'metric')).not.toMatch(/All that this task asks for is met/);
    expect(chiefSentence(debrief, 'metric')).toMatch(/rubric leaves out/);
    expect(markSentence(debrief, 'metric')).toMatch(/^100 of 100: not yet\. The rubric leaves out what this task asks for\.$/);
  });

  it('speaks of the worst fault, and of the fault as laid that one of the film’s life comes of', () => {
    const debrief = sprayed(LEVEL, oneSlow);
    const laid = faultOf(debrief);
    const zone = laid.zones[0]!;
    const other: Fault = { ...laid, cause: { ...laid.cause, strokes: [5] }, zones: [{ ...zone, area_m2: zone.area_m2 / 100 }] };
    const run: Fault = { ...laid, kind: 'run', zones: [{ ...zone, kind: 'run', area_m2: 100 * zone.area_m2, run: { start_m: zone.at_m, started_s: 9, length_m: 0.02 } }] };
    const outside: Fault = { ...laid, cause: { ...laid.cause, kind: 'fluid' }, zones: [{ ...zone, area_m2: 1e4 * zone.area_m2 }] };
    const chief = (faults: readonly Fault[], laidFaults: readonly Fault[]) => {
      const parts: ChiefParts = { ...debrief, faults, laidFaults };
      return chiefOf(parts);
    };
    expect(chief([other, laid], [other, laid])).toEqual({ kind: 'fault', fault: laid, run: null });
    expect(chief([other, laid, run, outside], [other, laid])).toEqual({ kind: 'fault', fault: laid, run: run.zones[0] });
    expect(chief([other, run], [other])).toEqual({ kind: 'fault', fault: run, run: run.zones[0] });
    expect(chief([outside], [outside]).kind).toBe('measure');
  });

  it('speaks of the measure with the least mark of those that count and are missed', () => {
    const debrief = sprayed(LEVEL, LEVEL.planned.path);
    const marks = new Map<Measure, number>([['speed', 0.6], ['coverage', 0.2], ['angle', 0.4], ['paint', 0.1]]);
    const rows = debrief.score.rows.map((row) => ({ ...row, mark: marks.get(row.measure) ?? 1, isMet: !marks.has(row.measure), counts: row.measure !== 'paint' }));
    const parts: ChiefParts = { ...debrief, faults: [], laidFaults: [], score: { total: 0.9, rows, isPassed: false } };
    expect(chiefOf(parts)).toMatchObject({ kind: 'measure', row: { measure: 'coverage' }, stroke: null });
    expect(chiefOf({ ...parts, score: { ...parts.score, rows: rows.filter(({ measure }) => measure !== 'coverage') } })).toMatchObject({ row: { measure: 'angle' } });
  });
});

/** The plan with fluid on so much of travel later, on every stroke. */
function lateBy({ planned: { path, strokes } }: Ready, late_m: number): Path {
  const rows = rowsOf(path);
  for (const { firstRow, meant } of strokes) {
    const row = rows[firstRow]!;
    const way = Math.sign(meant.end_m[0] - meant.start_m[0]);
    rows[firstRow] = { ...row, t_s: row.t_s + late_m / meant.speed_m_s, x_m: row.x_m + way * late_m };
  }
  return pathFrom(rows);
}
