import type { FilmReading } from './filmReading.ts';
import type { CheckCode, RuleCheck, SurveyAnswer } from './judgedSurvey.ts';

/**
 * Room for the rounding of double arithmetic alone, as a share of the limit: 80 µm is 80 % of 100 µm, and 63.5 µm is 2.5 mil. On the
 * way from the typed decimals there are at most some ten roundings of 2^-53 each (unit, correction, compensated sum, division; share
 * times nominal), below 2^-49; taken eight times. No gauge's last digit comes near it.
 */
const ROUNDING = 2 ** -46;

/** A bound that films or shares are held to. */
export interface Limit {
  readonly value: number;
  readonly includesLimit: boolean;
  /** Size of what was subtracted on the way, where that is larger than the limit. */
  readonly scale?: number;
}

/** What was found, for combs at the low teeth and at the high ones. */
export type Bounds = readonly [low: number, high: number];

/** Whether what was found reaches a least value, or cannot be told. */
export function answerAtLeast([low, high]: Bounds, limit: Limit): SurveyAnswer {
  if (reaches(low, limit)) return 'pass';
  return reaches(high, limit) ? 'undecided' : 'fail';
}

/** Whether what was found stays within a most value, or cannot be told. */
export function answerAtMost([low, high]: Bounds, limit: Limit): SurveyAnswer {
  const turned = { ...limit, value: -limit.value };
  return answerAtLeast([-high, -low], turned);
}

/** Whether a figure reaches a least value. NaN reaches nothing. */
function reaches(figure: number, { value, includesLimit, scale = 0 }: Limit): boolean {
  const room = ROUNDING * Math.max(Math.abs(value), scale);
  return includesLimit ? figure >= value - room : figure > value + room;
}

/** The worst answer of several: one fail fails, one undecided leaves it open. `pass` for none. */
export function worstAnswer(answers: readonly SurveyAnswer[]): SurveyAnswer {
  if (answers.includes('fail')) return 'fail';
  return answers.includes('undecided') ? 'undecided' : 'pass';
}

/** A film found that is to reach, or to stay within, a limit. */
export interface AskedOfAll {
  readonly code: CheckCode;
  readonly side: 'least' | 'most';
  readonly found: Bounds;
  readonly limit: Limit;
  readonly readings: readonly FilmReading[];
}

/** A check of a figure of all readings; those beyond the limit decide it, else the nearest to it. */
export function checkOfAll({ code, side, found, limit, readings }: AskedOfAll): RuleCheck {
  const answer = (side === 'least' ? answerAtLeast : answerAtMost)(found, limit);
  return { code, answer, found, limit: limit.value, includesLimit: limit.includesLimit, readings: deciding(readings, side, limit), where: null };
}

/** A check that every reading must pass. */
export function checkOfEach(asked: Omit<AskedOfAll, 'found'>): RuleCheck {
  const { readings, side } = asked;
  return checkOfAll({ ...asked, found: side === 'least' ? leastOf(readings) : mostOf(readings) });
}

/** The least of several, at the low bounds and at the high ones. */
function leastOf(readings: readonly FilmReading[]): Bounds {
  return readings.reduce<Bounds>(([low, high], each) => [Math.min(low, each.low_m), Math.min(high, each.high_m)], [Infinity, Infinity]);
}

function mostOf(readings: readonly FilmReading[]): Bounds {
  return readings.reduce<Bounds>(([low, high], each) => [Math.max(low, each.low_m), Math.max(high, each.high_m)], [-Infinity, -Infinity]);
}

/** Places of the readings beyond a limit; without any, of those that may be; without any, of the nearest to it. */
function deciding(readings: readonly FilmReading[], side: 'least' | 'most', limit: Limit): number[] {
  const test = side === 'least' ? answerAtLeast : answerAtMost;
  const answers = readings.map(({ low_m, high_m }) => test([low_m, high_m], limit));
  const worst = worstAnswer(answers);
  if (worst !== 'pass') return readings.flatMap(({ index }, i) => (answers[i] === worst ? [index] : []));
  const edge = side === 'least' ? leastOf(readings)[0] : mostOf(readings)[1];
  return readings.flatMap(({ index, low_m, high_m }) => ((side === 'least' ? low_m : high_m) === edge ? [index] : []));
}
