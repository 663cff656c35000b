import { createReadStream } from 'node:fs';
import { open, readFile, realpath, rename, stat, unlink, type FileHandle } from 'node:fs/promises';
import { momentOf, secondsOfMoment } from '../../sim/index.ts';
import type { FileFacts, Io } from './io.ts';

/** Pieces are gathered to about this many bytes for one write. */
const WRITE_BYTES = 1 << 20;

/** Lets a reader such as `head` close the pipe early: the rest is not wanted, and that is no failure. */
export function allowClosedPipe(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
}

/** The command's surroundings in Node. */
export function nodeIo(): Io {
  return {
    out: (text) => new Promise((resolve) => void process.stdout.write(text, () => resolve())),
    err: (text) => void process.stderr.write(text),
    isTerminal: process.stderr.isTTY === true,
    now_ms: () => performance.now(),
    moment: momentNow,
    input: () => process.stdin.setEncoding('utf8') as AsyncIterable<string>,
    facts: fileFacts,
    read: (path) => createReadStream(path, { encoding: 'utf8', highWaterMark: WRITE_BYTES }) as AsyncIterable<string>,
    bytes: (path) => readFile(path),
    write: writeWhole,
  };
}

function momentNow(): string {
  const now = new Date();
  return momentOf((secondsOfMoment('1970-01-01T00:00Z') ?? 0) + Math.floor(now.getTime() / 1000), -now.getTimezoneOffset());
}

async function fileFacts(path: string): Promise<FileFacts | null> {
  try {
    const facts = await stat(path);
    return { kind: facts.isFile() ? 'file' : facts.isDirectory() ? 'folder' : 'other', bytes: facts.size };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

/** Beside the file first, then under its name; a device or pipe is written straight to. */
async function writeWhole(path: string, pieces: Iterable<string | Uint8Array>): Promise<void> {
  const facts = await fileFacts(path);
  if (facts?.kind === 'other') return writeTo(path, 'w', 0o666, pieces);
  // Through a link, so that the link stays one.
  const target = facts === null ? path : await realpath(path);
  const mode = facts === null ? 0o666 : (await stat(target)).mode & 0o777;
  const part = `${target}.${process.pid}.part`;
  try {
    await writeTo(part, 'wx', mode, pieces);
    await rename(part, target);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') await unlink(part).catch(() => undefined);
    throw error;
  }
}

async function writeTo(path: string, flags: string, mode: number, pieces: Iterable<string | Uint8Array>): Promise<void> {
  const file = await open(path, flags, mode);
  try {
    await writePieces(file, pieces);
  } finally {
    await file.close();
  }
}

async function writePieces(file: FileHandle, pieces: Iterable<string | Uint8Array>): Promise<void> {
  let gathered: Buffer[] = [];
  let bytes = 0;
  const flush = async (): Promise<void> => {
    await file.writeFile(Buffer.concat(gathered));
    gathered = [];
    bytes = 0;
  };
  for (const piece of pieces) {
    const buffer = typeof piece === 'string' ? Buffer.from(piece, 'utf8') : Buffer.from(piece);
    gathered.push(buffer);
    bytes += buffer.length;
    if (bytes >= WRITE_BYTES) await flush();
  }
  await flush();
}
