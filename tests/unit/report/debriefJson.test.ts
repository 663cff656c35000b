import { describe, expect, it } from 'vitest';
import { MEASURES } from '../../../sim/job/measures.ts';
import { USUAL_RUBRIC } from '../../../sim/job/rubric.ts';
import { debriefJson } from '../../../sim/report/debriefJson.ts';
import { chiefSentence, markSentence, whatIfSentence } from '../../../sim/report/debriefText.ts';
import type { ReportedWhatIf } from '../../../sim/report/reportedDebrief.ts';
import { drillById } from '../../../sim/run/drills/drills.ts';
import type { Debrief } from '../../../sim/run/practice/debrief.ts';
import { whatIf, WHAT_IFS } from '../../../sim/run/practice/whatIf.ts';
import { pathFrom } from '../../../sim/stroke/path.ts';
import { debriefed, ready, rowsOf, withHabit } from '../run/drills/sprayed.ts';

const one = ready(drillById('half-overlap'));
const coarse = { ...one, job: { ...one.job, cell_mm: 10 } };
const debrief: Debrief = debriefed(coarse, withHabit(coarse, { distance_m: 0.28 }));
const whatIfs: readonly ReportedWhatIf[] = WHAT_IFS.map((habit) => whatIf(debrief, habit));
const json = debriefJson(debrief, whatIfs, 'metric');

interface MeasureJson {
  readonly measure: string;
  readonly unit: string;
  readonly value: number | null;
  readonly [key: string]: unknown;
}

function measuresOf(of: typeof json): Record<string, MeasureJson> {
  return Object.fromEntries((of['measures'] as unknown as MeasureJson[]).map((each) => [each.measure, each]));
}

/** Every number of a value. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('a debrief as JSON', () => {
  it('says who, what, and the same sentences as the text', () => {
    expect(json).toMatchObject({ task: 'half-overlap', title: one.drill.title, trainee: '', name: 'session', passed: false });
    expect([json['sentence'], json['verdict']]).toEqual([chiefSentence(debrief, 'metric'), markSentence(debrief, 'metric')]);
    expect(debriefJson(debrief, [], 'us')['sentence']).toBe(chiefSentence(debrief, 'us'));
  });

  it('survives JSON as it is: every number finite', () => {
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(numbersIn(json).every(Number.isFinite)).toBe(true);
    expect(numbersIn(json).length).toBeGreaterThan(100);
  });

  it('has every measure with its unit, its limits as the rubric states them, its mark in per cent', () => {
    const measures = measuresOf(json);
    expect(Object.keys(measures)).toEqual([...MEASURES]);
    for (const { measure, limit, none, weight } of USUAL_RUBRIC.rows) expect(measures[measure]).toMatchObject({ limit: expect.closeTo(limit, 6) as number, none: expect.closeTo(none, 6) as number, weight });
    expect(Object.values(measures).filter(({ asked }) => asked === true).map(({ measure }) => measure)).toEqual(one.drill.counts);
    // 80 mm too far on every stroke: 80 mm, and 1 - (1 - 0.5) / (280 / 200) - 0.5 = 14.3 % of overlap too much; a mark of (35 - 14.3) / 25.
    expect(measures['distance']).toMatchObject({ unit: 'mm', value: expect.closeTo(1e3 * debrief.figures.distance!, 6) as number, mark_percent: 0, met: false, asked: false });
    // Smoothing over 0.1 s rounds the step to 80 mm at both ends of a stroke of 2 s.
    expect(Math.abs(measures['distance']!.value! / 80 - 1)).toBeLessThan(0.02);
    expect(measures['overlap']).toMatchObject({ unit: 'percent', value: expect.closeTo(100 * (0.5 - 0.5 / 1.4), 0) as number, mark_percent: expect.closeTo(82.9, 0) as number, met: false, asked: true });
    expect(measures['angle']).toMatchObject({ unit: 'deg', limit: expect.closeTo(10, 9) as number, mark_percent: 100, met: true });
    expect(measures['stops']).toMatchObject({ unit: 's', value: 0 });
  });

  it('has the film beside the planned one and each question’s, in stated units', () => {
    const { figures, inTargetFraction, account, duration_s } = debrief.sprayed;
    expect(json['sprayed']).toMatchObject({
      mean_um: expect.closeTo(figures.mean_m * 1e6, 3) as number,
      cv_percent: expect.closeTo(figures.cv * 100, 3) as number,
      inTarget_percent: expect.closeTo(inTargetFraction * 100, 3) as number,
      sprayed_mL: expect.closeTo(account.sprayed_m3 * 1e6, 3) as number,
      duration_s: expect.closeTo(duration_s, 3) as number,
    });
    expect((json['planned'] as { mean_um: number }).mean_um).toBeGreaterThan((json['sprayed'] as { mean_um: number }).mean_um);
    expect(json['whatIf']).toHaveLength(5);
    (json['whatIf'] as readonly Record<string, unknown>[]).forEach((each, i) => expect(each).toMatchObject({ habit: WHAT_IFS[i], strokes: whatIfs[i]!.strokes, sentence: whatIfSentence(whatIfs[i]!, debrief, 'metric') }));
  });

  it('has the areas of faults in mm²', () => {
    const kinds = Object.entries(debrief.sprayed.areas_m2);
    expect(kinds.length).toBeGreaterThan(0);
    for (const [kind, area_m2] of kinds) expect((json['sprayed'] as { faults_mm2: Record<string, number> }).faults_mm2[kind]).toBeCloseTo(area_m2 * 1e6, 3);
  });

  it('has every stroke', () => {
    expect(json['strokes']).toHaveLength(debrief.coat.strokes.measures.length);
  });

  it('has null where there is nothing to measure', () => {
    const nothing = debriefed(coarse, pathFrom(rowsOf(one.planned.path).map((row) => ({ ...row, trigger: 0 }))));
    const empty = debriefJson(nothing, [], 'metric');
    expect(measuresOf(empty)['distance']).toMatchObject({ value: null, mark_percent: 0, met: false });
    expect(empty).toMatchObject({ total_percent: 0, passed: false, strokes: [], whatIf: [] });
    expect(debriefJson({ ...nothing, score: { ...nothing.score, total: NaN } }, [], 'metric')['total_percent']).toBeNull();
  });
});
