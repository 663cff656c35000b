import { beforeEach, expect, it } from 'vitest';
import { demoJob, type SetUpSpec } from '../../../../sim/index.ts';
import { redo, undo } from '../../../../src/app/document.ts';
import { keepDraft } from '../../../../src/app/fieldText.ts';
import { applyProved } from '../../../../src/app/setups/cardCommands.ts';
import { state } from '../../../../src/app/state.ts';

beforeEach(() => {
  state.job.value = demoJob();
  state.past.value = [];
  state.future.value = [];
  state.drafts.value = {};
});

const setUp = (at: number): SetUpSpec => state.job.value.setUps[at] as SetUpSpec;

it('replaces the set-up as one step, there and back', () => {
  const before = setUp(1);
  const proved: SetUpSpec = { ...before, fluidRate_mL_min: before.fluidRate_mL_min + 7, knownWithin: { fluidRate_percent: 4 } };
  applyProved(before, proved);
  expect(setUp(1)).toBe(proved);
  expect(state.past.value.map(({ label }) => label)).toEqual(['Use the test card']);
  undo();
  expect(setUp(1)).toBe(before);
  redo();
  expect(setUp(1)).toBe(proved);
});

it('leaves a set-up that was changed meanwhile as it is', () => {
  const asked = setUp(1);
  const changed = { ...asked, name: 'Another name' };
  state.job.value = { ...state.job.value, setUps: state.job.value.setUps.map((each) => (each === asked ? changed : each)) };
  const job = state.job.value;
  applyProved(asked, { ...asked, fluidRate_mL_min: 1 });
  expect(state.job.value).toBe(job);
  expect(state.past.value).toEqual([]);
});

it('lets go of text that would hide the new numbers, and of no other', () => {
  for (const pointer of ['/setUps/1/fan/width_mm', '/setUps/1/card/caught/volume_mL', '/setUps/0/fan/width_mm', '/setUps/10/fan/width_mm']) keepDraft(pointer, { text: '?', problem: 'no number' });
  applyProved(setUp(1), { ...setUp(1), fluidRate_mL_min: 1 });
  expect(Object.keys(state.drafts.value).sort()).toEqual(['/setUps/0/fan/width_mm', '/setUps/1/card/caught/volume_mL', '/setUps/10/fan/width_mm']);
});
