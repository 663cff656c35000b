import { counted } from '../../base/counted.ts';
import type { Estimate, PlanComparison, SetUpOffer, Trend, TrendKind } from '../../survey/comparison.ts';
import { roundedText, shown, shownNumber, shownPercent, shownPlace, shownRoughPercent, shownUnit, type UnitSystem } from '../units.ts';

/** `88 % (87 to 89 %)`; without an interval the figure alone. */
export function estimateWords({ value, low, high }: Estimate): string {
  return Number.isFinite(low) && Number.isFinite(high) ? `${shownPercent(value)} (${shownPercent(low).replace(' %', '')} to ${shownPercent(high)})` : shownPercent(value);
}

/** The first sentence of a comparison: measured over planned. */
export function planRatioSentence({ ratio, readings, placeless, isCorrelated }: PlanComparison): string {
  if (ratio === null) return 'There is no dry reading to compare with the plan yet.';
  const basis = readings.length > 0 ? counted(readings.length, 'reading') : `${counted(placeless, 'reading')} without a place`;
  if (Number.isNaN(ratio.low)) return `The dry film measured is ${shownPercent(ratio.value)} of that planned, by one reading: it has no interval.`;
  const alike = isCorrelated ? 'near readings are alike, which the interval takes into account' : 'readings taken as independent';
  return `The dry film measured is ${estimateWords(ratio)} of that planned: ${basis}, 95 % interval, ${alike}.`;
}

/** Spread about the ratio, and how much of it the gauge may be. */
export function spreadSentences({ spread, noiseShare, noise, ratio, predictedMean_m }: PlanComparison, system: UnitSystem): string[] {
  if (spread === null || noiseShare === null || ratio === null) return [];
  const gauge = `${shown(noise.typical_m, 'film', system)} (${shownRoughPercent(noise.typical_m / (ratio.value * predictedMean_m))} of the film; ${noise.words})`;
  const share = noiseShare >= 0.9 ? 'all of it may be the gauge’s own' : noiseShare >= 0.1 ? `the gauge’s own noise may be ${shownRoughPercent(noiseShare)} of its variance` : 'hardly any of it is the gauge’s own';
  return [`About that, readings scatter by ${shownRoughPercent(spread)} (standard deviation, dry); ${share}. The gauge is taken to repeat within a standard deviation of ${gauge}.`];
}

/** What the ratio says of transfer, flow and solids, and what it cannot say. */
export function causeSentences({ cause, wet, ratio }: PlanComparison): string[] {
  const wetWords = wet === null ? [] : [
    `By ${counted(wet.count, 'comb reading')} the wet film is between ${shownPercent(wet.ratio.low)} and ${shownPercent(wet.ratio.high)} of the plan's (bounds of the teeth, not chance).`
      + (wet.solids === null ? '' : ` Dry over wet then puts the solids at ${estimateWords(wet.solids)} of those planned.`),
  ];
  return [...wetWords, ...causeWords(cause, ratio, wet !== null)];
}

function causeWords(cause: PlanComparison['cause'], ratio: Estimate | null, hasCombs: boolean): string[] {
  switch (cause) {
    case 'none':
      return ratio === null || Number.isNaN(ratio.low) ? [] : ['The readings give no reason to change the plan: its film lies within their interval.'];
    case 'either':
      return [hasCombs
        ? 'The teeth of the comb lie too far apart to tell whether transfer, fluid rate or solids is off.'
        : 'Transfer efficiency, fluid rate or solids may be off: dry film alone cannot tell them apart. Comb readings of the wet coat would tell solids from the other two, a cup and a clock the fluid rate.'];
    case 'transfer-or-flow':
      return ['The wet film is off and the solids agree: transfer efficiency or fluid rate. A cup and a clock tell these two apart.'];
    case 'solids':
      return ['The wet film agrees with the plan and the dry film does not: the solids of the mix, or film that was taken off since (sanding). Look at ratio and cup seconds of the mix; no set-up is offered for a change.'];
    case 'both':
      return ['Wet film and solids are both off. The offer below goes by the wet film; look at the mix as well.'];
  }
}

const TREND_ENDS: Readonly<Record<TrendKind, string>> = { across: 'from left to right', up: 'from the bottom up', order: 'from the first stroke to the last' };

