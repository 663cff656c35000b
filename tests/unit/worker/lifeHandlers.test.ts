import { describe, expect, it } from 'vitest';
import { demoJob, type Job } from '../../../sim/index.ts';
import { makeHandlers } from '../../../src/worker/engine.ts';
import type { CoatRequest } from '../../../src/worker/protocol.ts';
import { Overtaken } from '../../../src/worker/serve.ts';

const job: Job = { ...demoJob(), cell_mm: 10 };
const request = (version: number): CoatRequest => ({ version, job, coat: 'planned' });

describe('the film in time, by messages', () => {
  it('answers only the newest of the times that wait', async () => {
    const handlers = makeHandlers();
    const asked = [30, 60, 90].map((time_s) => handlers.liveAt({ ...request(1), time_s, field: 'wet-now' }));
    const answers = await Promise.allSettled(asked);
    expect(answers.slice(0, 2).map((each) => each.status === 'rejected' && (each.reason as unknown) instanceof Overtaken)).toEqual([true, true]);
    expect(answers[2]).toMatchObject({ status: 'fulfilled', value: { reply: { time_s: 90, version: 1 } } });
  });

  it('hands over copies: the same time answers again, in another field', async () => {
    const handlers = makeHandlers();
    const first = await handlers.liveAt({ ...request(1), time_s: 100, field: 'wet-now' });
    structuredClone(first.reply, { transfer: (first.transfer ?? []).filter((buffer) => buffer instanceof ArrayBuffer) });
    expect(first.reply.wet_m.length).toBe(0);
    const { reply } = await handlers.liveAt({ ...request(1), time_s: 100, field: 'dew-margin' });
    expect(reply.wet_m.length).toBe(reply.field.values.length);
    expect(reply.figures.meanWet_m).toBeGreaterThan(20e-6);
    expect(reply.figures.meanFilm_K).toBeLessThan(294);
    expect(reply.gun).toBeNull();
  });

  it('shows less wet film with time in unmoved colours, and the gun while it sprays', async () => {
    const handlers = makeHandlers();
    const at = async (time_s: number) => (await handlers.liveAt({ ...request(1), time_s, field: 'wet-now' })).reply;
    const [spraying, fresh, dry] = [await at(20), await at(75), await at(900)];
    expect(spraying.gun).not.toBeNull();
    expect(fresh.figures.meanWet_m).toBeGreaterThan(2 * dry.figures.meanWet_m);
    expect(fresh.field.domain).toEqual(dry.field.domain);
  });

  it('lays a coat over another on the film that this one left', async () => {
    const handlers = makeHandlers();
    const over = job.coats.find(({ over: lies }) => lies !== undefined);
    if (over === undefined) throw new Error('the demo has a coat over another');
    const { reply } = await handlers.liveAt({ version: 1, job, coat: over.id, time_s: 0, field: 'wet-now' });
    expect(reply.figures.meanWet_m).toBeGreaterThan(5e-6);
  });

  it('gives up a watch whose version is old, or whose life was closed', async () => {
    const handlers = makeHandlers();
    const old = handlers.liveOpen(request(1));
    const fresh = handlers.liveOpen(request(2));
    await expect(old).rejects.toBeInstanceOf(Overtaken);
    expect((await fresh).reply.watched_s).toBeGreaterThan(0);
    const closed = handlers.liveAt({ ...request(2), time_s: 5000, field: 'run' });
    await handlers.liveClose({});
    await expect(closed).rejects.toBeInstanceOf(Overtaken);
  });
});
