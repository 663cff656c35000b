import { describe, expect, it } from 'vitest';
import { DRILLS, parseJob, settleCoat } from '../../../sim/index.ts';
import { run } from './fakeIo.ts';

/** A text without its line breaks and margins. */
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe('crosscoat drill', () => {
  it('lists every drill by number, id and title', async () => {
    const { code, out } = await run(['drill']);
    expect(code).toBe(0);
    const rows = out.trimEnd().split('\n').map((line) => line.trim().split(/ {2,}/));
    expect(rows).toEqual(DRILLS.map(({ id, title }, i) => [String(i + 1), id, title]));
    expect(JSON.parse((await run(['drill', '--json'])).out)).toEqual(DRILLS.map(({ id, title }, i) => ({ number: i + 1, id, title })));
  });

  it.each(DRILLS.map((drill, i) => ({ ...drill, number: i + 1 })))('says what $id asks for', async (drill) => {
    const { code, out } = await run(['drill', drill.id]);
    expect(code).toBe(0);
    const text = flat(out);
    for (const part of [`${drill.number}. ${drill.title}`, drill.task, drill.criterion, drill.evidence, drill.source, drill.caution]) expect(text).toContain(flat(part));
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(96);
    expect((await run(['drill', String(drill.number)])).out).toBe(out);
  });

  it('says what the plan means, in the reader’s units', async () => {
    const { out } = await run(['drill', 'two-coats']);
    expect(out).toMatch(/^Meant: +200 mm from the board, 0\.28 m\/s, overlap 50 %, two passes at right angles\.$/m);
    expect(out).toMatch(/^Target: +180 µm wet, from 144 to 216\.$/m);
    expect(out).toMatch(/^Wait: +4 min/m);
    expect(out).toMatch(/^Watched: +the film for 4 min/m);
    const us = (await run(['drill', 'two-coats', '--units', 'us'])).out;
    expect(us).toMatch(/^Meant: +7\.87 in from the board, 55\.1 ft\/min/m);
    expect(us).toMatch(/^Target: +7\.09 mil wet, from 5\.67 to 8\.5\.$/m);
    expect((await run(['drill', 'even-speed'])).out).not.toMatch(/^(?:Wait|Watched):/m);
  });

  it('says the same as JSON, keys with their unit', async () => {
    const json = JSON.parse((await run(['drill', 'upright', '--json'])).out) as Record<string, unknown>;
    const number = DRILLS.findIndex(({ id }) => id === 'upright') + 1;
    const drill = DRILLS[number - 1];
    expect(json).toMatchObject({
      schemaVersion: 1, number, id: 'upright', title: drill?.title, criterion: drill?.criterion, source: drill?.source, caution: drill?.caution,
      measures: drill?.counts, watch_s: 240,
      meant: { distance_mm: 200, speed_m_s: 0.28, overlap_percent: 50, cross: false },
      target: { film: 'wet', thickness_um: 90, min_percent: 80, max_percent: 120 },
    });
  });

  it.each(DRILLS.map(({ id }) => id))('prints the job of %s, which reads back and has its coat', async (id) => {
    const drill = DRILLS.find((one) => one.id === id);
    const { code, out } = await run(['drill', id, '--job']);
    expect(code).toBe(0);
    const { job, warnings } = parseJob(out);
    expect(warnings).toEqual([]);
    expect(job).toEqual(drill?.job());
    expect(settleCoat(job, drill?.coat ?? '').coat.id).toBe(drill?.coat);
  });

  it.each([
    [['drill', 'half-overlp'], /did you mean "half-overlap"/],
    [['drill', '0'], /there is no drill "0".*square-and-steady/],
    [['drill', '13'], /there is no drill "13"/],
    [['drill', '--job'], /--job prints the job of one drill and none is named; give its id/],
  ])('refuses %j', async (argv, message) => {
    const { code, err } = await run(argv);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});
