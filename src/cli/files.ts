import { CrosscoatError } from '../../sim/index.ts';
import type { FileFacts, Io } from './io.ts';

/** What a name of `-` reads. */
export const STANDARD_INPUT = '-';

/** A file's facts. @throws `not-found` for none and for a folder, naming what the file should be. */
export async function checkFile(io: Io, path: string, what: string): Promise<FileFacts> {
  const facts = await orExplain(path, 'cannot be read', () => io.facts(path));
  if (facts === null) {
    throw new CrosscoatError('not-found', `${path}: no such file; give the ${what}'s path`, { file: path });
  }
  if (facts.kind === 'folder') {
    throw new CrosscoatError('not-found', `${path} is a folder, not a file; give the ${what}'s path`, { file: path });
  }
  return facts;
}

/** @throws `limit` where a file is larger than `most` bytes. */
export function checkSize(path: string, bytes: number, most: number, advice: string): void {
  if (bytes <= most) return;
  const inMegabytes = (size: number) => `${Math.ceil(size / 1e6)} MB`;
  throw new CrosscoatError('limit', `${path} has ${inMegabytes(bytes)}, more than ${inMegabytes(most)}; ${advice}`, { file: path });
}

/** The pieces of a file, its failures in our words. */
export async function* readPieces(io: Io, path: string): AsyncGenerator<string> {
  const pieces = (path === STANDARD_INPUT ? io.input() : io.read(path))[Symbol.asyncIterator]();
  for (;;) {
    const next = await orExplain(path, 'cannot be read', () => pieces.next());
    if (next.done === true) return;
    yield next.value;
  }
}

/** Writes a whole file, its failures in our words. */
export async function writeFile(io: Io, path: string, pieces: Iterable<string | Uint8Array>): Promise<void> {
  if (path === STANDARD_INPUT || path === '') {
    throw new CrosscoatError('not-found', `"${path}" is no file to write to; give a file name (standard output holds the report)`);
  }
  await orExplain(path, 'cannot be written', () => io.write(path, pieces));
}

/** System error codes in plain words. */
const SYSTEM_WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder',
  ENOTDIR: 'a part of its path is not a folder',
  EACCES: 'you may not; choose another place or change its permissions',
  EPERM: 'you may not; choose another place or change its permissions',
  EISDIR: 'it is a folder; give a file name',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
  EEXIST: 'another run is writing it',
  ENAMETOOLONG: 'its name is too long',
};

async function orExplain<T>(path: string, failure: string, act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (typeof code !== 'string' || error instanceof CrosscoatError) throw error;
    throw new CrosscoatError('not-found', `${path} ${failure}: ${SYSTEM_WORDS[code] ?? code}`, { file: path });
  }
}
