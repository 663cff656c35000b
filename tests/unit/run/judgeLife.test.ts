import { describe, expect, it } from 'vitest';
import { DEMO_PLANNED_COAT, DEMO_SECOND_COAT, demoJob } from '../../../sim/job/demo.ts';
import type { AirSpec, Job, PlanSpec } from '../../../sim/job/schema.ts';
import { judgeCoat } from '../../../sim/run/judge.ts';
import { judgeLife } from '../../../sim/run/judgeLife.ts';
import { layCoat } from '../../../sim/run/lay.ts';
import { jobWithCondition, lifeTrials } from '../../../sim/run/lifeTrials.ts';
import { runLife } from '../../../sim/run/coatLife.ts';
import { settleCoat } from '../../../sim/run/settle.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import { LIFE_KINDS, marginOf } from '../../../sim/verdict/judged.ts';
import type { Fault, Zone } from '../../../sim/verdict/verdict.ts';

/** The demo's planned coats on a board of 300 × 300 mm, cells of 4 mm. */
function board(change: { air?: Partial<AirSpec>; plan?: Partial<PlanSpec>; wait_min?: number; tilt_deg?: number } = {}): Job {
  const job = demoJob();
  const [panel] = job.part.panels;
  return {
    ...job,
    cell_mm: 4,
    air: { ...job.air, ...change.air },
    part: { ...job.part, panels: [{ ...panel!, outline: { rectangle_mm: [300, 300] }, holes: [], attitude: { tilt_deg: change.tilt_deg ?? 90, down_deg: -90 } }] },
    coats: job.coats.map((coat) => ({
      ...coat,
      plan: { ...coat.plan, ...change.plan },
      ...(coat.over === undefined || change.wait_min === undefined ? {} : { over: { ...coat.over, wait_min: change.wait_min } }),
    })),
  };
}

function judged(job: Job, coatId: string, options: { cures?: boolean } = {}) {
  const setting = settleCoat(job, coatId);
  const strokes = strokesOf(setting);
  const laid = judgeCoat(setting, strokes, layCoat(setting, strokes), { cures: false }).verdict.faults;
  const life = runLife(setting, strokes);
  return { setting, life, verdict: judgeLife(life, strokes, { laidFaults: laid, ...options }) };
}

const only = (faults: readonly Fault[], kind: Fault['kind']) => faults.filter((fault) => fault.kind === kind);

