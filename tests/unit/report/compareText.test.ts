import { describe, expect, it } from 'vitest';
import { compareJson } from '../../../sim/report/compareJson.ts';
import { comparedCell, COMPARED_WORDS } from '../../../sim/report/comparedWords.ts';
import { compareText, compareTable } from '../../../sim/report/compareText.ts';
import type { ComparedFigure, ComparedName, ReportedComparison, ReportedLaidSide } from '../../../sim/report/reportedComparison.ts';

const NAMES = Object.keys(COMPARED_WORDS) as ComparedName[];

function side(id: string, figures: Partial<Record<ComparedName, ComparedFigure>>): ReportedLaidSide {
  const all = Object.fromEntries(NAMES.map((name) => [name, figures[name] ?? { value: 1, within: 0, isOutsideRange: false }]));
  return { setUp: { id, name: `Gun ${id}` }, problem: null, figures: all as ReportedLaidSide['figures'], faults: id === 'b' ? ['thin-lap', 'run'] : [], assumed: id === 'a' ? ['width', 'fluidRate'] : [], isOutsideRange: false, warnings: [] };
}

const COMPARISON: ReportedComparison = {
  coat: { id: 'coat', name: 'Cross coat' },
  panel: { id: 'board', name: 'Board' },
  strokes: 'to-target',
  watched_s: 900,
  sides: [
    side('a', { wet_m: { value: 99.8e-6, within: 29.14e-6, isOutsideRange: false }, cv: { value: 0.041, within: 0.012, isOutsideRange: true }, holdMargin_m: { value: Infinity, within: 0, isOutsideRange: false } }),
    { setUp: { id: 'c', name: 'Gun c' }, problem: 'Gun c (c): the depth is above the width' },
    side('b', { wet_m: { value: 54.6e-6, within: 1.5e-6, isOutsideRange: false }, cv: { value: 0.045, within: 0.02, isOutsideRange: false } }),
  ],
  rows: NAMES.map((name) => ({ name, best: name === 'wet_m' ? [0] : name === 'cv' ? [0, 2] : [], isTie: name === 'cv' })),
};

const rowOf = (text: string, title: string) => text.split('\n').find((line) => line.startsWith(title)) ?? '';

describe('a comparison in words', () => {
  const text = compareText(COMPARISON, 'metric');

  it('marks the best, what cannot be told from it, and what was not measured there', () => {
    expect(rowOf(text, 'mean wet film')).toMatch(/99\.8 ± 29 µm \* +54\.6 ± 1\.5 µm$/);
    expect(rowOf(text, 'film varies by')).toMatch(/4\.1 ± 1\.2 % = ! +4\.5 ± 2 % =$/);
  });

  it('says which set-up could not be compared, what was not measured, and which faults there are', () => {
    expect(text).toContain('- Gun c (c): the depth is above the width');
    expect(text).toMatch(/Gun a: [^\n]*fan width and fluid rate\n/);
    expect(rowOf(text, 'faults')).toMatch(/none +thin laps and runs$/);
    expect(text.replaceAll('\n', ' ')).toContain('each at the speed that brings its mean film to the target; every film watched for 15 min');
  });

  it('writes US units where they are asked for', () => {
    const us = compareText(COMPARISON, 'us');
    expect(rowOf(us, 'mean wet film')).toContain('3.93 ± 1.1 mil *');
    expect(comparedCell('solvent_kg', { value: 0.028349523125, within: 0, isOutsideRange: false }, 'us')).toBe('1 oz');
    expect(comparedCell('blushMargin_K', { value: 2, within: 0.5, isOutsideRange: false }, 'us')).toBe('3.6 ± 0.9 °F');
  });

  it('has a row for each figure, and begins another table after three sides', () => {
    expect(compareTable(COMPARISON, [0, 2], 'metric')).toHaveLength(NAMES.length + 2);
    const many = compareText({ ...COMPARISON, sides: ['p', 'q', 'r', 's'].map((id) => side(id, {})) }, 'metric');
    expect(many.split('\n').filter((line) => line.startsWith('mean wet film'))).toHaveLength(2);
    expect(many.split('\n').filter((line) => line.includes('Gun s'))).toHaveLength(1);
  });

  it('says that a film does not run rather than a number without end', () => {
    expect(rowOf(text, 'the same as film')).toContain('does not run');
  });
});

describe('a comparison as JSON', () => {
  const json = compareJson(COMPARISON);
  const [a, c, b] = json['sides'] as unknown as { readonly problem: string | null; readonly figures: Readonly<Record<string, unknown>> }[];

  it('has each figure with its interval, units in the keys', () => {
    expect(a?.figures['wet']).toEqual({ wet_um: 99.8, within_um: 29.14, best: true, noDifference: false, outsideRange: false });
    expect(b?.figures['cv']).toEqual({ cv_percent: 4.5, within_percent: 2, best: true, noDifference: true, outsideRange: false });
    expect(Object.keys(a?.figures ?? {})).toHaveLength(NAMES.length);
  });

  it('holds only what JSON can: an endless margin is null', () => {
    expect(a?.figures['holdFilm']).toMatchObject({ holdFilm_um: null });
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(c?.problem).toContain('depth is above the width');
  });
});
