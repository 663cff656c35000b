import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { counted, type SurveySpec } from '../../../sim/index.ts';
import { coat } from '../../app/document.ts';
import { nominalOfCoat } from '../../app/survey/newNominal.ts';
import { lookAtSurvey, shownSurvey } from '../../app/survey/survey.ts';
import { duplicateSurvey, newSurvey, removeSurvey } from '../../app/survey/surveyCommands.ts';
import { dropDraft } from '../../app/fieldText.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { ViewNumberField } from '../fields/ViewNumberField.tsx';

/** Which survey the sheets are about, and another one. */
export function SurveyStrip(): JSX.Element {
  const survey = shownSurvey.value;
  const surveys = state.job.value.surveys ?? [];
  const [isOpen, setOpen] = useState(false);
  if (survey === null) return <section class="survey-strip" aria-label="Begin a survey"><p>The job has no survey yet. A survey is what gauges read on one panel, and the rule that judges it.</p><NewSurvey begun={() => undefined} /></section>;
  return (
    <section class="survey-strip" aria-label="Survey shown">
      <div class="survey-strip-row">
        <ChoiceField id="survey-choice" label="Survey" value={survey.id} options={surveys.map((each) => [each.id, surveyWords(each)] as const)} choose={(id) => lookAtSurvey({ survey: id })} />
        <div class="actions">
          <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>New survey</button>
          <button type="button" onClick={duplicateSurvey}>Copy, to read again</button>
          <button type="button" onClick={removeSurvey}>Remove</button>
        </div>
      </div>
      {isOpen ? <NewSurvey begun={() => setOpen(false)} /> : null}
      {survey.signed === undefined ? null : <p class="survey-strip-signed">{`Signed by ${survey.signed.who} on ${survey.signed.at.replace('T', ' ')}: locked. It can be reopened on the sheet Readings, with a reason.`}</p>}
    </section>
  );
}

function surveyWords({ name, at, readings }: SurveySpec): string {
  return `${name === '' ? 'Without a name' : name}, ${at.slice(0, 10)}, ${counted(readings.length, 'reading')}`;
}

/** A survey of the coat in hand: the one figure that it needs, and where that comes from. */
function NewSurvey({ begun }: { readonly begun: () => void }): JSX.Element {
  const inHand = coat.value;
  const { um, from } = nominalOfCoat(inHand);
  const nominal_um = state.survey.value.nominal_um ?? um;
  const set = (value: number | null): void => lookAtSurvey({ nominal_um: value });
  return (
    <form
      class="survey-strip-new"
      onSubmit={(event) => {
        event.preventDefault();
        if (nominal_um === null) return;
        newSurvey(inHand, nominal_um);
        dropDraft('/view/survey-nominal');
        set(null);
        begun();
      }}
    >
      <p>{`Of the coat in hand, “${inHand.name}”. Panel, coats and rule can be changed after.`}</p>
      <ViewNumberField id="survey-nominal" label="Film that it should have, dry" unitKey="nominal_um" value={nominal_um} low={0.1} high={5000} hint={state.survey.value.nominal_um === null ? from : 'As typed.'} set={set} clear={() => set(null)} />
      <button type="submit" class="act" disabled={nominal_um === null}>Begin the survey</button>
    </form>
  );
}
