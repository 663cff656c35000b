import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import type { Job } from '../../../../sim/job/schema.ts';
import { makeMix } from '../../../../sim/mix/makeMix.ts';
import { planAir } from '../../../../sim/run/scheme/daysAir.ts';
import { daysVerdict, facesOf, nextWet } from '../../../../sim/run/scheme/daysVerdict.ts';
import { dayChain, type DayChain } from '../../../../sim/scheme/dayTask.ts';
import { MONDAY_8, plannedOf, type ShortStep } from '../../../helpers/daySchemes.ts';

/** The demo's air held at one temperature and humidity, without hours. */
function jobAt(temperature_C: number, humidity_percent: number): Job {
  const job = demoJob();
  return { ...job, air: { ...job.air, temperature_C, humidity_percent }, hours: undefined };
}

/** A chain whose coats have the demo’s first mix, named by their step. */
function chainOf(job: Job, steps: readonly ShortStep[]): DayChain {
  const plan = plannedOf(job.schemes![0]!.id, steps);
  const mix = makeMix(job.mixes[0]!, '/mixes/0');
  return dayChain({ ...plan, steps: plan.steps.map((step) => ({ ...step, coat: step.coat === null ? null : { ...step.coat, mix, mixId: `mix of ${step.spec.id}` } })) });
}

const STEPS: readonly ShortStep[] = [
  { id: 'tapes first', kind: 'fix', work_min: 20, wait_h: 0 },
  { id: 'sanding', kind: 'sand', work_min: 20, wait_h: 0 },
  { id: 'one', kind: 'brush', work_min: 20, wait_h: 1 },
  { id: 'tapes', kind: 'fix', work_min: 20, wait_h: 1 },
  { id: 'two', kind: 'spray', work_min: 20, wait_h: 0 },
];

describe('what is wet of a scheme', () => {
  it('is a coat’s own mix; of tapes that of the coat before, or of the first where none is before; nothing of dry work', () => {
    const { tasks } = chainOf(demoJob(), STEPS);
    expect(tasks.map(({ wet }) => wet?.mixId ?? null)).toEqual(['mix of one', null, 'mix of one', 'mix of one', 'mix of two']);
    expect(tasks.map(({ isCoat }) => isCoat)).toEqual([false, false, true, false, true]);
    expect(chainOf(demoJob(), [STEPS[0]!]).tasks[0]!.wet).toBeNull();
  });

  it('counts as what comes next, tapes too', () => {
    const chain = chainOf(demoJob(), STEPS);
    const starts = new Map(chain.tasks.map(({ id }, k) => [id, MONDAY_8 + 60 * k]));
    expect(nextWet(chain, starts, MONDAY_8 + 150)?.planned.spec.id).toBe('tapes');
    expect(nextWet(chain, starts, MONDAY_8 + 300)).toBeNull();
  });
});

describe('daysVerdict', () => {
  const at = (job: Job): string[] => {
    const wordAt = daysVerdict(job, planAir(job, MONDAY_8, MONDAY_8 + 1440));
    return chainOf(job, STEPS).tasks.map((task) => wordAt(task, MONDAY_8).verdict);
  };

  it('holds tapes to the same air as coats, and lets dry work go', () => {
    expect(at(jobAt(4, 50))).toEqual(['wait', 'go', 'wait', 'wait', 'wait']);
    const [tapesFirst, sanding, one, tapes, two] = at(jobAt(23, 50));
    expect(sanding).toBe('go');
    expect([tapesFirst, tapes, two]).toEqual([one, one, one]);
    expect(one).not.toBe('wait');
  });
});

describe('facesOf', () => {
  it('takes the most chilled of a scheme’s panels, wherever it stands', () => {
    const job = demoJob();
    const [scheme] = job.schemes!;
    const [panel] = job.part.panels;
    const withBackings = (...backings: string[]): Job => ({
      ...job,
      part: { ...job.part, panels: backings.map((backing, i) => ({ ...panel!, id: `p${i}`, backing })) as Job['part']['panels'] },
      schemes: [{ ...scheme!, panels: backings.map((_, i) => `p${i}`) }],
    });
    expect(facesOf(withBackings('open-cloth', 'thin-sheet'), scheme!.id)).toBe(2);
    expect(facesOf(withBackings('open-cloth', 'thick-board'), scheme!.id)).toBe(1);
    expect(facesOf(withBackings('thick-board', 'open-cloth'), scheme!.id)).toBe(1);
  });
});
