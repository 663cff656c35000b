import type { ReadingSpec } from '../../job/schema.ts';
import type { GroupMean } from '../../survey/judgedSurvey.ts';
import type { MoreReadings } from '../../survey/moreReadings.ts';
import { counted } from '../../base/counted.ts';
import { roundedText, shown, shownPercent, shownRoughPercent, type UnitSystem } from '../units.ts';
import { limitWords } from './filmWords.ts';
import type { ReportedSurvey } from './reportedSurvey.ts';

/** Shown with every verdict. */
export const SURVEY_NOTE =
  'The rule is borrowed and the verdict is arithmetic on these readings: it accepts nothing, and says nothing of places that were not read. ' +
  'It defers to the product data sheet, the approved process and the inspector.';

/** What the figures of more readings take for granted. */
export const MORE_NOTE = 'Taken for granted: readings independent of each other and normally scattered about one mean. Neighbouring places are alike, so a place far from all readings may be worse than this says.';

/** Kinds of readings in words. */
export const READING_KIND_WORDS: Readonly<Record<ReadingSpec['kind'], string>> = {
  metal: 'gauge on a metal witness or part',
  coupon: 'weight gain of a coupon',
  micrometer: 'micrometer, before and after',
  comb: 'wet-film comb',
};

/** Where density and solids are from, a sentence each; those that no reading needs are left out. */
export function takenSentences({ taken, judged }: ReportedSurvey): string[] {
  const has = (kind: ReadingSpec['kind']): boolean => judged.readings.some((reading) => reading.kind === kind);
  const from = (mix: string | null): string => (mix === null ? 'as stated' : `of the mix ${mix}`);
  const { dryDensity_kg_m3, solidsFraction } = taken;
  return [
    ...(dryDensity_kg_m3 === null || !has('coupon') ? [] : [`Coupons go by a dry film of ${roundedText(dryDensity_kg_m3.value)} kg/m³, ${from(dryDensity_kg_m3.mix)}.`]),
    ...(solidsFraction === null || !has('comb') ? [] : [`Combs go by solids of ${shownPercent(solidsFraction.value)} by volume, ${from(solidsFraction.mix)}.`]),
  ];
}

/** What more readings would bring, a sentence each. */
export function moreSentences(more: MoreReadings, system: UnitSystem): string[] {
  const { of, count, halfWidth_m, wished_m, meanLimit_m, least_m, most_m, chanceBelow, chanceAbove } = more;
  // Without a single one only combs that were wetted to their last tooth were read.
  if (count === 0) return [`Nobody can tell how far the film scatters: no ${of} has an upper bound, since every tooth of a comb was wetted; use a longer comb, or read two ${of}s at least by other means.`];
  if (halfWidth_m === null) return [`${counted(count, of)} cannot tell how far the film scatters; read two ${of}s at least.`];
  return [
    `The mean of the ${of}s is known to within ${shown(halfWidth_m, 'film', system)} (95 %); ${more.more === 0 ? `no more ${of}s are needed to know it to within` : `${furtherWords(more.more, of)} would bring that to`} ${shown(wished_m, 'film', system)}.`,
    ...(meanLimit_m === null ? [] : [`To tell the mean from ${limitWords(meanLimit_m, system)}: ${more.moreForLimit === 0 ? `no more ${of}s are needed` : furtherWords(more.moreForLimit, of)}, if mean and scatter stay as they are.`]),
    ...(chanceBelow === null || least_m === null ? [] : [`Chance that the next ${of} is below ${limitWords(least_m, system)}: ${shownRoughPercent(chanceBelow)}.`]),
    ...(chanceAbove === null || most_m === null ? [] : [`Chance that it is above ${limitWords(most_m, system)}: ${shownRoughPercent(chanceAbove)}.`]),
  ];
}

function furtherWords(count: number | null, noun: string): string {
  if (count === null || count === 0) return 'no more';
  return Number.isFinite(count) ? counted(count, `more ${noun}`) : `more than ten thousand more ${noun}s`;
}

/** Mean of a spot or an area: one figure, or from low teeth to high ones. */
export function groupMeanWords({ mean_m: [low, high] }: GroupMean, system: UnitSystem): string {
  if (low === high) return shown(low, 'film', system);
  return high === Infinity ? `${shown(low, 'film', system)} or more` : `${shown(low, 'film', system)} to ${shown(high, 'film', system)}`;
}