describe('judgeLife', () => {
  it('finds nothing in a usual coat in dry air, and tells its times', () => {
    const { verdict, setting } = judged(board(), DEMO_PLANNED_COAT);
    expect(verdict.faults).toEqual([]);
    const { touchDry_s, sprayed_s, coldest_K, blushMargin_K, longestRun_m } = verdict.figures;
    expect(touchDry_s).toBeGreaterThan(sprayed_s);
    // Common practice: a sprayed coat of dope is dry to touch in 5 to 20 minutes at 21 °C.
    expect(touchDry_s).toBeGreaterThan(300);
    expect(touchDry_s).toBeLessThan(1200);
    expect(coldest_K).toBeLessThan(setting.air.temperature_K);
    expect(blushMargin_K).toBeCloseTo(coldest_K - setting.air.dewPoint_K, 6);
    expect(longestRun_m).toBe(0);
  });

  it('finds blush in damp air, names the air, and warms the room no more than its ceiling', () => {
    const [fault] = only(judged(board({ air: { humidity_percent: 68 } }), DEMO_PLANNED_COAT).verdict.faults, 'blush');
    expect(fault?.cause.kind).toBe('air');
    expect(fault?.cure?.change.kind).toBe('warm-room');
    expect(fault?.cure?.worst).toBeGreaterThanOrEqual(0);
    const held = judged(board({ air: { humidity_percent: 68, ceiling_C: 22 } }), DEMO_PLANNED_COAT).verdict.faults;
    for (const { cure } of only(held, 'blush')) {
      if (cure?.change.kind === 'warm-room') expect(cure.change.temperature_K).toBeLessThanOrEqual(22 + 273.15 + 1e-9);
    }
  });

  it('finds a blister risk in a coat laid too soon, names the wait, and a longer one is its cure', () => {
    const [fault] = only(judged(board({ wait_min: 12 }), DEMO_SECOND_COAT).verdict.faults, 'blister');
    expect(fault?.cause).toMatchObject({ kind: 'wait', found: 720, unit: 's' });
    expect(fault?.cure?.change.kind).toBe('wait');
    expect(only(judged(board({ wait_min: 60 }), DEMO_SECOND_COAT).verdict.faults, 'blister')).toEqual([]);
  });

  it('finds an over-thick film on a level board sprayed at a third of the speed, and the right speed is its cure', () => {
    const [fault] = only(judged(board({ plan: { speed_m_s: 0.12 }, tilt_deg: 0 }), DEMO_PLANNED_COAT).verdict.faults, 'over-thick');
    expect(fault?.zones[0]?.worst).toBeGreaterThan(fault?.zones[0]?.limit ?? Infinity);
    expect(fault?.cure?.change.kind).toBe('plan');
    expect(fault?.cure?.worst).toBeLessThan(fault?.zones[0]?.limit ?? 0);
  });

  it('says that a film was not watched until it set', () => {
    const setting = settleCoat(board(), DEMO_PLANNED_COAT);
    const strokes = strokesOf(setting);
    const life = runLife(setting, strokes, { until_s: 60, at_s: [10, 30] });
    expect(life.moments.map(({ time_s }) => time_s)).toEqual([10, 30]);
    expect(judgeLife(life, strokes, { cures: false, until_s: 60 }).warnings.some(({ text }) => text.includes('had not set by then'))).toBe(true);
  });
});

describe('lifeTrials', () => {
  it.each(LIFE_KINDS)('has something to try against %s, each a change of the plan or of a condition', (kind) => {
    const setting = settleCoat(board({ wait_min: 5 }), DEMO_SECOND_COAT);
    const trials = lifeTrials(kind, setting);
    expect(trials.length).toBeGreaterThan(0);
    for (const { change, cause } of trials) {
      expect(cause.found).not.toBe(cause.meant);
      if (change.kind === 'warm-room') expect(change.temperature_K).toBeLessThanOrEqual(setting.job.air.ceiling_C + 273.15 + 1e-9);
    }
  });

  it('warms the same air: the dew point stays', () => {
    const setting = settleCoat(board({ air: { temperature_C: 18, humidity_percent: 70 } }), DEMO_PLANNED_COAT);
    const warm = settleCoat(jobWithCondition(setting, { kind: 'warm-room', temperature_K: 297.15 }), DEMO_PLANNED_COAT);
    expect(warm.air.temperature_K).toBeCloseTo(297.15, 9);
    // The wrapper's dew point is found to 0.01 K.
    expect(Math.abs(warm.air.dewPoint_K - setting.air.dewPoint_K)).toBeLessThan(0.02);
    expect(warm.air.relativeHumidityFraction).toBeLessThan(setting.air.relativeHumidityFraction);
  });

  it('each cure that is given takes its fault back by a quarter or more (common practice, direction)', () => {
    const cases: readonly [Job, string][] = [
      [board({ air: { humidity_percent: 68 } }), DEMO_PLANNED_COAT],
      [board({ wait_min: 12 }), DEMO_SECOND_COAT],
      [board({ plan: { speed_m_s: 0.12 } }), DEMO_PLANNED_COAT],
    ];
    let seen = 0;
    for (const [job, id] of cases) {
      const { setting, verdict } = judged(job, id);
      for (const { kind, zones, cure } of verdict.faults) {
        if (cure === null) continue;
        seen++;
        const { margin } = zones[0] as Zone;
        expect(marginOf(kind, cure.worst, setting.target)).toBeLessThanOrEqual(0.75 * margin);
        expect(cure.areaAfter_m2).toBeLessThanOrEqual(cure.areaBefore_m2);
      }
    }
    expect(seen).toBeGreaterThanOrEqual(3);
  });
});
