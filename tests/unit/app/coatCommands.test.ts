import { describe, expect, it } from 'vitest';
import { chooseOver, coatsBeneath, useOwnHand, withPlanChange } from '../../../src/app/coatCommands.ts';
import { undo } from '../../../src/app/document.ts';
import { state } from '../../../src/app/state.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import type { CoatSpec, OwnHandSpec } from '../../../sim/job/schema.ts';

const { plan } = demoJob().coats[0] as CoatSpec;

it('puts a tried change into the plan in the file\'s units and leaves the rest', () => {
  const next = withPlanChange(plan, { kind: 'plan', overlapFraction: 0.5833, speed_m_s: 0.31234, lead_m: 0.031 });
  expect(next).toEqual({ ...plan, overlap_percent: 58.3, speed_m_s: 0.312, lead_mm: 31, lag_mm: 31 });
});

it('leaves the plan as it is where nothing changes', () => {
  expect(withPlanChange(plan, { kind: 'plan' })).toEqual(plan);
});

describe('an own hand', () => {
  const own: OwnHandSpec = { kind: 'own', name: 'Left hand', distance_mm: 18, across_mm: 9, speed_percent: 14, pitch_deg: 4, yaw_deg: 6, trigger_ms: 60, correlation_s: 1.3 };

  it('is taken up by the coat named, in one step that undo takes back whole', () => {
    const job = demoJob();
    state.job.value = job;
    state.coatId.value = 'planned';
    state.past.value = [];
    useOwnHand('by-hand', own);
    const hands = (): unknown[] => state.job.value.coats.map(({ hand }) => hand);
    expect(hands()).toEqual(job.coats.map(({ id, hand }) => (id === 'by-hand' ? own : hand)));
    expect(state.past.value.map(({ label }) => label)).toEqual(['Own hand']);
    undo();
    expect(state.job.value).toBe(job);
  });

  it('changes nothing for a coat that is gone', () => {
    const job = demoJob();
    state.job.value = job;
    state.past.value = [];
    useOwnHand('gone', own);
    expect(state.job.value).toBe(job);
    expect(state.past.value).toEqual([]);
  });
});

describe('the coat beneath', () => {
  it('is chosen, keeps its wait when another is chosen, and is taken out, keys in the order of the file', () => {
    state.job.value = demoJob();
    state.coatId.value = 'thin-laps';
    chooseOver('planned');
    const coat = (): CoatSpec => state.job.value.coats[2] as CoatSpec;
    expect(coat().over).toEqual({ coat: 'planned', wait_min: 20 });
    expect(Object.keys(coat())).toEqual(['id', 'name', 'panel', 'setUp', 'mix', 'over', 'target', 'plan', 'hand']);
    state.job.value = { ...state.job.value, coats: state.job.value.coats.map((each) => (each.over === undefined ? each : { ...each, over: { ...each.over, wait_min: 45 } })) };
    chooseOver('by-hand');
    expect(coat().over).toEqual({ coat: 'by-hand', wait_min: 45 });
    chooseOver('');
    expect(Object.keys(coat())).not.toContain('over');
    undo();
    expect(coat().over?.coat).toBe('by-hand');
  });

  it('is offered from the same panel only, never the coat itself or one that rests on it', () => {
    const [planned, byHand, thinLaps, second] = demoJob().coats as [CoatSpec, CoatSpec, CoatSpec, CoatSpec];
    const elsewhere: CoatSpec = { ...thinLaps, panel: 'right-side' };
    const third: CoatSpec = { ...byHand, id: 'third', over: { coat: second.id, wait_min: 1 } };
    const coats = [planned, byHand, elsewhere, second, third];
    const offered = (upper: CoatSpec): string[] => coatsBeneath(coats, upper).map(({ id }) => id);
    expect(offered(planned)).toEqual(['by-hand']);
    expect(offered(second)).toEqual(['planned', 'by-hand']);
    expect(offered(third)).toEqual(['planned', 'by-hand', 'second-coat']);
    expect(offered(elsewhere)).toEqual([]);
  });
});
