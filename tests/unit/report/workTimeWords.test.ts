import { describe, expect, it } from 'vitest';
import { amountsLimits, labourSentence, workTimeWords } from '../../../sim/report/amountsWords.ts';
import { spanWords } from '../../../sim/report/clockWords.ts';
import type { AmountsAnswer } from '../../../sim/scheme/amountsAnswer.ts';

describe('workTimeWords', () => {
  it('writes hours and minutes as the days do, and seconds below two minutes', () => {
    expect([90, 119, 120, 600, 3600, 17760, 200000].map(workTimeWords)).toEqual(['90 s', '119 s', '2 min', '10 min', '1 h', '4 h 56 min', '56 h']);
    for (const minutes of [2, 59, 60, 61, 304, 1440]) expect(workTimeWords(minutes * 60)).toBe(spanWords(minutes));
  });

  it('stands in the sentence of the hours at work', () => {
    const text = labourSentence({ kinds: [{ kind: 'spray', steps: 2, stated: 0, work_s: 5400 }, { kind: 'sand', steps: 1, stated: 1, work_s: 1800 }], work_s: 7200, wait_s: 9000 });
    expect(text).toBe('2 h at work: spraying 1 h 30 min and sanding 30 min. Least waits as stated for 70 °F (21.1 °C) come to 2 h 30 min one after another, and are no time at work.');
  });

  it('the limits of the amounts name the dope for tapes as left out', () => {
    const answer = { amounts: { options: { left_m3: 3e-5, leftFraction: 0.05 } } } as unknown as AmountsAnswer;
    expect(amountsLimits(answer, 'metric')).toContain('Left out: dope that tapes, patches and rings are set in,');
  });
});
