import './readings.css';
import type { JSX } from 'preact';
import { counted, type SurveySpec } from '../../../../sim/index.ts';
import { openReadingsFile, saveReadings } from '../../../app/survey/readingFiles.ts';
import { readingMarks } from '../../../app/survey/readingMarks.ts';
import { reopen, signOff } from '../../../app/survey/surveySigning.ts';
import { shownSurvey } from '../../../app/survey/survey.ts';
import { surveyPanel } from '../../../app/survey/surveyPanel.ts';
import { FileDrop } from '../../frame/FileDrop.tsx';
import { HistoryList } from '../../log/HistoryList.tsx';
import { SignOff } from '../../log/SignOff.tsx';
import { EntryForm, focusFigure } from './EntryForm.tsx';
import { HeadFields } from './HeadFields.tsx';
import { PasteBox } from './PasteBox.tsx';
import { PlacePicker } from './PlacePicker.tsx';
import { ReadingsTable } from './ReadingsTable.tsx';

/** What the gauges read: entered one by one, pasted, or from a file. */
export function ReadingsSheet(): JSX.Element | null {
  const survey = shownSurvey.value;
  if (survey === null) return null;
  const isLocked = survey.signed !== undefined;
  return (
    <FileDrop name="survey-readings" take={([file]) => { if (file !== undefined) void openReadingsFile(file); }}>
      <fieldset class="survey-readings-open" disabled={isLocked}>
        <HeadFields survey={survey} />
        {isLocked ? null : <Entry survey={survey} />}
      </fieldset>
      <section class="survey-readings-list" aria-labelledby="survey-list">
        <h2 id="survey-list">{counted(survey.readings.length, 'reading')}</h2>
        <ReadingsTable key={survey.id} survey={survey} />
        <div class="actions">
          <button type="button" disabled={survey.readings.length === 0} onClick={saveReadings}>Save the readings (CSV)</button>
        </div>
        <HistoryList changes={survey.history} />
      </section>
      <SignOff key={survey.id} id={survey.id} what="survey" record={survey} recordingText={null} who={survey.who} certificate={survey.certificate} sign={signOff} reopen={reopen} />
    </FileDrop>
  );
}

function Entry({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const panel = surveyPanel.value;
  return (
    <>
      <section class="survey-readings-new" aria-labelledby="survey-next">
        <h2 id="survey-next">Next reading</h2>
        <div class="survey-readings-columns">
          {panel === null ? <p>The panel cannot be drawn; the stage Part says why. Readings can be typed all the same.</p> : <PlacePicker panel={panel} marks={readingMarks(survey.readings, [])} taken={focusFigure} />}
          <EntryForm survey={survey} />
        </div>
      </section>
      <PasteBox />
    </>
  );
}
