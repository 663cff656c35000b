import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import type { Job, SchemeSpec } from '../../../sim/job/schema.ts';
import { serialiseJob } from '../../../sim/job/serialise.ts';
import { checkScheme } from '../../../sim/run/scheme/checkScheme.ts';
import { planScheme } from '../../../sim/run/scheme/planScheme.ts';
import type { PresetOptions } from '../../../sim/scheme/preset.ts';
import { presetById, presetParts, PRESETS, schemeFromPreset, wholeCoatCount } from '../../../sim/scheme/presets.ts';

const CIRCULAR = presetById('ac-43-13');
const PANELS = ['left-side'];
/** The demo at 70 °F, the temperature at which the circular states its waits, with a mix of lacquer. */
const JOB: Job = { ...demoJob(), air: { ...demoJob().air, temperature_C: 190 / 9 }, mixes: [...demoJob().mixes, { ...demoJob().mixes[0]!, id: 'lacquer', finish: 'lacquer' }] };

function circular(options: PresetOptions = {}): SchemeSpec {
  return schemeFromPreset(JOB, CIRCULAR, { id: 'preset', panels: PANELS }, options);
}

describe('presets', () => {
  it.each(PRESETS.map(({ id }) => id))('%s makes a scheme that the file can hold, with a source beside each step', (id) => {
    const scheme = schemeFromPreset(JOB, presetById(id), { id: 'preset', panels: PANELS });
    const job = { ...JOB, schemes: [scheme] };
    expect(parseJob(serialiseJob(job)).job).toEqual(job);
    expect(scheme.steps.filter(({ source }) => source === undefined)).toEqual([]);
  });

  it.each(PRESETS.map(({ id }) => id))('%s breaks no rule with the films and drying of the model at 70 °F', (id) => {
    const job = { ...JOB, schemes: [schemeFromPreset(JOB, presetById(id), { id: 'preset', panels: PANELS })] };
    expect(checkScheme(planScheme(job)).map(({ rule, stepIndex }) => [rule, stepIndex])).toEqual([]);
  });

  it('counts 8 coats after the circular, 9 where the cloth is not taut', () => {
    expect(wholeCoatCount(circular().steps)).toBe(8);
    expect(wholeCoatCount(circular({ fourthClear: true }).steps)).toBe(9);
    expect(circular({ fourthClear: true }).clearCoats).toBe(4);
  });

  it("states the circular's 12 h of waits before the colour", () => {
    const { steps } = circular();
    const colour = steps.findIndex((step) => step.kind === 'spray' && step.layer === 'colour');
    expect(steps.slice(0, colour).map(({ wait_h }) => wait_h).filter((wait_h) => wait_h > 0).sort()).toEqual([1, 1, 2, 2, 2, 4]);
    expect(steps.slice(0, colour).reduce((sum, { wait_h }) => sum + wait_h, 0)).toBe(12);
  });

  it('brushes with the thickest mix, sprays with the thinnest, and says what it misses', () => {
    expect(presetParts(JOB, CIRCULAR, PANELS)).toMatchObject({ mixes: { brush: 'brush', aluminium: 'aluminium', colour: 'colour' }, coat: 'planned', missing: [] });
    const bare = { ...JOB, mixes: [] };
    expect(presetParts(bare, CIRCULAR, PANELS).missing.map(({ slot }) => slot)).toEqual(['brush', 'clear', 'aluminium', 'colour']);
    expect(() => schemeFromPreset(bare, CIRCULAR, { id: 'x', panels: PANELS })).toThrow('the job has no mix of clear-dope, aluminium-dope, colour-dope; add one first');
    expect(() => schemeFromPreset({ ...JOB, coats: [] }, CIRCULAR, { id: 'x', panels: PANELS })).toThrow('no coat on left-side');
    expect(() => presetById('none')).toThrow('give one of ac-43-13, lacquer');
  });
});
