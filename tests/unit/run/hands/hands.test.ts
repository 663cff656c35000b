import { describe, expect, it } from 'vitest';
import { proportion } from '../../../../sim/base/proportion.ts';
import type { HandSpec } from '../../../../sim/job/schema.ts';
import { judgeHands, rankHands } from '../../../../sim/run/hands/judgeHands.ts';
import { mixedSeed } from '../../../../sim/base/mixedSeed.ts';
import { mergeTallies, type HandsTally } from '../../../../sim/run/hands/handsTally.ts';
import { sprayHands } from '../../../../sim/run/hands/sprayHands.ts';
import { testSetting } from '../testJob.ts';

/** Five strokes of the known fan on 400 × 500 mm, as hands are sprayed: cells of 10 mm. */
const setting = testSetting({ size_mm: [400, 500], cell_mm: 10 });
const BEGINNER: HandSpec = { kind: 'beginner' };
const own = (scale: number): HandSpec => ({ kind: 'own', name: 'Scaled', distance_mm: 20 * scale, across_mm: 15 * scale, speed_percent: 15 * scale, pitch_deg: 4 * scale, yaw_deg: 4 * scale, trigger_ms: 60 * scale, correlation_s: 1 });

/** Enough hands for every test of this file, sprayed once. */
const tally = sprayHands(setting, { hand: BEGINNER, count: 200, seed: 5 });

/** Some of the outcomes, as a tally of their own. */
const some = (from: number, count: number): HandsTally => ({ ...tally, outcomes: tally.outcomes.slice(from, from + count) });

describe('many hands', () => {
  it('are the same for the same seed, however the work is shared and put together', () => {
    const options = { hand: BEGINNER, seed: 5 };
    const whole = sprayHands(setting, { ...options, count: 5 });
    expect(whole.outcomes).toEqual(tally.outcomes.slice(0, 5));
    const parts = [4, 1, 0].map((first) => sprayHands(setting, { ...options, first, count: first === 1 ? 3 : 1 }));
    const merged = parts.reduce(mergeTallies);
    expect(merged.outcomes).toEqual(whole.outcomes);
    expect(merged.faulty).toEqual(whole.faulty);
    expect(merged.byKind).toEqual(whole.byKind);
  });

  it('have nothing in common from one to the next', () => {
    const seeds = new Set(Array.from({ length: 1000 }, (_, i) => mixedSeed(5, i)));
    expect(seeds.size).toBe(1000);
    const films = new Set(tally.outcomes.map(({ mean_m }) => mean_m));
    expect(films.size).toBe(200);
  });

  it('give the plan’s own verdict, for certain, where the hand is steady', () => {
    for (const [speed_m_s, share] of [[0.3, 1], [0.2, 0]] as const) {
      const verdict = judgeHands(sprayHands(testSetting({ size_mm: [400, 500], cell_mm: 10, plan: { speed_m_s } }), { hand: { kind: 'steady' }, count: 3, seed: 1 }));
      expect(verdict.faultless.share).toBe(share);
      expect(verdict.faultyShare.deviation).toBe(0);
    }
  });

  it('count errors that shrink as one over the root of the hands', () => {
    // Twenty batches of 2 and ten of 16 out of the same hands: the variance of the mean is as 8 to 1. Ratios of two sample
    // variances with 19 and 9 degrees of freedom lie within 0.27 and 3.7 of that in 98 of 100 draws (F distribution).
    const means = (size: number, batches: number) => Array.from({ length: batches }, (_, i) => judgeHands(some(i * size, size)).faultyShare.mean);
    const variance = (values: readonly number[]) => {
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
    };
    const ratio = variance(means(2, 20)) / variance(means(16, 10));
    expect(ratio).toBeGreaterThan(8 * 0.27);
    expect(ratio).toBeLessThan(8 * 3.7);
    // And the stated error is that of the batches, as far as ten batches tell.
    const stated = judgeHands(some(0, 16)).faultyError;
    expect(stated / Math.sqrt(variance(means(16, 10)))).toBeGreaterThan(0.5);
    expect(stated / Math.sqrt(variance(means(16, 10)))).toBeLessThan(2);
  });

  it('fault more the farther they stray', () => {
    const shares = [0.3, 1, 2].map((scale) => judgeHands(sprayHands(setting, { hand: own(scale), count: 12, seed: 2 })).faultyShare.mean);
    expect(shares[1]).toBeGreaterThan(shares[0] as number);
    expect(shares[2]).toBeGreaterThan(shares[1] as number);
  });

  it('map where they go wrong: a cell counts no more hands than there are, and the worst place is the most counted', () => {
    const verdict = judgeHands(tally);
    const most = verdict.chance.reduce((high, chance) => (chance > high ? chance : high), 0);
    expect(verdict.worst?.chance).toBeCloseTo(most, 6);
    expect(most).toBeLessThanOrEqual(1);
    const area = tally.outcomes.reduce((sum, { faulty_m2 }) => sum + faulty_m2, 0);
    const mapped = tally.faulty.reduce((sum, hands, cell) => sum + hands * (setting.panelGrid.cover[cell] as number), 0) * 1e-4;
    expect(mapped).toBeCloseTo(area, 9);
  });

  it.each([[0, 'count = 0'], [5001, 'count = 5001'], [NaN, 'count = NaN'], [2.5, 'count = 2.5']])('refuse %d of them', (count, words) => {
    expect(() => sprayHands(setting, { hand: BEGINNER, count, seed: 1 })).toThrow(words);
  });
});

describe('the order of set-ups', () => {
  const verdict = judgeHands(some(0, 100));
  const with_ = (share: number, faulty: number, error = 0.001) => ({ ...verdict, faultless: proportion(share * 100, 100), faultyShare: { ...verdict.faultyShare, mean: faulty }, faultyError: error });

  it('goes by the chance of no fault where that is told, else by the area at fault', () => {
    const ranks = rankHands([with_(0.1, 0.01), with_(0.9, 0.2), with_(0, 0.3), with_(0, 0.1)]);
    expect(ranks.map(({ place }) => place)).toEqual([1, 0, 3, 2]);
    expect(ranks.map(({ rank }) => rank)).toEqual([1, 2, 3, 4]);
  });

  it('does not hang on the order in which they were given, where a meets b and b meets c but not a c', () => {
    const three = [with_(0.5, 0.03), with_(0.4, 0.02), with_(0.3, 0.01)];
    const orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];
    for (const order of orders) {
      const ranks = rankHands(order.map((which) => three[which]!));
      expect(ranks.map(({ place }) => order[place])).toEqual([1, 0, 2]);
      expect(ranks.map(({ rank }) => rank)).toEqual([1, 2, 3]);
    }
  });

  it('shares a rank where neither is told', () => {
    expect(rankHands([with_(0.5, 0.02), with_(0.52, 0.021)]).map(({ rank }) => rank)).toEqual([1, 1]);
  });
});
