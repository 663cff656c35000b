import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020, type AnySchema } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { createRecordingReader, demoJob, parseJob } from '../../../sim/index.ts';
import { parseCell_mm } from '../../../src/cli/cellSize.ts';
import { makeProgress } from '../../../src/cli/progress.ts';
import { nodeIo } from '../../../src/cli/nodeIo.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const demoPath = join(folder, 'demo.json');

describe('crosscoat', () => {
  it('prints its help and is done where nothing is asked', async () => {
    const { code, out, err } = await run([]);
    expect([code, err]).toEqual([0, '']);
    for (const part of ['spray', 'plan', 'schema', 'demo', 'Try it:', 'Exit codes']) expect(out).toContain(part);
  });

  it('prints the help of a command', async () => {
    const { code, out } = await run(['spray', '--help']);
    expect(code).toBe(0);
    for (const option of ['--strokes', '--coat', '--cell', '--map', '--field', '--film', '--svg', '--units', '--no-cures', '--strict', '--json']) expect(out).toContain(option);
  });

  it('refuses a command that it does not know', async () => {
    const { code, err } = await run(['paint']);
    expect(code).toBe(2);
    expect(err).toMatch(/^crosscoat: unknown command 'paint'/);
  });

  it('gives 3 and asks for a report where the fault is its own', async () => {
    const { code, err } = await run(['demo'], { out: () => Promise.reject(new Error('planted')) });
    expect(code).toBe(3);
    expect(err).toMatch(/a fault in the program.*\n.*planted/);
  });
});

describe('crosscoat demo', () => {
  it('prints the demo job, which reads back', async () => {
    const { recordings: none, ...demo } = parseJob(demoJob()).job;
    expect(none).toEqual([]);
    const { code, out } = await run(['demo']);
    expect(code).toBe(0);
    const { recordings, log, surveys, ...job } = parseJob(out).job;
    expect(job).toEqual({ ...demo, coats: demo.coats.map((coat) => (coat.id === 'by-hand' ? { ...coat, recording: 'session' } : coat)) });
    expect(recordings).toMatchObject([{ id: 'session', text: expect.stringMatching(/^t_s,x_mm/) as unknown }]);
    expect([log?.length, surveys?.length]).toEqual([5, 2]);
    writeFileSync(demoPath, out);
  });

  it('prints the recorded session, which reads back', async () => {
    const { out } = await run(['demo', '--strokes']);
    const reader = createRecordingReader({ fileName: 'session' });
    reader.push(out);
    expect(reader.end().path.count).toBeGreaterThan(1000);
  });
});

describe('crosscoat schema', () => {
  it('prints a JSON Schema that the demo job keeps and a broken one does not', async () => {
    const { out } = await run(['schema']);
    const check = new Ajv2020({ strict: false }).compile(JSON.parse(out) as AnySchema);
    expect(check(demoJob())).toBe(true);
    expect(check({ ...demoJob(), seed: -1 })).toBe(false);
  });
});

describe('crosscoat plan', () => {
  it('prints a table of the strokes of every coat', async () => {
    writeFileSync(demoPath, (await run(['demo'])).out);
    const { code, out } = await run(['plan', demoPath]);
    expect(code).toBe(0);
    for (const coat of demoJob().coats) expect(out).toContain(coat.name);
    expect(out).toMatch(/stroke +pass +length mm/);
  });

  it('plans exactly, whatever the hand', async () => {
    const { out } = await run(['plan', demoPath, '--coat', 'by-hand', '--json']);
    const { panels } = JSON.parse(out) as { panels: { strokes: { speed_m_s: { cv: number }; distance_mm: { mean: number } }[] }[] };
    const strokes = panels[0]?.strokes ?? [];
    expect(strokes.length).toBeGreaterThan(5);
    // Times and places are doubles: an even speed is even to their rounding over a step of a centimetre.
    for (const stroke of strokes) expect(stroke.speed_m_s.cv).toBeLessThan(1e-6);
  });

  it('writes them as a recording', async () => {
    const path = join(folder, 'planned.csv');
    const { code, out } = await run(['plan', demoPath, '--out', path]);
    expect(code).toBe(0);
    expect(out).toContain('holds the coat "planned"');
    expect(readFileSync(path, 'utf8')).toMatch(/^t_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger\n/);
  });

  it('refuses an unknown coat', async () => {
    const { code, err } = await run(['plan', demoPath, '--coat', 'gold']);
    expect(code).toBe(2);
    expect(err).toContain('coat "gold" is not in the job');
  });
});

describe('parseCell_mm', () => {
  it.each([['2mm', 2], ['2', 2], [' 2.5 mm ', 2.5], ['0.2cm', 2], ['0.002 m', 2], ['0.1in', 2.54], ['1e0mm', 1], ['10MM', 10]])('%s is %d mm', (text, cell) => {
    expect(parseCell_mm(text)).toBeCloseTo(cell, 12);
  });

  it.each(['', 'mm', '2mL', '0.99', '10.01mm', '-2mm', 'Infinity', '1e999', '2 2', '0x2'])('refuses %s', (text) => {
    expect(() => parseCell_mm(text)).toThrow(/--cell = /);
  });
});

describe('makeProgress', () => {
  const told = (isTerminal: boolean, times: number[]) => {
    let text = '';
    const clock = [0, ...times];
    const io = { ...nodeIo(), isTerminal, now_ms: () => clock.shift() ?? 0, err: (piece: string) => void (text += piece) };
    const progress = makeProgress(io, 'laying');
    times.forEach((_, i) => progress.show(i / times.length));
    progress.end();
    return text;
  };

  it('keeps quiet about short work', () => {
    expect(told(true, [10, 400])).toBe('');
    expect(told(false, [10, 1900])).toBe('');
  });

  it('rewrites a line on a terminal and clears it', () => {
    expect(told(true, [10, 600, 650, 800])).toBe('\rlaying: 25 %\u001b[K\rlaying: 75 %\u001b[K\r\u001b[K');
  });

  it('writes a line now and then elsewhere', () => {
    expect(told(false, [10, 2500, 4000, 8000])).toBe('laying: 25 %\nlaying: 75 %\n');
  });
});
