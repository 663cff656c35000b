import type { AirAnswer } from './airAnswer.ts';
import { CLIMATE_RULES, type ClimateLimit, type ClimateMeasure, type ClimateRule, type ClimateVerdictWord } from './climateRules.ts';

/** Sources print whole °F, which people read and type as 0.1 °C: 18.3 °C stands for 65 °F (18.33 °C). */
const EDGE_K = 0.05;
/** Going from humidity to moisture and back costs rounding only. */
const EDGE_HUMIDITY = 1e-6;

/** A limit that is passed: the measure's value and the edge, in SI (K; 0 to 1 for humidity). */
export interface ClimateReason {
  readonly of: ClimateMeasure;
  readonly is: 'low' | 'high';
  readonly value: number;
  readonly limit: number;
  /** The limit itself is already too much ("below 65 %"). */
  readonly excluded: boolean;
  readonly verdict: 'care' | 'wait';
}

/** What one rule says of the air. */
export interface RuleVerdict {
  readonly rule: ClimateRule;
  /** `unknown` where the rule asks for something that was not given. */
  readonly verdict: ClimateVerdictWord | 'unknown';
  /** The limits passed, worst first; none for go. */
  readonly reasons: readonly ClimateReason[];
}

/** What all rules say of the air, and the plain verdict. */
export interface ClimateVerdict {
  readonly verdict: ClimateVerdictWord;
  readonly rules: readonly RuleVerdict[];
  /** Why it is not a go: the limits passed of the rules that count, worst first, each measure's worst only. */
  readonly reasons: readonly ClimateReason[];
  readonly surface_K: number | null;
  /** Surface less dew point, K; null where no surface was given. */
  readonly surfaceMargin_K: number | null;
  /** The warmest room that may be asked for, K: the least of 90 °F and what the job allows. */
  readonly ceiling_K: number;
}

/**
 * Holds the air, the part's surface and the model's film against every rule, each by its own words.
 * The plain verdict is the worst of the rules that count (`CLIMATE_RULES`), and wait in air warmer
 * than the ceiling. An advice for planning, not a clearance.
 * @param surface_K temperature of the part; null where it was not measured: that rule is `unknown`
 * and does not count.
 */
export function climateVerdict(answer: Pick<AirAnswer, 'air' | 'blushMargin_K' | 'ceiling_K'>, surface_K: number | null): ClimateVerdict {
  const surfaceMargin_K = surface_K === null ? null : surface_K - answer.air.dewPoint_K;
  const measures: Measures = {
    temperature: answer.air.temperature_K,
    humidity: answer.air.relativeHumidityFraction,
    surfaceMargin: surfaceMargin_K,
    blushMargin: answer.blushMargin_K,
  };
  const rules = CLIMATE_RULES.map((rule) => ruleVerdict(rule, measures));
  const counted = rules.filter(({ rule }) => rule.counts).flatMap(({ reasons }) => reasons);
  const ceiling = passed({ of: 'temperature', high: answer.ceiling_K, beyond: 'wait' }, measures);
  const reasons = worstOfEach([...counted, ...(ceiling === null ? [] : [ceiling])]);
  return { verdict: reasons[0]?.verdict ?? 'go', rules, reasons, surface_K, surfaceMargin_K, ceiling_K: answer.ceiling_K };
}

type Measures = Readonly<Record<ClimateMeasure, number | null>>;

function ruleVerdict(rule: ClimateRule, measures: Measures): RuleVerdict {
  const reasons = worstOfEach(rule.limits.flatMap((limit) => passed(limit, measures) ?? []));
  const isLacking = rule.limits.some(({ of }) => measures[of] === null);
  return { rule, verdict: reasons[0]?.verdict ?? (isLacking ? 'unknown' : 'go'), reasons };
}

/** The limit as passed, or null; a measure that is not known passes none. */
function passed({ of, low = -Infinity, high = Infinity, highExcluded, beyond }: ClimateLimit, measures: Measures): ClimateReason | null {
  const value = measures[of];
  if (value === null) return null;
  // A margin of 0 is a physical edge, not a printed one.
  const slack = of === 'temperature' ? EDGE_K : of === 'humidity' ? EDGE_HUMIDITY : 0;
  if (!(value >= low - slack)) return { of, is: 'low', value, limit: low, excluded: false, verdict: beyond };
  const isOver = highExcluded === true ? value >= high - slack : value > high + slack;
  return isOver ? { of, is: 'high', value, limit: high, excluded: highExcluded === true, verdict: beyond } : null;
}

/** Waits first, and of two limits of one measure the worse. */
function worstOfEach(reasons: readonly ClimateReason[]): ClimateReason[] {
  const ordered = [...reasons.filter(({ verdict }) => verdict === 'wait'), ...reasons.filter(({ verdict }) => verdict === 'care')];
  return ordered.filter(({ of, is }, i) => ordered.findIndex((other) => other.of === of && other.is === is) === i);
}
