import { csvParse } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { USUAL_RUBRIC } from '../../../../sim/job/rubric.ts';
import type { Score } from '../../../../sim/verdict/score.ts';
import { cellOf, classCsv, classMeasures, missCount, missesOf, sortedRows, withOpened, type ClassRow } from '../../../../src/app/practice/classTable.ts';
import { classReply, score, session } from './samples.ts';

const good = score({ distance: 0.01, coverage: 0.99 });
const far = score({ distance: 0.03, coverage: 0.99 });
const blank = score({ coverage: 0.5 });

function row(key: number, trainee: string, marks: Score | null): ClassRow {
  return { key, file: `${key}.json`, session: session({ trainee }), reply: marks === null ? null : classReply('session-1', marks), problem: null };
}

describe('withOpened', () => {
  it('keeps sessions of one id apart by trainee, and takes the same one once', () => {
    const first = withOpened([], [{ file: 'a', session: session() }, { file: 'b', session: session({ trainee: 'Trainee B' }) }]);
    const again = withOpened(first, [{ file: 'c', session: session() }, { file: 'd', session: session({ strokes: 'others' }) }]);
    expect(again.map(({ key, file }) => [key, file])).toEqual([[1, 'a'], [2, 'b'], [3, 'd']]);
  });
});

describe('sortedRows', () => {
  const rows = [row(1, 'Trainee C', blank), row(2, 'Trainee A', null), row(3, 'Trainee B', good)];
  it('goes by name', () => {
    expect(sortedRows(rows, 'name').map(({ key }) => key)).toEqual([2, 3, 1]);
  });
  it('goes by total, best first, unmarked last', () => {
    expect(sortedRows(rows, 'total').map(({ key }) => key)).toEqual([3, 1, 2]);
  });
});

describe('criteria', () => {
  it('are met, missed with a figure, missed for want of one, or not asked for', () => {
    expect(cellOf(row(1, 'A', good), 'distance')).toEqual({ kind: 'met' });
    expect(cellOf(row(1, 'A', far), 'distance')).toEqual({ kind: 'missed', value: 0.03 });
    expect(cellOf(row(1, 'A', blank), 'distance')).toEqual({ kind: 'missed', value: null });
    expect(cellOf(row(1, 'A', good), 'speed')).toEqual({ kind: 'not-asked' });
    expect(cellOf(row(1, 'A', null), 'distance')).toEqual({ kind: 'waiting' });
    expect(cellOf(row(1, 'A', { ...good, rows: [] }), 'distance')).toEqual({ kind: 'no-limit' });
  });

  it('are counted over the sessions that were marked', () => {
    const rows = [row(1, 'A', good), row(2, 'B', far), row(3, 'C', blank), row(4, 'D', null)];
    expect(missCount(rows, 'distance')).toEqual({ missed: 2, of: 3 });
    expect(missCount(rows, 'coverage')).toEqual({ missed: 1, of: 3 });
    expect(missCount(rows, 'speed')).toEqual({ missed: 0, of: 0 });
    expect(classMeasures(rows)).toEqual(['distance', 'coverage']);
  });

  it('missed are listed in an instructor’s order, those without a limit too', () => {
    const { task } = session();
    expect(missesOf(task, good)).toEqual([]);
    expect(missesOf(task, { ...blank, rows: blank.rows.filter(({ measure }) => measure !== 'distance') }).map(({ measure, cell }) => [measure, cell.kind])).toEqual([
      ['distance', 'no-limit'],
      ['coverage', 'missed'],
    ]);
  });
});

describe('classCsv', () => {
  it('gives figures as numbers in the reader’s unit, and whether each is met', () => {
    const [line] = csvParse(classCsv([row(1, 'Trainee A', far)], USUAL_RUBRIC, 'metric'));
    // 30 mm lies 17.5 of 37.5 mm beyond the limit: marks (10 × 20/37.5 + 12 × 1) / 22 = 78.79 %.
    expect(line).toMatchObject({ Trainee: 'Trainee A', Drill: 'Flat panel', Passed: 'no', 'Total (%)': '78.79', 'Gun distance (mm)': '30', 'Gun distance met': 'no', 'Coverage (%)': '99', 'Coverage met': 'yes' });
    expect(csvParse(classCsv([row(1, 'A', far)], USUAL_RUBRIC, 'us'))[0]).toMatchObject({ 'Gun distance (in)': '1.181' });
  });

  it('guards a name that a spreadsheet would run, and quotes what holds a comma', () => {
    const text = classCsv([row(1, '=HYPERLINK("x","y")', good)], USUAL_RUBRIC, 'metric');
    expect(csvParse(text)[0]!['Trainee']).toBe('\'=HYPERLINK("x","y")');
  });

  it('leaves cells of an unmarked session empty, in as many columns', () => {
    const text = classCsv([row(1, 'A', null), row(2, 'B', good)], USUAL_RUBRIC, 'metric');
    const widths = text.trimEnd().split('\r\n').map((each) => each.split(',').length);
    expect(new Set(widths).size).toBe(1);
    expect(csvParse(text)[0]).toMatchObject({ 'Total (%)': '', Passed: 'not marked yet', 'Gun distance (mm)': '', 'Gun distance met': '' });
  });
});
