import { MINUTES_PER_DAY } from '../base/localTime.ts';
import { CELSIUS_0_K } from '../base/units.ts';
import type { LaidChain, LaidTask } from './timeline.ts';
import { dryingBetween, type Pace } from './pace.ts';
import { dayOf, longestWork_min, type WorkingHours } from './workingHours.ts';

/** What is doubtful or impossible in laid days; each with the figures that it is said with. */
export type DayFinding = { readonly laid: LaidTask } & (
  /** A coat whose film the model did not see dry: only the stated wait counts. */
  | { readonly kind: 'no-model-time' }
  /** The work is longer than a working day, and runs past its end. */
  | { readonly kind: 'long-work'; readonly day_min: number }
  /** It begins after the latest start that the step before it allows. */
  | { readonly kind: 'past-latest'; readonly by_min: number }
  /** Its wait is not over before its latest next start: no start can meet both. */
  | { readonly kind: 'shut-window'; readonly by_min: number }
  /** Its wait goes through a night colder than the trade's window. */
  | { readonly kind: 'cold-night'; readonly least_K: number; readonly at: number; readonly limit_K: number }
  /** Sanding begins after less drying than the trade gives it, min at 70 °F. */
  | { readonly kind: 'early-sanding'; readonly dried_min: number }
  /** Masks go on a coat sooner than overnight. */
  | { readonly kind: 'early-mask'; readonly after_min: number }
  /** Masks lie longer than a day. */
  | { readonly kind: 'long-mask'; readonly on_min: number }
);

/** What the findings are held against. */
export interface FindingGround {
  readonly working: WorkingHours;
  readonly rulePace: Pace;
  readonly temperature_K: (minute: number) => number;
}

/** 60 °F, below which the FAA airframe handbook expects blushing. */
const COLD_NIGHT_K = (60 - 32) / 1.8 + CELSIUS_0_K;
/** Drying before sanding, min at 70 °F: 4 h after the aluminium coats, AC 43.13-1B 2-21h; said of every coat. */
const SANDING_WAIT_min = 240;
/** Drying under masks, min: overnight, common practice. A day is better, since solvent softens dope again. */
const MASK_WAIT_min = 720;
/** How long tape may sit, min: about a day, common practice. */
const MASK_ON_min = MINUTES_PER_DAY;
/** Temperatures of a night are looked at so often, min. */
const LOOK_min = 30;

/** What is doubtful in a chain as laid, in the order of its steps. */
export function dayFindings({ chain, laid }: LaidChain, ground: FindingGround): readonly DayFinding[] {
  return laid.flatMap((each, k) => {
    const isLast = k === chain.tasks.length - 1;
    const lastCoat = laid.slice(0, k).filter(({ task }) => task.isCoat).at(-1);
    return [
      ...workFindings(each, ground, isLast),
      ...waitFindings(each, ground),
      ...(lastCoat === undefined ? [] : coatedFindings(each, lastCoat, ground)),
      ...maskFindings(each, laid.slice(k + 1)),
    ];
  });
}

function workFindings(laid: LaidTask, { working }: FindingGround, isLast: boolean): DayFinding[] {
  const { task, start, latest } = laid;
  const day_min = longestWork_min(working);
  return [
    ...(task.work_min > day_min ? [{ kind: 'long-work', laid, day_min } as const] : []),
    ...(latest !== null && start > latest ? [{ kind: 'past-latest', laid, by_min: start - latest } as const] : []),
    ...(task.isCoat && task.modelWait_min === null && !isLast ? [{ kind: 'no-model-time', laid } as const] : []),
  ];
}

function waitFindings(laid: LaidTask, { working, temperature_K }: FindingGround): DayFinding[] {
  const { wait } = laid;
  if (wait === null) return [];
  const shut: DayFinding[] = wait.latest !== null && wait.until > wait.latest ? [{ kind: 'shut-window', laid, by_min: wait.until - wait.latest }] : [];
  const coldest = coldestUnwatched(wait.from, wait.until, working, temperature_K);
  return coldest === null || coldest.least_K >= COLD_NIGHT_K ? shut : [...shut, { kind: 'cold-night', laid, ...coldest, limit_K: COLD_NIGHT_K }];
}

/** The coldest time of a wait outside working hours; null where it has none. */
function coldestUnwatched(from: number, until: number, { from_min, to_min }: WorkingHours, temperature_K: (minute: number) => number): { readonly least_K: number; readonly at: number } | null {
  let least: { least_K: number; at: number } | null = null;
  // A wait of months in deep cold is told by its length; its first weeks say how cold it is.
  const end = Math.min(until, from + 60 * MINUTES_PER_DAY);
  for (let at = Math.ceil(from / LOOK_min) * LOOK_min; at <= end; at += LOOK_min) {
    const inDay = at - dayOf(at);
    if (inDay >= from_min && inDay <= to_min) continue;
    const now_K = temperature_K(at);
    if (least === null || now_K < least.least_K) least = { least_K: now_K, at };
  }
  return least;
}

function coatedFindings(laid: LaidTask, coat: LaidTask, { rulePace }: FindingGround): DayFinding[] {
  const { kind } = laid.task.planned.spec;
  if (kind === 'sand') {
    const dried_min = dryingBetween(rulePace, coat.end, laid.start);
    return dried_min < SANDING_WAIT_min - 1e-6 ? [{ kind: 'early-sanding', laid, dried_min }] : [];
  }
  if (kind !== 'mask') return [];
  const after_min = laid.start - coat.end;
  return after_min < MASK_WAIT_min ? [{ kind: 'early-mask', laid, after_min }] : [];
}

function maskFindings(laid: LaidTask, after: readonly LaidTask[]): DayFinding[] {
  if (laid.task.planned.spec.kind !== 'mask') return [];
  const off = after.find(({ task }) => task.planned.spec.kind === 'unmask');
  if (off === undefined) return [];
  const on_min = off.start - laid.end;
  return on_min > MASK_ON_min ? [{ kind: 'long-mask', laid, on_min }] : [];
}
