import { beforeEach, describe, expect, it } from 'vitest';
import { closeStep, redo, undo } from '../../../../src/app/document.ts';
import { keepDraft } from '../../../../src/app/fieldText.ts';
import { lookAtScheme, shownScheme } from '../../../../src/app/scheme/scheme.ts';
import { addBlank, addColour, addPreset, freePanels, panelInUse, removeColour, removeScheme, stepChoices, turnPanel } from '../../../../src/app/scheme/schemeCommands.ts';
import { USUAL_SCHEME } from '../../../../src/app/scheme/schemePrefs.ts';
import { addStep, chooseStep, chosenStep, duplicateStep, moveStep, removeStep, setInScheme, setInStep } from '../../../../src/app/scheme/stepCommands.ts';
import { coatLetters } from '../../../../src/app/scheme/stepsSheet.ts';
import { state } from '../../../../src/app/state.ts';
import { demoJob } from '../../../../sim/job/demo.ts';
import { parseJob } from '../../../../sim/job/parse.ts';
import type { Job, PanelSpec } from '../../../../sim/job/schema.ts';
import { serialiseJob } from '../../../../sim/job/serialise.ts';

const TIP: PanelSpec = { ...demoJob().part.panels[0]!, id: 'tip', name: 'Tip', holes: [], outline: { rectangle_mm: [300, 300] } };

/** The demo with a second panel that nothing covers. */
function twoPanels(): Job {
  const job = demoJob();
  return { ...job, part: { ...job.part, panels: [...job.part.panels, TIP] } };
}

beforeEach(() => {
  closeStep();
  state.job.value = twoPanels();
  state.past.value = [];
  state.future.value = [];
  state.drafts.value = {};
  state.scheme.value = USUAL_SCHEME;
});

const ids = (): string[] => shownScheme.value?.steps.map(({ id }) => id) ?? [];

/** What the page may never make: a job that it could not read back. */
function expectReadable(): void {
  expect(parseJob(serialiseJob(state.job.value)).job).toEqual(state.job.value);
}

describe('steps of a scheme', () => {
  it('are added after a place, chosen, and undone as one', () => {
    const before = state.job.value;
    addStep('spray', 7);
    expect(ids()[8]).toBe('spray-15');
    expect([chosenStep(), state.past.value.length]).toEqual([8, 1]);
    expect(shownScheme.value?.steps[8]).toMatchObject({ layer: 'aluminium', coat: 'planned', mix: 'aluminium' });
    expectReadable();
    undo();
    expect(state.job.value).toBe(before);
    redo();
    expect(ids()).toHaveLength(15);
  });

  it.each(['brush', 'spray', 'fix', 'sand', 'mask', 'unmask'] as const)('a new %s step is one the file can hold', (kind) => {
    addStep(kind, -1);
    expect(shownScheme.value?.steps[0]?.kind).toBe(kind);
    expectReadable();
  });

  it('are copied, moved and taken out, drafts with them', () => {
    keepDraft('/schemes/0/steps/0/wait_h', { text: 'much', problem: 'no' });
    duplicateStep(0);
    expect(ids().slice(0, 3)).toEqual(['clear-1', 'brush-15', 'clear-2']);
    expect(state.drafts.value).toEqual({});
    expect(moveStep(1, 1)).toBe(2);
    expect(ids().slice(0, 3)).toEqual(['clear-1', 'clear-2', 'brush-15']);
    expect([moveStep(0, -1), moveStep(14, 1)]).toEqual([0, 14]);
    removeStep(2);
    expect(ids()).toEqual(demoJob().schemes![0]!.steps.map(({ id }) => id));
    expect(state.past.value.map(({ label }) => label)).toEqual(['Copy a step', 'Move a step', 'Remove a step']);
    expectReadable();
  });

  it('are never all taken out', () => {
    removeScheme();
    addBlank(['left-side']);
    removeStep(0);
    expect(ids()).toHaveLength(1);
  });

  it('take a value, or lose its key', () => {
    setInStep('Colour', 9, 'colour', 'blue');
    expect(shownScheme.value?.steps[9]).toMatchObject({ colour: 'blue' });
    setInStep('Colour', 9, 'colour', undefined);
    expect(Object.keys(shownScheme.value!.steps[9]!)).not.toContain('colour');
    setInScheme('Limit', 'most_um', 150);
    setInScheme('Limit', 'most_g_m2', undefined);
    expect(shownScheme.value).toMatchObject({ most_um: 150 });
    expect(Object.keys(shownScheme.value!)).not.toContain('most_g_m2');
    expectReadable();
  });

  it('open and close, and coats have letters', () => {
    chooseStep('level');
    expect(chosenStep()).toBe(6);
    chooseStep('level');
    expect(chosenStep()).toBe(-1);
    expect([...coatLetters.value].slice(0, 4)).toEqual([['clear-1', 'A'], ['clear-2', 'B'], ['clear-tapes', 'C'], ['clear-3', 'D']]);
  });
});

describe('schemes', () => {
  it('begin from a preset on a panel that has none, with what the job lacks, in one step', () => {
    expect(freePanels(state.job.value)).toEqual(['tip']);
    addPreset('lacquer', ['tip']);
    expect(shownScheme.value).toMatchObject({ id: 'scheme-2', panels: ['tip'], clearCoats: 0 });
    expect(state.job.value.mixes.at(-1)).toMatchObject({ id: 'mix-6', finish: 'lacquer' });
    expect(state.job.value.coats.at(-1)).toMatchObject({ id: 'coat-5', panel: 'tip', hand: { kind: 'steady' } });
    expect(state.past.value).toHaveLength(1);
    expectReadable();
    undo();
    expect(state.job.value).toEqual(twoPanels());
    expect(shownScheme.value?.id).toBe('rudder');
  });

  it('add nothing that the job has already', () => {
    removeScheme();
    expect(shownScheme.value).toBeNull();
    addPreset('ac-43-13', ['left-side'], { fourthClear: true });
    expect(state.job.value.mixes).toHaveLength(demoJob().mixes.length);
    expect(shownScheme.value?.clearCoats).toBe(4);
    expectReadable();
  });

  it('cover panels, but for the last and those that are sprayed', () => {
    turnPanel('tip', true);
    expect(shownScheme.value?.panels).toEqual(['left-side', 'tip']);
    expect([panelInUse('left-side'), panelInUse('tip')]).toEqual([true, false]);
    turnPanel('left-side', false);
    turnPanel('tip', false);
    expect(shownScheme.value?.panels).toEqual(['left-side']);
    expectReadable();
  });

  it('say what a step needs that the job has not', () => {
    state.job.value = { ...state.job.value, mixes: [] };
    expect(stepChoices()[0]).toEqual(['brush', 'A brushed coat needs a mix: add one in the stage Mix.']);
    addStep('brush', 0);
    expect(state.past.value).toEqual([]);
  });

  it('are chosen by id', () => {
    addBlank(['tip']);
    expect(shownScheme.value?.panels).toEqual(['tip']);
    lookAtScheme({ scheme: 'rudder' });
    expect(shownScheme.value?.id).toBe('rudder');
    expectReadable();
  });
});

it('colours come and go, from the steps too', () => {
  addColour();
  expect(state.job.value.colours?.at(-1)?.id).toBe('colour-3');
  removeColour('cream');
  expect(state.job.value.colours?.map(({ id }) => id)).toEqual(['blue', 'colour-3']);
  expect(shownScheme.value?.steps.filter((step) => 'colour' in step)).toHaveLength(1);
  expectReadable();
});
