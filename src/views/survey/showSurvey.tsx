import { layOver } from '../frame/layOver.tsx';
import { SurveyStage } from './SurveyStage.tsx';

/** Lays the survey over the window. */
export function showSurvey(): void {
  layOver((close) => <SurveyStage close={close} />);
}
