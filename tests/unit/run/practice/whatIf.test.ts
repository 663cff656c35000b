import { describe, expect, it } from 'vitest';
import type { WhatIfHabit } from '../../../../sim/report/reportedDebrief.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import type { Debrief } from '../../../../sim/run/practice/debrief.ts';
import { whatIf, WHAT_IFS } from '../../../../sim/run/practice/whatIf.ts';
import { planOf } from '../../../../sim/run/strokes.ts';
import { pathFrom, type Path } from '../../../../sim/stroke/path.ts';
import { makeSession, type HandFaults } from '../../../helpers/session.ts';
import { debriefed, ready, rowsOf, withHabit, type Ready } from '../drills/sprayed.ts';

/** Level, six strokes with half overlap; limits of ± 8 %, so that what a habit costs shows in the target share. */
const LEVEL = tight(ready(drillById('half-overlap')));

function tight(one: Ready): Ready {
  const coats = one.job.coats.map((coat) => ({ ...coat, target: { ...coat.target, min_percent: 92, max_percent: 108 } }));
  return { ...one, job: { ...one.job, cell_mm: 8, coats } };
}

/** The plan recorded 200 times a second with a habit of the hand. */
function sprayed(path: Path, faults: HandFaults = {}): Debrief {
  return debriefed(LEVEL, makeSession({ planned: { ...LEVEL.planned, path }, seed: 1, rate_Hz: 200, noise_m: 0, noise_rad: 0, faults }));
}

/** What each correction gains in target share. */
function gainsOf(debrief: Debrief): Record<WhatIfHabit, number> {
  return Object.fromEntries(WHAT_IFS.map((habit) => [habit, whatIf(debrief, habit).other.inTargetFraction - debrief.sprayed.inTargetFraction])) as Record<WhatIfHabit, number>;
}

const ALL = LEVEL.planned.strokes.map(({ index }) => index);

/** One habit each, and how much of the panel it must have cost for the comparison to say anything. */
const PLANTED: readonly (readonly [WhatIfHabit, string, () => Debrief])[] = [
  ['even-speed', 'every other stroke at seven tenths of the pace', () => sprayed(withHabit(LEVEL, { pace: 0.7 }, (stroke) => stroke % 2 === 1))],
  ['no-arc', 'an arc of ± 40° about the wrist, the aim at the plan’s pace', () => sprayed(LEVEL.planned.path, { arc: { strokes: ALL, radius_m: 0.15, swing_rad: 0.7 } })],
  ['even-distance', 'half the strokes from 270 mm', () => sprayed(withHabit(LEVEL, { distance_m: 0.27 }, (stroke) => stroke > 2))],
  ['right-overlap', 'three tenths of overlap', () => sprayed(planOf(LEVEL.setting, { ...LEVEL.setting.plan, overlapFraction: 0.3 }).path)],
  ['trigger-past-edge', 'fluid on 80 mm inside the edge', () => sprayed(late(0.14))],
];

/** A tilt along the travel spreads the fan along the stroke only: what an arc costs is its distance, so holding that gives the same film. */
const SAME_FILM: Readonly<Partial<Record<WhatIfHabit, readonly WhatIfHabit[]>>> = { 'no-arc': ['even-distance'] };

describe('what if', () => {
  it('asks about five habits', () => {
    expect(PLANTED.map(([habit]) => habit)).toEqual(WHAT_IFS);
  });

  it.each(PLANTED)('%s gains most where the hand had %s', (habit, _, spray) => {
    const gains = gainsOf(spray());
    const others = WHAT_IFS.filter((other) => other !== habit && !SAME_FILM[habit]?.includes(other)).map((other) => gains[other]);
    // A twentieth of the panel is some two hundred cells.
    expect(gains[habit]).toBeGreaterThan(0.05);
    expect(gains[habit], JSON.stringify(gains)).toBeGreaterThan(Math.max(...others));
    for (const other of SAME_FILM[habit] ?? []) expect(gains[habit]).toBeGreaterThanOrEqual(gains[other]);
  });

  it('changes nothing that matters in a session without habits', () => {
    const debrief = sprayed(LEVEL.planned.path);
    expect(debrief.sprayed.inTargetFraction).toBe(1);
    for (const habit of WHAT_IFS) {
      const { other, strokes } = whatIf(debrief, habit);
      expect(other.inTargetFraction, habit).toBe(1);
      expect(Math.abs(other.figures.mean_m / debrief.sprayed.figures.mean_m - 1), habit).toBeLessThan(0.005);
      if (habit === 'no-arc') expect(strokes).toBe(0);
    }
  });

  it('gives back the planned film where the one habit is taken out', () => {
    const { other, strokes } = whatIf(PLANTED[2]![2](), 'even-distance');
    expect(strokes).toBe(6);
    expect(Math.abs(other.figures.mean_m / whatIf(sprayed(LEVEL.planned.path), 'no-arc').other.figures.mean_m - 1)).toBeLessThan(0.005);
  });

  it('leaves the session as it was, and can be asked again', () => {
    const debrief = PLANTED[0]![2]();
    const before = structuredClone({ path: debrief.strokes.path, film: debrief.sprayed.film });
    const once = whatIf(debrief, 'even-speed');
    expect({ path: debrief.strokes.path, film: debrief.sprayed.film }).toEqual(before);
    expect(whatIf(debrief, 'even-speed')).toEqual(once);
  });

  it('takes the stops out with the even speed', () => {
    const debrief = sprayed(withHabit(LEVEL, { stop: { share: 0.5, duration_s: 0.7 } }, (stroke) => stroke === 2));
    expect(whatIf(debrief, 'even-speed').other.figures.max_m).toBeLessThan(debrief.sprayed.figures.max_m / 5);
  });

  it('stops when it is told to', () => {
    const debrief = sprayed(LEVEL.planned.path);
    // One pass is laid between two questions; the film's life asks at every step.
    const watched = { ...debrief, task: { ...debrief.task, watch_s: 60 } };
    expect(() => whatIf(watched, 'even-speed', { shouldStop: () => true })).toThrow(expect.objectContaining({ code: 'cancelled' }) as Error);
  });
});

/** The plan with fluid on so much of travel later, on every stroke. */
function late(late_m: number): Path {
  const { path, strokes } = LEVEL.planned;
  const rows = rowsOf(path);
  for (const { firstRow, meant } of strokes) {
    const row = rows[firstRow]!;
    const way = Math.sign(meant.end_m[0] - meant.start_m[0]);
    rows[firstRow] = { ...row, t_s: row.t_s + late_m / meant.speed_m_s, x_m: row.x_m + way * late_m };
  }
  return pathFrom(rows);
}
