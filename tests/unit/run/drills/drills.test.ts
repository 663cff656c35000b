import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../../sim/job/parse.ts';
import { USUAL_RUBRIC } from '../../../../sim/job/rubric.ts';
import { serialiseJob } from '../../../../sim/job/serialise.ts';
import type { Drill } from '../../../../sim/run/drills/drill.ts';
import { DRILLS, drillById } from '../../../../sim/run/drills/drills.ts';
import { asAsked, debriefed, inOrder, missed, ready } from './sprayed.ts';

const EACH = DRILLS.map((drill) => [drill.id, drill] as const);

describe('every drill', () => {
  it('has an id and a title of its own', () => {
    expect(DRILLS).toHaveLength(12);
    expect(new Set(DRILLS.map(({ id }) => id)).size).toBe(12);
    expect(new Set(DRILLS.map(({ title }) => title)).size).toBe(12);
  });

  it.each(EACH)('%s is a job that a file can hold, and settles without a doubt', (_, drill) => {
    const job = drill.job();
    expect(parseJob(serialiseJob(job))).toEqual({ job, warnings: [] });
    expect(ready(drill).setting.warnings).toEqual([]);
  });

  it.each(EACH)('%s fits a screen and takes 10 to 90 s to spray', (_, drill) => {
    const { planned, setting } = ready(drill);
    const seconds = planned.path.t_s[planned.path.count - 1] ?? NaN;
    expect(seconds).toBeGreaterThan(10);
    expect(seconds).toBeLessThan(90);
    const { grid } = setting.panelGrid;
    expect(Math.max(grid.columns, grid.rows) * grid.cellSize_m).toBeLessThanOrEqual(0.7 + grid.cellSize_m);
  });

  it.each(EACH)('%s states in its criterion the figure of every measure that counts', (_, { counts, criterion }) => {
    expect(counts.length).toBeGreaterThan(0);
    for (const measure of counts) {
      const row = USUAL_RUBRIC.rows.find((one) => one.measure === measure);
      expect(criterion).toContain(measure === 'runs' ? 'no film runs' : String(row?.limit));
    }
  });

  it.each(EACH)('%s says what to do in a few short sentences, whence it comes and what to mind', (_, drill: Drill) => {
    expect(drill.task.split(/(?<=[.?]) (?=[A-Z])/).length).toBeLessThanOrEqual(3);
    for (const text of [drill.task, drill.criterion, drill.evidence, drill.source, drill.caution]) expect(text).toMatch(/\.$/);
    expect(drill.source).toMatch(/common practice|Assumed/i);
    expect(drill.caution).not.toMatch(/is safe|are safe/);
  });

  it.each(EACH)('%s watches the film long enough where the film’s life counts', (_, { counts, watch_s }) => {
    if (counts.includes('runs') || counts.includes('dry-laps')) expect(watch_s).toBeGreaterThanOrEqual(240);
  });

  it.each(EACH)('%s is passed by its planned strokes', (_, drill) => {
    const one = ready(drill);
    const session = debriefed(one, asAsked(one));
    expect(missed(session)).toEqual([]);
    expect(session.score.isPassed).toBe(true);
    expect(session.chief.kind).toBe('met');
  });

  it('edges-first is passed in the order that it asks for: both edges, then the field', () => {
    const one = ready(drillById('edges-first'));
    expect(one.planned.strokes.map(({ meant }) => Math.round(meant.start_m[1] * 1e3))).toEqual([0, 100, 200, 300, 400]);
    expect(missed(debriefed(one, inOrder(one.planned, [0, 4, 1, 2, 3])))).toEqual([]);
  });
});

describe('a drill by its id', () => {
  it('is found, or those there are are named', () => {
    for (const drill of DRILLS) expect(drillById(drill.id)).toBe(drill);
    expect(() => drillById('cross-cote')).toThrow(expect.objectContaining({ code: 'not-found' }) as Error);
    expect(() => drillById('cross-cote')).toThrow(/did you mean "cross-coat"\? known are square-and-steady, .*, two-coats$/);
    expect(() => drillById('xyzzy')).toThrow(/^drill: there is no drill "xyzzy"; known are square-and-steady/);
  });
});
