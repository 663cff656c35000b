import {
  EARLIER_KEPT, serialiseSession, sha256Of, WORKSHOP_MANIFEST, WORKSHOP_VERSION,
  type HandSample, type ListedJobSpec, type ListedSessionSpec, type RubricSpec, type Score, type SessionSpec, type WorkshopSpec,
} from '../../sim/index.ts';
import { fileStem } from './fileStem.ts';
import { zipWriter } from './zipWriter.ts';

/** Letters of an id in a file's name: two jobs of one name stay two files. */
const ID_LETTERS = 8;

/** A job as it goes into the zip. */
export interface PackedJob {
  readonly id: string;
  readonly name: string;
  /** Its file. A kept job that no longer reads goes along as it is: nothing is left behind. */
  readonly text: string;
  readonly changedAt: string;
  readonly archived: boolean;
  /** Digests under which it was handed over before. */
  readonly earlier: readonly string[];
}

/** A practice session as it goes into the zip. */
export interface PackedSession {
  readonly session: SessionSpec;
  readonly score: Score;
  readonly hand: HandSample;
  readonly keptAt: string;
}

/** All that goes into the zip. Jobs and sessions are read one after another, so that only one is in hand at a time. */
export interface WorkshopContent {
  readonly made: Date;
  readonly jobs: AsyncIterable<PackedJob> | Iterable<PackedJob>;
  readonly sessions: AsyncIterable<PackedSession> | Iterable<PackedSession>;
  readonly rubric: RubricSpec | null;
  readonly preferences: NonNullable<WorkshopSpec['preferences']>;
}

/** A zip in pieces, and what it lists. */
export interface PackedWorkshop {
  readonly pieces: Uint8Array<ArrayBuffer>[];
  readonly manifest: WorkshopSpec;
}

/** A whole workshop as one zip: a file a job, a file a session, the rubric, words that say what it is, and the manifest. */
export async function packWorkshop({ made, jobs, sessions, rubric, preferences }: WorkshopContent): Promise<PackedWorkshop> {
  const zip = zipWriter(made);
  const add = (file: string, text: string): { file: string; sha256: string } => {
    zip.add(file, new TextEncoder().encode(text));
    return { file, sha256: sha256Of(text) };
  };
  add('README.txt', readme(made));
  const listedJobs: ListedJobSpec[] = [];
  for await (const { id, name, text, changedAt, archived, earlier } of jobs) {
    const file = `jobs/${fileStem(name, 'job')}-${idTail(id, listedJobs.length)}.crosscoat.json`;
    listedJobs.push({ id, name: name.slice(0, 200), ...add(file, text), changedAt, archived, earlier: earlier.slice(-EARLIER_KEPT) });
  }
  const listedSessions: ListedSessionSpec[] = [];
  for await (const kept of sessions) listedSessions.push(listedSession(kept, add, listedSessions.length));
  const manifest: WorkshopSpec = {
    format: 'crosscoat-workshop',
    schemaVersion: WORKSHOP_VERSION,
    made: made.toISOString(),
    jobs: listedJobs,
    sessions: listedSessions,
    ...(rubric === null ? {} : { rubric: add('rubric.crosscoat-rubric.json', `${JSON.stringify(rubric, null, 2)}\n`) }),
    preferences,
  };
  add(WORKSHOP_MANIFEST, `${JSON.stringify(manifest, null, 1)}\n`);
  return { pieces: zip.end(), manifest };
}

/** The end of an id, which differs where ids count up; its number in the zip keeps names apart for certain. */
function idTail(id: string, index: number): string {
  return `${fileStem(id, 'id').slice(-ID_LETTERS).replace(/^-+/, '')}-${index + 1}`;
}

function listedSession({ session, score, hand, keptAt }: PackedSession, add: (file: string, text: string) => { file: string; sha256: string }, index: number): ListedSessionSpec {
  const { id, name, trainee, task, sprayedAt } = session;
  const stem = [fileStem(trainee, 'trainee'), fileStem(task.id, 'drill'), sprayedAt.slice(0, 10), idTail(id, index)].join('-');
  const { total, isPassed, rows } = score;
  return {
    id,
    name,
    trainee,
    ...add(`sessions/${stem}.crosscoat-session.json`, serialiseSession(session)),
    sprayedAt,
    keptAt,
    figures: withoutNaN({ total, isPassed, rows, hand }),
  };
}

/** JSON has no NaN; a figure without a value is null in the file. */
function withoutNaN(figures: object): ListedSessionSpec['figures'] {
  return JSON.parse(JSON.stringify(figures)) as ListedSessionSpec['figures'];
}

function readme(made: Date): string {
  return `This is a whole Crosscoat workshop, written ${made.toISOString()}.

jobs/      each file is one job: part, mixes, set-ups, coats, schemes, log, surveys, recorded strokes, photographs.
           Open it by itself in Crosscoat (Open), or with "crosscoat spray FILE".
sessions/  each file is one practice session. Open it in Practice, under Progress, or with "crosscoat debrief FILE".
rubric.crosscoat-rubric.json  is there where practice is marked by your own rubric.
workshop.json  lists the files with their SHA-256, so that a changed or damaged file shows.

To put it all back: Jobs, Restore from a zip. You are shown what would change before anything is written.
To check it without the app: crosscoat workshop FILE.zip

All files are plain text (UTF-8, JSON); the units are in the keys. Every figure is a teaching and planning estimate: the
product's data sheet, the approved process, local codes and the inspector come first.
`;
}
