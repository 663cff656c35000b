import { existsSync, mkdirSync, readFileSync, readdirSync, symlinkSync, lstatSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { colourIndex, demoJob, makeField, parseJob, runJob, serialiseJob, type CoatResult } from '../../../sim/index.ts';
import { nodeIo } from '../../../src/cli/nodeIo.ts';
import { inPieces, run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const jobPath = join(folder, 'job.json');
const job = parseJob({
  ...demoJob(),
  cell_mm: 4,
  part: { name: 'Board', panels: [{ id: 'left-side', name: 'Board', outline: { rectangle_mm: [400, 300] }, holes: [{ circle_mm: [200, 150, 60] }] }] },
}).job;
const inFolder = (name: string) => join(folder, name);

beforeAll(() => writeFileSync(jobPath, serialiseJob(job)));

describe('crosscoat spray', () => {
  it('prints a report and is done, faults or not', async () => {
    const { code, out, err } = await run(['spray', jobPath]);
    expect([code, err]).toEqual([0, '']);
    for (const coat of job.coats) expect(out).toContain(coat.name);
    expect(out).toContain('Faults, worst first');
  });

  it('gives 1 for faults with --strict, 0 for a coat without', async () => {
    expect((await run(['spray', jobPath, '--strict', '--coat', 'thin-laps', '--no-cures'])).code).toBe(1);
    expect((await run(['spray', jobPath, '--strict', '--coat', 'planned'])).code).toBe(0);
  });

  it('prints one JSON object and nothing else with --json', async () => {
    const { out, err } = await run(['spray', jobPath, '--json', '--coat', 'thin-laps'], { isTerminal: true });
    expect(err).toBe('');
    const result = JSON.parse(out) as { seed: number; panels: { coat: string; faults: { cure: unknown }[] }[] };
    expect(result.seed).toBe(job.seed);
    expect(result.panels.map(({ coat }) => coat)).toEqual(['thin-laps']);
    expect(result.panels[0]?.faults[0]?.cure).not.toBeNull();
  });

  it('tries no cures with --no-cures', async () => {
    const { out } = await run(['spray', jobPath, '--json', '--coat', 'thin-laps', '--no-cures']);
    const result = JSON.parse(out) as { curesTried: boolean; panels: { faults: { cure: unknown }[] }[] };
    expect(result.curesTried).toBe(false);
    expect(result.panels[0]?.faults.every(({ cure }) => cure === null)).toBe(true);
  });

  it('takes the cell from --cell', async () => {
    const { out } = await run(['spray', jobPath, '--json', '--coat', 'planned', '--cell', '5mm']);
    expect(JSON.parse(out)).toMatchObject({ panels: [{ cell_mm: 5 }] });
  });

  it('reads the job from standard input', async () => {
    const { code, out } = await run(['spray', '-', '--coat', 'planned', '--json'], { input: () => inPieces(serialiseJob(job)) });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ job: job.name });
  });

  it('speaks US units', async () => {
    expect((await run(['spray', jobPath, '--coat', 'planned', '--units', 'us'])).out).toContain('film, mil');
  });
});

