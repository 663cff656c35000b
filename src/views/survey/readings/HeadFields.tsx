import type { JSX } from 'preact';
import type { SurveySpec } from '../../../../sim/index.ts';
import { changeSurvey } from '../../../app/survey/surveyChange.ts';
import { choosePanel, turnCoat } from '../../../app/survey/surveyCommands.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { MomentField } from '../../fields/MomentField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { SurveyNumberField, SurveyTextField } from '../SurveyFields.tsx';

/** Who read it, when, with what, and which coats lay there. */
export function HeadFields({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const { part, coats } = state.job.value;
  return (
    <section class="form survey-readings-head" aria-labelledby="survey-head">
      <h2 id="survey-head">Who read what</h2>
      <div class="survey-readings-fields">
        <SurveyTextField at={['name']} label="Name of the survey" longest={200} />
        <SurveyTextField at={['who']} label="Who read it" longest={200} />
        <MomentField id="survey-at" label="When it was read" value={survey.at} set={(at) => changeSurvey('When it was read', '/at', at)} />
        <SurveyTextField at={['gauge']} label="Gauge, and how it was checked" longest={300} isOptional hint="Such as: zero on bare metal, then a 50 µm foil read 51." />
      </div>
      <details class="more">
        <summary>{`Panel, coats read, and what turns weight and wet film into dry film`}</summary>
        <div class="survey-readings-fields">
          {survey.readings.length === 0
            ? <ChoiceField id="survey-panel" label="Panel" value={survey.panel} options={part.panels.map(({ id, name }) => [id, name] as const)} choose={choosePanel} />
            : <p>{`Panel: ${part.panels.find(({ id }) => id === survey.panel)?.name ?? survey.panel}. It stays, since the readings have their places on it; copy the survey to read another panel.`}</p>}
          <fieldset class="group">
            <legend>Coats whose films, added up, were read</legend>
            {coats.filter(({ panel }) => panel === survey.panel).map(({ id, name }) => <TickField key={id} label={name} on={survey.coats.includes(id)} turn={(on) => turnCoat(id, on)} />)}
            {survey.coats.length === 0 ? <p class="soft">None: the film is compared with no plan, and weight and comb need the two figures beside.</p> : null}
          </fieldset>
          <div class="form">
            <SurveyNumberField at={['dryDensity_kg_m3']} label="Density of the dry film" isOptional hint="For coupons. Empty: that of the coats' mix, which signing writes in." />
            <SurveyNumberField at={['solids_percent']} label="Solids by volume, as sprayed" isOptional hint="For the comb. Empty: those of the coats' mix, which signing writes in." />
            <SurveyTextField at={['certificate']} label="Number of the person's certificate" longest={100} isOptional />
            <SurveyTextField at={['notes']} label="Remark" longest={5000} isOptional />
          </div>
        </div>
      </details>
    </section>
  );
}
