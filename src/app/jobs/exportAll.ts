import { signal } from '@preact/signals';
import { counted, parseJob, parseSession, serialiseJob, USUAL_RUBRIC } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import type { JobShelf } from '../../storage/jobs.ts';
import { openSessions, type SessionShelf } from '../../storage/sessions.ts';
import { packWorkshop, type PackedJob, type PackedSession } from '../../workshop/packWorkshop.ts';
import { keepNow } from '../keeping/openKeptJob.ts';
import { rubric } from '../practice/practice.ts';
import { state } from '../state.ts';
import { jobs, rememberDigests, withShelf } from './jobs.ts';
import { awake } from './awake.ts';

/** How far an export has come, in words; empty while none is under way. */
export const exporting = signal('');

/** Saves all jobs and practice sessions as one zip that the reader keeps. */
export async function exportAll(): Promise<void> {
  await withShelf('Nothing was exported', async (shelf) => {
    await keepNow();
    const sessions = await openSessions();
    try {
      const unread: string[] = [];
      const made = new Date();
      const { pieces, manifest } = await packWorkshop({
        made,
        jobs: keptJobs(shelf, unread),
        sessions: keptSessionsOf(sessions, unread),
        rubric: rubric.peek() === USUAL_RUBRIC ? null : rubric.peek(),
        preferences: { units: state.units.peek(), who: state.log.peek().who.slice(0, 200) },
      });
      download(new Blob(pieces, { type: 'application/zip' }), `crosscoat-workshop-${made.toISOString().slice(0, 10)}.zip`);
      rememberDigests(new Map(manifest.jobs.map(({ id, sha256 }) => [id, [sha256]])));
      const left = unread.length === 0 ? '' : ` Not in it, since they cannot be read: ${unread.join(', ')}.`;
      jobs.told.value = `Exported ${counted(manifest.jobs.length, 'job')} and ${counted(manifest.sessions.length, 'practice session')} as one zip. Put it where a broken computer does not take it along.${left}`;
    } finally {
      sessions.close();
      exporting.value = '';
    }
  });
}

/** Every job, one after another. One that no longer reads goes along as it is kept; one that does not come out of storage is told. */
async function* keptJobs(shelf: JobShelf, unread: string[]): AsyncGenerator<PackedJob> {
  const heads = await shelf.list();
  for (const [i, { id, name, changedAt, archived }] of heads.entries()) {
    exporting.value = `Exporting job ${i + 1} of ${heads.length}`;
    await awake();
    const kept = await shelf.read(id).catch(() => void unread.push(`“${name}”`));
    if (kept === null || kept === undefined) continue;
    yield { id, name, text: textOf(kept.job), changedAt, archived, earlier: state.jobs.peek().earlier[id] ?? [] };
  }
}

function textOf(kept: unknown): string {
  try {
    return serialiseJob(parseJob(kept).job);
  } catch {
    return `${JSON.stringify(kept, null, 2)}\n`;
  }
}

async function* keptSessionsOf(shelf: SessionShelf, unread: string[]): AsyncGenerator<PackedSession> {
  const listed = await shelf.list();
  for (const [i, { session: head }] of listed.entries()) {
    exporting.value = `Exporting session ${i + 1} of ${listed.length}`;
    await awake();
    const kept = await shelf.get(head.id);
    if (kept === null) continue;
    try {
      yield { ...kept, session: parseSession(kept.session) };
    } catch {
      unread.push(`session ${head.name === '' ? head.id : head.name}`);
    }
  }
}
