import { batch, computed, effect, signal } from '@preact/signals';
import { daysCalendar, groundDays, localTimeOf, minutesOf, planDays, type DayPlan, type DaysGround, type Job, type PlannedScheme, type WorkingSpec } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { changeJob } from '../document.ts';
import { latestOnly } from '../latest.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { schemeStage } from './scheme.ts';
import { schemePlan, schemeWorker } from './schemePlan.ts';
import { whileWorking } from '../whileWorking.ts';

/** Parts of a job that the days are laid by and no scheme is worked out from. */
const NOT_PLANNED: ReadonlySet<string> = new Set(['working', 'hours']);
/** The countdown moves so often, ms. */
const TICK_ms = 20_000;

/** What the sheet of the days shows and nothing keeps: a late begin is tried, not stated. */
export const daysSheet = {
  /** Minutes late by task. */
  late: signal<ReadonlyMap<string, number>>(new Map()),
  /** Task whose next step is counted down; empty: none. */
  chosen: signal(''),
  /** Schemes beside the shown one, by id. */
  others: signal<ReadonlyMap<string, PlannedScheme>>(new Map()),
  working: signal(false),
  problem: signal<Problem | null>(null),
  /** The machine's wall clock, minutes of the model's local time. */
  now: signal(0),
};

/** All schemes of the job worked out, in its order; null until they are. */
const plans = computed<readonly PlannedScheme[] | null>(() => {
  const schemes = state.job.value.schemes ?? [];
  const shown = schemePlan.plan.value;
  const found = schemes.map(({ id }) => (shown?.scheme.id === id ? shown : daysSheet.others.value.get(id)));
  return found.length > 0 && found.every((plan) => plan !== undefined) ? found : null;
});

/** The days as planned, or why they cannot be laid. */
const ground = computed<{ readonly ground: DaysGround | null; readonly problem: Problem | null }>(() => {
  const [job, made] = [state.job.value, plans.value];
  if (made === null) return { ground: null, problem: null };
  try {
    return { ground: groundDays(job, made), problem: null };
  } catch (thrown) {
    return { ground: null, problem: problemOf('The days cannot be laid', thrown) };
  }
});

/** The days with what is tried late; null until the schemes are worked out. */
export const dayPlan = computed<DayPlan | null>(() => (ground.value.ground === null ? null : planDays(state.job.value, ground.value.ground, daysSheet.late.value)));

export const dayProblem = computed<Problem | null>(() => ground.value.problem ?? daysSheet.problem.value);

/** Keeps the other schemes in step with the job, and the clock going, while the sheet is shown. @returns a way to stop. */
export function followDays(): () => void {
  const work = latestOnly(workOthers);
  let before: Job | null = null;
  const stop = effect(() => {
    const [job, shown] = [state.job.value, schemePlan.plan.value?.scheme.id];
    if (before !== null && isPlannedAlike(before, job) && (job.schemes ?? []).every(({ id }) => id === shown || daysSheet.others.peek().has(id))) return;
    before = job;
    const ids = (job.schemes ?? []).map(({ id }) => id).filter((id) => id !== shown);
    if (shown !== undefined && ids.length > 0) work({ job, ids });
  });
  const tick = (): void => { daysSheet.now.value = nowMinute(); };
  tick();
  const clock = setInterval(tick, TICK_ms);
  return () => {
    stop();
    clearInterval(clock);
  };
}

async function workOthers({ job, ids }: { readonly job: Job; readonly ids: readonly string[] }): Promise<void> {
  await whileWorking(daysSheet, 'The other schemes could not be worked out', async () => {
    const made = new Map<string, PlannedScheme>();
    for (const id of ids) made.set(id, (await schemeWorker.ask('planScheme', { job, scheme: id })).plan);
    batch(() => {
      daysSheet.others.value = made;
      daysSheet.problem.value = null;
    });
  });
}

/** Whether two jobs differ at most in what no scheme is worked out from. */
function isPlannedAlike(before: Job, after: Job): boolean {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)].filter((key) => !NOT_PLANNED.has(key))) as Set<keyof Job>;
  return [...keys].every((key) => before[key] === after[key]);
}

/** Begins a task so much later than planned, as a trial. */
export function beginLate(id: string, minutes: number): void {
  const next = new Map(daysSheet.late.peek());
  if (minutes > 0) next.set(id, minutes);
  else next.delete(id);
  daysSheet.late.value = next;
}

/** The working hours stated, or the usual ones beginning tomorrow. */
export function workingNow({ working }: Job): WorkingSpec {
  return working ?? { start: `${localTimeOf(nowMinute() + 1440).slice(0, 10)}T08:00`, from: '08:00', to: '18:00', weekends: true };
}

/** Changes the working hours, undoable. @returns what is wrong with them, or null where they are taken. */
export function setWorking(changed: Partial<WorkingSpec>): string | null {
  const job = state.job.peek();
  const next = { ...workingNow(job), ...changed };
  if (!(next.from < next.to)) return `Work ends at ${next.to}, not after it begins at ${next.from}; give an end later on the same day`;
  try {
    minutesOf(next.start);
  } catch {
    return 'Give the day and the time of the first step';
  }
  changeJob('working hours', { ...job, working: next });
  return null;
}

/** Saves the days as a calendar file that the reader keeps. */
export async function saveCalendar(): Promise<void> {
  const plan = dayPlan.peek();
  if (plan === null) return;
  try {
    const job = state.job.peek();
    const text = await daysCalendar(plan, { jobName: job.name, stamp: `${new Date().toISOString().slice(0, 19)}Z` });
    download(new Blob([text], { type: 'text/calendar' }), 'days.ics');
  } catch (thrown) {
    schemeStage.problem.value = problemOf('The calendar was not saved', thrown);
  }
}

function nowMinute(): number {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return minutesOf(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}T${two(now.getHours())}:${two(now.getMinutes())}`);
}
