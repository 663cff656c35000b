import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoJob, serialiseJob } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const jobPath = join(folder, 'demo.json');
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');
const json = (text: string): Record<string, unknown> => JSON.parse(text) as Record<string, unknown>;

/** A stroke of a fan 240 mm wide, β1 = 3, its middle 8 mm right of the tape's. */
const CARD = ['x_mm,film_um', ...Array.from({ length: 31 }, (_, i) => {
  const x = -150 + 10 * i;
  const u = (x - 8) / 120;
  return `${x},${(Math.abs(u) < 1 ? 34 * (1 - u * u) ** 2.5 : 0).toFixed(2)}`;
})].join('\n');

beforeAll(() => {
  // A smaller panel of the demo's job: what is tested is the command, not the rudder.
  const job = demoJob();
  const panels = job.part.panels.map((panel) => ({ ...panel, outline: { rectangle_mm: [400, 400] as [number, number] }, holes: [] }));
  writeFileSync(jobPath, serialiseJob({ ...job, part: { ...job.part, panels } }));
});

describe('crosscoat card', () => {
  it('fits readings and gives each number with its interval', async () => {
    const path = join(folder, 'card.csv');
    writeFileSync(path, CARD);
    const { code, out } = await run(['card', path, '--json']);
    expect(code).toBe(0);
    const { profile, width_mm, beta1, offset_mm } = json(out) as Record<'width_mm' | 'beta1' | 'offset_mm', { value: number; low: number; high: number }> & { profile: string };
    expect(profile).toBe('double-beta');
    // The file's hundredth of a micrometre is 3e-4 of the peak: a hundredth of that in the width, a thousandth in β1.
    expect(width_mm.value).toBeCloseTo(240, 0);
    expect(beta1.value).toBeCloseTo(3, 1);
    expect(offset_mm.value).toBeCloseTo(8, 1);
    for (const { value, low, high } of [width_mm, beta1, offset_mm]) {
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
    }
    expect(flat((await run(['card', path])).out)).toContain('Double-beta fits 31 readings best');
  });

  it.each([
    ['x_mm,film_um\n0,1\n1,2\n', 'too few'],
    [CARD.replaceAll(/,\S+$/gm, ',5'), 'all readings are 5'],
    [CARD.replace('0,', '0,x'), 'row'],
  ])('refuses a card that shows no fan', async (text, words) => {
    const path = join(folder, 'bad.csv');
    writeFileSync(path, text);
    const { code, err } = await run(['card', path]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  it('names the option that is no number', async () => {
    const path = join(folder, 'card.csv');
    writeFileSync(path, CARD);
    expect((await run(['card', path, '--seed', 'x'])).err).toContain('--seed = "x" is not a whole number');
    writeFileSync(join(folder, 'card.png'), PNG.sync.write(new PNG({ width: 40, height: 30 })));
    expect((await run(['card', join(folder, 'card.png'), '--size', 'widexhigh'])).err).toMatch(/--size/);
  });

  it('asks for the size of a photograph, and refuses what is no PNG', async () => {
    const path = join(folder, 'card.png');
    writeFileSync(path, 'no picture');
    expect((await run(['card', path])).err).toContain('--size is missing');
    expect((await run(['card', path, '--size', '400mmx300mm'])).err).toContain('not a PNG that can be read');
    expect((await run(['card', join(folder, 'card.jpg')])).err).toContain('save it as PNG');
    writeFileSync(path, PNG.sync.write(new PNG({ width: 40, height: 30 })));
    expect((await run(['card', path, '--size', '400mmx300mm', '--corners', '1,2,3'])).err).toContain('are not eight numbers');
  });
});

describe('crosscoat window', () => {
  it('maps two settings, says the room, writes the picture', async () => {
    const map = join(folder, 'window.png');
    const { code, out } = await run(['window', jobPath, '--points', '20', '--x', 'distance:120mm..300mm', '--y', 'speed', '--map', map, '--json']);
    expect(code).toBe(0);
    const { x, stated } = json(out) as { x: unknown; stated: { fault: unknown; distance_mm: number } };
    expect(x).toMatchObject({ axis: 'distance', low: 120, high: 300, count: 20 });
    expect(stated).toMatchObject({ distance_mm: 200, fault: null });
    expect(PNG.sync.read(readFileSync(map)).width).toBeGreaterThan(600);
  });

  it.each([
    [['--x', 'wind'], 'no axis of a working window'],
    [['--x', 'distance:5'], 'has no two ends'],
    [['--x', 'speed'], 'two different axes'],
    [['--points', '3'], 'from 10 to 400'],
    [['--coat', 'none'], 'is not in the job'],
  ])('refuses %j', async (options, words) => {
    const { code, err } = await run(['window', jobPath, '--points', '10', ...options]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});

describe('crosscoat compare and hands', () => {
  it('sets set-ups side by side, with a report that needs nothing else', async () => {
    const report = join(folder, 'report.html');
    const { code, out } = await run(['compare', jobPath, '--setups', 'low-pressure,worn-cap', '--cell', '8mm', '--report', report, '--json']);
    expect(code).toBe(0);
    const { sides } = json(out) as { sides: { figures: { wet: { wet_um: number; within_um: number } } }[] };
    expect(sides).toHaveLength(2);
    for (const { figures } of sides) expect(figures.wet.within_um).toBeGreaterThan(0.2 * figures.wet.wet_um);
    const html = readFileSync(report, 'utf8');
    expect(html.match(/(?:src|href)="(?!#)|@import|<script/g)).toBeNull();
    expect(html).toContain('@page');
    expect((html.match(/<svg /g) ?? []).length).toBe(4);
  });

  it('names a set-up that is not there', async () => {
    expect((await run(['compare', jobPath, '--setups', 'nobody'])).err).toContain('"nobody" is not in the job');
  });

  it('ranks set-ups by what they forgive, the same for the same seed', async () => {
    const argv = ['hands', jobPath, '--count', '4', '--seed', '1', '--setups', 'low-pressure,worn-cap', '--json'];
    const first = await run(argv);
    expect(first.code).toBe(0);
    expect((await run(argv)).out).toBe(first.out);
    const { setUps } = json(first.out) as { setUps: { setUp: string; rank: number }[] };
    expect(setUps.map(({ setUp }) => setUp)).toEqual(['low-pressure', 'worn-cap']);
    expect((await run(['hands', jobPath, '--count', '0'])).err).toContain('--count');
  });
});

describe('crosscoat fit', () => {
  it('refuses wishes that contradict themselves', async () => {
    expect((await run(['fit', jobPath, '--dry', '25um', '--weight', '30g/m2'])).err).toContain('give one of them');
    expect((await run(['fit', jobPath, '--dry', '25um', '--coats', '0'])).code).toBe(2);
    expect((await run(['fit', jobPath, '--weight', 'heavy'])).err).toContain('no weight of film');
  });
});
