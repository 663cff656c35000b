import type { FanFit, FanFits, FitIntervals } from './fanFit.ts';
import { FAULT_CAUSES, type FanCause, type FanFaultKind, type FanTest } from './fanFaultCauses.ts';
import { isLopsided } from './fanFromFit.ts';
import { fitIntervals } from './fitIntervals.ts';
import { middleDip } from './middleDip.ts';

/** A fault of the fan, by its shape. */
export interface FanFault {
  readonly kind: FanFaultKind;
  /**
   * How strong it is, beside the limit that it is past: heavy ends: how much less film the middle has than the lighter shoulder, share of
   * that; heavy middle: β1; one-sided: imbalance, above 0 toward larger places; crescent: bend of the ends, in
   * depths; fluttering: standard deviation of the width, share of it.
   */
  readonly strength: number;
  readonly limit: number;
  /** Likeliest first. */
  readonly causes: readonly FanCause[];
  readonly tests: readonly FanTest[];
}

/** What only a whole spot shows, by a photograph; null where the kind of spot does not show it. */
export interface SpotShape {
  /** How far the centre line has bent at the fan's ends, in depths. */
  readonly bendFraction: number | null;
  /** Standard deviation of the width along the travel, share of its mean. */
  readonly widthVariationFraction: number | null;
}

/**
 * Where a shape becomes a fault. Assumed, all of them: no published limits are known. A dip of 5 % is what a wet film's comb
 * can just show; an exponent of 5 is evenest at 64 % overlap (1 - π/j, j the first zero of the Bessel function of that order) where the trade laps a half, and its
 * interval must lie above 3.5; a lean of 0.1 makes one half of a fan of β1 = 3 some 6 % heavier than the other; a bend of a quarter of the depth and a twentieth of the
 * width are what an eye sees on masking paper.
 */
export const FAULT_LIMITS: Readonly<Record<FanFaultKind, number>> = { 'heavy-ends': 0.05, 'heavy-middle': 5, 'one-sided': 0.1, crescent: 0.25, fluttering: 0.05 };
const HEAVY_MIDDLE_SURELY = 3.5;

/**
 * Names the faults of a fan from its readings, the fits to them and, where there is a photograph, the spot's shape. Each must
 * be past its limit and, as far as readings show it, past chance. A healthy fan gives none.
 * @param seed for the intervals that tell a lean and a heavy middle from chance.
 */
export function fanFaults(card: FanFits, seed: number, spot?: SpotShape): FanFault[] {
  const { readings, fits } = card;
  const intervalsOf = (fit: FanFit): FitIntervals => fitIntervals(readings, fit.family, seed);
  const dip = middleDip(card);
  const peaked = fits.find(({ family }) => family === 'double-beta') as FanFit;
  const leaning = fits.find(({ family }) => family !== 'gaussian') as FanFit;
  return [
    ...(dip.isBeyondNoise ? found('heavy-ends', dip.fraction) : []),
    ...(!dip.isBeyondNoise && (peaked.beta1 as number) > FAULT_LIMITS['heavy-middle'] && (intervalsOf(peaked).beta1?.low ?? 0) > HEAVY_MIDDLE_SURELY ? found('heavy-middle', peaked.beta1 as number) : []),
    ...(Math.abs(leaning.imbalance) > FAULT_LIMITS['one-sided'] && isLopsided(intervalsOf(leaning)) ? found('one-sided', leaning.imbalance) : []),
    ...found('crescent', spot?.bendFraction ?? 0),
    ...found('fluttering', spot?.widthVariationFraction ?? 0),
  ];
}

function found(kind: FanFaultKind, strength: number): FanFault[] {
  const limit = FAULT_LIMITS[kind];
  return Math.abs(strength) > limit ? [{ kind, strength, limit, ...FAULT_CAUSES[kind] }] : [];
}
