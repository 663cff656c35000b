import { csvParse } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { FILM_CSV_HEADER, filmCsvRows } from '../../../sim/report/filmCsv.ts';
import { strokesCsvRows } from '../../../sim/report/strokesCsv.ts';
import { filmOf, gridOf } from '../picture/fields.ts';
import { sampleCoats } from './sampleCoat.ts';

describe('filmCsvRows', () => {
  it('has one row for each cell inside, at its centre, from the lowest row up', () => {
    const film = filmOf(2, 2, [0, 20, 30, 40], [0, 1, 2, 3]);
    expect([...filmCsvRows(film, gridOf(film, [1, 1, 0, 0.5]))]).toEqual([
      FILM_CSV_HEADER,
      '1,1,0,0,,0,1',
      '3,1,20,4,0.2,1,1',
      '3,3,40,8,0.2,3,0.5',
    ]);
  });
});

describe('strokesCsvRows', () => {
  const measures = sampleCoats()[0]?.strokes.measures ?? [];

  it('reads back to the measures', () => {
    const rows = csvParse([...strokesCsvRows(measures)].join('\n'));
    expect(rows).toHaveLength(measures.length);
    expect(measures.length).toBeGreaterThan(1);
    rows.forEach((row, i) => {
      expect(Number(row['stroke'])).toBe(i + 1);
      // Seven figures are written.
      expect(Number(row['length_mm'])).toBeCloseTo((measures[i]?.length_m ?? NaN) * 1000, 3);
    });
    expect(rows[0]?.['overlap_percent']).toBe('');
    expect(Number(rows[1]?.['overlap_percent'])).toBeCloseTo(30, 3);
  });
});
