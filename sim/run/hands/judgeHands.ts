import { assertThat } from '../../base/errors.ts';
import { proportion } from '../../base/proportion.ts';
import { quantile } from '../../base/quantile.ts';
import { SIGMAS_95 } from '../../base/special.ts';
import type { HandsRank, HandsSpread, HandsVerdict } from '../../verdict/handsVerdict.ts';
import { HAND_FAULTS, type HandFault, type HandsTally } from './handsTally.ts';

/** Share of the panel that may be at fault in a coat that a finisher would still put right with a brush. Assumed. */
export const SMALL_SHARE = 0.02;

/** Chances, spreads and the map of a tally. Errors are those of counting so many hands; the model's own are not in them. */
export function judgeHands({ outcomes, panel_m2, judged, grid, faulty, byKind }: HandsTally): HandsVerdict {
  const count = outcomes.length;
  assertThat(count > 0, 'judgeHands: no hands');
  const shares = outcomes.map(({ faulty_m2 }) => faulty_m2 / panel_m2);
  const faultyShare = spreadOf(shares);
  return {
    count,
    faultless: proportion(shares.filter((share) => share === 0).length, count),
    nearlyFaultless: proportion(shares.filter((share) => share <= SMALL_SHARE).length, count),
    byKind: HAND_FAULTS.map((kind) => ({ kind, chance: proportion(outcomes.filter(({ area_m2 }) => area_m2[kind] > 0).length, count) })),
    faultyShare,
    faultyError: faultyShare.deviation / Math.sqrt(count),
    film_m: spreadOf(outcomes.map(({ mean_m }) => mean_m)),
    cv: spreadOf(outcomes.map(({ cv }) => cv)),
    grid,
    chance: Float32Array.from(faulty, (hands, cell) => (judged[cell] === 1 ? hands / count : NaN)),
    worst: worstPlace(faulty, byKind, grid, count),
  };
}

/** Mean, deviation (n - 1) and the 5 % and 95 % quantiles. */
function spreadOf(values: readonly number[]): HandsSpread {
  const sorted = [...values].sort((a, b) => a - b);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : 0, low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) };
}

function worstPlace(faulty: Uint16Array, byKind: HandsTally['byKind'], { columns, cellSize_m }: HandsTally['grid'], count: number): HandsVerdict['worst'] {
  let cell = 0;
  for (let each = 1; each < faulty.length; each++) if ((faulty[each] as number) > (faulty[cell] as number)) cell = each;
  if (!((faulty[cell] as number) > 0)) return null;
  const hands = (kind: HandFault): number => byKind[kind][cell] as number;
  const kind = HAND_FAULTS.reduce((most, each) => (hands(each) > hands(most) ? each : most));
  const row = Math.floor(cell / columns);
  return { at_m: [(cell - row * columns + 0.5) * cellSize_m, (row + 0.5) * cellSize_m], chance: (faulty[cell] as number) / count, kind };
}

/**
 * Set-ups by what they forgive: the greater chance of no fault first; those whose intervals meet that of the best left, by
 * the lesser share of the panel at fault; those that neither tells from the best of these share its rank.
 *
 * "Meets" does not carry over (a may meet b and b meet c without a meeting c), so set-ups are taken off from the best down, and
 * not sorted by comparing pairs: the order then does not hang on the order in which they were given.
 */
export function rankHands(verdicts: readonly HandsVerdict[]): HandsRank[] {
  const ranks: HandsRank[] = [];
  let left = verdicts.map((verdict, place) => ({ verdict, place }));
  while (left.length > 0) {
    const leader = left.reduce((best, one) => (one.verdict.faultless.share > best.verdict.faultless.share ? one : best));
    const near = left.filter((one) => !isChanceTold(leader.verdict, one.verdict)).sort((a, b) => a.verdict.faultyShare.mean - b.verdict.faultyShare.mean);
    left = left.filter((one) => isChanceTold(leader.verdict, one.verdict));
    let first = near[0] as (typeof near)[number];
    let rank = ranks.length + 1;
    for (const one of near) {
      if (isAreaTold(first.verdict, one.verdict)) {
        first = one;
        rank = ranks.length + 1;
      }
      ranks.push({ place: one.place, rank });
    }
  }
  return ranks;
}

/** One hand has no spread, so its area tells nothing. */
function isAreaTold(a: HandsVerdict, b: HandsVerdict): boolean {
  return Math.min(a.count, b.count) > 1 && Math.abs(a.faultyShare.mean - b.faultyShare.mean) > SIGMAS_95 * Math.hypot(a.faultyError, b.faultyError);
}

function isChanceTold(a: HandsVerdict, b: HandsVerdict): boolean {
  return a.faultless.low > b.faultless.high || b.faultless.low > a.faultless.high;
}
