import { describe, expect, it } from 'vitest';
import { judgeCoat } from '../../sim/run/judge.ts';
import { layCoat } from '../../sim/run/lay.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import { type HandEdit, session } from '../unit/run/session.ts';
import { type JobParts, testSetting } from '../unit/run/testJob.ts';

/** Figures of one judged coat, rounded so that only a change of the model moves them. */
function figures(parts: JobParts, edits: Readonly<Record<number, HandEdit>> | null): string {
  const setting = testSetting(parts);
  const strokes = edits === null ? strokesOf(setting) : strokesOf(setting, { path: session(setting, edits), warnings: [] });
  const { verdict, laid } = judgeCoat(setting, strokes, layCoat(setting, strokes), { cures: false });
  const um = (value_m: number) => (value_m * 1e6).toFixed(2);
  const faults = verdict.faults.map((f) => `${f.kind}/${f.cause.kind}/${f.cause.strokes.join('+')}/${(f.area_m2 * 1e4).toFixed(0)}`);
  return [um(verdict.wet.mean_m), um(verdict.wet.min_m), um(verdict.wet.max_m), verdict.wet.cv.toFixed(4), verdict.inTargetFraction.toFixed(3), (laid.account.landed_m3 * 1e6).toFixed(3), ...faults].join(' ');
}

/** Has anything moved? When it should have, put the new line here and say why in the commit. */
const GOLDEN: readonly (readonly [string, JobParts, Readonly<Record<number, HandEdit>> | null, string])[] = [
  ['as planned', {}, null, '57.78 57.34 58.85 0.0087 1.000 20.222'],
  ['as planned, slanted', { plan: { direction_deg: 25, cross: true }, target: { thickness_um: 115 } }, null, '115.55 114.68 117.70 0.0061 1.000 40.442'],
  ['30 % overlap', { plan: { overlap_percent: 30 } }, null, '40.49 21.87 58.85 0.3221 0.400 14.170 thin-lap/plan-overlap//2100'],
  ['a stop', {}, { 2: { stop: { at: 0.5, duration_s: 0.7 } } }, '62.05 57.34 509.86 0.5472 0.976 21.717 heavy-spot/stop/2/83'],
  ['an arc', {}, { 2: { arcRadius_m: 0.35 } }, '56.98 33.10 68.32 0.0916 0.940 19.942 thin-lap/angle/2/209'],
  ['a practised hand', { hand: { kind: 'practised' } }, null, '58.07 45.75 66.43 0.0746 0.998 20.324 thin-lap/overlap/2/8'],
];

describe('the run', () => {
  it.each(GOLDEN)('%s', (_, parts, edits, expected) => {
    expect(figures(parts, edits)).toBe(expected);
  });
});
