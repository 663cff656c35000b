import { describe, expect, it } from 'vitest';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { runLife } from '../../../../sim/run/coatLife.ts';
import { planOf } from '../../../../sim/run/strokes.ts';
import { HAND_PRESETS, wander } from '../../../../sim/stroke/hand.ts';
import { pathFrom, type Path } from '../../../../sim/stroke/path.ts';
import type { Planned } from '../../../../sim/stroke/plan.ts';
import { asAsked, debriefed, endsPass, inOrder, missed, paused, ready, rowsOf, withHabit, type Ready } from './sprayed.ts';

const RADIANS = Math.PI / 180;

/** The plan of a drill with another overlap. */
function withOverlap({ setting }: Ready, overlapFraction: number): Path {
  return planOf(setting, { ...setting.plan, overlapFraction }).path;
}

describe('the wrong hand fails what the drill is about', () => {
  it('square-and-steady: a gun held 40 mm too far, and one that swings by 27°', () => {
    const one = ready(drillById('square-and-steady'));
    expect(missed(debriefed(one, withHabit(one, { distance_m: 0.24 })))).toEqual(['distance']);
    expect(missed(debriefed(one, withHabit(one, { swing_rad: 27 * RADIANS })))).toContain('angle');
  });

  it('even-speed: every other stroke at six tenths of the pace, and a stop', () => {
    const one = ready(drillById('even-speed'));
    expect(missed(debriefed(one, withHabit(one, { pace: 0.6 }, (stroke) => stroke % 2 === 1)))).toContain('speed');
    expect(missed(debriefed(one, withHabit(one, { stop: { share: 0.5, duration_s: 0.6 } }, (stroke) => stroke === 1)))).toContain('stops');
  });

  it('trigger: fluid on before the gun moves and after it has stopped', () => {
    const one = ready(drillById('trigger'));
    expect(missed(debriefed(one, withHabit(one, { held_s: 0.3 })))).toContain('trigger');
  });

  it('half-overlap: three tenths instead of half', () => {
    const one = ready(drillById('half-overlap'));
    expect(missed(debriefed(one, withOverlap(one, 0.3)))).toEqual(['overlap', 'evenness']);
  });

  it('edges-first: the edges left out', () => {
    const one = ready(drillById('edges-first'));
    expect(missed(debriefed(one, inOrder(one.planned, [1, 2, 3])))).toEqual(['coverage', 'evenness']);
  });

  it('whole-panel: a beginner fails it where a practised hand does not', () => {
    const one = ready(drillById('whole-panel'));
    const hand = (kind: 'practised' | 'beginner') => missed(debriefed(one, wander(one.planned, HAND_PRESETS[kind], 1).path));
    expect(hand('practised')).toEqual([]);
    expect(hand('beginner')).toEqual(expect.arrayContaining(['distance', 'coverage']));
  });

  it('cross-coat: one pass only', () => {
    const one = ready(drillById('cross-coat'));
    const first = one.planned.strokes.filter(({ pass }) => pass === 0).map(({ index }) => index);
    expect(missed(debriefed(one, inOrder(one.planned, first)))).toEqual(['coverage']);
  });

  it('around-a-hole: fluid off 60 mm before the opening, and on again 60 mm beyond it', () => {
    const one = ready(drillById('around-a-hole'));
    expect(missed(debriefed(one, shyOfTheHole(one.planned, 0.08)))).toEqual(['trigger', 'coverage', 'evenness']);
  });

  it('upright: one stroke at half the pace, and a stop of three tenths of a second', () => {
    const one = ready(drillById('upright'));
    expect(missed(debriefed(one, withHabit(one, { pace: 0.5 }, (stroke) => stroke === 3)))).toContain('runs');
    expect(missed(debriefed(one, withHabit(one, { stop: { share: 0.5, duration_s: 0.3 } }, (stroke) => stroke === 3)))).toContain('runs');
  });

  it('keep-it-wet: six seconds between strokes; two are no fault, and in cold air no pause is', () => {
    const one = ready(drillById('keep-it-wet'));
    const pausing = (pause_s: number, of: Ready = one) => missed(debriefed(of, paused(of.planned, pause_s, () => true)));
    expect(pausing(6)).toEqual(['dry-laps']);
    expect(pausing(2)).toEqual([]);
    const cold = { ...one, job: { ...one.job, air: { ...one.job.air, temperature_C: 8 } } };
    expect(pausing(6, cold)).not.toContain('dry-laps');
  });

  it('two-coats: no wait runs with a practised hand, whom the wait forgives; a quarter of an hour is too long', () => {
    const one = ready(drillById('two-coats'));
    const hand = (wait_s: number) => {
      const practised: Planned = wander(one.planned, HAND_PRESETS.practised, 1);
      return missed(debriefed(one, paused(practised, wait_s, (stroke) => endsPass(practised, stroke))));
    };
    expect(hand(0)).toEqual(['runs']);
    expect(hand(one.drill.wait_s)).toEqual([]);
    expect(hand(900)).toEqual(expect.arrayContaining(['dry-laps', 'time']));
  });
});

describe('air-on-a-run', () => {
  const one = ready(drillById('air-on-a-run'));
  /** Farthest that film ran where it gathered as a run does, m. */
  const longestRun_m = (path: Path): number => {
    const { setting } = one;
    const { film } = runLife(setting, { path, strokes: [] }, { until_s: (path.t_s[path.count - 1] ?? NaN) + one.drill.watch_s }).end;
    return film.run_m.reduce((most, run, cell) => ((film.gathered_m[cell] ?? 0) >= setting.target.life.gather_m ? Math.max(most, run) : most), 0);
  };
  const sweep = (trigger: number, distance_m = one.setting.plan.distance_m) =>
    pathFrom(rowsOf(one.planned.path).map((row) => ({ ...row, z_m: distance_m, trigger: row.trigger > 0 ? trigger : 0 })));

  it('runs where nothing is done, and not where air alone sweeps it', () => {
    const { run_m } = one.setting.target.life;
    expect(longestRun_m(sweep(0))).toBeGreaterThan(2 * run_m);
    expect(longestRun_m(sweep(0.5))).toBeLessThan(0.5 * run_m);
  });

  it('runs where the air comes from too near: that drives the film on', () => {
    const { run_m } = one.setting.target.life;
    expect(longestRun_m(sweep(0.5, 0.06))).toBeGreaterThan(2 * run_m);
  });

  it('lays next to nothing: the needle is shut', () => {
    expect(debriefed(one, asAsked(one)).sprayed.figures.max_m).toBeLessThan(5e-6);
  });
});

/** Strokes that stop at the opening instead of the edge: their trigger points there moved away from it. */
function shyOfTheHole({ path, strokes }: Planned, away_m: number): Path {
  const rows = rowsOf(path);
  const isAtHole = ([x_m]: readonly [number, number]) => x_m > 0.05 && x_m < 0.65;
  for (const { firstRow, lastRow, meant } of strokes) {
    const away_s = away_m / meant.speed_m_s;
    const along = Math.sign(meant.end_m[0] - meant.start_m[0]) * away_m;
    const move = (row: number, sign: number) => {
      const pose = rows[row];
      if (pose !== undefined) rows[row] = { ...pose, t_s: pose.t_s + sign * away_s, x_m: pose.x_m + sign * along };
    };
    if (isAtHole(meant.start_m)) move(firstRow, 1);
    if (isAtHole(meant.end_m)) move(lastRow, -1);
  }
  return pathFrom(rows);
}
