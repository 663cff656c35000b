import type { FilmReading } from './filmReading.ts';
import type { CheckCode, RuleCheck, SurveyAnswer } from './judgedSurvey.ts';

/**
 * Room for the rounding of double arithmetic alone, as a share of the limit: 80 µm is 80 % of 100 µm, and 63.5 µm is 2.5 mil. On the
 * way from the typed decimals there are at most some ten roundings of 2^-53 each (unit, correction, compensated sum, division; share
 * times nominal), below 2^-49; taken eight times. A gauge's last digit is far coarser. What subtracting two large figures leaves is not
 * covered by it: weights and thicknesses before and after are rounded where they are subtracted (`filmReadings`).
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

/** Whether what was found, from a low bound to a high one, reaches a least value, or cannot be told. */
export function answerAtLeast(low: number, high: number, limit: Limit): SurveyAnswer {
  if (reaches(low, limit)) return 'pass';
  return reaches(high, limit) ? 'undecided' : 'fail';
}

/** Whether what was found stays within a most value, or cannot be told. */
export function answerAtMost(low: number, high: number, limit: Limit): SurveyAnswer {
  if (staysWithin(high, limit)) return 'pass';
  return staysWithin(low, limit) ? 'undecided' : 'fail';
}

/** Whether a figure reaches a least value. NaN reaches nothing. */
function reaches(figure: number, limit: Limit): boolean {
  return limit.includesLimit ? figure >= limit.value - roomOf(limit) : figure > limit.value + roomOf(limit);
}

function staysWithin(figure: number, limit: Limit): boolean {
  return limit.includesLimit ? figure <= limit.value + roomOf(limit) : figure < limit.value - roomOf(limit);
}

function roomOf({ value, scale = 0 }: Limit): number {
  return ROUNDING * Math.max(Math.abs(value), scale);
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
  const answer = (side === 'least' ? answerAtLeast : answerAtMost)(found[0], found[1], limit);
  return { code, answer, found, limit: limit.value, includesLimit: limit.includesLimit, readings: deciding(readings, side, limit), where: null };
}

/** A check that every reading must pass. */
export function checkOfEach(asked: Omit<AskedOfAll, 'found'>): RuleCheck {
  const { readings, side } = asked;
  return checkOfAll({ ...asked, found: side === 'least' ? leastOf(readings) : mostOf(readings) });
}

/** The least of several, at the low bounds and at the high ones. */
function leastOf(readings: readonly FilmReading[]): Bounds {
  let [low, high] = [Infinity, Infinity];
  for (const { low_m, high_m } of readings) {
    low = Math.min(low, low_m);
    high = Math.min(high, high_m);
  }
  return [low, high];
}

function mostOf(readings: readonly FilmReading[]): Bounds {
  let [low, high] = [-Infinity, -Infinity];
  for (const { low_m, high_m } of readings) {
    low = Math.max(low, low_m);
    high = Math.max(high, high_m);
  }
  return [low, high];
}

/** Places of the readings beyond a limit; without any, of those that may be; without any, of the nearest to it. */
function deciding(readings: readonly FilmReading[], side: 'least' | 'most', limit: Limit): number[] {
  const test = side === 'least' ? answerAtLeast : answerAtMost;
  const beyond: number[] = [];
  const perhaps: number[] = [];
  for (const { index, low_m, high_m } of readings) {
    const answer = test(low_m, high_m, limit);
    if (answer === 'fail') beyond.push(index);
    else if (answer === 'undecided') perhaps.push(index);
  }
  if (beyond.length > 0) return beyond;
  if (perhaps.length > 0) return perhaps;
  const edge = side === 'least' ? leastOf(readings)[0] : mostOf(readings)[1];
  return readings.filter(({ low_m, high_m }) => (side === 'least' ? low_m : high_m) === edge).map(({ index }) => index);
}
