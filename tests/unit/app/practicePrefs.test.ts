import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prefsFrom, USUAL_PREFS, type PracticePrefs } from '../../../src/app/practicePrefs.ts';

const SET: PracticePrefs = {
  trainee: 'Trainee B',
  drill: 'half-overlap',
  hand: { fanTurned: true, mode: 'wrist', armLength_m: 0.5, wander: { amount_m: 0.02, seed: 9 }, touchTrigger: 'pad', keySpeed_m_s: 0.2 },
  value: 'wet-now',
  guides: false,
  pace: true,
  sound: true,
  trueScale: true,
  screen: { pxPerMm: 3.78, pixelRatio: 2 },
  rubric: { rubricVersion: 1 },
};

/** The kind of each value, apart from those that the usual preferences leave open with null. */
function shapeOf(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return typeof value;
  return Object.fromEntries(Object.entries(value).filter(([key]) => !['guides', 'screen', 'rubric'].includes(key)).map(([key, one]) => [key, shapeOf(one)]));
}

describe('kept preferences', () => {
  it('come back as they were, also by way of JSON', () => {
    expect(prefsFrom(SET)).toEqual(SET);
    expect(prefsFrom(JSON.parse(JSON.stringify(SET)))).toEqual(SET);
  });

  it.each([['nothing', undefined], ['null', null], ['a number', 7], ['a text', 'trainee'], ['a list', [1, 2]], ['an empty object', {}]])('from %s are the usual ones', (_, kept) => {
    expect(prefsFrom(kept)).toEqual(USUAL_PREFS);
  });

  it('keep what fits and leave the rest at its usual', () => {
    const kept = { ...SET, trainee: 12, sound: 'yes', hand: { ...SET.hand, armLength_m: '0.5', wander: null }, colour: 'red' };
    expect(prefsFrom(kept)).toEqual({ ...SET, trainee: '', sound: false, hand: { ...SET.hand, armLength_m: 0.35, wander: USUAL_PREFS.hand.wander } });
  });

  it('leave words and figures that mean nothing at their usual', () => {
    const kept = { ...SET, value: 'dry', guides: 'yes', screen: { pxPerMm: 'wide' }, hand: { ...SET.hand, mode: 'shoulder', touchTrigger: 'toe' } };
    expect(prefsFrom(kept)).toEqual({ ...SET, value: null, guides: null, screen: null, hand: { ...SET.hand, mode: 'free', touchTrigger: 'finger' } });
  });

  it('have the usual shape whatever was kept, and the usual ones are not changed by it', () => {
    const usual = structuredClone(USUAL_PREFS);
    const junk = fc.record({ trainee: fc.anything(), hand: fc.oneof(fc.anything(), fc.record({ wander: fc.anything(), mode: fc.anything() })), pace: fc.anything(), value: fc.anything() }, { requiredKeys: [] });
    fc.assert(
      fc.property(fc.oneof(fc.anything(), junk), (kept) => {
        const prefs = prefsFrom(kept);
        expect(shapeOf(prefs)).toEqual(shapeOf(usual));
        expect(Object.keys(prefs)).toEqual(Object.keys(usual));
      }),
      { numRuns: 300 },
    );
    expect(USUAL_PREFS).toEqual(usual);
  });
});
