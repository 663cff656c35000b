import { beforeEach, describe, expect, it } from 'vitest';
import { rowsOf, type BlendRow } from '../../../src/app/blendText.ts';
import { closeStep, coat, mix, redo, undo } from '../../../src/app/document.ts';
import { leaveField } from '../../../src/app/fieldText.ts';
import { addMix, chooseMix, chooseThinner, removeMix, setInMix, thinnerPointer, thinnerRows, turnCup, turnRetarder, typeThinner } from '../../../src/app/mixCommands.ts';
import { stageMarks } from '../../../src/app/stageMarks.ts';
import { state } from '../../../src/app/state.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import { serialiseJob } from '../../../sim/job/serialise.ts';

beforeEach(() => {
  closeStep();
  state.job.value = demoJob();
  state.coatId.value = '';
  state.past.value = [];
  state.future.value = [];
  state.drafts.value = {};
});

const withShare = (row: number, share: string): BlendRow[] => thinnerRows().map((each, i) => (i === row ? { ...each, share } : each));

/** What the page may never make: a job that it could not read back. */
function expectReadable(): void {
  expect(parseJob(serialiseJob(state.job.value)).job).toEqual(state.job.value);
}

describe('the mix of a coat', () => {
  it('is chosen and taken out, in the order of the file', () => {
    chooseMix('retarded');
    expect(mix.value?.name).toBe('Clear dope, retarded');
    expect(Object.keys(coat.value)).toEqual(['id', 'name', 'panel', 'setUp', 'mix', 'target', 'plan', 'hand']);
    chooseMix('');
    expect(mix.value).toBeNull();
    expect(Object.keys(coat.value)).not.toContain('mix');
    expect(stageMarks.value.mix).toBe('not-yet');
    expectReadable();
    undo();
    expect(mix.value?.id).toBe('retarded');
  });

  it('is copied, or made new where there is none', () => {
    addMix();
    expect(state.job.value.mixes.map(({ id }) => id)).toEqual(['general', 'retarded', 'brush', 'aluminium', 'colour', 'mix-6']);
    expect(mix.value).toMatchObject({ id: 'mix-6', name: 'Clear dope, general thinner, copy' });
    chooseMix('');
    addMix();
    expect(mix.value).toMatchObject({ id: 'mix-7', finish: 'clear-dope' });
    expectReadable();
    undo();
    expect([mix.value, state.job.value.mixes.length]).toEqual([null, 6]);
  });

  it('stays where a step of a scheme is laid with it, and says which', () => {
    chooseMix('colour');
    removeMix();
    expect(state.job.value.mixes.map(({ id }) => id)).toContain('colour');
    expect(state.notice.value?.text).toContain('"Cream 1, cross coat"');
    state.notice.value = null;
  });

  it('is removed from every coat that used it, with what was typed in it', () => {
    typeThinner(withShare(0, 'much'));
    removeMix();
    expect(state.job.value.mixes.map(({ id }) => id)).toEqual(['retarded', 'brush', 'aluminium', 'colour']);
    expect(state.job.value.coats.map((each) => each.mix)).toEqual([undefined, undefined, undefined, undefined]);
    expect(state.drafts.value).toEqual({});
    expectReadable();
    undo();
    expect(state.job.value).toEqual(demoJob());
    redo();
    expect(state.job.value.mixes).toHaveLength(4);
  });

  it('has a retarder and a cup reading, or not', () => {
    turnRetarder(true);
    turnCup(true);
    setInMix('Cup', ['cup', 'kind'], 'zahn-2');
    expect(mix.value).toMatchObject({ retarder: { solvent: 'n-butanol', percent: 10 }, cup: { kind: 'zahn-2', temperature_C: 21 } });
    expectReadable();
    turnRetarder(false);
    turnCup(false);
    expect(mix.value).toEqual(demoJob().mixes[0]);
    expectReadable();
  });
});

describe('the thinner', () => {
  it('waits until its shares add up, and is then one step', () => {
    const before = state.job.value;
    typeThinner(withShare(0, '2'));
    typeThinner(withShare(0, '20'));
    leaveField(thinnerPointer());
    expect(state.job.value).toBe(before);
    expect(state.drafts.value[thinnerPointer()]?.problem).toContain('The shares add to 94 %, which is 6 too little');
    expect(stageMarks.value.mix).toBe('attention');
    typeThinner(withShare(1, '52'));
    expect(mix.value?.thinner.map(({ percent }) => percent)).toEqual([20, 52, 19, 9]);
    expect(stageMarks.value.mix).toBe('set');
    leaveField(thinnerPointer());
    expect(state.drafts.value).toEqual({});
    expectReadable();
    undo();
    expect(state.job.value).toBe(before);
    expect(thinnerRows()).toEqual(rowsOf(before.mixes[0]!.thinner));
  });

  it('changes a solvent at once', () => {
    chooseThinner(thinnerRows().map((row, i) => (i === 0 ? { ...row, solvent: 'acetone' } : row)));
    expect(mix.value?.thinner[0]).toEqual({ solvent: 'acetone', percent: 26 });
    chooseThinner(thinnerRows().map((row, i) => (i === 1 ? { ...row, solvent: 'm-xylene' } : row)));
    expect(state.past.value).toHaveLength(2);
    expect(state.drafts.value).toEqual({});
  });
});
