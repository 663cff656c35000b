import { withChange, type SurveySpec } from '../../../sim/index.ts';
import { doneNow } from '../log/doneNow.ts';
import { RecordChanges } from '../log/recordChanges.ts';
import { shownSurvey, surveyIndex, surveyStage } from './survey.ts';

const changes = new RecordChanges<SurveySpec>({ shown: shownSurvey, path: () => ['surveys', surveyIndex.peek()], problem: surveyStage.problem });

/**
 * Sets one value of the survey shown, as an undoable step. Once the survey holds readings or a history, that keeps what was there
 * before; until then it is a draft. A signed survey is left as it is, and the stage tells why.
 * @param pointer JSON pointer within the survey: `/rule`, `/readings/3`; undefined takes the key or the reading out.
 * @param key keystrokes of one key that follow each other are one step; null for a step of its own.
 * @returns whether it was changed.
 */
export function changeSurvey(label: string, pointer: string, value: unknown, key: string | null = null): boolean {
  return change(label, key, (survey, since) => {
    const changed = withChange(survey, pointer, value, doneNow(survey), since);
    const isDraft = survey.readings.length === 0 && survey.history.length === 0;
    return isDraft ? { ...changed, history: [] } : changed;
  });
}

/** Adds readings after the last, as one step, which a history that holds a change tells by the first of them. @returns whether they were added. */
export function addReadings(label: string, readings: SurveySpec['readings']): boolean {
  return replaceSurvey(label, (survey) => {
    const { history } = withChange(survey, `/readings/${survey.readings.length}`, readings[0], doneNow(survey));
    return { ...survey, readings: [...survey.readings, ...readings], history };
  });
}

/** Puts another survey in the place of the one shown, where that is not signed. @returns whether that worked. */
export function replaceSurvey(label: string, next: (survey: SurveySpec) => SurveySpec): boolean {
  const survey = shownSurvey.peek();
  return survey !== null && !refusedAsSigned(survey) && change(label, null, next);
}

/** Whether a survey is signed and so locked, which the stage then tells. */
export function refusedAsSigned({ signed }: SurveySpec): boolean {
  if (signed === undefined) return false;
  surveyStage.problem.value = { title: 'Nothing was changed', text: `${signed.who} signed this survey on ${signed.at}, so it is locked; reopen it first, with a reason.`, place: {} };
  return true;
}

/** Signs the survey shown, or opens it again. @returns whether that worked. */
export function signSurvey(label: string, next: (survey: SurveySpec) => SurveySpec): boolean {
  return change(label, null, next);
}

/** What is typed from now on is a change of its own. */
export function endSurveyTyping(): void {
  changes.endTyping();
}

function change(label: string, key: string | null, next: (survey: SurveySpec, since: SurveySpec) => SurveySpec): boolean {
  return changes.change(label, key, next) !== null;
}
