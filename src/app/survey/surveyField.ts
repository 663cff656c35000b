import type { SurveySpec } from '../../../sim/index.ts';
import { dropDraft, fieldText, keepDraft, leaveField, type FieldText } from '../fieldText.ts';
import { readNumber } from '../readNumber.ts';
import { pointerOf, valueAt, type JobPath } from '../path.ts';
import { state } from '../state.ts';
import { changeSurvey, endSurveyTyping } from './surveyChange.ts';
import { surveyIndex } from './survey.ts';

/** A place within the survey: `['rule', 'nominal_um']`. */
export type SurveyPath = readonly [keyof SurveySpec, ...JobPath];

function jobPath(at: SurveyPath): JobPath {
  return ['surveys', surveyIndex.value, ...at];
}

/** A number of the survey shown as it stands in its box: what is being typed, else the survey's value, else nothing. */
export function surveyNumberText(at: SurveyPath): FieldText {
  const path = jobPath(at);
  return fieldText(state.job.value, path, state.units.value, state.drafts.value[pointerOf(path)]);
}

/** Takes a keystroke of a number. @param isOptional an empty box takes the number out. */
export function typeSurveyNumber(at: SurveyPath, label: string, text: string, isOptional: boolean): void {
  const path = jobPath(at);
  const pointer = pointerOf(path);
  const typed = isOptional && text.trim() === '' ? { value: undefined } : readNumber(state.job.peek(), path, text, state.units.peek());
  keepDraft(pointer, { text, problem: 'problem' in typed ? typed.problem : null });
  if ('value' in typed && !changeSurvey(label, pointerOf(at), typed.value, pointer)) dropDraft(pointer);
}

/** Text of the survey shown; empty where there is none. */
export function surveyText(at: SurveyPath): string {
  const value = valueAt(state.job.value, jobPath(at));
  return typeof value === 'string' ? value : '';
}

/** Takes a keystroke of a text. @param isOptional an empty box takes the text out. */
export function typeSurveyText(at: SurveyPath, label: string, text: string, isOptional: boolean): void {
  changeSurvey(label, pointerOf(at), isOptional && text === '' ? undefined : text, pointerOf(jobPath(at)));
}

/** The reader has left a field of the survey: what is typed next is another change. */
export function leaveSurveyField(at: SurveyPath): void {
  endSurveyTyping();
  leaveField(pointerOf(jobPath(at)));
}
