import { dryingFactor, ruleDryingRatio } from '../../air/dryingFactor.ts';
import { CrosscoatError } from '../../base/errors.ts';
import { MINUTES_PER_DAY, minutesOf } from '../../base/localTime.ts';
import type { Job } from '../../job/schema.ts';
import { dayFindings } from '../../scheme/dayFindings.ts';
import { dayTotals, type DayHour, type DayPlan } from '../../scheme/dayPlan.ts';
import { dayChain, type DayChain, type DayTask } from '../../scheme/dayTask.ts';
import { layLate, shiftsOf } from '../../scheme/lateTimeline.ts';
import type { Pace } from '../../scheme/pace.ts';
import type { PlannedScheme } from '../../scheme/planned.ts';
import { layTimeline, MOST_DAYS, type Timeline, type TimelineSetting } from '../../scheme/timeline.ts';
import { dayOf, fitsHours, type WorkingHours } from '../../scheme/workingHours.ts';
import { planAir, type PlanAir } from './daysAir.ts';
import { daysVerdict, facesOf, mayBeginBy, nextWet, type AirWord } from './daysVerdict.ts';

/** Working hours where the job states none. Assumed: the schema's own usual ones. */
const USUAL_HOURS: WorkingHours = { from_min: 8 * 60, to_min: 18 * 60, weekends: true };
/** Waits are followed so long after the last day on which a start is looked for. */
const WAIT_DAYS = 30;
const HOUR_min = 60;

/** Schemes with what they are laid through the days by: made once, then laid as often as something begins late. */
export interface DaysGround {
  readonly chains: readonly DayChain[];
  readonly setting: TimelineSetting;
  readonly air: PlanAir;
  readonly wordAt: (task: DayTask, minute: number) => AirWord;
  readonly base: Timeline;
}

/**
 * Lays schemes of a job through its days as planned: waits by the hourly air, all work in working hours, coats and tapes set in dope only in air
 * that allows them, the steps of one scheme in the waits of another (`layTimeline`).
 * @param plans the job's schemes worked out; those that share the crew.
 * @param start local time such as `2026-05-04T08:00`, in place of the job's.
 * @throws CrosscoatError `not-found` where no start is known, `time` for one that is none; what `planAir` throws.
 */
export function groundDays(job: Job, plans: readonly PlannedScheme[], start?: string): DaysGround {
  const begin = startOf(job, start);
  const chains = plans.map(dayChain);
  const end = begin + (MOST_DAYS + WAIT_DAYS) * MINUTES_PER_DAY;
  const air = planAir(job, begin, end);
  const wordAt = daysVerdict(job, air);
  const nodes = air.nodes(begin, end);
  const setting: TimelineSetting = {
    start: begin,
    working: workingOf(job),
    mayBegin: mayBeginBy(wordAt),
    rulePace: paceBy(air, nodes, (minute) => 1 / ruleDryingRatio(air.at(minute).temperature_K)),
    modelPace: modelPaces(job, plans, air, nodes),
  };
  return { chains, setting, air, wordAt, base: layTimeline(chains, setting) };
}

/** The plan of the days where some tasks begin late. @param late minutes after the planned start, by task; 0 or more. */
export function planDays(job: Job, ground: DaysGround, late: ReadonlyMap<string, number> = new Map()): DayPlan {
  const { base, setting, air } = ground;
  const timeline = late.size === 0 ? base : layLate(base, setting, late);
  const temperature_K = (minute: number): number => air.at(minute).temperature_K;
  const lastBegin = Math.max(base.ready, timeline.ready);
  return {
    working: setting.working,
    base,
    timeline,
    late,
    shifts: timeline === base ? [] : shiftsOf(base, timeline),
    findings: timeline.chains.flatMap((chain) => dayFindings(chain, { working: setting.working, rulePace: setting.rulePace, temperature_K })),
    air: planAir(job, base.start, lastBegin).kind,
    temperature_K,
    factorAt: (minute) => ruleDryingRatio(temperature_K(minute)),
    hours: timeline.chains.map(({ chain, laid }) => hoursOf(chain, new Map(laid.map(({ task, start }) => [task.id, start])), ground)),
    totals: dayTotals(timeline),
  };
}

function startOf({ working, hours = [] }: Job, asked: string | undefined): number {
  if (asked !== undefined) return minutesOf(asked);
  if (working !== undefined) return minutesOf(working.start, { pointer: '/working/start' });
  const first = hours[0];
  if (first !== undefined) return dayOf(minutesOf(first.at, { pointer: '/hours/0/at' })) + USUAL_HOURS.from_min;
  throw new CrosscoatError('not-found', 'job: neither working hours nor hourly air say when the first day is; give the start, such as 2026-05-04T08:00', { pointer: '/working' });
}

function workingOf({ working }: Job): WorkingHours {
  if (working === undefined) return USUAL_HOURS;
  const clock = (text: string): number => Number(text.slice(0, 2)) * HOUR_min + Number(text.slice(3));
  return { from_min: clock(working.from), to_min: clock(working.to), weekends: working.weekends };
}

/** A pace at the air's nodes, each value worked out once. */
function paceBy(air: PlanAir, nodes: readonly number[], rateAt: (minute: number) => number): Pace {
  const known = new Map<number, number>();
  return {
    minutes: nodes,
    rateAt: (place) => {
      const minute = air.known(nodes[place] as number);
      const rate = known.get(minute) ?? rateAt(minute);
      known.set(minute, rate);
      return rate;
    },
  };
}

/**
 * The model's pace of each coat: the first evaporation of its mix in the air of the hour over that in the air that its scheme was
 * worked out in, on a straight line of its logarithm between the hours. It knows nothing of how diffusion in the set film answers to
 * the air, which the model's own time has in it for the one air only.
 */
function modelPaces(job: Job, plans: readonly PlannedScheme[], air: PlanAir, nodes: readonly number[]): (task: DayTask) => Pace {
  const paces = new Map<string, Pace>();
  return ({ planned: { coat }, schemeId }) => {
    const key = coat === null ? '' : `${schemeId}/${coat.mixId ?? `coat:${coat.coatId ?? ''}`}`;
    const known = paces.get(key);
    if (known !== undefined) return known;
    const faces = facesOf(job, schemeId);
    const room = plans.find(({ scheme }) => scheme.id === schemeId)?.air;
    const ratio = (minute: number): number => (coat === null ? 1 : dryingFactor(air.at(minute), coat.mix.solvents, faces).modelRatio);
    const own = coat === null || room === undefined ? 1 : dryingFactor(room, coat.mix.solvents, faces).modelRatio;
    const pace = paceBy(air, nodes, (minute) => own / ratio(minute));
    paces.set(key, pace);
    return pace;
  };
}

/** Working hours of a chain until its last wet work has begun, each with the air's word on what is next of it. */
function hoursOf(chain: DayChain, starts: ReadonlyMap<string, number>, { base, setting, wordAt }: DaysGround): DayHour[] {
  const hours: DayHour[] = [];
  const until = Math.max(base.start, ...starts.values());
  for (let minute = Math.floor(base.start / HOUR_min) * HOUR_min; minute <= until; minute += HOUR_min) {
    const task = fitsHours(setting.working, minute, HOUR_min) ? nextWet(chain, starts, minute) : null;
    if (task !== null) hours.push({ minute, ...wordAt(task, minute) });
  }
  return hours;
}
