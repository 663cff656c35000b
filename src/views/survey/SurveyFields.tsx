import type { JSX } from 'preact';
import { leaveSurveyField, surveyNumberText, surveyText, typeSurveyNumber, typeSurveyText, type SurveyPath } from '../../app/survey/surveyField.ts';
import { NumberBox } from '../fields/NumberBox.tsx';

export interface SurveyFieldProps {
  readonly at: SurveyPath;
  readonly label: string;
  readonly hint?: string;
  /** May be left empty. */
  readonly isOptional?: boolean;
}

/** A number of the survey shown, with its unit; a change of it goes into the survey's history. */
export function SurveyNumberField({ at, label, hint, isOptional = false }: SurveyFieldProps): JSX.Element {
  const { text, unit, problem } = surveyNumberText(at);
  return (
    <NumberBox
      id={idOf(at)}
      label={label}
      text={text}
      unit={unit}
      problem={problem === null ? null : `${problem}. The last good value still counts.`}
      hint={hint}
      type={(typed) => typeSurveyNumber(at, label, typed, isOptional)}
      leave={() => leaveSurveyField(at)}
    />
  );
}

/** A text of the survey shown. @param longest letters that the file takes. */
export function SurveyTextField({ at, label, hint, isOptional = false, longest }: SurveyFieldProps & { readonly longest: number }): JSX.Element {
  const id = idOf(at);
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        maxLength={longest}
        autocomplete="off"
        value={surveyText(at)}
        {...(hint === undefined ? {} : { 'aria-describedby': `${id}-note` })}
        onInput={(event) => typeSurveyText(at, label, event.currentTarget.value, isOptional)}
        onBlur={() => leaveSurveyField(at)}
      />
      {hint === undefined ? null : <span class="field-note" id={`${id}-note`}>{hint}</span>}
    </div>
  );
}

function idOf(at: SurveyPath): string {
  return `survey-${at.join('-')}`;
}
