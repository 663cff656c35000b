import type { Answered, MessageName, Messages } from './protocol.ts';

/** Thrown into a request that a newer one has overtaken; callers let it pass. */
export class Stale extends Error {}

/** Thrown into every open request when the worker dies. */
export class WorkerLost extends Error {}

/** Whether a request came to nothing that a caller need tell of: overtaken, or lost with its worker, of which the page is told once. */
export function isDropped(thrown: unknown): boolean {
  return thrown instanceof Stale || thrown instanceof WorkerLost;
}

/** What a client needs of a worker; a real one, or a pair of ports in a test. */
export interface WorkerLike {
  postMessage(message: unknown, transfer?: Transferable[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
}

/** Before a worker that never answered is started once more; twice as long each time. */
const FIRST_WAIT_MS = 250;
const LONGEST_WAIT_MS = 30_000;

interface Waiting {
  readonly resolve: (reply: never) => void;
  readonly reject: (why: unknown) => void;
}

export interface WorkerClient {
  /** @param transfer buffers in the request that are handed over instead of copied. */
  ask<Name extends MessageName>(name: Name, request: Messages[Name]['request'], transfer?: Transferable[]): Promise<Messages[Name]['reply']>;
  /** Ends work that nobody wants any more: open requests are stale, and a new worker is started. */
  abandon(): void;
  /** Ends the worker for good: open requests are stale, and so is whatever is asked later. */
  end(): void;
}

/**
 * The page's side of the protocol. When the worker dies, every open request fails with
 * `WorkerLost`, a new worker is started, and `restarted` is called so that the page can tell the
 * reader and send its job again. One that dies again before it has answered anything (its script
 * cannot be fetched, say) is started again later and later, so that the page does not storm its host.
 */
export function startClient(makeWorker: () => WorkerLike, restarted: (why: string) => void): WorkerClient {
  const waiting = new Map<number, Waiting>();
  let lastId = 0;
  let worker = open();
  let isEnded = false;
  let lostUnanswered = 0;
  let again: ReturnType<typeof setTimeout> | undefined;

  function open(): WorkerLike {
    const fresh = makeWorker();
    fresh.onmessage = (event) => settle(event.data as Answered);
    fresh.onerror = (event) => lose(event.message || 'the worker could not be started');
    fresh.onmessageerror = () => lose('a message could not be read');
    return fresh;
  }

  function settle(answer: Answered): void {
    const asked = waiting.get(answer.id);
    if (asked === undefined) return;
    waiting.delete(answer.id);
    lostUnanswered = 0;
    if (answer.kind === 'reply') asked.resolve(answer.reply as never);
    else asked.reject(answer.kind === 'stale' ? new Stale() : answer.problem);
  }

  function close(): Waiting[] {
    worker.onmessage = worker.onerror = worker.onmessageerror = null;
    worker.terminate();
    const unanswered = [...waiting.values()];
    waiting.clear();
    return unanswered;
  }

  function replace(reason: Error): void {
    const unanswered = close();
    worker = open();
    for (const asked of unanswered) asked.reject(reason);
  }

  function lose(why: string): void {
    const wait_ms = lostUnanswered === 0 ? 0 : Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** lostUnanswered);
    lostUnanswered++;
    if (wait_ms === 0) {
      replace(new WorkerLost(why));
      restarted(why);
      return;
    }
    for (const asked of close()) asked.reject(new WorkerLost(why));
    clearTimeout(again);
    again = setTimeout(() => {
      if (isEnded) return;
      // What was asked meanwhile went to a worker that is no more.
      replace(new WorkerLost(why));
      restarted(why);
    }, wait_ms);
  }

  return {
    ask(name, request, transfer = []) {
      if (isEnded) return Promise.reject(new Stale());
      const id = ++lastId;
      return new Promise((resolve, reject) => {
        waiting.set(id, { resolve, reject });
        worker.postMessage({ id, name, request }, transfer);
      });
    },
    abandon: () => replace(new Stale()),
    end: () => {
      isEnded = true;
      clearTimeout(again);
      for (const asked of close()) asked.reject(new Stale());
    },
  };
}
