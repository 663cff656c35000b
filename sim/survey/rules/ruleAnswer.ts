import type { GroupMean, Grouping, RuleCheck } from '../judgedSurvey.ts';
import type { FilmReading } from '../filmReading.ts';

/** What a rule says of the readings; checks in the rule's own order. */
export interface RuleAnswer {
  readonly checks: readonly RuleCheck[];
  readonly spots: readonly GroupMean[];
  readonly areas: readonly GroupMean[];
  readonly grouping: Grouping | null;
  /** After the rule's own correction. */
  readonly readings: readonly FilmReading[];
}

/** The answer of a rule that asks nothing of spots and areas. */
export function withoutSpots(checks: readonly RuleCheck[], readings: readonly FilmReading[]): RuleAnswer {
  return { checks, spots: [], areas: [], grouping: null, readings };
}
