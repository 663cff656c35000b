import type { RuleSpec } from '../../job/schema.ts';
import { metresOf, USUAL_MAXIMUM } from '../../materials/filmRules.ts';
import type { FilmReading } from '../filmReading.ts';
import { checkOfAll, checkOfEach } from '../limits.ts';
import { meanBounds } from '../meanFilm.ts';
import { checkLowShare } from './lowShare.ts';
import { withoutSpots, type RuleAnswer } from './ruleAnswer.ts';

/**
 * Rule borrowed from ISO 19840:2012, section 8, from memory (its text was not read): the mean reaches the nominal film; no reading
 * lies below 80 % of it; fewer than 20 % of the readings lie between the two (strict), or at most so many (lenient); none lies
 * above the maximum, three times the nominal film where none is given. The correction for a rough surface is taken first, off gauge
 * readings only: scales and micrometers do not feel the profile. The standard is written for rough steel and films from 40 µm up.
 */
export function judgeMeanEighty(rule: Extract<RuleSpec, { readonly kind: 'mean-80' }>, asRead: readonly FilmReading[]): RuleAnswer {
  const correction_m = metresOf(rule.correction_um);
  const readings = correction_m === 0 ? asRead : asRead.map((reading) => (reading.kind === 'metal' ? { ...reading, low_m: reading.low_m - correction_m, high_m: reading.high_m - correction_m } : reading));
  const limitAt = (film_um: number) => ({ value: metresOf(film_um), includesLimit: true, scale: correction_m });
  const nominal = limitAt(rule.nominal_um);
  const floor = limitAt((rule.nominal_um * rule.low_percent) / 100);
  return withoutSpots(
    [
      checkOfEach({ code: 'reading-low', side: 'least', limit: floor, readings }),
      checkOfAll({ code: 'mean-low', side: 'least', found: meanBounds(readings), limit: nominal, readings }),
      checkLowShare({ floor, top: nominal, share: rule.share_percent / 100, includesShare: rule.boundary === 'lenient' }, readings),
      checkOfEach({ code: 'reading-high', side: 'most', limit: limitAt(rule.maximum_um ?? USUAL_MAXIMUM * rule.nominal_um), readings }),
    ],
    readings,
  );
}
