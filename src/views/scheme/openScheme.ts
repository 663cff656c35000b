import { problemOf } from '../../app/problem.ts';
import { lookAtScheme } from '../../app/scheme/scheme.ts';
import type { SchemePrefs } from '../../app/scheme/schemePrefs.ts';
import { state } from '../../app/state.ts';

/** Opens the scheme over the window, at a sheet if told; its script is fetched only now. */
export async function openScheme(at: Partial<SchemePrefs> = {}): Promise<void> {
  try {
    const { showScheme } = await import('./showScheme.tsx');
    lookAtScheme(at);
    showScheme();
  } catch (thrown) {
    state.notice.value = problemOf('The scheme could not be fetched; everything else still works', thrown);
  }
}
