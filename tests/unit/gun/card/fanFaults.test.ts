import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../sim/base/noise.ts';
import { FAULT_LIMITS, fanFaults, type SpotShape } from '../../../../sim/gun/card/fanFaults.ts';
import { fitFan } from '../../../../sim/gun/card/fitFan.ts';
import { betaProfile, FAN, readCard, type FanOnCard } from '../../../helpers/fanCards.ts';

const kinds = (fan: Partial<FanOnCard>, count = 41, noise = 0.01, seed = 1, spot?: SpotShape) =>
  fanFaults(fitFan(readCard({ ...FAN, ...fan }, count, noise, seededRandom(seed))), seed, spot);

/** A fan whose middle has a third less film than its shoulders. */
const split = (u: number) => (Math.abs(u) < 1 ? (1 - u * u) ** 1.5 * (0.6 + 3 * u * u) : 0);

describe('faults of a fan', () => {
  it.each([2, 3, 4])('are none for a healthy fan of β1 = %s', (beta1) => {
    expect(kinds({ profile: betaProfile(beta1) })).toEqual([]);
  });

  it('are seldom found in healthy fans read with 3 % of noise', () => {
    const random = seededRandom(21);
    const cards = 12;
    let wrong = 0;
    for (let i = 0; i < cards; i++) {
      const card = readCard({ ...FAN, profile: betaProfile(2 + 2 * random()) }, 21, 0.03, random);
      if (fanFaults(fitFan(card), i).length > 0) wrong++;
    }
    // A lean is told by a 95 % interval: one in twenty is wrong; 3 or more of 12 would be chance in one run of fifty.
    expect(wrong).toBeLessThan(3);
  });

  it.each([[41, 0.03], [21, 0.01], [11, 0.01]])('name a split fan by %s readings with noise %s', (count, noise) => {
    const [fault, ...others] = kinds({ profile: split }, count, noise);
    expect(others).toEqual([]);
    expect(fault).toMatchObject({ kind: 'heavy-ends', limit: FAULT_LIMITS['heavy-ends'] });
    expect(fault!.causes[0]).toBe('air-over-fluid');
    // By hand: mean film of the middle (u to 0.2) 0.62, of the shoulders (0.3 to 0.7) 0.83: a quarter less; coarse windows miss it by up to a tenth.
    expect(Math.abs(fault!.strength - 0.25)).toBeLessThan(0.1);
  });

  it('name no split where the middle is even', () => {
    expect(kinds({ profile: (u) => Math.min(1, Math.max(0, (1 - Math.abs(u)) / 0.4)) }, 21, 0.03)).toEqual([]);
  });

  it('name a heavy middle with its exponent', () => {
    const [fault, ...others] = kinds({ profile: betaProfile(7) });
    expect(others).toEqual([]);
    expect(fault).toMatchObject({ kind: 'heavy-middle', limit: 5 });
    expect(fault!.strength).toBeGreaterThan(5);
    expect(fault!.causes).toContain('air-too-low');
  });

  it.each([[0.35, 1], [-0.35, -1]])('name the heavy side of a fan that leans by %s', (imbalance, sign) => {
    const [fault, ...others] = kinds({ profile: betaProfile(3), imbalance });
    expect(others).toEqual([]);
    expect(fault!.kind).toBe('one-sided');
    expect(Math.sign(fault!.strength)).toBe(sign);
    expect(fault!.tests).toEqual(['turn-cap']);
  });

  it('name a crescent and a fluttering width from the spot only', () => {
    expect(kinds({}, 41, 0.01, 1, { bendFraction: -0.4, widthVariationFraction: null }).map(({ kind }) => kind)).toEqual(['crescent']);
    expect(kinds({}, 41, 0.01, 1, { bendFraction: null, widthVariationFraction: 0.08 }).map(({ kind }) => kind)).toEqual(['fluttering']);
    expect(kinds({}, 41, 0.01, 1, { bendFraction: 0.2, widthVariationFraction: 0.04 })).toEqual([]);
    expect(kinds({}, 41, 0.01, 1, { bendFraction: NaN, widthVariationFraction: NaN })).toEqual([]);
  });
});
