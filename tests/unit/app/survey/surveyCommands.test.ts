import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob, parseJob, serialiseJob, type SurveySpec } from '../../../../sim/index.ts';
import { coat, undo } from '../../../../src/app/document.ts';
import { state } from '../../../../src/app/state.ts';
import { nominalOfCoat } from '../../../../src/app/survey/newNominal.ts';
import { shownSurvey, surveyStage } from '../../../../src/app/survey/survey.ts';
import { addReadings, changeSurvey } from '../../../../src/app/survey/surveyChange.ts';
import { choosePanel, chooseRule, duplicateSurvey, newSurvey, removeReading, removeSurvey, setInRule, turnCoat } from '../../../../src/app/survey/surveyCommands.ts';
import { leaveSurveyField, typeSurveyNumber } from '../../../../src/app/survey/surveyField.ts';
import { reopen, signOff } from '../../../../src/app/survey/surveySigning.ts';

function shown(): SurveySpec {
  const survey = shownSurvey.peek();
  if (survey === null) throw new Error('no survey is shown');
  return survey;
}

beforeEach(() => {
  state.job.value = demoJob();
  state.past.value = [];
  state.future.value = [];
  state.drafts.value = {};
  state.survey.value = { ...state.survey.peek(), survey: '' };
  state.log.value = { ...state.log.peek(), who: 'Inga Vestermark' };
  surveyStage.problem.value = null;
  newSurvey(coat.peek(), 50);
});

describe('surveys', () => {
  it('begin on the coat in hand and its panel, by the mean-and-80 % rule, and are shown', () => {
    expect(shown()).toMatchObject({ panel: coat.peek().panel, coats: [coat.peek().id], who: 'Inga Vestermark', rule: { kind: 'mean-80', nominal_um: 50, boundary: 'strict' }, readings: [] });
  });

  it('go and come back by undo', () => {
    const { id } = shown();
    removeSurvey();
    expect(state.job.peek().surveys).toEqual([]);
    undo();
    expect(state.job.peek().surveys?.map((each) => each.id)).toEqual([id]);
  });

  it('are copied to be read again: without readings, history and sign-off', () => {
    addReadings('Add', [{ kind: 'metal', dry_um: 52 }]);
    signOff({ who: 'Inga Vestermark' });
    duplicateSurvey();
    expect(state.job.peek().surveys).toHaveLength(2);
    expect(shown()).toMatchObject({ readings: [], history: [], rule: { nominal_um: 50 } });
    expect(shown().signed).toBeUndefined();
  });

  it('keep no history as drafts, and what was there before once they hold readings', () => {
    changeSurvey('Gauge', '/gauge', 'one');
    changeSurvey('Gauge', '/gauge', 'two');
    expect(shown().history).toEqual([]);
    addReadings('Add', [{ kind: 'metal', dry_um: 52 }]);
    expect(shown().history).toEqual([]);
    setInRule('Boundary', 'boundary', 'lenient');
    expect(shown().history).toMatchObject([{ what: '/rule/boundary', before: '"strict"', who: 'Inga Vestermark' }]);
    removeReading(0);
    expect(JSON.parse(shown().history[1]?.before ?? '')).toMatchObject({ kind: 'metal', dry_um: 52 });
  });

  it('take typing in one field as one change, with the value before it', () => {
    addReadings('Add', [{ kind: 'metal', dry_um: 52 }]);
    for (const text of ['6', '61', '61.5']) typeSurveyNumber(['readings', 0, 'dry_um'], 'Film', text, false);
    leaveSurveyField(['readings', 0, 'dry_um']);
    expect(shown().readings[0]).toMatchObject({ dry_um: 61.5 });
    expect(shown().history).toMatchObject([{ what: '/readings/0/dry_um', before: '52' }]);
    undo();
    expect(shown()).toMatchObject({ readings: [{ dry_um: 52 }], history: [] });
  });

  it('refuse every change once they are signed, with a notice, until reopened with a reason', () => {
    addReadings('Add', [{ kind: 'metal', dry_um: 52 }]);
    expect(signOff({ who: 'Inga Vestermark' })).toBe(true);
    const signed = state.job.peek();
    const tries = [() => changeSurvey('Name', '/name', 'x'), () => addReadings('Add', [{ kind: 'metal', dry_um: 1 }]), () => removeSurvey(), () => chooseRule('spots-areas'), () => removeReading(0), () => turnCoat('x', false)];
    for (const attempt of tries) {
      surveyStage.problem.value = null;
      attempt();
      expect(state.job.peek()).toBe(signed);
      expect(surveyStage.problem.peek()?.text).toMatch(/Inga Vestermark signed .* reopen it first/);
    }
    expect(reopen('Inga Vestermark', 'one reading was of another panel')).toBe(true);
    expect(shown().history.at(-1)?.what).toBe('/signed');
    expect(changeSurvey('Name', '/name', 'x')).toBe(true);
  });

  it('change their rule, which asks for the same film', () => {
    chooseRule('spots-areas');
    expect(shown().rule).toEqual({ kind: 'spots-areas', min_um: 40, max_um: 60, level: 3 });
    chooseRule('ninety-ten');
    expect(shown().rule).toMatchObject({ kind: 'ninety-ten', nominal_um: 50 });
  });

  it('are readable by the file’s own reader, whatever was done to them', () => {
    addReadings('Add', [{ kind: 'comb', low_um: 75 }, { kind: 'metal', dry_um: 52, x_mm: 1, y_mm: 2 }]);
    for (const kind of ['spots-areas', 'ninety-ten', 'shop', 'mean-80'] as const) {
      chooseRule(kind);
      expect(parseJob(serialiseJob(state.job.peek())).job).toEqual(state.job.peek());
    }
    changeSurvey('Remark', '/readings/1/note', 'edge');
    signOff({ who: 'Inga Vestermark' });
    expect(parseJob(serialiseJob(state.job.peek())).job).toEqual(state.job.peek());
  });

  it('keep the panel of their readings', () => {
    const [panel] = state.job.peek().part.panels;
    if (panel === undefined) throw new Error('no panel');
    state.job.value = { ...state.job.peek(), part: { ...state.job.peek().part, panels: [panel, { ...panel, id: 'fin' }] } };
    choosePanel('fin');
    expect(shown()).toMatchObject({ panel: 'fin', coats: [] });
    addReadings('Add', [{ kind: 'metal', dry_um: 52 }]);
    choosePanel(panel.id);
    expect(shown().panel).toBe('fin');
  });
});

describe('nominalOfCoat', () => {
  it('is the target where that is dry film, and asked for where it is wet and no film is at hand', () => {
    const target = { ...coat.peek().target, film: 'dry', thickness_um: 42 } as const;
    expect(nominalOfCoat({ ...coat.peek(), target }).um).toBe(42);
    const wet = nominalOfCoat(coat.peek());
    expect(wet.um).toBeNull();
    expect(wet.from).toMatch(/100 µm of wet film/);
  });
});
