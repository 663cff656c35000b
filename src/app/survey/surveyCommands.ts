import type { CoatSpec, Job, SurveySpec } from '../../../sim/index.ts';
import { changeJob } from '../document.ts';
import { freshId } from '../freshId.ts';
import { refusedAsOnceSigned } from '../log/keptSignature.ts';
import { nowMoment } from '../nowMoment.ts';
import { state } from '../state.ts';
import { changeSurvey, replaceSurvey } from './surveyChange.ts';
import { lookAtSurvey, shownSurvey, surveyIndex, surveyStage } from './survey.ts';
import { ruleOfKind, type RuleKind } from './surveyRules.ts';

/** Begins a survey of a coat on its panel, by the mean-and-80 % rule, and shows it. */
export function newSurvey(coat: CoatSpec, nominal_um: number): void {
  const job = state.job.peek();
  addSurvey(job, 'Add a survey', {
    id: freshSurveyId(job),
    name: `Film of ${coat.name}`.slice(0, 200),
    panel: coat.panel,
    coats: [coat.id],
    at: nowMoment(),
    who: state.log.peek().who,
    rule: { kind: 'mean-80', nominal_um, low_percent: 80, share_percent: 20, boundary: 'strict', correction_um: 0 },
    readings: [],
    history: [],
  });
}

/** The survey shown once more, to be read again: its readings stay behind, and so do history and sign-off. */
export function duplicateSurvey(): void {
  const survey = shownSurvey.peek();
  if (survey === null) return;
  const job = state.job.peek();
  const copy: SurveySpec = { ...survey, id: freshSurveyId(job), name: `${survey.name}, again`.slice(0, 200), at: nowMoment(), readings: [], history: [] };
  delete copy.signed;
  addSurvey(job, 'Copy a survey', copy);
}

/** Takes the survey shown out of the job; undo brings it back. One that was ever signed stays, with its signature. */
export function removeSurvey(): void {
  const job = state.job.peek();
  const [survey, gone] = [shownSurvey.peek(), surveyIndex.peek()];
  if (survey === null || refusedAsOnceSigned(survey, surveyStage.problem)) return;
  dropSurveyDrafts();
  changeJob('Remove a survey', { ...job, surveys: (job.surveys ?? []).filter((_, k) => k !== gone) });
  lookAtSurvey({ survey: '' });
}

/** Judges by another rule, which takes over what the old one says of the film. */
export function chooseRule(kind: RuleKind): void {
  const rule = shownSurvey.peek()?.rule;
  if (rule === undefined || rule.kind === kind) return;
  dropSurveyDrafts();
  changeSurvey('Rule of the survey', '/rule', ruleOfKind(kind, rule));
}

/** Sets a value of the rule; undefined leaves it out. */
export function setInRule(label: string, key: string, value: unknown): void {
  changeSurvey(label, `/rule/${key}`, value);
}

/** Reads another panel, whose coats are chosen anew. Once there are readings, their places are of the panel that they were read on. */
export function choosePanel(panel: string): void {
  const survey = shownSurvey.peek();
  if (survey === null || survey.panel === panel || survey.readings.length > 0) return;
  replaceSurvey('Panel of the survey', (open) => ({ ...open, panel, coats: [] }));
}

/** Counts a coat among those whose film was read, or not, in the job's order. */
export function turnCoat(id: string, on: boolean): void {
  const survey = shownSurvey.peek();
  if (survey === null) return;
  const coats = state.job.peek().coats.map((coat) => coat.id).filter((each) => (each === id ? on : survey.coats.includes(each)));
  changeSurvey('Coats read', '/coats', coats);
}

/** Takes a reading out. */
export function removeReading(index: number): void {
  dropSurveyDrafts();
  changeSurvey('Remove a reading', `/readings/${index}`, undefined);
}

function freshSurveyId({ surveys = [] }: Job): string {
  return freshId('survey', surveys.map(({ id }) => id));
}

function addSurvey(job: Job, label: string, survey: SurveySpec): void {
  changeJob(label, { ...job, surveys: [...(job.surveys ?? []), survey] });
  lookAtSurvey({ survey: survey.id });
}

/** Places move when a survey or a reading goes, so that a draft would stand in another one's field. */
function dropSurveyDrafts(): void {
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/surveys/')));
}
