import { expect, it } from 'vitest';
import { withPlanChange } from '../../../src/app/coatCommands.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import type { CoatSpec } from '../../../sim/job/schema.ts';

const { plan } = demoJob().coats[0] as CoatSpec;

it('puts a tried change into the plan in the file\'s units and leaves the rest', () => {
  const next = withPlanChange(plan, { kind: 'plan', overlapFraction: 0.5833, speed_m_s: 0.31234, lead_m: 0.031 });
  expect(next).toEqual({ ...plan, overlap_percent: 58.3, speed_m_s: 0.312, lead_mm: 31, lag_mm: 31 });
});

it('leaves the plan as it is where nothing changes', () => {
  expect(withPlanChange(plan, { kind: 'plan' })).toEqual(plan);
});
