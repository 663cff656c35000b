import { problemOf } from '../../app/problem.ts';
import { lookAt } from '../../app/setups/setUps.ts';
import type { SetUpsPrefs } from '../../app/setups/setUpsPrefs.ts';
import { state } from '../../app/state.ts';

/** Opens the gun set-ups over the window, at a sheet and a set-up if told; their script and their workers are fetched only now. */
export async function openSetUps(at: Partial<SetUpsPrefs> = {}): Promise<void> {
  try {
    const { showSetUps } = await import('./showSetUps.tsx');
    lookAt(at);
    showSetUps();
  } catch (thrown) {
    state.notice.value = problemOf('The gun set-ups could not be fetched; everything else still works', thrown);
  }
}
