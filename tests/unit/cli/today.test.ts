import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../sim/index.ts';
import { run } from './fakeIo.ts';

async function json(...argv: string[]): Promise<unknown> {
  const { code, out, err } = await run(['today', '--temp', '21C', '--rh', '60%', ...argv, '--json']);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as unknown;
}

describe('crosscoat today', () => {
  it('answers six questions from temperature and humidity alone, and says what it took as usual', async () => {
    const { code, out } = await run(['today', '--temp', '16C', '--rh', '80%']);
    expect(code).toBe(0);
    for (const part of ['CAN I SPRAY NOW?', 'Wait:', 'What would make it go', 'Warm the room', 'HOW FAR TO THIN', 'Cross coat: two passes', 'WILL IT HOLD', 'The next coat not before', 'to mix in all', 'Taken as usual, not stated: clear dope', 'A teaching and planning estimate']) {
      expect(out.replaceAll(/\s+/g, ' ')).toContain(part);
    }
    expect(out).not.toContain('How this comes about');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
  });

  it('prints how each answer comes about where asked', async () => {
    const { out } = await run(['today', '--temp', '21C', '--rh', '60%', '--working']);
    expect(out.match(/How this comes about/g)).toHaveLength(6);
    expect(out.match(/sources:/g)).toHaveLength(6);
  });

  it('takes every option, in any unit, and says the same', async () => {
    const metric = await json('--finish', 'clear-dope', '--thinner', 'general', '--ratio', '3:1', '--cup', 'ford4', '--seconds', '24', '--area', '4m2', '--dry', '25.4um', '--slope', '90deg', '--afternoon', '28C', '--sanded', '2.54um');
    const us = await json('--ratio', '3:1', '--cup', 'ford-4', '--seconds', '24', '--area', '4 m²', '--dry', '1mil', '--afternoon', '82.4F', '--sanded', '0.1mil');
    expect(us).toEqual(metric);
    expect(metric).toMatchObject({ thinning: { cup: 'ford-4', refusal: null, seconds: 24 }, film: { allDry_um: 25.4 }, amounts: { area_m2: 4 } });
  });

  it('passes no rule by a surface that nobody measured, and cautions right under the verdict', async () => {
    const { out } = await run(['today', '--temp', '21C', '--rh', '50%']);
    const text = out.replaceAll(/\s+/g, ' ');
    expect(text).toMatch(/^CAN I SPRAY NOW\? Go: [^:]*above the dew point\. The verdict is advice for planning, not a clearance\.[^:]*Fan on, respirator on, no flame or spark\./);
    expect(text).toContain('ISO 8502-4 and ISO 12944-7: Not known: the part’s surface was not measured.');
    expect(text).toContain('the part’s surface not measured; liquid as warm as the air');
    expect(await json()).toMatchObject({ estimate: expect.stringContaining('estimate') as string, cautions: expect.arrayContaining([]) as string[], climate: { surface_C: null, rules: expect.arrayContaining([expect.objectContaining({ id: 'surface', verdict: 'unknown' })]) as unknown } });
    expect(((await json()) as { cautions: string[] }).cautions.length).toBeGreaterThan(3);
    expect(await json('--surface', '20C')).toMatchObject({ climate: { surface_C: 20, rules: expect.arrayContaining([expect.objectContaining({ id: 'surface', verdict: 'go' })]) as unknown } });
  });

  it('tells one thinning: the recommended where none was typed, else the typed', async () => {
    const plain = (await run(['today', '--temp', '21C', '--rh', '50%'])).out.replaceAll(/\s+/g, ' ');
    expect(plain).toContain('Thin to 1 : 0.63 to 1 : 1.07');
    expect(plain.match(/at the recommended 1 : 0\.85/g)).toHaveLength(4);
    expect(plain).not.toContain('1 : 0.33');
    const typed = (await run(['today', '--temp', '21C', '--rh', '50%', '--ratio', '3:1'])).out.replaceAll(/\s+/g, ' ');
    expect(typed).toContain('each, at 1 : 0.33 as typed.');
    expect(typed).toMatch(/Mix [\d.]+ m?L at 1 : 0\.33 as typed:/);
    expect(typed).not.toContain('recommended');
    const read = (await run(['today', '--temp', '21C', '--rh', '50%', '--cup', 'ford4', '--seconds', '36'])).out.replaceAll(/\s+/g, ' ');
    expect(read).toContain('taken as of a mix at 1 : 0.33');
    expect(await json()).toMatchObject({ film: { thinning: { from: 'recommended' } }, amounts: { thinning: { from: 'recommended' } } });
  });

  it('gives no figure outside a cup’s range, but words', async () => {
    expect(await json('--cup', 'ford4', '--seconds', '17')).toMatchObject({ thinning: { refusal: expect.stringContaining('outside the range of the Ford cup No. 4') as string } });
  });

  it('prints the answer as a job that is read back', async () => {
    const { code, out } = await run(['today', '--temp', '21C', '--rh', '60%', '--area', '1m2', '--coats', '3', '--job']);
    expect(code).toBe(0);
    const { job } = parseJob(out);
    expect(job.name).toContain('From Today');
    expect(job.schemes?.[0]?.steps).toHaveLength(3);
    const [width = 0, height = 0] = (job.part.panels[0]?.outline as { rectangle_mm: number[] }).rectangle_mm;
    expect((width * height) / 1e6).toBeCloseTo(1, 5);
  });

  it.each([
    [['--temp', '21C', '--rh', '0.6'], /--rh = "0\.6" may mean 0\.6 % or 60 %/],
    [['--temp', '21C', '--rh', '140%'], /humidity = 140 % is not from 0 to 100/],
    [['--temp', '21C', '--rh', '60%', '--seconds', '24'], /--seconds = "24" says nothing without its cup/],
    [['--temp', '21C', '--rh', '60%', '--ratio', '3'], /--ratio.*"3" is one number/],
    [['--temp', '21C', '--rh', '60%', '--finish', 'clear-dop'], /--finish: unknown finish "clear-dop"; did you mean "clear-dope"/],
    [['--temp', '21C', '--rh', '60%', '--cup', 'fort4'], /--cup: unknown cup/],
    [['--temp', '21C', '--rh', '60%', '--area', '0m2'], /area = 0 m² is not from 0\.01 to 1000/],
    [['--temp', '21C', '--rh', '60%', '--dry', '2mm'], /dry film wanted = 2000 µm is not from 1 to 500/],
    [['--temp', '21C', '--rh', '60%', '--json', '--job'], /give one of them/],
  ])('refuses %j with what to do', async (argv, message) => {
    const { code, err } = await run(['today', ...argv]);
    expect(code).toBe(2);
    expect(err.replaceAll(/\s+/g, ' ')).toMatch(message);
  });
});
