import { STANDARD_INPUT, checkFile, checkSize, readPieces } from './files.ts';
import type { Io } from './io.ts';

/** What is read, how large it may be, and what to do where it is larger. */
export interface TextFile {
  /** As a message names it: `session file`. */
  readonly what: string;
  readonly mostBytes: number;
  readonly advice: string;
}

/** A file's name in messages. */
export function nameOf(path: string): string {
  return path === STANDARD_INPUT ? 'standard input' : path;
}

/** The whole text of a file, or of standard input where `path` is `-`. @throws `not-found`, `limit`. */
export async function readText(io: Io, path: string, { what, mostBytes, advice }: TextFile): Promise<string> {
  if (path !== STANDARD_INPUT) checkSize(path, (await checkFile(io, path, what)).bytes, mostBytes, advice);
  const pieces: string[] = [];
  let letters = 0;
  for await (const piece of readPieces(io, path)) {
    letters += piece.length;
    checkSize(nameOf(path), letters, mostBytes, advice);
    pieces.push(piece);
  }
  return pieces.join('');
}
