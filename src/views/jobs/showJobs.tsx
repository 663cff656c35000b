import { layOver } from '../frame/layOver.tsx';
import { JobsStage } from './JobsStage.tsx';

/** Lays the jobs over the window. */
export function showJobs(): void {
  layOver((close) => <JobsStage close={close} />);
}
