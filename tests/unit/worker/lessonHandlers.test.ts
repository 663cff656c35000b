import { describe, expect, it } from 'vitest';
import { DEMONSTRATIONS, demonstrationById, runDemonstration } from '../../../sim/index.ts';
import { makeLessonHandlers } from '../../../src/worker/lessonHandlers.ts';

describe('the messages of the instructor’s stage', () => {
  it('run a demonstration: its sides, and one map a time for each, the last at the end of the watch', async () => {
    const { reply, transfer } = await makeLessonHandlers().lesson({ id: 'overlap', knob: 30, times: 5 });
    const { until_s } = demonstrationById('overlap');
    expect(reply.sides).toEqual(runDemonstration(demonstrationById('overlap'), 30, { at_s: reply.times_s }).sides.map(({ id, title, knob, time_s, figures, faults }) => ({ id, title, knob, time_s, figures, faults })));
    expect(reply.times_s).toHaveLength(5);
    expect(reply.times_s[4]).toBe(until_s);
    expect(reply.maps.map((side) => side.length)).toEqual([5, 5, 5]);
    expect(new Set(transfer).size).toBe(15);
    const { columns, rows } = reply.field.grid;
    for (const map of reply.maps.flat()) expect(map).toHaveLength(columns * rows);
  });

  it('have every lesson’s fault in sight on its last map: the two sides differ', async () => {
    const handlers = makeLessonHandlers();
    for (const { id, knob } of DEMONSTRATIONS) {
      const { reply } = await handlers.lesson({ id, knob: knob.wrong, times: 1 });
      const [low, high] = reply.field.domain;
      const [wrong = [], cured = []] = reply.maps.map(([map]) => [...(map ?? [])].map((value) => Math.min(high, Math.max(low, value))));
      const differ = wrong.reduce((most, value, cell) => Math.max(most, Math.abs(value - (cured[cell] ?? NaN)) || 0), 0);
      // A tenth of the colours is seen from the back of a room.
      expect(differ / (high - low), id).toBeGreaterThan(0.1);
    }
  }, 120_000);

  it('run the cured side once, and the others anew with the knob', async () => {
    const handlers = makeLessonHandlers();
    const first = (await handlers.lesson({ id: 'too-fast', knob: 0.8, times: 2 })).reply;
    const second = (await handlers.lesson({ id: 'too-fast', knob: 0.6, times: 2 })).reply;
    expect(second.sides[1]).toEqual(first.sides[1]);
    expect(second.maps[1]).toEqual(first.maps[1]);
    expect(second.sides[0]?.figures.mean_m).toBeGreaterThan(first.sides[0]?.figures.mean_m ?? NaN);
  });

  it('give the figures at one of the times, and refuse one that is not there', async () => {
    const handlers = makeLessonHandlers();
    expect(() => handlers.lessonAt({ index: 0 })).toThrow(/run one first/);
    const { reply } = await handlers.lesson({ id: 'too-fast', knob: 0.8, times: 3 });
    const { sides } = (await handlers.lessonAt({ index: 2 })).reply;
    expect(sides).toEqual(reply.sides);
    expect(() => handlers.lessonAt({ index: 3 })).toThrow(/no time 3/);
    expect(() => handlers.lessonAt({ index: NaN })).toThrow(/no time NaN/);
  });
});
