import type { JSX } from 'preact';
import { keepDraft, dropDraft } from '../../../app/fieldText.ts';
import { addPasted, openReadingsFile, PASTE_POINTER, pasted } from '../../../app/survey/readingFiles.ts';
import { state } from '../../../app/state.ts';
import { lookAtSurvey } from '../../../app/survey/survey.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldNote } from '../../fields/FieldNote.tsx';

/** Many readings at once: pasted from a gauge or a sheet, or from a file. What was understood is said before it is added. */
export function PasteBox(): JSX.Element {
  const text = state.drafts.value[PASTE_POINTER]?.text ?? '';
  const found = pasted.value;
  return (
    <section class="survey-readings-paste" aria-labelledby="survey-paste-head">
      <h2 id="survey-paste-head">Many at once</h2>
      <p>Paste a column or a table from a gauge or a spreadsheet, or open a CSV file: it can also be dropped anywhere on this sheet.</p>
      <div class="survey-readings-columns">
        <div class="field field-wide">
          <label for="survey-paste">Readings, one a line</label>
          <textarea
            id="survey-paste"
            spellcheck={false}
            value={text}
            placeholder={'dft_um\n52\n48\n55'}
            aria-invalid={found !== null && 'problem' in found}
            aria-describedby="survey-paste-note"
            onInput={(event) => keepDraft(PASTE_POINTER, { text: event.currentTarget.value, problem: null })}
          />
          <FieldNote
            id="survey-paste-note"
            problem={found !== null && 'problem' in found ? found.problem.text : null}
            hint="The first line may name the columns with their units, such as x_mm, y_mm, dft_mil, area, spot; or wft_low_um, wft_high_um for a comb."
          />
        </div>
        <div class="survey-readings-told">
          <ChoiceField id="survey-paste-unit" label="A column without a name is dry film in" value={state.survey.value.pasteUnit} options={[['um', 'µm'], ['mil', 'mil (thousandths of an inch)']]} choose={(pasteUnit) => lookAtSurvey({ pasteUnit })} />
          <div role="status" data-testid="survey-pasted">
            {found === null || 'problem' in found ? null : <><p><strong>{found.said}</strong></p>{found.warnings.map((warning) => <p key={warning}>{warning}</p>)}</>}
          </div>
          <div class="actions">
            <button type="button" class="act" disabled={found === null || 'problem' in found} onClick={addPasted}>{found === null || 'problem' in found ? 'Add' : `Add ${found.readings.length}`}</button>
            <button type="button" disabled={text === ''} onClick={() => dropDraft(PASTE_POINTER)}>Clear</button>
            <label class="file-button">
              Open a CSV file
              <input
                class="hidden-words"
                type="file"
                accept=".csv,.txt,.tsv,text/csv,text/plain"
                onChange={(event) => {
                  const [file] = event.currentTarget.files ?? [];
                  // The same file can be chosen again after it was changed.
                  event.currentTarget.value = '';
                  if (file !== undefined) void openReadingsFile(file);
                }}
              />
            </label>
          </div>
        </div>
      </div>
    </section>
  );
}
