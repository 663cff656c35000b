import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob, judgeSurvey, parseJob, serialiseJob, signatureState, type SurveySpec } from '../../../../sim/index.ts';
import { coat, undo } from '../../../../src/app/document.ts';
import { state } from '../../../../src/app/state.ts';
import { nominalOfCoat } from '../../../../src/app/survey/newNominal.ts';
import { openReadingsFile } from '../../../../src/app/survey/readingFiles.ts';
import { lookAtSurvey, shownSurvey, surveyStage } from '../../../../src/app/survey/survey.ts';
import { addReadings, changeSurvey } from '../../../../src/app/survey/surveyChange.ts';
import { choosePanel, chooseRule, duplicateSurvey, newSurvey, removeReading, removeSurvey, setInRule, turnCoat } from '../../../../src/app/survey/surveyCommands.ts';
import { leaveSurveyField, typeSurveyNumber } from '../../../../src/app/survey/surveyField.ts';
import { reopen, signOff } from '../../../../src/app/survey/surveySigning.ts';

function shown(): SurveySpec {
  const survey = shownSurvey.peek();
  if (survey === null) throw new Error('no survey is shown');
  return survey;
}

/** The survey as it would be had signing stated neither figure. */
function changeUnsigned(): void {
  const open: SurveySpec = { ...shown(), dryDensity_kg_m3: undefined, solids_percent: undefined };
  state.job.value = { ...state.job.peek(), surveys: [open] };
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
    const tries = [() => changeSurvey('Name', '/name', 'x'), () => addReadings('Add', [{ kind: 'metal', dry_um: 1 }]), () => chooseRule('spots-areas'), () => removeReading(0), () => turnCoat('x', false)];
    for (const attempt of tries) {
      surveyStage.problem.value = null;
      attempt();
      expect(state.job.peek()).toBe(signed);
      expect(surveyStage.problem.peek()?.text).toMatch(/Inga Vestermark signed .* reopen it first/);
    }
    removeSurvey();
    expect(state.job.peek()).toBe(signed);
    expect(surveyStage.problem.peek()).toMatchObject({ title: 'Nothing was removed', text: expect.stringMatching(/Inga Vestermark signed .* locked and stays/) as string });
    expect(reopen('Inga Vestermark', 'one reading was of another panel')).toBe(true);
    expect(shown().history.at(-1)?.what).toBe('/signed');
    expect(changeSurvey('Name', '/name', 'x')).toBe(true);
  });

  it('stay once they were signed: removing one would take the signature with it', () => {
    signOff({ who: 'Inga Vestermark' });
    reopen('Runa', 'misread');
    const before = state.job.peek();
    removeSurvey();
    expect(state.job.peek()).toBe(before);
    expect(surveyStage.problem.peek()).toMatchObject({ title: 'Nothing was removed', text: expect.stringMatching(/Inga Vestermark signed .* reopened since/) as string });
  });

  it('are no drafts any more once there is a history, readings or none, and tell what is added', () => {
    addReadings('Add', [{ kind: 'metal', dry_um: 52 }]);
    removeReading(0);
    setInRule('Boundary', 'boundary', 'lenient');
    addReadings('Add', [{ kind: 'metal', dry_um: 53 }, { kind: 'metal', dry_um: 54 }]);
    addReadings('Add', [{ kind: 'metal', dry_um: 55 }]);
    expect(shown().readings.map((reading) => reading.kind === 'metal' && reading.dry_um)).toEqual([53, 54, 55]);
    expect(shown().history.map(({ what, before }) => [what, before === ''])).toEqual([['/readings/0', false], ['/rule/boundary', false], ['/readings/0', true]]);
    expect(parseJob(serialiseJob(state.job.peek())).job).toEqual(state.job.peek());
  });

  it('cannot be signed while a field is typed wrong', () => {
    typeSurveyNumber(['rule', 'nominal_um'], 'Nominal film', '50 parsecs', false);
    expect(signOff({ who: 'Inga Vestermark' })).toBe(false);
    expect(shown().signed).toBeUndefined();
    expect(surveyStage.problem.peek()).toMatchObject({ title: 'Not signed', text: expect.stringMatching(/^One field is half typed or wrong/) as string });
    typeSurveyNumber(['rule', 'nominal_um'], 'Nominal film', '60', false);
    expect(signOff({ who: 'Inga Vestermark' })).toBe(true);
  });

  it('state the density and solids that they go by once signed, so that another mix changes no signed film', () => {
    addReadings('Add', [{ kind: 'coupon', before_g: 10, after_g: 11, area_cm2: 100 }, { kind: 'comb', low_um: 100, high_um: 125 }]);
    const film = () => judgeSurvey(state.job.peek(), shown()).judged.readings.map(({ low_m, high_m }) => [low_m, high_m]);
    const before = film();
    expect(signOff({ who: 'Inga Vestermark' })).toBe(true);
    for (const [k, ends] of film().entries()) for (const [e, end_m] of ends.entries()) expect(end_m).toBeCloseTo(before[k]?.[e] as number, 15);
    const { dryDensity_kg_m3, solids_percent } = shown();
    expect(dryDensity_kg_m3).toBeGreaterThan(500);
    expect(solids_percent).toBeGreaterThan(1);
    expect(signatureState(shown(), null)).toBe('matches');
    const [signedFilm, job] = [film(), state.job.peek()];
    state.job.value = { ...job, coats: job.coats.map((each) => ({ ...each, mix: 'aluminium' })) };
    expect(parseJob(serialiseJob(state.job.peek())).job).toEqual(state.job.peek());
    expect(film()).toEqual(signedFilm);
    // Without the two figures it would have changed.
    changeUnsigned();
    expect(film()).not.toEqual(signedFilm);
  });

  it('of coupons with no density to go by cannot be signed', () => {
    for (const id of shown().coats) turnCoat(id, false);
    addReadings('Add', [{ kind: 'coupon', before_g: 10, after_g: 11, area_cm2: 100 }]);
    expect(signOff({ who: 'Inga Vestermark' })).toBe(false);
    expect(surveyStage.problem.peek()?.text).toMatch(/give the density of the dry film/);
  });

  it('take a file of readings only where it was meant for, which is still shown when it is read', async () => {
    const meant = shown().id;
    const opening = openReadingsFile(new File(['dry_um\n52\n'], 'gauge.csv'));
    newSurvey(coat.peek(), 60);
    await opening;
    expect(state.job.peek().surveys?.map(({ readings }) => readings.length)).toEqual([0, 0]);
    expect(surveyStage.problem.peek()).toMatchObject({ title: expect.stringMatching(/gauge\.csv was not opened/) as string, text: expect.stringMatching(/gave way to another/) as string });
    lookAtSurvey({ survey: meant });
    await openReadingsFile(new File(['dry_um\n52\n'], 'gauge.csv'));
    expect(shown().readings).toMatchObject([{ kind: 'metal', dry_um: 52 }]);
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
