import { describe, expect, it } from 'vitest';
import { withRecording } from '../../../../sim/job/demo.ts';
import type { Measure } from '../../../../sim/job/measures.ts';
import { USUAL_RUBRIC, type RubricSpec } from '../../../../sim/job/rubric.ts';
import type { Job } from '../../../../sim/job/schema.ts';
import { parseSession, serialiseSession, type SessionSpec } from '../../../../sim/job/session.ts';
import { faultJson } from '../../../../sim/report/faultJson.ts';
import type { ReportedCoat } from '../../../../sim/report/reported.ts';
import { reportText } from '../../../../sim/report/reportText.ts';
import { runLife } from '../../../../sim/run/coatLife.ts';
import { taskOf } from '../../../../sim/run/drills/drill.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { judgeLife } from '../../../../sim/run/judgeLife.ts';
import { debriefSession, markAgain, type Debrief } from '../../../../sim/run/practice/debrief.ts';
import { readRecording } from '../../../../sim/run/readRecording.ts';
import { runJob } from '../../../../sim/run/runJob.ts';
import { HAND_PRESETS, wander } from '../../../../sim/stroke/hand.ts';
import type { Path } from '../../../../sim/stroke/path.ts';
import { writeRecording } from '../../../../sim/stroke/writeRecording.ts';
import { makeSession } from '../../../helpers/session.ts';
import { inOrder, ready } from '../drills/sprayed.ts';

const one = ready(drillById('half-overlap'));
const JOB: Job = { ...one.job, cell_mm: 6 };
const COAT = one.drill.coat;

function sessionOf(path: Path, change: { counts?: readonly Measure[]; watch_s?: number; job?: Job } = {}): SessionSpec {
  const { job = JOB, watch_s = 0, counts = one.drill.counts } = change;
  return {
    sessionVersion: 1,
    id: 's-1',
    trainee: 'Trainee A',
    name: 'morning',
    sprayedAt: '2026-03-01T09:30:00Z',
    task: { ...taskOf(one.drill), counts: [...counts], watch_s },
    job,
    strokes: [...writeRecording(path)].join(''),
  };
}

function debriefOf(session: SessionSpec, rubric: RubricSpec = USUAL_RUBRIC): Debrief {
  return debriefSession(session, rubric);
}

/** The plan as a sensor gives it. */
function steady(rate_Hz: number, noise_m: number): Path {
  return makeSession({ planned: one.planned, seed: 3, rate_Hz, noise_m, noise_rad: 0 });
}

/** A beginner's hand, whose film has faults of several kinds. */
const BEGINNER = makeSession({ planned: wander(one.planned, HAND_PRESETS.beginner, 1), seed: 4, rate_Hz: 125, noise_m: 0.5e-3, noise_rad: 0.002 });

describe('a scripted hand looked through', () => {
  it.each([[60, 0], [125, 0.5e-3], [1000, 0.5e-3]])('at %i samples a second, noise %f m: the planned film, mean within 2 % and deviation within 0.02 of it', (rate_Hz, noise_m) => {
    const { sprayed, planned, figures, score, traces, strokesAsked } = debriefOf(sessionOf(steady(rate_Hz, noise_m)));
    expect(Math.abs(sprayed.figures.mean_m / planned.figures.mean_m - 1)).toBeLessThan(0.02);
    expect(Math.abs(sprayed.figures.cv - planned.figures.cv)).toBeLessThan(0.02);
    // The plan itself: six strokes 100 mm apart for 500 mm.
    expect([traces.length, strokesAsked]).toEqual([6, 6]);
    expect(sprayed.duration_s).toBeCloseTo(planned.duration_s, 1);
    expect(figures.evenness).toBe(sprayed.figures.cv);
    expect(score.isPassed).toBe(true);
  });
});

