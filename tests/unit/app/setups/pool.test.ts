import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { askPool, cancelPool, endPool } from '../../../../src/app/setups/pool.ts';
import { setUps } from '../../../../src/app/setups/setUps.ts';
import { Stale, WorkerLost } from '../../../../src/worker/client.ts';
import type { Asked } from '../../../../src/worker/protocol.ts';

/** Stands for a worker: the test answers by hand. */
class HandWorker {
  static readonly made: HandWorker[] = [];
  onmessage: ((event: MessageEvent) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  onmessageerror: ((event: MessageEvent) => void) | null = null;
  readonly asked: Asked[] = [];
  isTerminated = false;
  readonly name: string;
  constructor(_: URL, { name }: { name: string }) {
    this.name = name;
    HandWorker.made.push(this);
  }
  postMessage(message: unknown): void {
    this.asked.push(message as Asked);
  }
  terminate(): void {
    this.isTerminated = true;
  }
}

const question = { panel: {} as never, pointer: '' };

beforeEach(() => vi.stubGlobal('Worker', HandWorker));

afterEach(() => {
  endPool();
  HandWorker.made.length = 0;
  setUps.problem.value = null;
  vi.unstubAllGlobals();
});

it('starts a worker when it is first asked, and each only once', () => {
  expect(HandWorker.made).toHaveLength(0);
  for (const worker of [1, 1, 0] as const) askPool(worker, 'panel', question).catch(() => undefined);
  expect(HandWorker.made.map(({ name, asked }) => [name, asked.length])).toEqual([['crosscoat-set-ups-2', 2], ['crosscoat-set-ups-1', 1]]);
});

it('cancels one worker and leaves the other at work; the next question starts a new one', async () => {
  const [first, second] = [askPool(0, 'panel', question), askPool(1, 'panel', question)];
  cancelPool(0);
  await expect(first).rejects.toBeInstanceOf(Stale);
  expect(HandWorker.made.map(({ isTerminated }) => isTerminated)).toEqual([true, false]);
  HandWorker.made[1]?.onmessage?.({ data: { id: HandWorker.made[1].asked[0]?.id, kind: 'reply', reply: { area_m2: 2 } } } as MessageEvent);
  expect(await second).toEqual({ area_m2: 2 });
  askPool(0, 'panel', question).catch(() => undefined);
  expect(HandWorker.made).toHaveLength(3);
});

it('ends both workers when the stage closes, and leaves no question open', async () => {
  const asked = [askPool(0, 'panel', question), askPool(1, 'panel', question)];
  endPool();
  for (const each of asked) await expect(each).rejects.toBeInstanceOf(Stale);
  expect(HandWorker.made.every(({ isTerminated }) => isTerminated)).toBe(true);
});

it('tells the reader of a worker that died', async () => {
  const asked = askPool(0, 'panel', question);
  HandWorker.made[0]?.onerror?.({ message: 'out of memory' } as ErrorEvent);
  await expect(asked).rejects.toBeInstanceOf(WorkerLost);
  expect(setUps.problem.value?.text).toContain('out of memory');
});
