import {
  CrosscoatError, LONGEST_RECORDING, ownDrill, parseSession, readRecording, SESSION_VERSION, taskOf,
  type Drill, type Job, type SessionSpec,
} from '../../sim/index.ts';
import { chosenDrill } from './drill.ts';
import { STANDARD_INPUT } from './files.ts';
import type { Io } from './io.ts';
import { readJob } from './readInputs.ts';
import { nameOf, readText } from './readText.ts';

/** Where a session comes from: a file, or strokes and what they were sprayed for. */
export interface SessionOptions {
  readonly strokes?: string;
  readonly drill?: string;
  readonly job?: string;
  readonly coat?: string;
}

/** Above this no session file can be within its limit of letters, three bytes to each. */
const SESSION_FILE = { what: 'session file', mostBytes: 200e6, advice: 'leave recordings out of the job in it, or spray shorter sessions' };
/** Strokes are numbers, a byte to a letter. */
const STROKES_FILE = { what: 'recording', mostBytes: LONGEST_RECORDING, advice: 'cut the recording into parts' };

const WAYS = 'give a session file; or --strokes with --drill; or --strokes with --job and --coat';

/** A session from a file, or one made of strokes and a drill, or a job's coat. @throws CrosscoatError that names the option or the file. */
export async function readSession(io: Io, path: string | undefined, options: SessionOptions): Promise<SessionSpec> {
  checkOptions(path, options);
  const session = path === undefined ? await sessionOfStrokes(io, options) : parseSession(await readText(io, path, SESSION_FILE), nameOf(path));
  // Strokes that cannot be read are told of by the name of the reader's own file.
  readRecording([session.strokes], path === undefined ? nameOf(options.strokes ?? '') : `${nameOf(path)}, /strokes`);
  return session;
}

/** @throws `schema` for options that are wanting or stand against each other. */
function checkOptions(path: string | undefined, { strokes, drill, job, coat }: SessionOptions): void {
  if (path !== undefined) {
    const [given] = Object.entries({ strokes, drill, job, coat }).filter(([, value]) => value !== undefined);
    if (given !== undefined) throw against(`--${given[0]} ${given[1]} and the session file ${nameOf(path)}`, 'the file holds its own strokes, drill and job', 'leave one of them out');
    if (/\.csv$/i.test(path)) throw new CrosscoatError('schema', `${path} is a table of strokes by its name, not a session file; give it with --strokes, and with --drill or --job what it was sprayed for`, { file: path });
    return;
  }
  if (strokes === undefined) throw new CrosscoatError('schema', `debrief: no session is given; ${WAYS}`);
  if (drill !== undefined && job !== undefined) throw against(`--drill ${drill} and --job ${job}`, 'strokes are sprayed for one task', 'leave one of them out');
  if (drill !== undefined && coat !== undefined) throw against(`--drill ${drill} and --coat ${coat}`, 'a drill has its own coat', 'leave --coat out');
  if (drill === undefined && job === undefined) throw new CrosscoatError('schema', `--strokes ${strokes} does not say what it was sprayed for; give --drill, or --job and --coat`);
}

function against(both: string, why: string, advice: string): CrosscoatError {
  return new CrosscoatError('schema', `debrief: ${both} do not go together (${why}); ${advice}`);
}

/** @throws `schema` where more than one name is `-`: standard input can be read once. */
export function checkStandardInput(paths: readonly (string | undefined)[]): void {
  if (paths.filter((path) => path === STANDARD_INPUT).length <= 1) return;
  throw new CrosscoatError('schema', 'debrief: more than one file is - (standard input can be read once); give the others by their names');
}

async function sessionOfStrokes(io: Io, { strokes = '', drill, job, coat }: SessionOptions): Promise<SessionSpec> {
  const task = drill === undefined ? jobDrill((await readJob(io, job ?? '')).job, coat) : chosenDrill(drill);
  return {
    sessionVersion: SESSION_VERSION,
    id: 'strokes',
    trainee: '',
    name: nameOf(strokes),
    // A table of strokes does not say when; no figure depends on it.
    sprayedAt: '1970-01-01T00:00:00Z',
    task: taskOf(task),
    job: task.job(),
    strokes: await readText(io, strokes, STROKES_FILE),
  };
}

/** A coat of a job as a drill; without an id the job's only coat. */
function jobDrill(job: Job, coat: string | undefined): Drill {
  const [only, ...others] = job.coats;
  if (coat === undefined && others.length > 0) {
    throw new CrosscoatError('schema', `debrief: the job has ${job.coats.length} coats and --coat does not say which was sprayed; give one of ${job.coats.map(({ id }) => id).join(', ')}`);
  }
  return ownDrill(job, coat ?? only?.id ?? '');
}
