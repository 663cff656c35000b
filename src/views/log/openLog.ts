import { lookAtLog } from '../../app/log/log.ts';
import type { LogPrefs } from '../../app/log/logPrefs.ts';
import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** Opens the log over the window, at a sheet if told; its script is fetched only now. */
export async function openLog(at: Partial<LogPrefs> = {}): Promise<void> {
  try {
    const { showLog } = await import('./showLog.tsx');
    lookAtLog(at);
    showLog();
  } catch (thrown) {
    state.notice.value = problemOf('The log could not be fetched; everything else still works', thrown);
  }
}
