import { foundWords, limitWords, shown, shownPercent, type CheckCode, type JudgedSurvey, type RuleCheck, type SurveyAnswer, type UnitSystem } from '../../../sim/index.ts';
import type { PlottedLimit } from '../../charts/readingsPlot.ts';

/** A check as a row of the table. */
export interface CheckRow {
  readonly code: CheckCode;
  readonly asks: string;
  readonly found: string;
  readonly limit: string;
  readonly answer: string;
}

/** What each check holds to its limit. */
const CHECK_NAMES: Readonly<Record<CheckCode, string>> = {
  'mean-low': 'Mean of all readings, at least', 'mean-high': 'Mean of all readings, at most',
  'reading-low': 'Every reading, at least', 'reading-high': 'Every reading, at most',
  'low-share': 'Share of low readings', spread: 'Spread, of the mean',
  'spot-low': 'Every spot, at least', 'spot-high': 'Every spot, at most',
  'area-low': 'Every area, at least', 'area-high': 'Every area, at most',
};

const ANSWERS: Readonly<Record<SurveyAnswer, string>> = { pass: '✓ holds', fail: '✗ does not hold', undecided: '? open' };

/** The checks, the one that decides first. */
export function checkRows({ checks }: JudgedSurvey, system: UnitSystem): CheckRow[] {
  return checks.map((check) => ({
    code: check.code,
    asks: check.where === null ? CHECK_NAMES[check.code] : `${CHECK_NAMES[check.code]} (${check.where})`,
    found: foundText(check, system),
    limit: limitText(check, system),
    answer: ANSWERS[check.answer],
  }));
}

function isShare({ code }: RuleCheck): boolean {
  return code === 'low-share' || code === 'spread';
}

function foundText(check: RuleCheck, system: UnitSystem): string {
  const [low, high] = check.found;
  if (!isShare(check)) return foundWords(check.found, check.limit, system);
  return low === high ? shownPercent(low) : `${shownPercent(low)} to ${shownPercent(high)}`;
}

function limitText(check: RuleCheck, system: UnitSystem): string {
  return isShare(check) ? `${check.includesLimit ? 'at most' : 'fewer than'} ${shownPercent(check.limit)}` : limitWords(check.limit, system);
}

/** Mean, extremes and scatter of all readings, and the interval of the mean. */
export function figureSentences({ figures }: JudgedSurvey, system: UnitSystem): string[] {
  const film = (value_m: number): string => shown(value_m, 'film', system);
  const { count, mean_m, least_m, most_m, deviation_m, meanInterval_m } = figures;
  if (count === 0) return [];
  return [
    `Mean ${film(mean_m)} dry; least ${film(least_m)}, most ${film(most_m)}${count > 1 ? `, standard deviation ${film(deviation_m)}` : ''}.`,
    ...(meanInterval_m === null ? [] : [`The mean of the whole film lies between ${film(meanInterval_m[0])} and ${film(meanInterval_m[1])} (95 %).`]),
  ];
}

/** Places in the survey of the readings that decide the answer: of the checks that give it. */
export function decidingReadings({ answer, checks }: JudgedSurvey): number[] {
  const deciding = answer === 'pass' ? checks.slice(0, 1) : checks.filter((check) => check.answer === answer);
  return [...new Set(deciding.flatMap(({ readings }) => readings))].sort((a, b) => a - b);
}

/** Limits of films for the plot, each with a letter; like limits share one. */
export function plotLimits({ checks }: JudgedSurvey, system: UnitSystem): PlottedLimit[] {
  const films = checks.filter((check) => !isShare(check)).sort((a, b) => a.limit - b.limit);
  const groups: RuleCheck[][] = [];
  for (const check of films) {
    const last = groups.at(-1);
    if (last?.[0]?.limit === check.limit) last.push(check);
    else groups.push([check]);
  }
  return groups.map((group, k) => {
    const [first] = group as [RuleCheck];
    return { value: first.limit, letter: String.fromCharCode(65 + k), words: `${limitText(first, system)}: ${group.map(({ code }) => CHECK_NAMES[code].toLowerCase()).join('; ')}` };
  });
}
