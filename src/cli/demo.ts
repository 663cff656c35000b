import { fileURLToPath } from 'node:url';
import { DEMO_SESSION_FILE, demoJob, serialiseJob } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { checkFile, readPieces } from './files.ts';
import type { Io } from './io.ts';

const SESSION_PATH = fileURLToPath(new URL(`../../sim/job/${DEMO_SESSION_FILE}`, import.meta.url));

/** Prints the demo job, or its recorded session. @returns the exit code. */
export async function demo(io: Io, options: { readonly strokes?: true }): Promise<number> {
  if (options.strokes !== true) {
    await io.out(serialiseJob(demoJob()));
    return EXIT.done;
  }
  await checkFile(io, SESSION_PATH, 'recording');
  for await (const piece of readPieces(io, SESSION_PATH)) await io.out(piece);
  return EXIT.done;
}