describe('crosscoat spray: files', () => {
  let result: CoatResult;
  beforeAll(() => {
    [result] = runJob(job, { coatIds: ['thin-laps'], cures: false }) as [CoatResult];
  });

  it.each(['film', 'target', 'passes', 'solids'] as const)('writes a PNG whose colours are the values of %s', async (name) => {
    const path = inFolder(`${name}.png`);
    const { code, out } = await run(['spray', jobPath, '--coat', 'planned', '--map', path, '--field', name]);
    expect(code).toBe(0);
    expect(out).toContain('ticks of the colour bar');
    const [planned] = runJob(job, { coatIds: ['planned'], cures: false }) as [CoatResult];
    expect(planned.verdict.faults).toEqual([]);
    const field = makeField(name === 'film' ? 'wet' : name, planned.laid.film, planned.setting.target);
    const png = PNG.sync.read(readFileSync(path));
    const { columns, rows } = field.grid;
    const size = Math.round(1200 / columns);
    expect(png.width).toBeGreaterThan(columns * size);
    let compared = 0;
    for (let cell = 0; cell < columns * rows; cell += 37) {
      if ((planned.setting.panelGrid.cover[cell] as number) < 0.5) continue;
      const x = 16 + (cell % columns) * size + 1;
      const y = 16 + (rows - 1 - Math.floor(cell / columns)) * size + 1;
      const at = colourIndex(field, field.values[cell] as number) * 4;
      expect([...png.data.subarray((y * png.width + x) * 4, (y * png.width + x) * 4 + 4)]).toEqual([...field.colours.subarray(at, at + 4)]);
      compared++;
    }
    expect(compared).toBeGreaterThan(100);
  });

  it('leaves the hole to the ground', async () => {
    const path = inFolder('hole.png');
    await run(['spray', jobPath, '--coat', 'planned', '--map', path]);
    const png = PNG.sync.read(readFileSync(path));
    // 100 × 75 cells of 12 pixels; the hole is in the middle.
    const at = ((16 + 12 * 37) * png.width + 16 + 12 * 50) * 4;
    expect([...png.data.subarray(at, at + 4)]).toEqual([251, 249, 244, 255]);
  });

  it('writes the film as CSV that gives the mean of the report', async () => {
    const path = inFolder('film.csv');
    await run(['spray', jobPath, '--coat', 'thin-laps', '--no-cures', '--film', path]);
    const rows = csvParse(readFileSync(path, 'utf8'));
    const total = (column: string) => rows.reduce((sum, row) => sum + Number(row[column]) * Number(row['cover']), 0);
    const area = rows.reduce((sum, row) => sum + Number(row['cover']), 0);
    // Seven figures in the file.
    expect(total('wet_um') / area / (result.verdict.wet.mean_m * 1e6)).toBeCloseTo(1, 6);
    expect(total('dry_um') / area / (result.verdict.dry.mean_m * 1e6)).toBeCloseTo(1, 6);
  });

  it('writes the strokes as SVG with each stroke and zone', async () => {
    const path = inFolder('strokes.svg');
    await run(['spray', jobPath, '--coat', 'thin-laps', '--no-cures', '--svg', path]);
    const svg = readFileSync(path, 'utf8');
    expect(svg.match(/<g id="stroke-/g)).toHaveLength(result.strokes.measures.length);
    expect(svg.match(/class="zone /g)).toHaveLength(result.verdict.faults.flatMap(({ zones }) => zones).length);
  });

  it('writes over a file, through a link, and leaves no part behind', async () => {
    const real = inFolder('real.csv');
    const link = inFolder('link.csv');
    writeFileSync(real, 'old');
    symlinkSync(real, link);
    expect((await run(['spray', jobPath, '--coat', 'planned', '--film', link])).code).toBe(0);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readFileSync(real, 'utf8')).toMatch(/^x_mm,/);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('says which coat the files show where several were run', async () => {
    const { out } = await run(['spray', jobPath, '--no-cures', '--film', inFolder('first.csv')]);
    expect(out).toContain('The files show the coat "planned"');
  });

  it('leaves the old file whole where writing fails', async () => {
    const path = inFolder('kept.csv');
    writeFileSync(path, 'old');
    const { code, err } = await run(['spray', jobPath, '--coat', 'planned', '--film', path], {
      write: () => Promise.reject(Object.assign(new Error('no space'), { code: 'ENOSPC' })),
    });
    expect([code, err]).toEqual([2, `crosscoat: ${path} cannot be written: the disk is full\n`]);
    expect(readFileSync(path, 'utf8')).toBe('old');
  });

  it('leaves the old file whole, and no part, where the pieces end in an error', async () => {
    const path = inFolder('half.csv');
    writeFileSync(path, 'old');
    const pieces = function* () {
      yield 'new '.repeat(1_000_000);
      throw new Error('planted');
    };
    await expect(nodeIo().write(path, pieces())).rejects.toThrow('planted');
    expect(readFileSync(path, 'utf8')).toBe('old');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it.each([
    ['a folder that is not there', inFolder('none/film.csv'), /cannot be written: there is no such folder/],
    ['a folder', folder, /cannot be written: it is a folder/],
    ['standard output', '-', /no file to write to/],
  ])('refuses to write to %s', async (_, path, message) => {
    const { code, err, out } = await run(['spray', jobPath, '--coat', 'planned', '--film', path]);
    expect(code).toBe(2);
    expect(err).toMatch(message);
    expect(out).toBe('');
  });

  it('lays a coat from a planned recording as from the plan', async () => {
    const strokes = inFolder('strokes.csv');
    await run(['plan', jobPath, '--coat', 'thin-laps', '--out', strokes]);
    const sprayed = async (argv: string[]) => {
      const { out } = await run(['spray', jobPath, '--coat', 'thin-laps', '--no-cures', '--json', ...argv]);
      return (JSON.parse(out) as { panels: { laidBy: string; film: { wet: Record<string, number> }; paint: Record<string, number> }[] }).panels[0];
    };
    const planned = await sprayed([]);
    const recorded = await sprayed(['--strokes', strokes]);
    expect([planned?.laidBy, recorded?.laidBy]).toEqual(['plan', 'recording']);
    // Times are written to 1 µs and places to 1 µm: of strokes of half a second and 100 mm, 1e-5.
    for (const key of ['mean_um', 'min_um', 'max_um']) {
      expect((recorded?.film.wet[key] ?? NaN) / (planned?.film.wet[key] ?? NaN)).toBeCloseTo(1, 4);
    }
    expect((recorded?.paint['sprayed_mL'] ?? NaN) / (planned?.paint['sprayed_mL'] ?? NaN)).toBeCloseTo(1, 4);
  });

  it('gives the recording to the first coat unless one is named', async () => {
    const strokes = inFolder('all.csv');
    await run(['plan', jobPath, '--out', strokes]);
    const { out } = await run(['spray', jobPath, '--strokes', strokes, '--json', '--no-cures']);
    expect(JSON.parse(out)).toMatchObject({ panels: [{ coat: 'planned', laidBy: 'recording' }] });
  });
});

describe('crosscoat spray: bad input', () => {
  const write = (name: string, text: string) => {
    writeFileSync(inFolder(name), text);
    return inFolder(name);
  };

  it.each<[string, () => string[], RegExp]>([
    ['a missing file', () => [inFolder('none.json')], /none\.json: no such file; give the job file's path/],
    ['a folder', () => [folder], /is a folder, not a file/],
    ['a file within a file', () => [join(jobPath, 'job.json')], /cannot be read: a part of its path is not a folder/],
    ['what is not JSON', () => [write('bad.json', '{"schemaVersion": 1,,}')], /bad\.json.* is not JSON: in row 1, column 21/],
    ['an empty file', () => [write('empty.json', '')], /empty\.json.*not JSON/],
    ['a newer version', () => [write('newer.json', '{"schemaVersion": 99}')], /99/],
    ['an unknown coat', () => [jobPath, '--coat', 'gold'], /coat "gold" is not in the job \(it has planned, by-hand, thin-laps, second-coat\)/],
    ['a cell in millilitres', () => [jobPath, '--cell', '2mL'], /--cell = "2mL" is not a length; give mm, cm/],
    ['a cell that is too coarse', () => [jobPath, '--cell', '20mm'], /--cell = "20mm" is not from 1 to 10 mm/],
    ['a cell that is no number', () => [jobPath, '--cell', 'NaN'], /--cell = "NaN" is not a length/],
    ['a missing recording', () => [jobPath, '--strokes', inFolder('none.csv')], /none\.csv: no such file; give the recording's path/],
    ['a recording with a bad row', () => [jobPath, '--strokes', write('bad.csv', 't_s,x_mm,y_mm\n0,0,0\n1,zero,0\n')], /bad\.csv.*row 3/],
    ['a recording without rows', () => [jobPath, '--strokes', write('short.csv', 't_s,x_mm,y_mm\n')], /short\.csv: has 0 rows/],
    ['an unknown field', () => [jobPath, '--field', 'gloss'], /argument 'gloss' is invalid.*film, target, passes, solids/],
    ['an unknown option', () => [jobPath, '--speed'], /unknown option '--speed'/],
    ['no job', () => [], /missing required argument 'job'/],
  ])('%s', async (_, argv, message) => {
    const { code, out, err } = await run(['spray', ...argv()]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(/^crosscoat: /);
    expect(err).toMatch(message);
    expect(err).not.toMatch(/^ +at /m);
  });

  it('refuses a giant recording by its size, without opening it', async () => {
    const giant = inFolder('giant.csv');
    const { code, err } = await run(['spray', jobPath, '--strokes', giant], {
      facts: (path) => Promise.resolve({ kind: 'file', bytes: path === giant ? 1e10 : 10 }),
    });
    expect(code).toBe(2);
    expect(err).toMatch(/giant\.csv has 10000 MB, more than 1000 MB; cut the recording into parts/);
  });

  it('refuses a giant job, also on standard input', async () => {
    const sized = await run(['spray', jobPath], { facts: () => Promise.resolve({ kind: 'file', bytes: 1e9 }) });
    expect(sized.err).toMatch(/1000 MB, more than 200 MB/);
    const piece = 'x'.repeat(1e7);
    let given = 0;
    const endless = async function* () {
      for (;;) {
        given++;
        yield await Promise.resolve(piece);
      }
    };
    const { code, err } = await run(['spray', '-'], { input: endless });
    expect(code).toBe(2);
    expect(err).toMatch(/standard input has .* more than 200 MB/);
    expect(given).toBeLessThan(25);
  });

  it('writes no file where the input is bad', async () => {
    mkdirSync(inFolder('clean'));
    await run(['spray', jobPath, '--cell', '20mm', '--map', inFolder('clean/a.png')]);
    await run(['spray', inFolder('bad.json'), '--film', inFolder('clean/a.csv')]);
    expect(existsSync(inFolder('clean/a.png'))).toBe(false);
    expect(readdirSync(inFolder('clean'))).toEqual([]);
  });
});
