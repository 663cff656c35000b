import { describe, expect, it } from 'vitest';
import { demonstrationSentence, parseJob, serialiseJob } from '../../../sim/index.ts';
import { demonstrationById, DEMONSTRATIONS } from '../../../sim/run/demonstrations/demonstrations.ts';
import type { Demonstration } from '../../../sim/run/demonstrations/demonstration.ts';
import { pathWithHabits, withAirPasses, type StrokeHabit } from '../../../sim/run/demonstrations/handPaths.ts';
import { lessonJob } from '../../../sim/run/demonstrations/lessonJob.ts';
import { runDemonstration, type DemonstrationResult } from '../../../sim/run/demonstrations/runDemonstration.ts';
import { settleCoat } from '../../../sim/run/settle.ts';
import { byHand, planOf } from '../../../sim/run/strokes.ts';
import { FAULT_PLURALS } from '../../../sim/report/words.ts';
import { aimOf, poseOfRow, type Path } from '../../../sim/stroke/path.ts';
import type { Planned } from '../../../sim/stroke/plan.ts';

const ran = new Map<string, DemonstrationResult>();

function wrongRun(demonstration: Demonstration): DemonstrationResult {
  const known = ran.get(demonstration.id) ?? runDemonstration(demonstration, demonstration.knob.wrong);
  ran.set(demonstration.id, known);
  return known;
}

describe('every demonstration', () => {
  it('has an id of its own, and a wrong and a cured value within the knob, on its steps', () => {
    expect(new Set(DEMONSTRATIONS.map(({ id }) => id)).size).toBe(DEMONSTRATIONS.length);
    for (const { knob } of DEMONSTRATIONS) {
      for (const value of [knob.wrong, knob.cured]) {
        expect(value >= knob.low && value <= knob.high).toBe(true);
        const steps = (value - knob.low) / knob.step;
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9);
      }
      expect(knob.wrong).not.toBe(knob.cured);
    }
  });

  it.each(DEMONSTRATIONS.map((demonstration) => [demonstration.id, demonstration] as const))('%s shows its fault where it is wrong, and not where it is cured', (_, demonstration) => {
    const [shown, cured] = wrongRun(demonstration).sides;
    expect(shown?.faults).toContain(demonstration.fault);
    expect(cured?.faults).not.toContain(demonstration.fault);
    expect(shown?.time_s).toBeCloseTo(cured?.time_s ?? NaN, 6);
  });

  it.each(DEMONSTRATIONS.map((demonstration) => [demonstration.id, demonstration] as const))('%s can be opened as a job', (_, { job, knob }) => {
    for (const value of [knob.low, knob.wrong, knob.cured, knob.high]) {
      const stated = job(value);
      expect(parseJob(serialiseJob(stated)).job).toEqual(stated);
    }
  });

  it.each(DEMONSTRATIONS.map((demonstration) => [demonstration.id, demonstration] as const))('%s names a fault in its sentence only where it found one', (_, demonstration) => {
    const { low, high, wrong, cured } = demonstration.knob;
    for (const value of [low, wrong, cured, high]) {
      const run = value === wrong ? wrongRun(demonstration) : runDemonstration(demonstration, value);
      const said = demonstrationSentence(run, 'metric').split(/(?<=\.) (?=[A-Z])/);
      const told = run.sides.filter((side, i) => i !== 1 || side.knob !== run.sides[0]?.knob);
      expect(said).toHaveLength(told.length);
      told.forEach(({ faults }, i) => {
        const named = Object.entries(FAULT_PLURALS).filter(([, words]) => (said[i] ?? '').split('the model finds ')[1]?.includes(words)).map(([kind]) => kind);
        expect(named.sort()).toEqual([...faults].sort());
        expect((said[i] ?? '').includes('finds no fault')).toBe(faults.length === 0);
      });
    }
  });
});

describe('the sentences', () => {
  it('tell the figures of the run', () => {
    const run = wrongRun(demonstrationById('stop'));
    const [shown] = run.sides;
    const sentence = demonstrationSentence(run, 'metric');
    expect(sentence).toMatch(/^With a stop of 0\.6 s, the heaviest wet film is \d+ µm and the longest run is \d+ mm/);
    expect(sentence).toContain(`${Math.round((shown?.figures.heaviest_m ?? 0) * 1e6)} µm`);
    expect(sentence).toContain('Without a stop');
  });

  it('speak in mil and inches where asked', () => {
    expect(demonstrationSentence(wrongRun(demonstrationById('too-close')), 'us')).toMatch(/at 3\.15 in, .* mil/);
  });
});

