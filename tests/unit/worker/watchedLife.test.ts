import { describe, expect, it } from 'vitest';
import { coatMoment, demoJob, liveUntil, settleCoat, startCoat, strokesOf, type CoatSetting, type CoatStrokes, type Job } from '../../../sim/index.ts';
import { keepStates, keptMarks_s } from '../../../src/worker/keptStates.ts';
import { watchLife, type WatchedLife } from '../../../src/worker/watchedLife.ts';

/** A coarse grid keeps a life to some tens of milliseconds. */
const job: Job = { ...demoJob(), cell_mm: 10 };
const setting: CoatSetting = settleCoat(job, 'planned');
const strokes: CoatStrokes = strokesOf(setting, null);
const noTurn = (): Promise<void> => Promise.resolve();
const watch = (): WatchedLife => watchLife(startCoat(setting, strokes));

function meanOf(values: Float32Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

describe('a watched life', () => {
  it('gives the same film whether time went forward, leapt or came back', async () => {
    const straight = startCoat(setting, strokes);
    liveUntil(straight, 200);
    const wanted = coatMoment(straight).wet_m;
    const life = watch();
    for (const time_s of [30.1, 2000, 60, 199]) await life.momentAt(time_s, noTurn);
    const { wet_m, time_s } = await life.momentAt(200, noTurn);
    expect(time_s).toBe(200);
    // A stop of its own can put off a visit to a tile by one shortest step, 0.25 s of the 130 s that film has dried.
    expect(Math.abs(meanOf(wet_m) / meanOf(wanted) - 1)).toBeLessThan(0.25 / 130);
  });

  it('rounds a time during the spraying up to the next step, and none after it', async () => {
    const life = watch();
    expect((await life.momentAt(10.1, noTurn)).time_s).toBe(10.25);
    expect((await life.momentAt(0, noTurn)).time_s).toBe(0);
    expect((await life.momentAt(100.1, noTurn)).time_s).toBe(100.1);
  });

  it('watches until the film is ready for another coat, in as many answers as it takes', async () => {
    let clock_ms = 0;
    const life = watchLife(startCoat(setting, strokes), () => (clock_ms += 50));
    let answers = 0;
    let reply = await life.watch(noTurn);
    while (!reply.isWhole) {
      const before_s = reply.watched_s;
      reply = await life.watch(noTurn);
      answers++;
      expect(reply.watched_s).toBeGreaterThanOrEqual(before_s);
    }
    expect(answers).toBeGreaterThan(3);
    expect(reply.touchDry_s).toBeGreaterThan(reply.sprayed_s);
    expect(reply.recoat_s).toBeGreaterThan(reply.touchDry_s ?? Infinity);
    expect(reply.recoat_s).toBeLessThanOrEqual(reply.watched_s);
  });

  it('is stopped between two pieces and can be asked again', async () => {
    const life = watch();
    let turns = 0;
    const stopping = (): Promise<void> => (++turns > 5 ? Promise.reject(new Error('newer')) : Promise.resolve());
    await expect(life.momentAt(60, stopping)).rejects.toThrow('newer');
    expect((await life.momentAt(60, noTurn)).time_s).toBe(60);
  });
});

describe('kept states', () => {
  it('are as many as memory has room for, the most useful ones, in order', () => {
    expect(keptMarks_s(80, 200_000)).toEqual([0, 20, 40, 60, 80, 200, 980, 3680]);
    expect(keptMarks_s(80, 1_000_000)).toEqual([0, 80]);
    expect(keptMarks_s(80, 10_000_000)).toEqual([0]);
  });

  it('hand back the latest at or before a time, once kept never replaced', () => {
    const states = keepStates<{ at_s: number }>([0, 10], ({ at_s }) => at_s, (state) => ({ ...state }));
    expect(states.before(5)).toBeNull();
    for (const at_s of [0, 4, 12, 15]) states.offer({ at_s });
    expect(states.before(11)).toEqual({ at_s: 0 });
    expect(states.before(20)).toEqual({ at_s: 12 });
  });
});
