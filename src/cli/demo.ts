import { fileURLToPath } from 'node:url';
import { DEMO_RECORD_FILE, DEMO_SESSION_FILE, demoJobWithSession, serialiseJob, withDemoRecord } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { checkFile, readPieces } from './files.ts';
import type { Io } from './io.ts';

/** Prints the demo job with its recorded session, its log and surveys inside, or the session alone. @returns the exit code. */
export async function demo(io: Io, options: { readonly strokes?: true }): Promise<number> {
  const session = await demoFile(io, DEMO_SESSION_FILE, 'recording');
  if (options.strokes === true) await io.out(session);
  else await io.out(serialiseJob(withDemoRecord(demoJobWithSession(session), await demoFile(io, DEMO_RECORD_FILE, 'record'))));
  return EXIT.done;
}

async function demoFile(io: Io, name: string, what: string): Promise<string> {
  const path = fileURLToPath(new URL(`../../sim/job/${name}`, import.meta.url));
  await checkFile(io, path, what);
  const pieces: string[] = [];
  for await (const piece of readPieces(io, path)) pieces.push(piece);
  return pieces.join('');
}
