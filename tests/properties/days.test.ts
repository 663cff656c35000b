import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MINUTES_PER_DAY } from '../../sim/base/localTime.ts';
import { allLaid, layLate, shiftsOf } from '../../sim/scheme/lateTimeline.ts';
import { paceOf } from '../../sim/scheme/pace.ts';
import { layTimeline, type TimelineSetting } from '../../sim/scheme/timeline.ts';
import { chainsOf, MONDAY_8, plainSetting } from '../helpers/daySchemes.ts';

const step = fc.record({
  kind: fc.constantFrom('spray' as const, 'brush' as const, 'fix' as const, 'sand' as const),
  work_min: fc.integer({ min: 0, max: 300 }),
  wait_h: fc.integer({ min: 0, max: 30 }),
  recoat_min: fc.option(fc.integer({ min: 0, max: 900 })),
});
const schemes = fc.array(fc.array(step, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 4 });

/** Days with a changing pace, and coats that may begin in some hours of the day only. */
const setting: fc.Arbitrary<TimelineSetting> = fc.record({
  rates: fc.array(fc.double({ min: 0.3, max: 3, noNaN: true }), { minLength: 12, maxLength: 12 }),
  from_min: fc.integer({ min: 300, max: 600 }),
  long_min: fc.integer({ min: 360, max: 720 }),
  weekends: fc.boolean(),
  shut: fc.array(fc.integer({ min: 0, max: 23 }), { maxLength: 6 }),
}).map(({ rates, from_min, long_min, weekends, shut }) => {
  const pace = paceOf(rates.map((_, i) => MONDAY_8 + i * 360), rates);
  return plainSetting({
    working: { from_min, to_min: from_min + long_min, weekends },
    rulePace: pace,
    modelPace: () => pace,
    mayBegin: (_, minute) => (shut.includes(Math.floor((minute % MINUTES_PER_DAY) / 60)) ? 'air too cold' : true),
  });
});

const runs = { numRuns: 150 };

describe('the days', () => {
  it('begin nothing before its wait is over, nothing beside another, all within working hours and air', () => {
    fc.assert(fc.property(schemes, setting, (steps, rules) => {
      const timeline = layTimeline(chainsOf(...steps), rules);
      for (const { laid, unplaced } of timeline.chains) {
        laid.forEach(({ task, earliest, start, end }, k) => {
          const before = laid[k - 1];
          expect(start).toBeGreaterThanOrEqual((before === undefined ? timeline.start : (before.wait?.until ?? before.end)) - 1e-6);
          expect(start).toBeGreaterThanOrEqual(earliest - 1e-6);
          const inDay = start % MINUTES_PER_DAY;
          expect(inDay).toBeGreaterThanOrEqual(rules.working.from_min);
          if (task.work_min <= rules.working.to_min - rules.working.from_min - 5) expect(inDay + (end - start)).toBeLessThanOrEqual(rules.working.to_min);
          if (task.wet !== null) expect(rules.mayBegin(task, start)).toBe(true);
        });
        // Nothing is lost.
        expect(laid.length + unplaced.length).toBe(steps[timeline.chains.findIndex((each) => each.laid === laid)]!.length);
      }
      const all = allLaid(timeline);
      for (let i = 1; i < all.length; i++) expect(all[i]!.start).toBeGreaterThanOrEqual(all[i - 1]!.end);
    }), runs);
  });

  it('of one scheme are ready no sooner where they begin later; of several Graham’s anomaly is left', () => {
    fc.assert(fc.property(schemes.map(([first]) => [first!]), setting, fc.integer({ min: 0, max: 3000 }), (steps, rules, later) => {
      const chains = chainsOf(...steps);
      const [soon, late] = [layTimeline(chains, rules), layTimeline(chains, { ...rules, start: rules.start + later })];
      if (soon.chains.every(({ unplaced }) => unplaced.length === 0) && late.chains.every(({ unplaced }) => unplaced.length === 0)) {
        expect(late.ready).toBeGreaterThanOrEqual(soon.ready - 1e-6);
      }
    }), runs);
  });

  it('of two schemes make the other ready no later where one is taken out; of more Graham’s anomaly is left', () => {
    fc.assert(fc.property(schemes.map((all) => all.slice(0, 2)), setting, fc.nat(3), (steps, rules, which) => {
      const chains = chainsOf(...steps);
      const out = which % chains.length;
      const rest = chains.filter((_, place) => place !== out);
      const [all, fewer] = [layTimeline(chains, rules), layTimeline(rest, rules)];
      if (all.chains.some(({ unplaced }) => unplaced.length > 0)) return;
      const othersReady = Math.max(all.start, ...all.chains.filter((_, place) => place !== out).map(({ ready }) => ready));
      expect(fewer.ready).toBeLessThanOrEqual(othersReady + 1e-6);
    }), runs);
  });

  it('bring nothing forward where a step begins late, and are as planned where none does', () => {
    fc.assert(fc.property(schemes, setting, fc.nat(20), fc.integer({ min: 1, max: 3000 }), (steps, rules, which, late_min) => {
      const base = layTimeline(chainsOf(...steps), rules);
      const all = allLaid(base);
      expect(shiftsOf(base, layLate(base, rules, new Map()))).toEqual([]);
      if (all.length === 0) return;
      const { task, start } = all[which % all.length]!;
      const late = layLate(base, rules, new Map([[task.id, late_min]]));
      for (const shift of shiftsOf(base, late)) if (shift.start !== null) expect(shift.start).toBeGreaterThan(shift.planned);
      const laid = allLaid(late).find((each) => each.task.id === task.id);
      if (laid !== undefined) expect(laid.start).toBeGreaterThanOrEqual(start + late_min);
    }), runs);
  });
});
