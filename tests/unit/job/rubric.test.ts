import { describe, expect, it } from 'vitest';
import { MEASURES } from '../../../sim/job/measures.ts';
import { parseRubric, USUAL_RUBRIC, type RubricRowSpec } from '../../../sim/job/rubric.ts';

function withRow(i: number, change: Record<string, unknown>): unknown {
  return { ...USUAL_RUBRIC, rows: USUAL_RUBRIC.rows.map((row, k) => (k === i ? { ...row, ...change } : row)) };
}

function indexOf(measure: RubricRowSpec['measure']): number {
  return USUAL_RUBRIC.rows.findIndex((row) => row.measure === measure);
}

/** The error that reading gives: its code, its place and its message. */
function faultOf(input: unknown, file?: string): { code: string; message: string; place: { pointer?: string; file?: string } } {
  try {
    parseRubric(input, file);
  } catch (thrown) {
    return thrown as ReturnType<typeof faultOf>;
  }
  throw new Error('it was read');
}

describe('the usual rubric', () => {
  it('is read back from its own text as it is, with or without a byte order mark', () => {
    const text = JSON.stringify(USUAL_RUBRIC);
    expect(parseRubric(text)).toEqual(USUAL_RUBRIC);
    expect(parseRubric(`\ufeff${text}`)).toEqual(USUAL_RUBRIC);
    expect(parseRubric(USUAL_RUBRIC)).toEqual(USUAL_RUBRIC);
  });

  it('marks every measure once, and its weights are per cent', () => {
    expect(USUAL_RUBRIC.rows.map(({ measure }) => measure)).toEqual([...MEASURES]);
    expect(USUAL_RUBRIC.rows.reduce((sum, { weight }) => sum + weight, 0)).toBe(100);
  });
});

describe('a rubric that cannot be used', () => {
  it('a measure with two rows: both places, the value, what to do', () => {
    const fault = faultOf(withRow(3, { measure: 'speed' }));
    expect(fault).toMatchObject({ code: 'schema', place: { pointer: '/rows/3/measure' } });
    expect(fault.message).toBe('parseRubric: the rubric: /rows/3/measure = "speed" is also marked by /rows/1; give each measure one row');
  });

  it.each([
    ['less is better, none below', 'distance', { none: 5 }, 'none = 5 is not above', 'limit = 12.5'],
    ['less is better, none on the limit', 'angle', { none: 10 }, 'none = 10 is not above', 'limit = 10'],
    ['more is better, none above', 'coverage', { none: 99 }, 'none = 99 is not below', 'limit = 98'],
    ['more is better, none on the limit', 'trigger', { none: 90 }, 'none = 90 is not below', 'limit = 90'],
  ] as const)('none on the wrong side, %s: place, value, limit, why, what to do', (_, measure, change, value, limit) => {
    const row = indexOf(measure);
    const fault = faultOf(withRow(row, change), 'course.json');
    expect(fault).toMatchObject({ code: 'schema', place: { pointer: `/rows/${row}/none`, file: 'course.json' } });
    expect(fault.message).toContain(`parseRubric: course.json: /rows/${row}/${value} /rows/${row}/${limit}`);
    expect(fault.message).toMatch(/\(the mark falls from the limit to there\); give another$/);
  });

  it('an unknown measure: its place, what it is, and what there is', () => {
    const fault = faultOf(withRow(2, { measure: 'sparkle' }));
    expect(fault).toMatchObject({ code: 'schema', place: { pointer: '/rows/2/measure' } });
    expect(fault.message).toMatch(/\/rows\/2\/measure = "sparkle": give "distance" or .*"time" \(what is marked\)/);
  });

  it.each([
    ['a weight below 0', withRow(0, { weight: -1 }), '/rows/0/weight', /= -1: give a number from 0 to 100/],
    ['a limit that is no number', withRow(0, { limit: NaN }), '/rows/0/limit', /= NaN: give a number from 0 to 10000/],
    ['a key that is not known', withRow(0, { limits: 3 }), '/rows/0/limits', /is not a known key; did you mean "limit"\?/],
    ['a missing key', { ...USUAL_RUBRIC, rows: [{ measure: 'speed', weight: 1, limit: 1 }] }, '/rows/0/none', /is missing; give a number/],
    ['no rows', { ...USUAL_RUBRIC, rows: [] }, '/rows', /a list of 0: give a list of 1 to 13/],
    ['another version', { ...USUAL_RUBRIC, rubricVersion: 2 }, '/rubricVersion', /= 2/],
  ] as const)('%s', (_, input, pointer, message) => {
    const fault = faultOf(input);
    expect(fault).toMatchObject({ code: 'schema', place: { pointer } });
    expect(fault.message).toContain(pointer);
    expect(fault.message).toMatch(message);
  });

  it('names every row that is wrong in one error', () => {
    const rows = USUAL_RUBRIC.rows.map((row) => ({ ...row, none: row.limit }));
    expect(faultOf({ ...USUAL_RUBRIC, rows }).message).toMatch(/13 problems\n {2}\/rows\/0\/none[^]*\/rows\/9\/none[^]*and 3 more$/);
  });

  it('is not JSON: where', () => {
    expect(faultOf('{"rubricVersion": 1,\n "name" "x"}', 'course.json')).toMatchObject({ code: 'not-json', place: { file: 'course.json', row: 2 } });
  });
});
