import type { MessageName, Messages } from '../../worker/protocol.ts';
import { stageWorker } from '../stageWorker.ts';
import { setUps } from './setUps.ts';

/** The workers of the gun set-ups: work that can be shared is given to both, a single answer to the first that is free. */
export const POOL = [0, 1] as const;
export type PoolWorker = (typeof POOL)[number];

const workers = [stageWorker('set-ups-1', setUps.problem, '; ask once more'), stageWorker('set-ups-2', setUps.problem, '; ask once more')] as const;

/** Asks one of the workers, which is started when it is first needed. Rejects with `Stale` when the work was cancelled or the stage closed. */
export function askPool<Name extends MessageName>(
  worker: PoolWorker, name: Name, request: Messages[Name]['request'], transfer?: Transferable[],
): Promise<Messages[Name]['reply']> {
  return workers[worker].ask(name, request, transfer);
}

/** Ends what a worker is at, whatever it is: all that was asked of it is stale, and the next question starts it again. */
export function cancelPool(worker: PoolWorker): void {
  workers[worker].end();
}

/** Ends both workers: the stage is closed. */
export function endPool(): void {
  for (const worker of POOL) cancelPool(worker);
}
