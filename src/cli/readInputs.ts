import { createRecordingReader, parseJob, type ParsedJob, type Recording } from '../../sim/index.ts';
import { STANDARD_INPUT, checkFile, checkSize, readPieces } from './files.ts';
import type { Io } from './io.ts';

/** Above this no job file can be within its limit of letters, three bytes to each. */
const MOST_JOB_BYTES = 200e6;
/** An hour at 100 Hz has about 20 MB. */
const MOST_STROKES_BYTES = 1e9;

/** A job from a file, or from standard input where `path` is `-`. */
export async function readJob(io: Io, path: string): Promise<ParsedJob> {
  const advice = 'a job file holds words and numbers only; give long recordings with --strokes';
  if (path !== STANDARD_INPUT) checkSize(path, (await checkFile(io, path, 'job file')).bytes, MOST_JOB_BYTES, advice);
  const name = path === STANDARD_INPUT ? 'standard input' : path;
  const pieces: string[] = [];
  let letters = 0;
  for await (const piece of readPieces(io, path)) {
    letters += piece.length;
    checkSize(name, letters, MOST_JOB_BYTES, advice);
    pieces.push(piece);
  }
  return parseJob(pieces.join(''), name);
}

/** A recorded file, read piece by piece; a file above the limit is refused before it is opened. */
export async function readStrokes(io: Io, path: string): Promise<Recording> {
  const facts = await checkFile(io, path, 'recording');
  checkSize(path, facts.bytes, MOST_STROKES_BYTES, 'cut the recording into parts');
  const reader = createRecordingReader({ fileName: path });
  for await (const piece of readPieces(io, path)) reader.push(piece);
  return reader.end();
}
