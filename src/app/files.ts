import { CrosscoatError, serialiseJob, type Job } from '../../sim/index.ts';
import { download } from '../storage/download.ts';
import type { ExportKind } from '../worker/protocol.ts';
import { fileStem } from '../workshop/fileStem.ts';
import { demoWithSession } from './demo.ts';
import { replaceJob } from './document.ts';
import { problemOf } from './problem.ts';
import { addRecording } from './recordings.ts';
import type { Session } from './session.ts';
import { state } from './state.ts';

/** Files above this are refused before they are read: the longest job text, in bytes. */
const MOST_BYTES = 128e6;

let session: Session | null = null;

/** Gives the file actions their worker; called once at start. */
export function connectFiles(started: Session): void {
  session = started;
}

/** Opens a job, or reads a recorded path, by what the file holds. A bad file changes nothing. */
export async function openFile(file: File): Promise<void> {
  try {
    checkSize(file);
    if (/\.zip$/i.test(file.name)) throw new CrosscoatError('schema', `${file.name} is a zip; a whole workshop is restored under Jobs, Export and restore`);
    const text = await file.text();
    if (isJob(file.name, text)) {
      const { readJob } = await import('./readJob.ts');
      replaceJob(`Open ${file.name}`, readJob(text, file.name).job);
    } else if (session !== null) await addRecording(session, file.name, text);
    state.notice.value = null;
  } catch (thrown) {
    state.notice.value = problemOf(`${file.name} was not opened; nothing was changed`, thrown);
  }
}

function checkSize(file: File): void {
  if (file.size <= MOST_BYTES) return;
  throw new CrosscoatError(
    'limit',
    `${file.name} has ${Math.round(file.size / 1e6)} MB, more than ${MOST_BYTES / 1e6} MB; cut the recording into parts, or use the command line`,
    { file: file.name },
  );
}

function isJob(name: string, text: string): boolean {
  return name.toLowerCase().endsWith('.json') || text.trimStart().startsWith('{');
}

/** Saves the job, recordings included, as one file that the reader keeps. */
export function saveJob(): void {
  saveJobFile(state.job.peek());
}

/** Saves any job so. */
export function saveJobFile(job: Job): void {
  download(new Blob([serialiseJob(job)], { type: 'application/json' }), `${fileStem(job.name, 'job')}.crosscoat.json`);
}

const EXPORT_ENDINGS: Readonly<Record<ExportKind, string>> = {
  'map-png': 'film.png',
  'strokes-svg': 'strokes.svg',
  'film-csv': 'film.csv',
  'strokes-csv': 'path.csv',
  'results-json': 'results.json',
};

/** Makes a file of the coat in hand; the worker writes it, so that the page stays free. */
export async function exportAs(kind: ExportKind): Promise<void> {
  if (session === null) return;
  try {
    const blob = await session.exportFile(kind);
    download(blob, `${fileStem(state.job.peek().name, 'job')}-${EXPORT_ENDINGS[kind]}`);
  } catch (thrown) {
    state.notice.value = problemOf('Nothing was exported', thrown);
  }
}

/** The demo job in place of the one in hand; Undo brings that back. */
export async function startFromDemo(): Promise<void> {
  try {
    replaceJob('Start again from the demo', await demoWithSession());
  } catch (thrown) {
    state.notice.value = problemOf('The demo could not be loaded', thrown);
  }
}
