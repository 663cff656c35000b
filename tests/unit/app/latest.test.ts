import { expect, it } from 'vitest';
import { latestOnly } from '../../../src/app/latest.ts';

it('runs one at a time and of the waiting only the newest', async () => {
  const ran: number[] = [];
  const releases: (() => void)[] = [];
  const ask = latestOnly(async (n: number) => {
    ran.push(n);
    await new Promise<void>((resolve) => releases.push(resolve));
  });
  ask(1);
  ask(2);
  ask(3);
  expect(ran).toEqual([1]);
  releases.shift()?.();
  await Promise.resolve().then(() => undefined).then(() => undefined);
  expect(ran).toEqual([1, 3]);
});
