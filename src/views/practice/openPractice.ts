import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** Opens practice over the window; its script, the film in time and its worker are fetched only now. */
export async function openPractice(): Promise<void> {
  try {
    const { showPractice } = await import('./showPractice.tsx');
    showPractice();
  } catch (thrown) {
    state.notice.value = problemOf('Practice could not be fetched; everything else still works', thrown);
  }
}
