import {
  CrosscoatError, daysCalendar, daysJson, daysText, groundDays, planDays, planScheme,
  type DayPlan, type DaysGround, type Job, type UnitSystem,
} from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { quantityOf } from './optionValues.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat days` as commander gives them. */
export interface DaysOptions {
  readonly start?: string;
  readonly late: readonly string[];
  readonly ics?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** A step may be asked to begin later by up to so much, min: the days that are planned. */
const MOST_LATE_min = 60 * 24 * 60;

/** Lays all schemes of a job through its days. @returns the exit code. */
export async function days(io: Io, jobPath: string, options: DaysOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const ground = groundDays(job, planAll(job), options.start);
  const plan = planDays(job, ground, lateSteps(ground, options.late));
  const notes = options.ics === undefined ? [] : [await writeCalendar(io, options.ics, job, plan)];
  if (options.json === true) await io.out(`${JSON.stringify({ ...daysJson(plan), notices: notes }, null, 2)}\n`);
  else await io.out([daysText(plan, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  return EXIT.done;
}

function planAll(job: Job): ReturnType<typeof planScheme>[] {
  const schemes = job.schemes ?? [];
  return schemes.length === 0 ? [planScheme(job)] : schemes.map(({ id }) => planScheme(job, id));
}

/** `step=2h`, or `scheme/step=2h` where two schemes have a step of that id. @throws `not-found`, `unit`, `range`. */
function lateSteps({ chains }: DaysGround, texts: readonly string[]): Map<string, number> {
  const ids = chains.flatMap(({ tasks }) => tasks.map(({ id }) => id));
  return new Map(texts.map((text) => {
    const cut = text.lastIndexOf('=');
    if (cut < 1) throw new CrosscoatError('unit', `--late = "${text}" has no step and time; give them as clear-3=2h`);
    const [step, time] = [text.slice(0, cut), text.slice(cut + 1)];
    const found = ids.filter((id) => id === step || id.slice(id.indexOf('/') + 1) === step);
    const [id] = found;
    if (id === undefined) throw new CrosscoatError('not-found', `--late: step "${step}" is not in the job (it has ${ids.join(', ')}); give one of these`, { pointer: '/schemes' });
    if (found.length > 1) throw new CrosscoatError('not-found', `--late: step "${step}" is in several schemes (${found.join(', ')}); give one of these`, { pointer: '/schemes' });
    const late_min = Math.round(quantityOf('--late', time, ['time', 's', 'clear-3=2h']) / 60);
    if (late_min >= 0 && late_min <= MOST_LATE_min) return [id, late_min];
    throw new CrosscoatError('range', `--late: ${time} is not from 0 to ${MOST_LATE_min / 60} h; a step is begun late, never sooner than its film allows`);
  }));
}

async function writeCalendar(io: Io, path: string, job: Job, plan: DayPlan): Promise<string> {
  const stamp = `${new Date().toISOString().slice(0, 19)}Z`;
  await writeFile(io, path, [await daysCalendar(plan, { jobName: job.name, stamp })]);
  return `${path}: one entry for each step and each wait, in the shop's own time`;
}
