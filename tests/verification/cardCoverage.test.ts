import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../sim/base/noise.ts';
import type { FitIntervals } from '../../sim/gun/card/fanFit.ts';
import { fitIntervals } from '../../sim/gun/card/fitIntervals.ts';
import { betaProfile, readCard } from '../helpers/fanCards.ts';

const NUMBERS = ['width', 'beta1', 'offset', 'imbalance', 'fog'] as const satisfies readonly (keyof FitIntervals)[];
/** Standard deviation of a reading over the peak. */
const NOISE = 0.03;

/** How many of so many made-up double-beta cards have each true number inside its 95 % interval. */
function coverage(cards: number, readings: number, seed: number): Record<(typeof NUMBERS)[number], number> {
  const random = seededRandom(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const inside = { width: 0, beta1: 0, offset: 0, imbalance: 0, fog: 0 };
  for (let card = 0; card < cards; card++) {
    const beta1 = between(1.5, 4);
    const width = between(0.15, 0.35);
    const fan = { profile: betaProfile(beta1), width_m: width, offset_m: width * between(-0.06, 0.06), imbalance: between(-0.3, 0.3), fog: between(0, 2), peak: between(20, 50) };
    const intervals = fitIntervals(readCard(fan, readings, NOISE, random), 'double-beta', card);
    const truth = { width, beta1, offset: fan.offset_m, imbalance: fan.imbalance, fog: fan.fog };
    for (const number of NUMBERS) {
      const { low, high } = intervals[number]!;
      if (low <= truth[number] && truth[number] <= high) inside[number]++;
    }
  }
  for (const number of NUMBERS) inside[number] *= 100 / cards;
  console.table({ [`${cards} cards of ${readings} readings`]: inside });
  return inside;
}

describe('95 % intervals of a fitted fan', () => {
  it('hold the true numbers in 95 ± 3 % of 400 noisy cards', { timeout: 180_000 }, () => {
    const inside = coverage(400, 41, 20);
    // 3 points are 2.8 standard errors of a share of 0.95 among 400.
    for (const number of NUMBERS) expect(Math.abs(inside[number] - 95), number).toBeLessThanOrEqual(3);
  });

  it('do so with half as many readings', { timeout: 90_000 }, () => {
    const cards = 120;
    const inside = coverage(cards, 21, 21);
    const chance = 2.8 * 100 * Math.sqrt((0.95 * 0.05) / cards);
    for (const number of NUMBERS) expect(Math.abs(inside[number] - 95), number).toBeLessThanOrEqual(chance);
  });
});
