import type { Signal } from '@preact/signals';
import { startClient, type WorkerClient } from '../worker/client.ts';
import type { MessageName, Messages } from '../worker/protocol.ts';
import type { Problem } from './problem.ts';

/** A worker of a stage's own, so that its work keeps nobody else waiting. */
export interface StageWorker {
  /** Asks the worker, which is started when it is first needed. Rejects with `Stale` when it was ended meanwhile. */
  ask<Name extends MessageName>(name: Name, request: Messages[Name]['request'], transfer?: Transferable[]): Promise<Messages[Name]['reply']>;
  /** Ends whatever it is at; the next question starts it again. */
  end(): void;
}

/**
 * A worker that is not started yet. Where it dies, `problem` tells of it.
 * @param name what the browser's tools show it as.
 * @param next what the reader has to do then, if anything.
 */
export function stageWorker(name: string, problem: Signal<Problem | null>, next = ''): StageWorker {
  let client: WorkerClient | null = null;
  const open = (): Worker => new Worker(new URL('../worker/worker.ts', import.meta.url), { type: 'module', name: `crosscoat-${name}` });
  const tellLost = (why: string): void => {
    problem.value = { title: 'The simulation stopped and was started again', text: `What you entered is as you left it${next}. Reason: ${why}.`, place: {} };
  };
  return {
    ask: (message, request, transfer) => (client ??= startClient(open, tellLost)).ask(message, request, transfer),
    end: () => {
      client?.end();
      client = null;
    },
  };
}