describe('a session beside the job', () => {
  /** What is printed of a coat: its report, its faults. Cures are off on both sides. */
  function printed({ setting, strokes, laid, verdict }: ReportedCoat): readonly unknown[] {
    const coat = { setting, strokes, laid, verdict };
    const report = (system: 'metric' | 'us') => reportText([coat], { name: JOB.name, seed: JOB.seed, curesTried: false }, system);
    return [report('metric'), report('us'), verdict.faults.map((fault) => faultJson(fault, setting.target)), verdict.inTargetFraction, laid.account];
  }

  function byJob({ name, strokes }: SessionSpec): ReportedCoat {
    const job = withRecording(JOB, COAT, { id: 'tape', name: `${name}.csv`, text: strokes });
    const [coat] = runJob(job, { coatIds: [COAT], cures: false });
    if (coat === undefined) throw new Error('no coat');
    return coat;
  }

  const session = sessionOf(BEGINNER);
  const debrief = debriefOf(session);

  it('is judged alike, to the last printed digit', () => {
    expect(debrief.coat.verdict.faults.length).toBeGreaterThan(1);
    expect(printed(debrief.coat)).toEqual(printed(byJob(session)));
  });

  it('is judged alike once its strokes were read and written again', () => {
    const again = [...writeRecording(readRecording([session.strokes], 'again.csv').path)].join('');
    expect(again).toBe(session.strokes);
    expect(printed(debriefOf({ ...session, strokes: again }).coat)).toEqual(printed(debrief.coat));
  });

  it('is judged and marked alike once it was saved and opened', () => {
    const opened = parseSession(serialiseSession(session), 'session.json');
    const other = debriefOf(opened);
    expect(printed(other.coat)).toEqual(printed(byJob(session)));
    expect([other.score, other.chief, other.figures]).toEqual([debrief.score, debrief.chief, debrief.figures]);
  });

  it('has its film watched as any coat’s, from the first row to the end of the watch', () => {
    const watched = debriefOf(sessionOf(BEGINNER, { watch_s: 30, job: { ...JOB, cell_mm: 8 } }));
    const { setting, strokes, coat } = watched;
    const { t_s, count } = strokes.path;
    const life = runLife(setting, strokes, { until_s: t_s[count - 1]! - t_s[0]! + 30 });
    expect(coat.life?.verdict).toEqual(judgeLife(life, strokes, { cures: false, laidFaults: coat.verdict.faults }));
    expect(coat.life?.verdict.figures.watched_s).toBeCloseTo(t_s[count - 1]! - t_s[0]! + 30, 6);
  });
});

describe('what a task asks for', () => {
  it('is all its strokes where the hand counts, and only the film where that counts', () => {
    const few = inOrder(one.planned, [0, 2, 4]);
    const hand = debriefOf(sessionOf(few, { counts: ['distance'] }));
    expect([hand.traces.length, hand.strokesAsked, hand.score.isPassed]).toEqual([3, 6, false]);
    expect(hand.score.rows.find(({ measure }) => measure === 'distance')?.isMet).toBe(true);
    const film = debriefOf(sessionOf(steady(100, 0), { counts: ['coverage'] }));
    expect([film.strokesAsked, film.score.isPassed]).toEqual([0, true]);
  });

  it('is marked by another rubric as if it had been marked by that at first, and nothing is laid again', () => {
    const strict: RubricSpec = { ...USUAL_RUBRIC, name: 'Strict', rows: USUAL_RUBRIC.rows.map((row) => (row.measure === 'evenness' ? { ...row, limit: 0.01, none: 5, weight: 50 } : row)) };
    const session = sessionOf(steady(100, 0));
    const usual = debriefOf(session);
    const again = markAgain(usual, strict);
    const first = debriefOf(session, strict);
    expect([again.score, again.chief]).toEqual([first.score, first.chief]);
    expect([usual.score.isPassed, again.score.isPassed]).toEqual([true, false]);
    expect(again.sprayed).toBe(usual.sprayed);
    expect(markAgain(again, USUAL_RUBRIC)).toEqual(usual);
  });
});

describe('looking a session through', () => {
  it('takes the cells that it is given, the job’s own where it is given none', () => {
    const session = sessionOf(steady(100, 0));
    expect(debriefOf(session).setting.panelGrid.grid.cellSize_m).toBeCloseTo(0.006, 9);
    const fine = debriefSession(session, USUAL_RUBRIC, { cell_mm: 3 });
    expect(fine.setting.panelGrid.grid.cellSize_m).toBeCloseTo(0.003, 9);
    expect(fine.coarse.panelGrid.grid.cellSize_m).toBeCloseTo(0.004, 9);
    // Cells of 3 or 6 mm under a fan of 50 × 200 mm: the mean is the liquid's.
    expect(Math.abs(fine.sprayed.figures.mean_m / debriefOf(session).sprayed.figures.mean_m - 1)).toBeLessThan(0.01);
  });

  it('ends with a cancelled error when it is told to', () => {
    expect(() => debriefSession(sessionOf(steady(100, 0)), USUAL_RUBRIC, { shouldStop: () => true })).toThrow(expect.objectContaining({ code: 'cancelled' }) as Error);
  });

  it('names the session in the error of strokes that cannot be read', () => {
    const session = sessionOf(steady(100, 0));
    expect(() => debriefOf({ ...session, strokes: `${session.strokes}99,x,0,0,0,0,0,0\n` })).toThrow(/morning\.csv/);
    expect(() => debriefOf({ ...session, task: { ...session.task, coat: 'other' } })).toThrow(/other/);
  });
});
