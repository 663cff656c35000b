import { reopened, signed, type SignedSpec } from '../../../sim/index.ts';
import { nowMoment } from '../nowMoment.ts';
import { signSurvey } from './surveyChange.ts';

/** Signs the survey shown off, as of now. @returns whether it was signed. */
export function signOff(signature: Pick<SignedSpec, 'who' | 'certificate' | 'words'>): boolean {
  return signSurvey('Sign a survey', (survey) => signed(survey, { at: nowMoment(), ...signature }));
}

/** Opens the signed survey again, with the reason in its history. @returns whether that worked. */
export function reopen(who: string, why: string): boolean {
  return signSurvey('Reopen a survey', (survey) => reopened(survey, { at: nowMoment(), who }, why));
}
