import { spawn, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { scratchFolder } from './fakeIo.ts';

const BIN = resolve(import.meta.dirname, '../../../src/cli/crosscoat.mjs');
const folder = scratchFolder();

/** Runs the command as a shell would, from a folder that is not the checkout. */
function bin(argv: string[], input = ''): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(BIN, argv, { cwd: folder, input, encoding: 'utf8' });
  return { code: status, out: stdout, err: stderr };
}

describe('the crosscoat command', () => {
  it('pipes the demo into a run', () => {
    const demo = bin(['demo']);
    expect(demo.code).toBe(0);
    const sprayed = bin(['spray', '-', '--coat', 'planned', '--cell', '5mm', '--json'], demo.out);
    expect([sprayed.code, sprayed.err]).toEqual([0, '']);
    expect(JSON.parse(sprayed.out)).toMatchObject({ schemaVersion: 1, panels: [{ coat: 'planned' }] });
  });

  it('gives 2 and one line on bad input, and writes nothing', () => {
    writeFileSync(join(folder, 'bad.json'), '{');
    const { code, out, err } = bin(['spray', 'bad.json', '--map', 'a.png']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^crosscoat: [^\n]*bad\.json[^\n]*\n$/);
  });

  it('does not mind a reader that goes away', async () => {
    const child = spawn(BIN, ['demo', '--strokes'], { cwd: folder });
    child.stdout.destroy();
    let err = '';
    child.stderr.on('data', (piece: Buffer) => {
      err += piece.toString();
    });
    const code = await new Promise((resolveCode) => child.on('close', resolveCode));
    expect([code, err]).toEqual([0, '']);
  });
});
