import { CrosscoatError, parseSession, serialiseSession, type SessionSpec } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { fileStem } from '../../workshop/fileStem.ts';
import { problemOf, type Problem } from '../problem.ts';

/** A class's files are opened in one go; more than this is a wrong folder. */
const MOST_FILES = 200;
/** As long as the longest recording. */
const MOST_BYTES = 64e6;

/** What a name is made from. */
export type NamedSession = Pick<SessionSpec, 'trainee' | 'task' | 'sprayedAt'>;

/** `trainee-drill-date` in small letters, digits and hyphens, which every file system takes. */
export function sessionStem({ trainee, task, sprayedAt }: NamedSession): string {
  return [fileStem(trainee, 'trainee'), fileStem(task.id, 'drill'), sprayedAt.slice(0, 10)].join('-');
}

export function sessionFileName(session: NamedSession): string {
  return `${sessionStem(session)}.crosscoat-session.json`;
}

export function strokesFileName(session: NamedSession): string {
  return `${sessionStem(session)}.csv`;
}

/** Hands the reader a session as a file that opens elsewhere. */
export function saveSession(session: SessionSpec): void {
  download(new Blob([serialiseSession(session)], { type: 'application/json' }), sessionFileName(session));
}

/** Hands the reader the strokes alone. They are numbers, so none is guarded as a formula. */
export function saveStrokes(session: SessionSpec): void {
  download(new Blob([session.strokes], { type: 'text/csv' }), strokesFileName(session));
}

/** A session and the file that it came from. */
export interface OpenedSession {
  readonly file: string;
  readonly session: SessionSpec;
}

/** What became of the files that were chosen or dropped. */
export interface ReadFiles {
  readonly opened: readonly OpenedSession[];
  /** One a file that is no session, by name. */
  readonly refused: readonly Problem[];
}

/** The part of a browser's file that is needed. */
export type ReadableFile = Pick<File, 'name' | 'size' | 'text'>;

/**
 * Reads session files one after another, so that only one text is in hand at a time. A bad one is
 * named with what is wrong with it, and the others still open.
 */
export async function readSessionFiles(files: readonly ReadableFile[]): Promise<ReadFiles> {
  const opened: OpenedSession[] = [];
  const refused: Problem[] = [];
  for (const file of files.slice(0, MOST_FILES)) {
    try {
      opened.push({ file: file.name, session: parseSession(await textWithin(file), file.name) });
    } catch (thrown) {
      refused.push(problemOf(`${file.name} was not opened`, thrown));
    }
  }
  const left = files.slice(MOST_FILES);
  if (left.length > 0) refused.push(tooMany(left));
  return { opened, refused };
}

/** The text of a file that is not too long. @throws CrosscoatError `limit`; what reading it throws. */
export function textWithin(file: ReadableFile): Promise<string> {
  const { name, size } = file;
  if (size <= MOST_BYTES) return file.text();
  throw new CrosscoatError('limit', `${name} has ${Math.ceil(size / 1e6)} MB, more than ${MOST_BYTES / 1e6} MB; spray shorter sessions, or leave recordings out of the job`, { file: name });
}

function tooMany(left: readonly ReadableFile[]): Problem {
  return {
    title: `${left.length} ${left.length === 1 ? 'file was' : 'files were'} not opened`,
    text: `At most ${MOST_FILES} open at once. The first one left out is ${left[0]?.name ?? ''}; open the rest next.`,
    place: {},
  };
}
