import { expect, it, vi } from 'vitest';
import { Stale, WorkerLost, startClient, type WorkerLike } from '../../../src/worker/client.ts';
import type { Answered, Asked, Messages } from '../../../src/worker/protocol.ts';
import { demoJob } from '../../../sim/index.ts';

/** A worker in the same thread: the test answers by hand. */
class HandWorker implements WorkerLike {
  onmessage: ((event: MessageEvent) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  onmessageerror: ((event: MessageEvent) => void) | null = null;
  readonly asked: Asked[] = [];
  isTerminated = false;
  postMessage(message: unknown): void {
    this.asked.push(message as Asked);
  }
  terminate(): void {
    this.isTerminated = true;
  }
  answer(answer: Answered): void {
    this.onmessage?.({ data: answer } as MessageEvent);
  }
}

const asking = (version: number, cures: boolean): Messages['verdict']['request'] => ({ version, cures, job: demoJob(), coat: 'planned' });

function setUpClient(): { workers: HandWorker[]; restarts: string[]; client: ReturnType<typeof startClient> } {
  const workers: HandWorker[] = [];
  const restarts: string[] = [];
  const client = startClient(
    () => {
      const worker = new HandWorker();
      workers.push(worker);
      return worker;
    },
    (why) => restarts.push(why),
  );
  return { workers, restarts, client };
}

it('pairs replies with requests, in any order', async () => {
  const { workers, client } = setUpClient();
  const [first, second] = [client.ask('verdict', asking(1, false)), client.ask('verdict', asking(2, true))];
  const [a, b] = workers[0]?.asked ?? [];
  workers[0]?.answer({ id: b?.id ?? -1, kind: 'reply', reply: { version: 2 } as never });
  workers[0]?.answer({ id: a?.id ?? -1, kind: 'reply', reply: { version: 1 } as never });
  expect(await first).toEqual({ version: 1 });
  expect(await second).toEqual({ version: 2 });
});

it('hands on a problem, and tells a stale answer apart from it', async () => {
  const { workers, client } = setUpClient();
  const [bad, old] = [client.ask('verdict', asking(1, false)), client.ask('verdict', asking(1, true))];
  const [a, b] = workers[0]?.asked ?? [];
  const problem = { title: '', text: 'overlap = 1.2', place: { pointer: '/coats/0' } };
  workers[0]?.answer({ id: a?.id ?? -1, kind: 'problem', problem });
  workers[0]?.answer({ id: b?.id ?? -1, kind: 'stale' });
  await expect(bad).rejects.toEqual(problem);
  await expect(old).rejects.toBeInstanceOf(Stale);
});

it('replaces a worker that died, fails what was open, and tells why', async () => {
  const { workers, restarts, client } = setUpClient();
  const open = client.ask('verdict', asking(1, false));
  workers[0]?.onerror?.({ message: 'out of memory' } as ErrorEvent);
  await expect(open).rejects.toBeInstanceOf(WorkerLost);
  expect(restarts).toEqual(['out of memory']);
  expect(workers).toHaveLength(2);
  expect(workers[0]?.isTerminated).toBe(true);
  const again = client.ask('verdict', asking(2, false));
  workers[1]?.answer({ id: workers[1].asked[0]?.id ?? -1, kind: 'reply', reply: { version: 2 } as never });
  expect(await again).toEqual({ version: 2 });
});

it('abandons work that nobody wants without telling the reader', async () => {
  const { workers, restarts, client } = setUpClient();
  const open = client.ask('verdict', asking(1, true));
  client.abandon();
  await expect(open).rejects.toBeInstanceOf(Stale);
  expect([workers.length, workers[0]?.isTerminated, restarts]).toEqual([2, true, []]);
});

it('hands buffers over that are named for it', () => {
  const worker = new HandWorker();
  const posted: unknown[] = [];
  worker.postMessage = (...given: unknown[]) => void posted.push(given[1]);
  const client = startClient(() => worker, () => undefined);
  const { buffer } = new Uint8Array(4);
  void client.ask('verdict', asking(1, false), [buffer]);
  void client.ask('verdict', asking(2, false));
  expect(posted).toEqual([[buffer], []]);
});

it('is ended for good: open and later requests are stale, and no worker is left', async () => {
  const { workers, restarts, client } = setUpClient();
  const open = client.ask('verdict', asking(1, false));
  client.end();
  await expect(open).rejects.toBeInstanceOf(Stale);
  await expect(client.ask('verdict', asking(2, false))).rejects.toBeInstanceOf(Stale);
  expect([workers.map(({ isTerminated }) => isTerminated), restarts]).toEqual([[true], []]);
});

it('starts a worker that dies again and again without an answer later and later, until one answers', async () => {
  vi.useFakeTimers();
  const { workers, restarts } = setUpClient();
  const die = (): void => workers.at(-1)?.onerror?.({ message: 'no script' } as ErrorEvent);
  die();
  expect([workers.length, restarts.length]).toEqual([2, 1]);
  die();
  expect([workers.length, restarts.length]).toEqual([2, 1]);
  await vi.advanceTimersByTimeAsync(499);
  expect(workers).toHaveLength(2);
  await vi.advanceTimersByTimeAsync(1);
  expect([workers.length, restarts.length]).toEqual([3, 2]);
  for (let k = 0; k < 12; k++) {
    die();
    await vi.advanceTimersByTimeAsync(30_000);
  }
  // Never more often than the longest wait allows, and never given up.
  expect(workers).toHaveLength(15);
  vi.useRealTimers();
});
