import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setUpsFrom, SET_UPS_TABS, USUAL_SET_UPS, type SetUpsPrefs } from '../../../../src/app/setups/setUpsPrefs.ts';

describe('what is kept of the gun set-ups', () => {
  it('comes back as it was, also by way of JSON', () => {
    const kept: SetUpsPrefs = {
      ...USUAL_SET_UPS,
      tab: 'hands',
      setUp: 'dope-gun',
      photo: { width_mm: 279.4, height_mm: 215.9, kind: 'stroke', along: 'y' },
      window: { x: 'fluid', y: 'overlap' },
      beside: { setUps: ['wide', 'narrow'], strokes: 'as-stated', map: 'run' },
    };
    expect(setUpsFrom(kept)).toEqual(kept);
    expect(setUpsFrom(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
  });

  it('leaves a sheet that this build has not, and values of other kinds, at their usual', () => {
    expect(setUpsFrom({ tab: 'oven', setUp: 4, colour: 'red' })).toEqual(USUAL_SET_UPS);
    expect(setUpsFrom({ tab: 'window' })).toEqual({ ...USUAL_SET_UPS, tab: 'window' });
  });

  it('leaves sides that no card has, and words that mean nothing, at their usual', () => {
    for (const width_mm of [NaN, -5, 0, 1e9]) expect(setUpsFrom({ photo: { width_mm, kind: 'smear', along: 'z' } })).toEqual(USUAL_SET_UPS);
  });

  it('has the usual shape whatever was kept', () => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.record({ tab: fc.anything(), setUp: fc.anything(), photo: fc.anything() })), (kept) => {
        const prefs = setUpsFrom(kept);
        expect(Object.keys(prefs)).toEqual(Object.keys(USUAL_SET_UPS));
        expect(SET_UPS_TABS).toContain(prefs.tab);
        expect(typeof prefs.setUp).toBe('string');
        expect(prefs.photo.width_mm).toBeGreaterThan(0);
        expect(['burst', 'stroke']).toContain(prefs.photo.kind);
      }),
      { numRuns: 200 },
    );
  });
});
