import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../sim/base/noise.ts';
import { fanOpening, openedWidth, WIDTH_WITHIN_M } from '../../../../sim/gun/card/fanOpening.ts';
import { normalDeviates } from '../../../helpers/fanCards.ts';

const row = (distance_m: number, width_m: number) => ({ distance_m, width_m });

describe('how a fan opens', () => {
  it('is the line through two widths, with what they are known by carried through it', () => {
    const opening = fanOpening([row(0.15, 0.18), row(0.25, 0.28)], 0.004);
    expect(opening.slope.value).toBeCloseTo(1, 12);
    expect(opening.origin_m.value).toBeCloseTo(-0.03, 12);
    expect(opening.range_m).toEqual([0.15, 0.25]);
    // (w2 - w1)/0.1 with 4 mm each: √2 · 4/100.
    expect(opening.slope.within).toBeCloseTo(Math.SQRT2 * 0.04, 12);
    // D0 = D1 - w1/k by hand: its slopes by w1 and w2 are -(w2/k)/(w2 - w1) and (w1/k)/(w2 - w1).
    expect(opening.origin_m.within).toBeCloseTo(0.004 * Math.hypot(0.28 / 0.1, 0.18 / 0.1), 12);
    expect(opening.angle_rad.within).toBeCloseTo((2 * (Math.atan(0.5 + 1e-6) - Math.atan(0.5)) / 2e-6) * opening.slope.within, 6);
    expect(openedWidth(opening, 0.15).value).toBeCloseTo(0.18, 12);
    // At a read distance of two, the line is as good as the reading.
    expect(openedWidth(opening, 0.15).within).toBeCloseTo(0.004, 12);
    expect(openedWidth(opening, 0.2).within).toBeCloseTo(0.004 / Math.SQRT2, 12);
  });

  it('is right within 5 mm a width where nothing is said', () => {
    expect(fanOpening([row(0.1, 0.1), row(0.2, 0.2)]).slope.within).toBeCloseTo((Math.SQRT2 * WIDTH_WITHIN_M) / 0.1, 12);
  });

  it('widens its intervals by what more widths leave over, and doubts a bent line', () => {
    const bent = [row(0.1, 0.1), row(0.15, 0.17), row(0.2, 0.2), row(0.25, 0.22)];
    const opening = fanOpening(bent, 0.002);
    expect(opening.slope.within).toBeGreaterThan(fanOpening(bent.map(({ distance_m }) => row(distance_m, distance_m)), 0.002).slope.within * 2);
    expect(opening.warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/off a straight line/)]);
    expect(fanOpening(bent, 0.05).warnings).toEqual([]);
  });

  it('holds the true slope and origin in 95 % of cards of five widths that say nothing of their error', () => {
    const deviate = normalDeviates(seededRandom(11));
    const cards = 2000;
    let [slopes, origins] = [0, 0];
    for (let i = 0; i < cards; i++) {
      const { slope, origin_m } = fanOpening([0.12, 0.16, 0.2, 0.24, 0.28].map((distance_m) => row(distance_m, 1.1 * (distance_m - 0.02) + 0.003 * deviate())), 0);
      if (Math.abs(slope.value - 1.1) <= slope.within) slopes++;
      if (Math.abs(origin_m.value - 0.02) <= origin_m.within) origins++;
    }
    // Three standard errors of a share of 0.95 among 2000.
    const chance = 3 * Math.sqrt((0.95 * 0.05) / cards);
    expect(Math.abs(slopes / cards - 0.95)).toBeLessThan(chance);
    expect(Math.abs(origins / cards - 0.95)).toBeLessThan(chance);
  });

  it.each([
    ['no widths', [], /0\.0 mm apart/],
    ['one distance', [row(0.2, 0.2)], /two that are at least 10 mm apart/],
    ['equal distances', [row(0.2, 0.2), row(0.2, 0.21)], /0\.0 mm apart/],
    ['distances too near', [row(0.2, 0.2), row(0.209, 0.21)], /9\.0 mm apart/],
    ['a fan that narrows', [row(0.15, 0.25), row(0.25, 0.2)], /does not widen/],
    ['a fan as wide everywhere', [row(0.15, 0.2), row(0.25, 0.2)], /does not widen/],
    ['an origin far behind', [row(0.15, 0.2), row(0.25, 0.22)], /-850 mm in front of the nozzle/],
    ['an origin past the nearest card', [row(0.15, 0.004), row(0.25, 0.3)], /before the nearest distance read/],
    ['no width', [row(0.15, 0), row(0.25, 0.2)], /row 1 says 0 mm/],
    ['a width that is no number', [row(0.15, 0.1), row(0.25, NaN)], /row 2 says NaN mm/],
  ])('refuses %s', (_, rows, message) => {
    expect(() => fanOpening(rows)).toThrow(message);
  });
});
