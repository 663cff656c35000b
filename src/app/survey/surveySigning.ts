import { CrosscoatError, reopened, signed, type SignedSpec, type SurveySpec } from '../../../sim/index.ts';
import { refusedAsUnfinished, wrongFields } from '../log/unfinished.ts';
import { nowMoment } from '../nowMoment.ts';
import { surveyIndex, surveyStage } from './survey.ts';
import { signSurvey } from './surveyChange.ts';
import { takenOf } from './surveyJudged.ts';

/** Signs the survey shown off, as of now. What is typed wrong has to be mended or emptied first. @returns whether it was signed. */
export function signOff(signature: Pick<SignedSpec, 'who' | 'certificate' | 'words'>): boolean {
  if (refusedAsUnfinished(wrongFields(`/surveys/${surveyIndex.peek()}/`), surveyStage.problem)) return false;
  return signSurvey('Sign a survey', (survey) => signed(withTaken(survey), { at: nowMoment(), ...signature }));
}

/** Opens the signed survey again, with the reason in its history. @returns whether that worked. */
export function reopen(who: string, why: string): boolean {
  return signSurvey('Reopen a survey', (survey) => reopened(survey, { at: nowMoment(), who }, why));
}

/** With the density that its coupons and the solids that its combs go by stated: those of the mixes, which may be changed later, would change a film that is signed. */
function withTaken(survey: SurveySpec): SurveySpec {
  const has = (kind: 'coupon' | 'comb'): boolean => survey.readings.some((reading) => reading.kind === kind);
  const [needsDensity, needsSolids] = [has('coupon') && survey.dryDensity_kg_m3 === undefined, has('comb') && survey.solids_percent === undefined];
  if (!needsDensity && !needsSolids) return survey;
  const taken = takenOf(survey);
  return {
    ...survey,
    ...(needsDensity ? { dryDensity_kg_m3: found(taken?.dryDensity_kg_m3, 'coupons', 'density of the dry film') } : {}),
    ...(needsSolids ? { solids_percent: 100 * found(taken?.solidsFraction, 'combs', 'solids by volume') } : {}),
  };
}

function found(value: number | null | undefined, kind: string, what: string): number {
  if (value !== null && value !== undefined) return value;
  throw new CrosscoatError('range', `The film of the ${kind} cannot be worked out, so there is none to sign: give the ${what}, or name the coats whose mix has it`);
}