/** Trends in words, those seen first; none of those not seen is denied. */
export function trendSentences({ trends }: PlanComparison): string[] {
  const seen = [...trends.filter(({ isSeen }) => isSeen)].sort((a, b) => clarity(b) - clarity(a));
  if (trends.length === 0) return [];
  if (seen.length === 0) return [`No trend can be told from chance: ${trends.map((trend) => `${TREND_ENDS[trend.kind]} ${changeWords(trend)}`).join('; ')}.`];
  const words = seen.map((trend) => `The film changes against the plan ${TREND_ENDS[trend.kind]} by ${changeWords(trend)}${trend.kind === 'order' ? (trend.change.value < 0 ? ': spread thinner as the coat went on' : ': laid heavier as the coat went on') : ''}.`);
  return [...words, `${seen.length > 1 ? 'Places and order of strokes go together on this panel, so these may be one trend. ' : ''}A trend is the hand's or the gun's doing, not the set-up's.`];
}

function clarity({ change: { value, low } }: Trend): number {
  return Math.abs(value) / Math.max(1e-12, value - low);
}

function changeWords({ change: { value, low, high } }: Trend): string {
  const signed = (share: number) => `${share > 0 ? '+' : share < 0 ? '−' : ''}${roundedText(Math.abs(share) * 100)}`;
  return `${signed(value)} % (${signed(low)} to ${signed(high)} %)`;
}

/** An offer: `Transfer efficiency 65 % to 57.3 % (54.1 to 60.4 %)`. */
export function offerWords({ number, from, to }: SetUpOffer, system: UnitSystem): string {
  if (number === 'efficiency') return `Transfer efficiency ${roundedText(from)} % to ${roundedText(to.value)} % (${roundedText(to.low)} to ${roundedText(to.high)} %)`;
  const rate = (mL: number) => shownNumber(mL * 1e-6, 'volume', system);
  return `Fluid rate ${rate(from)} to ${rate(to.value)} (${rate(to.low)} to ${rate(to.high)}) ${shownUnit('volume', system).name}/min`;
}

/** What the offers rest on; said beside them. */
export const OFFER_NOTE = 'Take one of them, not both: each alone brings the plan to the readings. The interval is that of the readings, with all else of the plan taken as exact. Nothing changes until you press, and Undo takes it back.';

/** Where the film between the readings comes from. */
export function betweenSentences({ between, readings }: PlanComparison, system: UnitSystem): string[] {
  if (between === null) return [];
  const range = shown(between.law.range_m, 'length', system);
  const origin = {
    fitted: `Places up to ${range} apart differ from the plan alike (range fitted to ${counted(between.fitted, 'reading')} by restricted likelihood).`,
    few: `Fewer than eight readings with a place say nothing of how far a difference reaches: ${range}, the width of the fan, is assumed.`,
    'no-pattern': `The differences show no pattern of their own; that they reach ${range}, the width of the fan, is assumed.`,
  }[between.origin];
  return [
    `${origin} Between the readings the map is kriged (plan times the mean ratio, plus the difference drawn from the ${between.isLocal ? 'nearest 64 readings' : counted(readings.length, 'reading')}).`,
    'Hatched places lie farther than that from any reading: a guess, not a reading.',
  ];
}

/** How likely the film is too thin where nobody read. */
export function belowSentences({ below }: PlanComparison, system: UnitSystem): string[] {
  if (below === null) return [];
  const { limit_m, anywhere, shareBelow, draws, places, step_m, worstAt_m, worst } = below;
  return [
    `Chance that the dry film is below the rule's least, ${shown(limit_m, 'film', system)}, somewhere unread: ${shownChance(anywhere, draws)}; of the panel ${shareBelow > 0 ? shownRoughPercent(shareBelow) : 'nothing'} is expected below it. Likeliest at ${shownPlace(worstAt_m, system)} (${shownChance(worst, draws)}).`,
    `From ${draws} draws of the film at ${places} places ${shown(step_m, 'length', system)} apart, given the readings and fixed by the job's seed. What lies between these places, and how well the range is known, are left out.`,
  ];
}

function shownChance(share: number, draws: number): string {
  if (share === 0) return `less than 1 in ${draws / 3}`.replace(/\.\d+/, '');
  return share === 1 ? `more than ${draws - 3} in ${draws}` : shownRoughPercent(share);
}

/** What the comparison leaves out. */
export const COMPARE_PLAN_NOTE = 'The plan is the film as laid by the model: runs, levelling, sanding and brushed coats are left out. Dry film throughout, but for combs. An estimate for teaching and planning; the rule\'s own verdict stands on the sheet Verdict.';
