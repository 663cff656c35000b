import { fileURLToPath } from 'node:url';
import { DEMO_SESSION_FILE, demoJobWithSession, serialiseJob } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { checkFile, readPieces } from './files.ts';
import type { Io } from './io.ts';

const SESSION_PATH = fileURLToPath(new URL(`../../sim/job/${DEMO_SESSION_FILE}`, import.meta.url));

/** Prints the demo job with its recorded session inside, or the session alone. @returns the exit code. */
export async function demo(io: Io, options: { readonly strokes?: true }): Promise<number> {
  await checkFile(io, SESSION_PATH, 'recording');
  const pieces: string[] = [];
  for await (const piece of readPieces(io, SESSION_PATH)) pieces.push(piece);
  const text = pieces.join('');
  await io.out(options.strokes === true ? text : serialiseJob(demoJobWithSession(text)));
  return EXIT.done;
}
