import { signal } from '@preact/signals';
import { parseJob, parseRubric, parseSession, type HandSample, type ListedSessionSpec, type Score } from '../../../sim/index.ts';
import type { JobShelf } from '../../storage/jobs.ts';
import { freshJobId } from '../../storage/freshJobId.ts';
import type { JobRow, RestoreChoice, RestoreRow, SessionRow } from '../../workshop/planRestore.ts';
import type { ReadWorkshop } from '../../workshop/readWorkshop.ts';
import { keepNow } from '../keeping/openKeptJob.ts';
import { namedAfter } from './newJobs.ts';
import { awake } from './awake.ts';
import { jobs, refresh, rememberDigests, withShelf } from './jobs.ts';
import { restorePlan, restoring, withSessions, type RestorePlan } from './restoreZip.ts';
import { setPrefs } from '../practice/practice.ts';
import { state } from '../state.ts';

/** What became of one row. */
export interface Restored {
  readonly name: string;
  readonly isDone: boolean;
  readonly words: string;
}

/** What was done, row by row; null before a restore. */
export const restored = signal<readonly Restored[] | null>(null);

/**
 * Does what the plan says, one file after another, each in one transaction: where it is cut off, every job is whole, as it was or as it
 * is in the zip. What does not work is told in its row, and the others go on.
 */
export async function restoreNow(): Promise<void> {
  const plan = restorePlan.peek();
  if (plan === null) return;
  const done: Restored[] = [];
  await withShelf('The restore stopped; what was done until then is listed', async (shelf) => {
    try {
      await keepNow();
      for (const [i, row] of plan.rows.entries()) {
        const choice = plan.choices[i] as RestoreChoice;
        if (choice === 'skip') continue;
        restoring.value = `Restoring ${i + 1} of ${plan.rows.length}`;
        await awake();
        done.push(await restoreRow(shelf, plan.read, row, choice));
      }
      await refresh(shelf);
      restorePlan.value = null;
    } finally {
      restoring.value = '';
      restored.value = done;
    }
  });
  const failed = done.filter(({ isDone }) => !isDone).length;
  jobs.told.value = `${done.length - failed} restored${failed === 0 ? '' : `, ${failed} not; each says why`}.`;
}

async function restoreRow(shelf: JobShelf, read: ReadWorkshop, row: RestoreRow, choice: RestoreChoice): Promise<Restored> {
  try {
    const words = row.kind === 'job' ? await restoreJob(shelf, read, row, choice) : await restoreSession(read, row, choice);
    return { name: nameOf(row), isDone: true, words };
  } catch (thrown) {
    return { name: nameOf(row), isDone: false, words: `Not restored: ${thrown instanceof Error ? thrown.message : String(thrown)}.` };
  }
}

/** How a row is called on the screen. */
export function nameOf(row: RestoreRow): string {
  return row.kind === 'job' ? row.name : [row.trainee, row.title, row.name].filter((part) => part !== '').join(', ');
}

async function restoreJob(shelf: JobShelf, read: ReadWorkshop, { file, listed, here, known }: JobRow, choice: RestoreChoice): Promise<string> {
  const { job } = parseJob(read.text(file), file);
  if (choice === 'replace' && here !== null) {
    const kept = await shelf.read(here.id);
    // Refused where it was changed since the plan was shown. Half-typed text of the old content has no place in the new.
    const { revision } = await shelf.write(here.id, job, here.revision, { drafts: {} });
    if (kept !== null) jobs.removed.value = [...jobs.removed.peek(), { ...kept, replacement: revision }];
    rememberDigests(new Map([[here.id, known]]));
    return 'Replaced.';
  }
  const archived = listed?.archived ?? false;
  if (choice === 'add') {
    const id = listed?.id ?? freshJobId();
    await shelf.create(job, { id, archived });
    rememberDigests(new Map([[id, known]]));
    return 'Added.';
  }
  const name = namedAfter(job.name, 'from the zip');
  await shelf.create({ ...job, name }, { archived });
  return `Added as “${name}”.`;
}

async function restoreSession(read: ReadWorkshop, { file, id }: SessionRow, choice: RestoreChoice): Promise<string> {
  const session = parseSession(read.text(file), file);
  const listed = read.manifest?.sessions.find((each) => each.id === id);
  const kept = { ...figuresOf(listed), keptAt: listed?.keptAt ?? new Date().toISOString() };
  await withSessions((shelf) => shelf.put({ ...kept, session: choice === 'copy' ? { ...session, id: freshJobId() } : session }));
  return choice === 'copy' ? 'Added as a copy.' : 'Added.';
}

const NO_WANDER = { mean: NaN, deviation: NaN, correlation_s: NaN, count: 0 };

/** Figures for lists, as the manifest has them; a session from a zip without one is marked when it is looked through. */
function figuresOf(listed: ListedSessionSpec | undefined): { readonly score: Score; readonly hand: HandSample } {
  if (listed === undefined) return { score: { total: NaN, rows: [], isPassed: false }, hand: { distance_m: NO_WANDER, across_m: NO_WANDER, speed: NO_WANDER, tilt_rad: NO_WANDER, overlap: NO_WANDER } };
  const { total, isPassed, rows, hand } = listed.figures;
  const wander = ({ mean, deviation, correlation_s, count }: typeof hand.speed): HandSample['speed'] => ({ mean: mean ?? NaN, deviation: deviation ?? NaN, correlation_s: correlation_s ?? NaN, count });
  return {
    score: { total: total ?? NaN, isPassed, rows: rows.map((row) => ({ ...row, limit: row.limit ?? NaN, none: row.none ?? NaN, mark: row.mark ?? NaN })) },
    hand: { distance_m: wander(hand.distance_m), across_m: wander(hand.across_m), speed: wander(hand.speed), tilt_rad: wander(hand.tilt_rad), overlap: wander(hand.overlap) },
  };
}

/** What the zip says beside jobs and sessions, to be taken by the reader's wish only. */
export function offered({ read }: RestorePlan): { readonly units: 'metric' | 'us' | null; readonly who: string | null; readonly rubric: string | null } {
  const { units, who } = read.manifest?.preferences ?? {};
  const rubric = read.files.find(({ content }) => content.kind === 'rubric');
  return {
    units: units === undefined || units === state.units.value ? null : units,
    who: who === undefined || who === '' || who === state.log.value.who ? null : who,
    rubric: rubric?.content.name ?? null,
  };
}

/** Takes units, writer's name and rubric of the zip. */
export function takeOffered(plan: RestorePlan): void {
  const { units, who } = offered(plan);
  if (units !== null) state.units.value = units;
  if (who !== null) state.log.value = { ...state.log.peek(), who };
  const rubric = plan.read.files.find(({ content }) => content.kind === 'rubric');
  if (rubric !== undefined) setPrefs({ rubric: parseRubric(plan.read.text(rubric.name), rubric.name) });
  jobs.told.value = 'Units, name and rubric of the zip are taken over.';
}
