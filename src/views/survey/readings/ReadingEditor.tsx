import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { ReadingSpec } from '../../../../sim/index.ts';
import { FIGURES, KIND_WORDS } from '../../../app/survey/readingFigures.ts';
import { SurveyNumberField, SurveyTextField } from '../SurveyFields.tsx';

/** The figures of one reading, changed where they stand; what was there before goes into the survey's history. */
export function ReadingEditor({ index, reading, close }: { readonly index: number; readonly reading: ReadingSpec; readonly close: () => void }): JSX.Element {
  const section = useRef<HTMLElement>(null);
  useEffect(() => section.current?.querySelector('input')?.focus(), []);
  const hasPlace = reading.x_mm !== undefined;
  return (
    <section ref={section} class="group survey-readings-editor" aria-label={`Reading ${index + 1}`}>
      <h3>{`Reading ${index + 1}: ${KIND_WORDS[reading.kind]}`}</h3>
      <div class="survey-readings-fields">
        {FIGURES[reading.kind].map(({ key, label, isOptional }) => <SurveyNumberField key={key} at={['readings', index, key]} label={label} isOptional={isOptional === true} {...(isOptional === true ? { hint: 'Empty: every tooth was wetted.' } : {})} />)}
        {hasPlace ? <SurveyNumberField at={['readings', index, 'x_mm']} label="Place, x from the left" /> : null}
        {hasPlace ? <SurveyNumberField at={['readings', index, 'y_mm']} label="Place, y from below" /> : null}
        <SurveyTextField at={['readings', index, 'area']} label="Area" longest={40} isOptional />
        <SurveyTextField at={['readings', index, 'spot']} label="Spot" longest={40} isOptional />
        <SurveyTextField at={['readings', index, 'note']} label="Remark" longest={500} isOptional />
      </div>
      <div class="actions"><button type="button" onClick={close}>Done</button></div>
    </section>
  );
}
