import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { changeJob, closeStep, redo, undo } from '../../../src/app/document.ts';
import { fetchSchema, leaveField, typeNumber } from '../../../src/app/fieldText.ts';
import { withValueAt } from '../../../src/app/path.ts';
import { state } from '../../../src/app/state.ts';
import { demoJob } from '../../../sim/job/demo.ts';

const DISTANCE = ['coats', 0, 'plan', 'distance_mm'] as const;
const distance_mm = (): number | undefined => state.job.value.coats[0]?.plan.distance_mm;

beforeAll(fetchSchema);

beforeEach(() => {
  closeStep();
  state.job.value = demoJob();
  state.past.value = [];
  state.future.value = [];
  state.drafts.value = {};
  state.units.value = 'metric';
});

describe('changes of the job', () => {
  it('are undone and done again, with their names', () => {
    const before = state.job.value;
    changeJob('Rename', withValueAt(before, ['name'], 'Fin'));
    expect(state.past.value.at(-1)?.label).toBe('Rename');
    undo();
    expect(state.job.value).toBe(before);
    redo();
    expect(state.job.value.name).toBe('Fin');
  });

  it('of one field are one step while it is typed in, and a new step after it was left', () => {
    for (const text of ['1', '15', '150']) typeNumber(DISTANCE, 'Gun to panel', text);
    leaveField('/coats/0/plan/distance_mm');
    typeNumber(DISTANCE, 'Gun to panel', '180');
    expect(state.past.value).toHaveLength(2);
    undo();
    expect(distance_mm()).toBe(150);
    undo();
    expect(distance_mm()).toBe(200);
  });

  it('drop what could have been done again', () => {
    changeJob('a', withValueAt(state.job.value, ['name'], 'a'));
    undo();
    changeJob('b', withValueAt(state.job.value, ['name'], 'b'));
    redo();
    expect(state.job.value.name).toBe('b');
  });
});

describe('typing in a number field', () => {
  it('takes inches in a field of millimetres', () => {
    typeNumber(DISTANCE, 'Gun to panel', '8 in');
    expect(distance_mm()).toBe(203.2);
  });

  it('keeps a wrong text with its message, and the last good value', () => {
    typeNumber(DISTANCE, 'Gun to panel', 'near');
    leaveField('/coats/0/plan/distance_mm');
    expect(distance_mm()).toBe(200);
    expect(state.drafts.value['/coats/0/plan/distance_mm']).toEqual({ text: 'near', problem: '"near" is not a length; give a number, with or without one of mm, cm, m, in, ft, µm or mil' });
  });

  it('says the limits in the reader\'s unit', () => {
    state.units.value = 'us';
    typeNumber(DISTANCE, 'Gun to panel', '100');
    expect(state.drafts.value['/coats/0/plan/distance_mm']?.problem).toBe('100 in is outside 0.7874 to 39.37 in; give a length within these (gun to panel)');
    expect(distance_mm()).toBe(200);
  });

  it('keeps a draft over an undo that does not move its field', () => {
    changeJob('Rename', withValueAt(state.job.value, ['name'], 'Fin'));
    typeNumber(DISTANCE, 'Gun to panel', 'near');
    undo();
    expect(state.drafts.value['/coats/0/plan/distance_mm']?.text).toBe('near');
  });
});
