import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** Opens the list of jobs over the window; its script is fetched only now. */
export async function openJobs(): Promise<void> {
  try {
    const { showJobs } = await import('./showJobs.tsx');
    showJobs();
  } catch (thrown) {
    state.notice.value = problemOf('The list of jobs could not be fetched; everything else still works', thrown);
  }
}
