import { describe, expect, it } from 'vitest';
import { DEMO_SECOND_COAT, demoJob, type Job } from '../../../sim/index.ts';
import { makeHandlers } from '../../../src/worker/engine.ts';
import type { Answered, Asked, CoatRequest } from '../../../src/worker/protocol.ts';
import { Overtaken, serve } from '../../../src/worker/serve.ts';

/** A coarse grid keeps each film to a few milliseconds. */
const job: Job = { ...demoJob(), cell_mm: 10 };
const request = (version: number, coat = 'planned'): CoatRequest => ({ version, job, coat });

describe('the worker', () => {
  it('gives up a version that a newer one has overtaken', async () => {
    const handlers = makeHandlers();
    const [old, fresh] = [handlers.film(request(1)), handlers.film(request(2))];
    await expect(old).rejects.toBeInstanceOf(Overtaken);
    expect((await fresh).reply.version).toBe(2);
  });

  it('gives the same figures with the film as the verdict does', async () => {
    const handlers = makeHandlers();
    const { figures } = (await handlers.film(request(1))).reply;
    const { verdict } = (await handlers.verdict({ ...request(1), cures: false })).reply;
    expect(verdict).toMatchObject(figures);
  });

  it('tells what each stroke laid at a place, adding up to the film there', async () => {
    const handlers = makeHandlers();
    const { film } = (await handlers.film(request(1))).reply.laid;
    const [column, row] = [20, 60];
    const at_m = [(column + 0.5) * film.grid.cellSize_m, (row + 0.5) * film.grid.cellSize_m] as const;
    const { strokes } = (await handlers.strokesAt({ ...request(1), at_m })).reply;
    const sum = strokes.reduce((all, { wet_m }) => all + wet_m, 0);
    const there = film.wet_m[row * film.grid.columns + column] as number;
    // The film is kept in single precision, summed stroke by stroke: 20 strokes of half an ulp, 2^-24 each.
    expect(Math.abs(sum / there - 1)).toBeLessThan(20 * 2 ** -24);
  });

  it("judges the film's life: without cures at once, then the same faults with cures tried", async () => {
    const handlers = makeHandlers();
    const [found, cured] = [
      (await handlers.lifeVerdict({ ...request(1, DEMO_SECOND_COAT), cures: false })).reply,
      (await handlers.lifeVerdict({ ...request(1, DEMO_SECOND_COAT), cures: true })).reply,
    ];
    expect([found.version, found.curesTried, cured.curesTried]).toEqual([1, false, true]);
    expect(found.verdict.faults.length).toBeGreaterThan(0);
    expect(found.verdict.faults.every(({ cure }) => cure === null)).toBe(true);
    expect(cured.verdict.faults.map(({ kind }) => kind)).toEqual(found.verdict.faults.map(({ kind }) => kind));
    expect(cured.verdict.faults.some(({ cure }) => cure !== null)).toBe(true);
    expect(cured.verdict.figures).toEqual(found.verdict.figures);
  }, 30_000);

  it('replays to a time: nothing at the start, all of it at the end, the gun over the panel between', async () => {
    const handlers = makeHandlers();
    const { laid, start_s, end_s } = (await handlers.film(request(1))).reply;
    const sumAt = async (until_s: number): Promise<number> =>
      (await handlers.replay({ ...request(1), until_s })).reply.film.wet_m.reduce((all, value) => all + value, 0);
    const whole = laid.film.wet_m.reduce((all, value) => all + value, 0);
    expect(await sumAt(start_s)).toBe(0);
    expect(await sumAt(end_s)).toBe(whole);
    const half = await sumAt((start_s + end_s) / 2);
    expect(half).toBeGreaterThan(0.3 * whole);
    expect(half).toBeLessThan(0.7 * whole);
  });

  it('answers bad input with its place, and goes on working', async () => {
    const handlers = makeHandlers();
    const answers: Answered[] = [];
    const ask = (asked: Asked): Promise<void> => serve(handlers, asked, (answer) => answers.push(answer));
    await ask({ id: 1, name: 'film', request: request(1, 'no-such-coat') });
    await ask({ id: 2, name: 'recording', request: { id: 'r', name: 'bad.csv', text: 't_s,x_mm\n0,0\n1,abc\n' } });
    await ask({ id: 3, name: 'film', request: request(2) });
    expect(answers[0]).toMatchObject({ id: 1, kind: 'problem', problem: { place: { pointer: '/coats' } } });
    expect(answers[1]).toMatchObject({ id: 2, kind: 'problem', problem: { place: { file: 'bad.csv' } } });
    expect(answers[2]).toMatchObject({ id: 3, kind: 'reply' });
  });
});
