import { describe, expect, it } from 'vitest';
import { planJson, planText } from '../../../sim/report/planReport.ts';
import { reportText } from '../../../sim/report/reportText.ts';
import { strokesTable } from '../../../sim/report/strokesTable.ts';
import { wrapped } from '../../../sim/report/textLines.ts';
import { textTable } from '../../../sim/report/textTable.ts';
import { sampleCoats } from './sampleCoat.ts';

const coats = sampleCoats();
const JOB = { name: 'Board', seed: 20 };

describe('reportText', () => {
  const text = reportText(coats, JOB, 'metric');

  it('fits a plain terminal', () => {
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('has figures, paint, faults with cause and cure, cautions, seed and limits', () => {
    for (const part of ['film, µm', 'Inside the limits:', 'mL sprayed', '1. ', '   Cause: ', '   Cure: ', 'Before spraying', 'Seed 20.', 'A teaching and planning estimate']) {
      expect(text).toContain(part);
    }
    expect(text).not.toMatch(/NaN|undefined|null|\?/);
  });

  it('leaves cures out where none were tried', () => {
    expect(reportText(coats, { ...JOB, curesTried: false }, 'metric')).not.toContain('Cure: ');
  });

  it('speaks only mil, in and fl oz in US units', () => {
    const figures = reportText(coats.map((coat) => ({ ...coat, setting: { ...coat.setting, warnings: [] } })), JOB, 'us');
    expect(figures).toContain('film, mil');
    expect(figures).toContain('fl oz US sprayed');
    expect(figures).not.toMatch(/ (µm|mm|mL|cm²)\b/);
  });

  it('shows a warning of the job file', () => {
    const warnings = [{ code: 'defaults-used', text: 'the cell was taken as 2 mm', place: {} }] as const;
    expect(reportText(coats, { ...JOB, warnings }, 'metric')).toContain('- the cell was taken as 2 mm');
  });
});


describe('planText', () => {
  it('has one row a stroke', () => {
    const rows = planText(coats, JOB, 'metric').split('\n').filter((line) => /^\d+ +\d+ /.test(line));
    expect(rows).toHaveLength(coats[0]?.strokes.measures.length ?? -1);
  });

  it('counts the paint by the time with the fluid on', () => {
    const [panel] = planJson(coats, JOB)['panels'] as { sprayTime_s: number; sprayed_mL: number }[];
    const rate_mL_s = (coats[0]?.setting.setUp.fluidRate_m3_s ?? NaN) * 1e6;
    expect(panel?.sprayed_mL).toBeCloseTo((panel?.sprayTime_s ?? NaN) * rate_mL_s, 9);
    // What the run itself sprayed: the planned time is exact, so only the lag's rounding is between them.
    expect(panel?.sprayed_mL).toBeCloseTo((coats[0]?.laid.account.sprayed_m3 ?? NaN) * 1e6, 6);
  });
});

describe('strokesTable', () => {
  it('shows what a stroke lacks as a dash', () => {
    const [measure] = coats[0]?.strokes.measures ?? [];
    if (measure === undefined) throw new Error('the sample has strokes');
    const [, row] = strokesTable([{ ...measure, overlap: null, triggerOn_m: null, triggerOff_m: -0.01, stops: [{ at_m: [0, 0], start_s: 1, duration_s: 0.5 }] }], 'metric');
    expect(row).toMatch(/^1 +1 .* - +- +-10 +1 \(0\.5 s\)$/);
  });
});

describe('wrapped', () => {
  it('breaks at spaces, never between a number and its unit, and loses no word', () => {
    const text = 'a film of 100 µm wet laid at 0.36 m/s from 200 mm is 3.94 mil in US units '.repeat(5).trim();
    const lines = wrapped(text, '- ', '  ');
    expect(lines.map((line) => line.slice(2)).join(' ')).toBe(text);
    for (const line of lines) expect(line).not.toMatch(/^..(µm|m\/s|mm|mil)\b/);
  });

  it('leaves a word that is too long whole', () => {
    expect(wrapped('x'.repeat(200))).toEqual(['x'.repeat(200)]);
  });
});

describe('textTable', () => {
  it('sets words left and figures right', () => {
    expect(textTable([['a', 'µm'], ['bcd', '1234'], ['e']])).toEqual(['a      µm', 'bcd  1234', 'e']);
  });
});
