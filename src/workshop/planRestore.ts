import type { ListedJobSpec } from '../../sim/index.ts';
import type { DigestState, ReadWorkshop, WorkshopFile } from './readWorkshop.ts';
import { notSignedSo, type SignedIn } from './signedIn.ts';

/** How a job of the zip stands to what is here. `unreadable` here: the job that is here does not read, so nothing is compared. */
export type RestoreState = 'new' | 'same' | 'here-newer' | 'zip-newer' | 'both-changed' | 'unreadable';

/** What may be done with it. `add` keeps its id, `copy` gives it a new one. */
export type RestoreChoice = 'add' | 'copy' | 'replace' | 'skip';

/** A job of this browser that has the id of one in the zip. */
export interface HereJob {
  readonly id: string;
  readonly name: string;
  readonly changedAt: string;
  readonly revision: number;
  /** SHA-256 of it as this build would write it; null where it no longer reads. */
  readonly asWritten: string | null;
  /** What is signed in it, as far as it reads. */
  readonly signed: SignedIn<readonly string[]>;
  /** Digests under which it was handed over or taken in, oldest first. */
  readonly earlier: readonly string[];
}

/** A job of the zip beside the one here: what a restore would do. */
export interface JobRow {
  readonly kind: 'job';
  readonly file: string;
  readonly name: string;
  readonly part: string;
  readonly coats: number;
  readonly digest: DigestState;
  readonly state: RestoreState;
  /** Nothing handed over tells which is the older state, so that the devices' clocks were asked, which may be wrong. */
  readonly isByClock: boolean;
  /** As the zip lists it; null for a file without a manifest. */
  readonly listed: ListedJobSpec | null;
  readonly here: HereJob | null;
  /** What is signed here and not signed so in the zip: a replace would take it away. */
  readonly notSignedSo: SignedIn<number>;
  /** Digests by which the job is known again after it is taken in. */
  readonly known: readonly string[];
  readonly choices: readonly RestoreChoice[];
  readonly proposed: RestoreChoice;
}

/** A practice session of the zip. A session is not changed once it is sprayed, so it is here, or not, or its id is another's. */
export interface SessionRow {
  readonly kind: 'session';
  readonly file: string;
  readonly id: string;
  readonly name: string;
  readonly trainee: string;
  readonly title: string;
  readonly digest: DigestState;
  readonly state: 'new' | 'same' | 'other';
  readonly choices: readonly RestoreChoice[];
  readonly proposed: RestoreChoice;
}

export type RestoreRow = JobRow | SessionRow;

/**
 * What a restore would change, file by file; nothing is done. Which state is the older is told by the digests under
 * which a job was handed over: one that the other side has seen before is the older. Where neither side has, and both have a common one,
 * both were changed. Only where no digest is common are the clocks asked, and then nothing is proposed to be replaced.
 * @param here the jobs here that have an id of the zip, by id.
 * @param sessions SHA-256 of the sessions here as this build would write them, by id.
 */
export function planRestore(read: ReadWorkshop, here: ReadonlyMap<string, HereJob>, sessions: ReadonlyMap<string, string>): readonly RestoreRow[] {
  const taken = new Set<string>();
  return read.files.flatMap((file): RestoreRow[] => {
    if (file.content.kind === 'session') return [sessionRow(file, file.content, sessions)];
    if (file.content.kind !== 'job') return [];
    const listed = file.listed !== null && 'archived' in file.listed ? file.listed : null;
    // Two files under one id: the second would be written over the first.
    const isTwice = listed !== null && taken.has(listed.id);
    if (listed !== null) taken.add(listed.id);
    return [jobRow(file, file.content, isTwice ? null : listed, listed === null || isTwice ? null : (here.get(listed.id) ?? null))];
  });
}

function jobRow(file: WorkshopFile, { name, part, coats, signed, asWritten }: Extract<WorkshopFile['content'], { kind: 'job' }>, listed: ListedJobSpec | null, here: HereJob | null): JobRow {
  const { state, isByClock } = compared(file, asWritten, listed, here);
  const isDoubtful = file.digest === 'damaged' || file.digest === 'changed';
  return {
    kind: 'job',
    file: file.name,
    name,
    part,
    coats,
    digest: file.digest,
    state,
    isByClock,
    listed,
    here,
    notSignedSo: here === null ? { entries: 0, surveys: 0 } : notSignedSo(here.signed, signed),
    known: [...new Set([...(listed?.earlier ?? []), ...(listed === null ? [] : [listed.sha256]), file.sha256, asWritten])],
    choices: state === 'new' ? ['add', 'skip'] : state === 'same' ? ['skip', 'copy'] : ['copy', 'replace', 'skip'],
    proposed: proposal(state, isByClock || isDoubtful),
  };
}

function proposal(state: RestoreState, isDoubtful: boolean): RestoreChoice {
  if (state === 'new') return 'add';
  if (state === 'same' || state === 'here-newer') return 'skip';
  return state === 'zip-newer' && !isDoubtful ? 'replace' : 'copy';
}

function compared(file: WorkshopFile, asWritten: string, listed: ListedJobSpec | null, here: HereJob | null): Pick<JobRow, 'state' | 'isByClock'> {
  if (listed === null || here === null) return { state: 'new', isByClock: false };
  if (here.asWritten === null) return { state: 'unreadable', isByClock: false };
  if (here.asWritten === asWritten) return { state: 'same', isByClock: false };
  const known = (state: RestoreState): Pick<JobRow, 'state' | 'isByClock'> => ({ state, isByClock: false });
  if (here.earlier.includes(file.sha256) || here.earlier.includes(asWritten)) return known('here-newer');
  const before = [...listed.earlier, ...(file.digest === 'changed' ? [listed.sha256] : [])];
  if (before.includes(here.asWritten)) return known('zip-newer');
  if (before.some((digest) => here.earlier.includes(digest))) return known('both-changed');
  const [there_ms, here_ms] = [Date.parse(listed.changedAt), Date.parse(here.changedAt)];
  return { state: there_ms === here_ms ? 'both-changed' : there_ms > here_ms ? 'zip-newer' : 'here-newer', isByClock: true };
}

function sessionRow(file: WorkshopFile, { id, name, trainee, title, asWritten }: Extract<WorkshopFile['content'], { kind: 'session' }>, sessions: ReadonlyMap<string, string>): SessionRow {
  const there = sessions.get(id);
  const state = there === undefined ? 'new' : there === asWritten ? 'same' : 'other';
  return { kind: 'session', file: file.name, id, name, trainee, title, digest: file.digest, state, choices: state === 'new' ? ['add', 'skip'] : state === 'same' ? ['skip'] : ['copy', 'skip'], proposed: state === 'new' ? 'add' : 'skip' };
}
