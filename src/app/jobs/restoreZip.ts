import { signal } from '@preact/signals';
import { CrosscoatError, parseJob, parseSession, serialiseJob, serialiseSession, sha256Of } from '../../../sim/index.ts';
import { openSessions, type SessionShelf } from '../../storage/sessions.ts';
import type { JobShelf } from '../../storage/jobs.ts';
import { planRestore, type HereJob, type RestoreChoice, type RestoreRow } from '../../workshop/planRestore.ts';
import { readWorkshop, type ReadWorkshop } from '../../workshop/readWorkshop.ts';
import { signedIn } from '../../workshop/signedIn.ts';
import { ZIP_LIMITS } from '../../workshop/zipLimits.ts';
import { keepNow } from '../keeping/openKeptJob.ts';
import { state } from '../state.ts';
import { awake } from './awake.ts';
import { jobs, withShelf } from './jobs.ts';

/** A zip that was looked through, with what is chosen for each file; nothing of it is written yet. */
export interface RestorePlan {
  readonly file: string;
  readonly read: ReadWorkshop;
  readonly rows: readonly RestoreRow[];
  readonly choices: readonly RestoreChoice[];
}

/** The zip in hand; null where there is none. */
export const restorePlan = signal<RestorePlan | null>(null);
/** How far reading or restoring has come, in words. */
export const restoring = signal('');

/** Looks a zip through and plans; nothing is written. */
export async function lookIntoZip(file: File): Promise<void> {
  restorePlan.value = null;
  jobs.told.value = '';
  await withShelf(`${file.name} was not read; nothing was changed`, async (shelf) => {
    try {
      if (file.size > ZIP_LIMITS.zip) throw new CrosscoatError('limit', `${file.name} has ${Math.ceil(file.size / 1e6)} MB, more than ${ZIP_LIMITS.zip / 1e6} MB; give a zip that Crosscoat wrote`, { file: file.name });
      await keepNow();
      const read = await readWorkshop(new Uint8Array(await file.arrayBuffer()), file.name, (done, of) => {
        restoring.value = `Reading file ${done + 1} of ${of}`;
        return awake();
      });
      const rows = planRestore(read, await jobsHere(shelf, read), await sessionsHere(read));
      restorePlan.value = { file: file.name, read, rows, choices: rows.map(({ proposed }) => proposed) };
    } finally {
      restoring.value = '';
    }
  });
}

/** Chooses what is done with one row. */
export function chooseRestore(index: number, choice: RestoreChoice): void {
  const plan = restorePlan.peek();
  if (plan !== null) restorePlan.value = { ...plan, choices: plan.choices.map((each, i) => (i === index ? choice : each)) };
}

async function jobsHere(shelf: JobShelf, { manifest }: ReadWorkshop): Promise<ReadonlyMap<string, HereJob>> {
  const wanted = new Set(manifest?.jobs.map(({ id }) => id));
  const here = new Map<string, HereJob>();
  for (const { id, name, changedAt, revision } of await shelf.list()) {
    if (!wanted.has(id)) continue;
    restoring.value = `Comparing with “${name}”`;
    await awake();
    here.set(id, { id, name, changedAt, revision, earlier: state.jobs.peek().earlier[id] ?? [], ...(await readHere(shelf, id)) });
  }
  return here;
}

/** What comparing needs of a job that is here; one that does not read is compared with nothing. */
async function readHere(shelf: JobShelf, id: string): Promise<Pick<HereJob, 'asWritten' | 'signed'>> {
  try {
    const { job } = parseJob((await shelf.read(id))?.job);
    return { asWritten: sha256Of(serialiseJob(job)), signed: signedIn(job) };
  } catch {
    return { asWritten: null, signed: { entries: [], surveys: [] } };
  }
}

async function sessionsHere({ files }: ReadWorkshop): Promise<ReadonlyMap<string, string>> {
  const ids = files.flatMap(({ content }) => (content.kind === 'session' ? [content.id] : []));
  if (ids.length === 0) return new Map();
  return withSessions(async (shelf) => {
    const here = new Map<string, string>();
    for (const id of ids) {
      const kept = await shelf.get(id);
      if (kept !== null) here.set(id, digestOf(() => serialiseSession(parseSession(kept.session))) ?? '');
    }
    return here;
  });
}

/** Opens the sessions for one piece of work. */
export async function withSessions<T>(act: (shelf: SessionShelf) => Promise<T>): Promise<T> {
  const shelf = await openSessions();
  try {
    return await act(shelf);
  } finally {
    shelf.close();
  }
}

/** Null for what no longer reads. */
function digestOf(text: () => string): string | null {
  try {
    return sha256Of(text());
  } catch {
    return null;
  }
}
