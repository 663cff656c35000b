import { startClient, type WorkerClient } from '../../worker/client.ts';
import type { MessageName, Messages } from '../../worker/protocol.ts';
import { setUps } from './setUps.ts';

/** The workers of the gun set-ups: work that can be shared is given to both, a single answer to the first that is free. */
export const POOL = [0, 1] as const;
export type PoolWorker = (typeof POOL)[number];

const clients: (WorkerClient | null)[] = POOL.map(() => null);

/** Asks one of the workers, which is started when it is first needed. Rejects with `Stale` when the work was cancelled or the stage closed. */
export function askPool<Name extends MessageName>(
  worker: PoolWorker, name: Name, request: Messages[Name]['request'], transfer?: Transferable[],
): Promise<Messages[Name]['reply']> {
  const client = (clients[worker] ??= startClient(() => openWorker(worker), tellLost));
  return client.ask(name, request, transfer);
}

/** Ends what a worker is at, whatever it is: all that was asked of it is stale, and the next question starts it again. */
export function cancelPool(worker: PoolWorker): void {
  clients[worker]?.end();
  clients[worker] = null;
}

/** Ends both workers: the stage is closed. */
export function endPool(): void {
  for (const worker of POOL) cancelPool(worker);
}

function openWorker(worker: PoolWorker): Worker {
  return new Worker(new URL('../../worker/worker.ts', import.meta.url), { type: 'module', name: `crosscoat-set-ups-${worker + 1}` });
}

function tellLost(why: string): void {
  setUps.problem.value = {
    title: 'The simulation stopped and was started again',
    text: `What you entered is as you left it; ask once more. Reason: ${why}.`,
    place: {},
  };
}
