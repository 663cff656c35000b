import { expect, it } from 'vitest';
import { todayFrom, TODAY_RANGES, USUAL_TODAY_PREFS } from '../../../../src/app/today/todayPrefs.ts';
import { questionOf } from '../../../../src/app/today/todaySheet.ts';
import { TODAY_LIMITS, USUAL_TODAY } from '../../../../sim/index.ts';

it('asks the model’s usual question where nothing was typed', () => {
  const asked = questionOf(USUAL_TODAY_PREFS);
  for (const [key, usual] of Object.entries(USUAL_TODAY)) {
    const value = asked[key as keyof typeof asked];
    if (typeof usual === 'number') expect(value, key).toBeCloseTo(usual, 12);
    else expect(value, key).toBe(usual);
  }
});

it('has the model’s limits', () => {
  expect(TODAY_RANGES.thinnerPerFinish).toEqual(TODAY_LIMITS.thinnerRatio);
  expect(TODAY_RANGES.cupseconds).toEqual(TODAY_LIMITS.seconds);
  expect(TODAY_RANGES.area_m2).toEqual(TODAY_LIMITS.area_m2);
  expect(TODAY_RANGES.coats).toEqual(TODAY_LIMITS.coats);
  expect(TODAY_RANGES.dry_um.map((um) => um * 1e-6)).toEqual(TODAY_LIMITS.dry_m);
  expect(TODAY_RANGES.lands_percent.map((percent) => percent / 100)).toEqual(TODAY_LIMITS.efficiencyFraction);
  expect(TODAY_RANGES.retarder_percent.map((percent) => percent / 100)).toEqual(TODAY_LIMITS.retarderFraction);
});

it('leaves at its usual what does not fit, one by one', () => {
  const kept = todayFrom({ temperature_C: 25, humidity_percent: 140, coats: 2.5, cupseconds: 30, backing: 'brick', area_m2: 'much' });
  expect(kept).toEqual({ ...USUAL_TODAY_PREFS, temperature_C: 25, cupseconds: 30 });
  expect(todayFrom(undefined)).toEqual(USUAL_TODAY_PREFS);
  expect(todayFrom({ thinnerPerFinish: 0.25 }).thinnerPerFinish).toBe(0.25);
  expect(todayFrom({ thinnerPerFinish: 11 }).thinnerPerFinish).toBeNull();
  expect(todayFrom(JSON.parse(JSON.stringify({ ...USUAL_TODAY_PREFS, coats: 3 })))).toEqual({ ...USUAL_TODAY_PREFS, coats: 3 });
});

it('takes the usual finish where a kept one is not known any more', () => {
  expect(questionOf({ ...USUAL_TODAY_PREFS, finish: 'gone', cup: 'gone' })).toMatchObject({ finish: 'clear-dope', cup: 'zahn-2' });
});
