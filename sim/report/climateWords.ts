import type { AirAnswer } from '../air/airAnswer.ts';
import type { ClimateLimit, ClimateRule, ClimateVerdictWord } from '../air/climateRules.ts';
import type { ClimateReason, ClimateVerdict, RuleVerdict } from '../air/climateVerdict.ts';
import { shownPercent, shownTemperature, shownTemperatureStep, type UnitSystem } from './units.ts';

/** The plain verdicts as read. */
export const CLIMATE_WORDS: Readonly<Record<ClimateVerdictWord | 'unknown', string>> = {
  go: 'Go', care: 'Go with care', wait: 'Wait', unknown: 'Not known',
};

/** How well the source of a rule is known. */
export const CLIMATE_MARK_WORDS: Readonly<Record<ClimateRule['mark'], string>> = {
  read: 'read in the source or a copy of it',
  quoted: 'known from others that quote it',
  memory: 'from memory, not read',
  ours: 'this tool’s own choice',
};

/** Said wherever a verdict on the air stands. */
export const CLIMATE_STATEMENT = 'The verdict is advice for planning, not a clearance. The data sheet of the finish, where it says otherwise, goes first.';

/** A rule in its own terms: `air from 65 to 75 °F; humidity below 65 %`. */
export function ruleWords(rule: ClimateRule, system: UnitSystem): string {
  return rule.limits.map((limit) => {
    const words = limitWords(limit, system);
    return rule.id === 'together' ? `${words} (else ${limit.beyond})` : words;
  }).join('; ');
}

function limitWords(limit: ClimateLimit, system: UnitSystem): string {
  const { of, low, high } = limit;
  if (of === 'temperature') return `air from ${edge(low ?? 0, system)} to ${edge(high ?? 0, system)}`;
  if (of === 'humidity') {
    const most = `${limit.highExcluded === true ? 'below' : 'at most'} ${shownPercent(high ?? 1)}`;
    return low === undefined ? `humidity ${most}` : `humidity from ${shownPercent(low)} to ${shownPercent(high ?? 1)}`;
  }
  const name = of === 'surfaceMargin' ? 'surface' : 'wet film';
  return low === 0 ? `${name} not below the dew point (else wait)` : `${name} at least ${whole(shownTemperatureStep(low ?? 0, system))} above the dew point${of === 'blushMargin' ? ' (else care)' : ''}`;
}

/** What one rule says: `Wait: the air, 12.0 °C, is colder than 15.6 °C`. */
export function ruleVerdictWords({ rule, verdict, reasons }: RuleVerdict, system: UnitSystem): string {
  if (verdict === 'unknown') return 'Not known: the part’s surface was not measured.';
  if (reasons.length === 0) return rule.id === 'circular' ? 'Go: inside what it calls ideal.' : 'Go: inside its limits.';
  return `${CLIMATE_WORDS[verdict]}: ${joined(reasons, system)}.`;
}

/** A limit passed, as the part of a sentence. */
export function reasonWords(reason: ClimateReason, system: UnitSystem): string {
  const { of, is, value, limit, excluded } = reason;
  if (of === 'temperature') return `the air, ${shownTemperature(value, system)}, is ${is === 'low' ? 'colder' : 'warmer'} than ${edge(limit, system)}`;
  if (of === 'humidity') return `the humidity, ${shownPercent(value)}, is ${is === 'low' ? 'below' : excluded ? 'not below' : 'above'} ${shownPercent(limit)}`;
  if (of === 'surfaceMargin') {
    return value < 0
      ? `the surface is ${shownTemperatureStep(-value, system)} below the dew point, so water stands on it`
      : `the surface is only ${shownTemperatureStep(value, system)} above the dew point, not ${whole(shownTemperatureStep(limit, system))}`;
  }
  return value < 0
    ? `the wet film falls ${shownTemperatureStep(-value, system)} below the dew point, so it can blush`
    : `the wet film stays only ${shownTemperatureStep(value, system)} above the dew point`;
}

/** The plain verdict with its reasons, as one sentence. */
export function climateSentence(verdict: ClimateVerdict, answer: AirAnswer, system: UnitSystem): string {
  const word = CLIMATE_WORDS[verdict.verdict];
  if (verdict.reasons.length > 0) return `${word}: ${joined(verdict.reasons, system)}.`;
  const surface = verdict.surfaceMargin_K === null ? '' : `, the surface ${shownTemperatureStep(verdict.surfaceMargin_K, system)}`;
  return `${word}: ${shownTemperature(answer.air.temperature_K, system)} and ${shownPercent(answer.air.relativeHumidityFraction)} humidity are within all that ${openRules(verdict) ? 'could be checked' : 'count'}, and the wet film stays ${shownTemperatureStep(answer.blushMargin_K, system)}${surface} above the dew point.`;
}

/** Whether a rule that counts could not be judged: what it asks for was not measured. */
function openRules({ rules }: ClimateVerdict): boolean {
  return rules.some(({ rule, verdict }) => rule.counts && verdict === 'unknown');
}

/** What the surface must be where nobody has measured it, as a sentence; null where it was. */
export function surfaceSentence({ surface_K, rules }: ClimateVerdict, { air }: AirAnswer, system: UnitSystem): string | null {
  const least_K = rules.flatMap(({ rule }) => rule.limits).find(({ of }) => of === 'surfaceMargin')?.low;
  if (surface_K !== null || least_K === undefined) return null;
  return `The part’s surface was not measured: it must be ${shownTemperature(air.dewPoint_K + least_K, system)} or warmer, ${whole(shownTemperatureStep(least_K, system))} above the dew point.`;
}

/** Reasons hold commas of their own. */
function joined(reasons: readonly ClimateReason[], system: UnitSystem): string {
  return reasons.map((reason) => reasonWords(reason, system)).join('; ');
}

/** An edge of a rule, without a bare zero behind the point. */
function edge(kelvin: number, system: UnitSystem): string {
  return whole(shownTemperature(kelvin, system));
}

function whole(shown: string): string {
  return shown.replace('.0 ', ' ');
}
