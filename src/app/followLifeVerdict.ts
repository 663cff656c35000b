import { effect } from '@preact/signals';
import { isDropped, type WorkerClient } from '../worker/client.ts';
import type { CoatRequest } from '../worker/protocol.ts';
import { latestOnly } from './latest.ts';
import { problemOf } from './problem.ts';
import { state } from './state.ts';

/**
 * While the reader looks at the film in time: its life is judged once the film as laid has been, first
 * without cures, then with them.
 * @returns a way to stop.
 */
export function followLifeVerdict(judge: WorkerClient, request: () => CoatRequest, give: (asked: CoatRequest) => Promise<void>): () => void {
  const isWanted = (version: number): boolean => state.inTime.peek() && state.film.peek()?.version === version;

  const read = latestOnly(async (asked: CoatRequest) => {
    try {
      await give(asked);
      for (const cures of [false, true]) {
        if (!isWanted(asked.version)) return;
        const reply = await judge.ask('lifeVerdict', { ...asked, cures });
        if (isWanted(asked.version)) state.lifeVerdict.value = reply;
      }
    } catch (thrown) {
      if (isDropped(thrown) || !isWanted(asked.version)) return;
      state.notice.value = problemOf("The faults of this film's life could not be judged; the film as laid is right", thrown);
    }
  });

  return effect(() => {
    const verdict = state.verdict.value;
    if (!state.inTime.value || verdict?.curesTried !== true || state.life.value?.isWhole !== true) return;
    if (state.lifeVerdict.peek()?.version === verdict.version) return;
    const asked = request();
    if (asked.version === verdict.version) read(asked);
  });
}
