import { stageWorker } from '../stageWorker.ts';
import { surveyStage } from './survey.ts';

/** The worker of the survey's sheets. */
export const surveyWorker = stageWorker('survey', surveyStage.problem);
