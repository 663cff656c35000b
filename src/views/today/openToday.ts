import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** Opens the front sheet over the window; its script is fetched only now. */
export async function openToday(): Promise<void> {
  try {
    const { showToday } = await import('./showToday.tsx');
    showToday();
  } catch (thrown) {
    state.notice.value = problemOf('The front sheet could not be fetched; everything else still works', thrown);
  }
}