describe('what a demonstration shows', () => {
  const figuresAt = (id: string, knob: number) => {
    const [side] = runDemonstration(demonstrationById(id), knob).sides;
    if (side === undefined) throw new Error('a demonstration has a side');
    return side.figures;
  };

  it('grows with the knob: a longer stop runs farther, more humidity leaves less margin', () => {
    const runs = [0, 0.2, 0.6].map((stop) => figuresAt('stop', stop).longestRun_m);
    expect(runs[0]).toBe(0);
    expect(runs[1]).toBeGreaterThan(0.02);
    expect(runs[2]).toBeGreaterThan((runs[1] ?? 0) + 0.02);
    const margins = [45, 60, 75].map((humidity) => figuresAt('damp-air', humidity).blushMargin_K);
    expect(margins).toEqual([...margins].sort((a, b) => b - a));
  });

  it('is cured twice over in damp air: by warming and by a retarder', () => {
    const [shown, , warmed, retarded] = wrongRun(demonstrationById('damp-air')).sides;
    for (const side of [warmed, retarded]) {
      expect(side?.faults).not.toContain('blush');
      expect(side?.figures.blushMargin_K).toBeGreaterThan(shown?.figures.blushMargin_K ?? NaN);
    }
  });

  it('soft air stills a run that no air lets go, and hard air lengthens it', () => {
    const [hard, soft, none] = wrongRun(demonstrationById('air-only')).sides;
    expect(hard?.figures.longestRun_m).toBeGreaterThan(none?.figures.longestRun_m ?? NaN);
    expect(soft?.figures.longestRun_m).toBe(0);
  });

  it('keeps the films of the times asked for, and does not call unsprayed places bare', () => {
    const { moments } = runDemonstration(demonstrationById('overlap'), 30, { at_s: [2, 30] });
    expect(moments.map((sides) => sides.length)).toEqual([3, 3]);
    const [[early], [late]] = moments as [[(typeof moments)[0][0]], [(typeof moments)[0][0]]];
    expect(early?.time_s).toBeCloseTo(2, 6);
    expect(early?.faults).toEqual([]);
    expect(late?.faults).toContain('thin-lap');
  });
});

describe('bad input', () => {
  it('is refused: a knob beyond its range, a time beyond the watch, an unknown name', () => {
    const stop = demonstrationById('stop');
    expect(() => runDemonstration(stop, 1.2)).toThrow(/stop: stop = 1\.2/);
    expect(() => runDemonstration(stop, NaN)).toThrow(/stop: stop = NaN/);
    expect(() => runDemonstration(stop, 0, { at_s: [stop.until_s + 1] })).toThrow(/time = 181/);
    expect(() => demonstrationById('wrist-ark')).toThrow(/did you mean "wrist-arc"/);
    expect(() => demonstrationById('xyzzy')).toThrow(/known are stop/);
  });

  it('stops when asked', () => {
    expect(() => runDemonstration(demonstrationById('stop'), 0.2, { shouldStop: () => true })).toThrow(expect.objectContaining({ code: 'cancelled' }) as Error);
  });
});

describe('a plan with habits', () => {
  const LAG_S = 0.08;
  const setting = settleCoat(lessonJob({ title: 'plan' }), 'shown');
  const planned: Planned = byHand(setting, planOf(setting, setting.plan));
  const end_s = (path: Path) => path.t_s[path.count - 1] as number;
  const withHabit = (habit: StrokeHabit | null) => pathWithHabits(planned, LAG_S, (stroke) => (stroke === 2 ? habit : null));

  it('is the plan where the hand has none, or does it for no time', () => {
    expect(withHabit(null)).toEqual(planned.path);
    expect(end_s(withHabit({ held_s: 0 }))).toBeCloseTo(end_s(planned.path), 12);
    expect(end_s(withHabit({ stop: { share: 0.5, duration_s: 0 } }))).toBeCloseTo(end_s(planned.path), 12);
  });

  it('takes the time that the habit takes', () => {
    const stroke_s = planned.strokes.slice(2, 3).map(({ firstRow, lastRow }) => (planned.path.t_s[lastRow] as number) - (planned.path.t_s[firstRow] as number))[0] ?? NaN;
    for (const held_s of [0.04, LAG_S, 0.3]) expect(end_s(withHabit({ held_s })) - end_s(planned.path)).toBeCloseTo(2 * held_s, 9);
    expect(end_s(withHabit({ stop: { share: 0.5, duration_s: 0.7 } })) - end_s(planned.path)).toBeCloseTo(0.7, 9);
    expect(end_s(withHabit({ pace: 0.5 })) - end_s(planned.path)).toBeCloseTo(stroke_s, 9);
  });

  it('has the trigger pulled for the stroke and what it is held: fluid runs that long', () => {
    const open_s = (path: Path) => {
      let sum = 0;
      for (let row = 0; row + 1 < path.count; row++) if ((path.trigger[row] as number) === 1) sum += (path.t_s[row + 1] as number) - (path.t_s[row] as number);
      return sum;
    };
    for (const held_s of [0.04, LAG_S, 0.3]) expect(open_s(withHabit({ held_s })) - open_s(planned.path)).toBeCloseTo(2 * held_s, 9);
  });

  it('swings the aim from end to end of the planned stroke, and farther off at the ends', () => {
    const path = withHabit({ swing_rad: 0.4 });
    const { firstRow, meant } = planned.strokes[2] ?? planned.strokes[0]!;
    const first = poseOfRow(path, firstRow);
    const last = poseOfRow(path, firstRow + 40);
    const middle = poseOfRow(path, firstRow + 20);
    expect(aimOf(first).x_m).toBeCloseTo(poseOfRow(planned.path, firstRow).x_m, 9);
    expect(Math.abs(aimOf(last).x_m - aimOf(first).x_m)).toBeCloseTo(Math.abs(meant.end_m[0] - meant.start_m[0]), 9);
    expect(aimOf(first).tilt_rad).toBeCloseTo(0.4, 9);
    expect(middle.z_m).toBeCloseTo(setting.plan.distance_m, 9);
    expect(first.z_m - middle.z_m).toBeCloseTo(0.15 * (1 - Math.cos(0.4)), 9);
  });

  it('goes on with air alone, and no fluid', () => {
    const path = withAirPasses(planned.path, { from_m: [0.1, 0.3], to_m: [0.1, 0.1], distance_m: 0.1, speed_m_s: 0.2, count: 3 });
    expect(end_s(path)).toBeCloseTo(end_s(planned.path) + 1 + 3, 9);
    expect([...path.trigger.subarray(planned.path.count)]).toEqual([0.5, 0.5, 0.5, 0]);
  });
});
