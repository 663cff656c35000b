import type { RuleSpec } from '../../job/schema.ts';
import { metresOf } from '../../materials/filmRules.ts';
import type { FilmReading } from '../filmReading.ts';
import { checkOfEach } from '../limits.ts';
import { checkLowShare } from './lowShare.ts';
import { withoutSpots, type RuleAnswer } from './ruleAnswer.ts';

/**
 * The 90/10 rule of ships' coatings, for comparison: no reading below 90 % of the nominal film, and at most 10 % of the readings below
 * it (IMO resolution MSC.215(82), as quoted by others). It asks nothing of the mean and sets no maximum.
 */
export function judgeNinetyTen(rule: Extract<RuleSpec, { readonly kind: 'ninety-ten' }>, readings: readonly FilmReading[]): RuleAnswer {
  const nominal = { value: metresOf(rule.nominal_um), includesLimit: true };
  const floor = { value: metresOf((rule.nominal_um * rule.low_percent) / 100), includesLimit: true };
  return withoutSpots(
    [
      checkOfEach({ code: 'reading-low', side: 'least', limit: floor, readings }),
      // All that lie below the nominal film count, those below the floor too.
      checkLowShare({ floor: { value: -Infinity, includesLimit: true }, top: nominal, share: rule.share_percent / 100, includesShare: true }, readings),
    ],
    readings,
  );
}
