import { describe, expect, it } from 'vitest';
import { LAYERS } from '../../../../sim/job/schemeSchema.ts';
import { FINISHES } from '../../../../sim/materials/finishes.ts';
import { jobOfToday } from '../../../../sim/run/today/jobOfToday.ts';
import { answerToday } from '../../../../sim/run/today/today.ts';
import { USUAL_TODAY } from '../../../../sim/run/today/usualToday.ts';

describe('jobOfToday', () => {
  it.each(FINISHES.map(({ id }) => id))('knows what layer %s makes', (finish) => {
    const steps = jobOfToday(answerToday({ ...USUAL_TODAY, finish })).schemes?.[0]?.steps ?? [];
    expect(steps.length).toBeGreaterThan(0);
    for (const step of steps) expect(LAYERS).toContain('layer' in step ? step.layer : null);
  });

  it('refuses a finish whose layer is not known, and names those that are', () => {
    const answer = answerToday(USUAL_TODAY);
    const strange = { ...answer, mix: { ...answer.mix, finish: { ...answer.mix.finish, id: 'varnish', name: 'varnish' } } };
    expect(() => jobOfToday(strange)).toThrow(/what layer varnish \(varnish\) makes is not known.*clear-dope.*primer/);
  });

  it('takes the mix at the ratio that the answers are worked out with', () => {
    const recommended = answerToday(USUAL_TODAY);
    const { sprayed } = recommended.thinning;
    expect(jobOfToday(recommended).mixes[0]?.thinnerPerFinish).toBe(sprayed.thinnerRatio);
    expect(jobOfToday(answerToday({ ...USUAL_TODAY, thinnerRatio: 0.25 })).mixes[0]?.thinnerPerFinish).toBe(0.25);
    // Thinned on from a reading: what its cup would read is handed over, so that the law of the reader's own tin is kept.
    const read = answerToday({ ...USUAL_TODAY, cup: 'ford-4', seconds: 36 });
    expect(jobOfToday(read).mixes[0]?.cup?.kind).toBe('zahn-2');
    expect(jobOfToday(read).mixes[0]?.cup?.seconds).toBeGreaterThan(20);
    expect(jobOfToday(read).mixes[0]?.cup?.seconds).toBeLessThan(24);
  });
});
