import { shown, type SurveySpec } from '../../../sim/index.ts';
import { readNumber } from '../readNumber.ts';
import { state } from '../state.ts';
import { figurePointer } from './readingEntry.ts';
import { blankOf, blankPath } from './readingFigures.ts';
import { takenOf } from './surveyJudged.ts';

/** What a coupon comes to: the answer, and how it was worked out. */
export interface CouponTold {
  readonly answer: string;
  readonly working: string;
}

/** The film and weight per area of the coupon as typed so far; null until weights and area are there. */
export function couponWorking(survey: SurveySpec): CouponTold | null {
  const [before_g, after_g, area_cm2] = ['before_g', 'after_g', 'area_cm2'].map(typedFigure);
  if (before_g === undefined || after_g === undefined || area_cm2 === undefined) return null;
  const units = state.units.value;
  const gain_g = after_g - before_g;
  const weight_kg_m2 = gain_g / 1e3 / (area_cm2 / 1e4);
  const density = takenOf(survey)?.dryDensity_kg_m3 ?? null;
  const weight = `${shown(weight_kg_m2, 'areal-weight', units)} dry`;
  const gained = `(${after_g} − ${before_g}) g over ${shown(area_cm2 / 1e4, 'area', units)} is ${weight}`;
  if (density === null) return { answer: weight, working: `${gained}. For the film, give the density of the dry film above, or name the coats whose mix has it.` };
  return {
    answer: `${shown(weight_kg_m2 / density, 'film', units)} dry film, ${weight}`,
    working: `${gained}; over ${Math.round(density)} kg/m³, the density of the dry film, that is ${shown(weight_kg_m2 / density, 'film', units)}.`,
  };
}

function typedFigure(key: string): number | undefined {
  const text = state.drafts.value[figurePointer('coupon', key)]?.text ?? '';
  const read = readNumber(blankOf('coupon'), blankPath(key), text, state.units.value);
  return 'value' in read ? read.value : undefined;
}
