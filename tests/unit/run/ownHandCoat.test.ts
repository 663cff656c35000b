import { expect, it } from 'vitest';
import type { OwnHandSpec } from '../../../sim/job/schema.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import { testSetting } from './testJob.ts';

const STILL: OwnHandSpec = { kind: 'own', name: 'Test hand', distance_mm: 0, across_mm: 0, speed_percent: 0, pitch_deg: 0, yaw_deg: 0, trigger_ms: 0, correlation_s: 1 };
/** The practised hand of `HAND_PRESETS`, as a job file would state it. */
const PRACTISED: OwnHandSpec = { ...STILL, distance_mm: 12, across_mm: 10, speed_percent: 8, pitch_deg: 3, yaw_deg: 3, trigger_ms: 40, correlation_s: 1.5 };

it('an own hand lays a coat as a usual hand of the same amounts does, to rounding of its units', () => {
  const own = strokesOf(testSetting({ hand: PRACTISED })).path;
  const usual = strokesOf(testSetting({ hand: { kind: 'practised' } })).path;
  expect(own.count).toBe(usual.count);
  for (const column of ['t_s', 'x_m', 'y_m', 'z_m', 'pitch_rad', 'yaw_rad', 'trigger'] as const) {
    const [mine, theirs] = [Array.from(own[column]), Array.from(usual[column])];
    const apart = Math.max(...mine.map((value, i) => Math.abs(value - (theirs[i] as number))));
    expect(apart, column).toBeLessThan(1e-9);
  }
});

it.each([
  ['distance_mm', 'z_m'],
  ['across_mm', 'y_m'],
  ['speed_percent', 't_s'],
  ['pitch_deg', 'pitch_rad'],
  ['yaw_deg', 'yaw_rad'],
] as const)('%s of an own hand moves the gun', (amount, column) => {
  const steady = strokesOf(testSetting()).path;
  expect(strokesOf(testSetting({ hand: STILL })).path[column]).toEqual(steady[column]);
  expect(strokesOf(testSetting({ hand: { ...STILL, [amount]: 10 } })).path[column]).not.toEqual(steady[column]);
});
