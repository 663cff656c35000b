import * as v from 'valibot';
import { CrosscoatError } from '../base/errors.ts';
import { MEASURES } from './measures.ts';
import { parseJob } from './parse.ts';
import { fitted, readJson } from './readFile.ts';
import type { Job } from './schema.ts';
import { LONGEST_RECORDING } from './schemaFacts.ts';
import { list, number, oneOf, record, text } from './words.ts';

/** Version of the session file that this build writes. */
export const SESSION_VERSION = 1;

const ID_ADVICE = 'give an id of 1 to 64 letters, digits, - or _';

/** What a session was sprayed for: a drill of the program, or one made from a job. */
export const TaskSchema = record(
  {
    id: text(64, 'id of the drill; "own" for one made from a job'),
    title: text(200, 'title of the drill'),
    coat: text(64, 'id of the coat of the job that was sprayed'),
    counts: list(oneOf(MEASURES, 'what is marked'), 1, MEASURES.length, 'measures that must be within the limits of the rubric'),
    watch_s: number(0, 10800, 'how long the film is watched after the gun is put away, s'),
    wait_s: v.optional(number(0, 10800, 'time that the task itself asks to wait, s'), 0),
  },
  'the task',
);

/** A practice session: who, what for, the job as it was, and the strokes as sprayed. */
export const SessionSchema = record(
  {
    sessionVersion: v.pipe(v.literal(SESSION_VERSION, `give ${SESSION_VERSION}, the version that this build reads`), v.description('version of this file format')),
    id: v.pipe(v.string(ID_ADVICE), v.regex(/^[A-Za-z0-9_-]{1,64}$/, ID_ADVICE), v.description('stable name')),
    trainee: text(100, 'name of who sprayed; may be empty'),
    name: text(200, 'name of the session'),
    sprayedAt: v.pipe(v.string('give a date and time'), v.isoTimestamp('give a date and time such as 2026-03-01T09:30:00Z'), v.description('when it was sprayed, ISO 8601')),
    task: TaskSchema,
    job: v.pipe(v.unknown(), v.description('the job as it was, see the schema of the job file')),
    strokes: text(LONGEST_RECORDING, 'the whole text of the recorded-stroke CSV'),
  },
  'a practice session',
);

export type TaskSpec = v.InferOutput<typeof TaskSchema>;

/** A session as read: its job is a job. */
export type SessionSpec = Omit<v.InferOutput<typeof SessionSchema>, 'job'> & { readonly job: Job };

/**
 * A session from the text of a file, or from a value already read from JSON. Its strokes are read
 * later. Older jobs inside it are upgraded.
 * @throws CrosscoatError as `parseJob` does; `not-found` where the job has no such coat.
 */
export function parseSession(input: unknown, file?: string): SessionSpec {
  const head = { words: `parseSession: ${file ?? 'the session'}`, file };
  const read = fitted(SessionSchema, typeof input === 'string' ? readJson(input, head) : input, head);
  const job = jobOf(read.job, head.words, file);
  if (!job.coats.some(({ id }) => id === read.task.coat)) {
    throw new CrosscoatError('not-found', `${head.words}: /task/coat = "${read.task.coat}" is not in its job (it has ${job.coats.map(({ id }) => id).join(', ')}); give one of these`, { pointer: '/task/coat' });
  }
  return { ...read, job };
}

/** The job inside a session; what is wrong in it is told with its place in the session. */
function jobOf(stated: unknown, words: string, file: string | undefined): Job {
  try {
    return parseJob(stated).job;
  } catch (thrown) {
    if (!(thrown instanceof CrosscoatError)) throw thrown;
    const pointer = `/job${thrown.place.pointer ?? ''}`;
    throw new CrosscoatError(thrown.code, `${words}: ${pointer}: ${thrown.message.replace(/^parseJob: the job: /, '')}`, { ...(file === undefined ? {} : { file }), pointer });
  }
}

/** A session as the text of a file. `parseSession` gives the same session back. */
export function serialiseSession(session: SessionSpec): string {
  return `${JSON.stringify(session, null, 2)}\n`;
}
