import { describe, expect, it } from 'vitest';
import { MEASURES, parseRubric, USUAL_RUBRIC, type Measure, type RubricRowSpec } from '../../../sim/index.ts';
import { rubricText, rubricUnit, typedRow, withMeasure, withoutRow, withRow } from '../../../src/views/practice/debrief/rubricDrafts.ts';

function usual(measure: Measure): RubricRowSpec {
  return USUAL_RUBRIC.rows.find((row) => row.measure === measure)!;
}

describe('typedRow', () => {
  it('is the row itself where nothing is typed', () => {
    for (const row of USUAL_RUBRIC.rows) expect(typedRow(row, {}, 'us')).toEqual({ row, problems: {} });
  });

  it('reads the reader’s unit and any other', () => {
    expect(typedRow(usual('distance'), { 'distance/limit': '1' }, 'us').row.limit).toBe(25.4);
    expect(typedRow(usual('distance'), { 'distance/limit': '1 in' }, 'metric').row.limit).toBe(25.4);
    expect(typedRow(usual('stops'), { 'stops/limit': '0.25' }, 'us').row.limit).toBe(0.25);
    expect(typedRow(usual('angle'), { 'angle/limit': '12' }, 'us').row.limit).toBe(12);
  });

  it.each([
    ['weight', '101', /outside 0 to 100/],
    ['weight', 'heavy', /not a number/],
    ['weight', '', /Nothing is typed/],
    ['limit', '-1', /outside 0/],
    ['none', '12.5', /must lie above the limit/],
  ] as const)('tells that %s "%s" is wrong and keeps the row', (field, text, told) => {
    const { row, problems } = typedRow(usual('distance'), { [`distance/${field}`]: text }, 'metric');
    expect(problems[field]).toMatch(told);
    expect(row).toBe(usual('distance'));
  });

  it('wants no mark below the limit where more is better', () => {
    expect(typedRow(usual('coverage'), { 'coverage/none': '98' }, 'metric').problems.none).toMatch(/must lie below/);
    expect(typedRow(usual('coverage'), { 'coverage/none': '97' }, 'metric').problems).toEqual({});
  });

  it('takes two fields that are right only together', () => {
    const one = typedRow(usual('distance'), { 'distance/limit': '60' }, 'metric');
    expect(one.row.limit).toBe(12.5);
    const both = typedRow(usual('distance'), { 'distance/limit': '60', 'distance/none': '100' }, 'metric');
    expect(both).toEqual({ row: { measure: 'distance', weight: 10, limit: 60, none: 100 }, problems: {} });
  });

  it('takes nothing that a rubric’s file does not', () => {
    const texts = ['0', '0.5', '15', '99', '100', '100.5', '9999', '10000', '10001', '-0.1', 'x'];
    let [taken, refused] = [0, 0];
    for (const measure of MEASURES) {
      for (const limit of texts) {
        for (const none of texts) {
          const row = usual(measure);
          const typed = typedRow(row, { [`${measure}/limit`]: limit, [`${measure}/none`]: none }, 'metric');
          const asFile = (): unknown => parseRubric({ ...USUAL_RUBRIC, rows: [{ ...row, limit: Number(limit), none: Number(none) }] });
          if (Object.keys(typed.problems).length === 0) {
            taken++;
            expect(parseRubric({ ...USUAL_RUBRIC, rows: [typed.row] }).rows).toEqual([typed.row]);
          } else {
            refused++;
            expect(asFile, `${measure} ${limit} ${none}`).toThrow();
          }
        }
      }
    }
    expect(Math.min(taken, refused)).toBeGreaterThan(100);
  });
});

describe('rubricText', () => {
  it('shows what is typed before the value, in the reader’s unit', () => {
    expect(rubricText(usual('distance'), 'none', {}, 'us')).toBe('1.9685');
    expect(rubricText(usual('distance'), 'none', { 'distance/none': '2 f' }, 'us')).toBe('2 f');
    expect(rubricUnit('distance', 'none', 'us')).toBe('in');
    expect(rubricUnit('coverage', 'limit', 'us')).toBe('%');
    expect(rubricUnit('distance', 'weight', 'us')).toBe('');
  });
});

describe('rows of a rubric', () => {
  it('puts one in its place', () => {
    const changed = withRow(USUAL_RUBRIC, { ...usual('speed'), weight: 3 });
    expect(changed.rows.map(({ weight }) => weight)).toEqual(USUAL_RUBRIC.rows.map(({ measure, weight }) => (measure === 'speed' ? 3 : weight)));
  });

  it('takes in a measure that was not marked, in the usual order', () => {
    const few = { ...USUAL_RUBRIC, rows: [{ ...usual('distance'), weight: 1 }, usual('angle')] };
    expect(withMeasure(few, 'speed').rows.map(({ measure, weight }) => `${measure} ${weight}`)).toEqual(['distance 1', 'speed 10', 'angle 10']);
  });

  it('forgets what was typed in one row only', () => {
    expect(withoutRow({ 'dust/limit': '1', 'distance/limit': '2' }, 'dust')).toEqual({ 'distance/limit': '2' });
  });
});
