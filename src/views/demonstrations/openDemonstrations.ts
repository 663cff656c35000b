import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** Opens the instructor's stage over the window; its script and its worker are fetched only now. */
export async function openDemonstrations(): Promise<void> {
  try {
    const { showStage } = await import('./showStage.tsx');
    showStage();
  } catch (thrown) {
    state.notice.value = problemOf('The demonstrations could not be fetched; everything else still works', thrown);
  }
}
