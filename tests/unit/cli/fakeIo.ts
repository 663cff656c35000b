import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { main } from '../../../src/cli/main.ts';
import { nodeIo } from '../../../src/cli/nodeIo.ts';
import type { Io } from '../../../src/cli/io.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process, with real files and everything else held. */
export async function run(argv: readonly string[], changes: Partial<Io> = {}): Promise<Ran> {
  let out = '';
  let err = '';
  const io: Io = {
    ...nodeIo(),
    out: (text) => {
      out += text;
      return Promise.resolve();
    },
    err: (text) => {
      err += text;
    },
    isTerminal: false,
    // A clock that stands still: nothing takes long enough to be told of.
    now_ms: () => 0,
    ...changes,
  };
  const code = await main(argv, io);
  return { code, out, err };
}

/** A new empty folder. */
export function scratchFolder(): string {
  return mkdtempSync(join(tmpdir(), 'crosscoat-cli-'));
}

/** Text as a stream cut into pieces, as standard input comes. */
export async function* inPieces(text: string, length = 1000): AsyncGenerator<string> {
  for (let i = 0; i < text.length; i += length) yield await Promise.resolve(text.slice(i, i + length));
}
