import type { RuleSpec } from '../job/schema.ts';
import { spotLimits } from '../materials/filmRules.ts';

/** The dry film that a rule lets no place fall below, m: of a reading, or of a spot; null where it has none. */
export function leastFilm_m(rule: RuleSpec): number | null {
  switch (rule.kind) {
    case 'mean-80':
    case 'ninety-ten':
      return (rule.nominal_um * rule.low_percent * 1e-6) / 100;
    case 'spots-areas':
      return spotLimits(rule).spotMin_m;
    case 'shop':
      return rule.eachMin_um === undefined ? null : rule.eachMin_um * 1e-6;
  }
}
