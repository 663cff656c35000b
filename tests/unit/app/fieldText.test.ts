import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/index.ts';
import { fetchSchema, fieldText, leaveField, typeNumber } from '../../../src/app/fieldText.ts';
import { readNumber } from '../../../src/app/readNumber.ts';
import { state } from '../../../src/app/state.ts';

const DISTANCE = ['coats', 0, 'plan', 'distance_mm'] as const;
const DISTANCE_ID = '/coats/0/plan/distance_mm';
const distance_mm = (): number | undefined => state.job.value.coats[0]?.plan.distance_mm;

beforeEach(() => {
  state.job.value = demoJob();
  state.drafts.value = {};
  state.units.value = 'metric';
});

describe('typing before the schema is here', () => {
  // First in this file: the schema stays once it was fetched.
  it('is kept as it is typed, and is the job’s value when it comes', async () => {
    // What was typed into a job that has given way is not for the next one.
    state.jobId.value = 'before';
    typeNumber(['coats', 0, 'plan', 'speed_m_s'], 'Speed of the gun', '0.9');
    state.jobId.value = 'now';
    typeNumber(DISTANCE, 'Gun to panel', '15');
    typeNumber(DISTANCE, 'Gun to panel', '150');
    leaveField(DISTANCE_ID);
    expect(distance_mm()).toBe(200);
    expect(state.drafts.value[DISTANCE_ID]).toMatchObject({ text: '150', problem: expect.stringContaining('not taken over yet') as string });
    await fetchSchema();
    expect(distance_mm()).toBe(150);
    expect(state.job.value.coats[0]?.plan.speed_m_s).toBe(demoJob().coats[0]?.plan.speed_m_s);
    expect(state.drafts.value[DISTANCE_ID]).toBeUndefined();
  });

  it('is at once when it is here', () => {
    typeNumber(DISTANCE, 'Gun to panel', '180');
    expect(distance_mm()).toBe(180);
  });
});

describe('fieldText', () => {
  it('finds the unit of a number in a list of a list', () => {
    const path = ['part', 'panels', 0, 'hinge_mm', 1, 1] as const;
    expect(fieldText(demoJob(), path, 'metric', undefined)).toMatchObject({ text: '1250', unit: 'mm' });
    expect(fieldText(demoJob(), path, 'us', undefined)).toMatchObject({ text: '49.213', unit: 'in' });
    expect(readNumber(demoJob(), path, '50 in', 'metric')).toEqual({ value: 1270 });
  });
});
