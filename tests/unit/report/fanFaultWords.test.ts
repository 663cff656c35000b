import { describe, expect, it } from 'vitest';
import { FAULT_CAUSES, type FanFaultKind } from '../../../sim/gun/card/fanFaultCauses.ts';
import { FAN_CAUSE_WORDS, FAN_FAULT_WORDS, FAN_TEST_WORDS, fanFaultSentences } from '../../../sim/report/fanFaultWords.ts';

const fault = (kind: FanFaultKind, strength: number) => ({ kind, strength, limit: 0.1, ...FAULT_CAUSES[kind] });

describe('faults of a fan in words', () => {
  it('say the figure, the causes and what to try', () => {
    expect(fanFaultSentences(fault('one-sided', -0.31))).toEqual([
      'One-sided: the film leans by 31 % toward the smaller places.',
      'Look for a plugged port in a horn of the cap, dried finish on one side of the nozzle’s tip, a bent needle or a nicked nozzle and a nozzle that is loose or badly seated, which lets air into the fluid.',
      FAN_TEST_WORDS['turn-cap'],
    ]);
    expect(fanFaultSentences(fault('one-sided', 0.31))[0]).toMatch(/larger places/);
    expect(fanFaultSentences(fault('crescent', -0.4))[0]).toBe('Crescent: the fan\'s ends stand off its middle by 40 % of its depth.');
    expect(fanFaultSentences({ ...fault('heavy-middle', 6.1), limit: 5 })[0]).toBe('Heavy middle: the exponent across the fan is 6.1, past 5.');
  });

  it('have words for every cause and test, and use each', () => {
    const causes = Object.values(FAULT_CAUSES).flatMap((of) => of.causes);
    const tests = Object.values(FAULT_CAUSES).flatMap((of) => of.tests);
    expect(new Set(causes)).toEqual(new Set(Object.keys(FAN_CAUSE_WORDS)));
    expect(new Set(tests)).toEqual(new Set(Object.keys(FAN_TEST_WORDS)));
    expect(Object.keys(FAN_FAULT_WORDS).sort()).toEqual(Object.keys(FAULT_CAUSES).sort());
  });
});
