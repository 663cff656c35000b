import { describe, expect, it } from 'vitest';
import { parseSurveyReadings, readingsCsv, type ReadingSpec } from '../../../../sim/index.ts';

describe('readingsCsv', () => {
  it('is read back as it was, whatever the kinds', () => {
    const readings: ReadingSpec[] = [
      { kind: 'metal', dry_um: 50.8, x_mm: 120, y_mm: 80.5, area: 'tip, left', spot: '1', at: '2026-05-04T08:10+02:00', note: 'said "odd"' },
      { kind: 'coupon', before_g: 4.4, after_g: 4.64, area_cm2: 400 },
      { kind: 'micrometer', before_um: 1200, after_um: 1251.3 },
      { kind: 'comb', low_um: 75, high_um: 100 },
      { kind: 'comb', low_um: 200 },
      { kind: 'metal', dry_um: -1.5 },
    ];
    expect(parseSurveyReadings(readingsCsv(readings)).readings).toEqual(readings);
  });

  it('has only the columns that hold something, and one at least', () => {
    expect(readingsCsv([{ kind: 'metal', dry_um: 50 }])).toBe('dft_um\r\n50\r\n');
    expect(readingsCsv([])).toBe('dft_um\r\n');
  });

  it('holds no cell that a spreadsheet would take for a formula', () => {
    const text = readingsCsv([{ kind: 'metal', dry_um: 50, area: '=1+1', spot: '@cmd', note: '+cmd|calc' }]);
    expect(text.split('\r\n')[1]).toBe('\'=1+1,\'@cmd,50,\'+cmd|calc');
  });
});
