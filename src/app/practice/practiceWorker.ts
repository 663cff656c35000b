import { startClient, type WorkerClient } from '../../worker/client.ts';

/** A worker of its own looks sessions through, so that the job in hand goes on beside it. */
export interface PracticeWorker {
  readonly client: WorkerClient;
  stop(): void;
}

/** @param lost told why when the worker died and was started again. */
export function startPracticeWorker(lost: (why: string) => void): PracticeWorker {
  let worker: Worker | null = null;
  const open = (): Worker => (worker = new Worker(new URL('../../worker/worker.ts', import.meta.url), { type: 'module', name: 'crosscoat-practice' }));
  const client = startClient(open, lost);
  return { client, stop: () => worker?.terminate() };
}
