import { describe, expect, it } from 'vitest';
import { beta } from '../../sim/base/special.ts';
import type { FanFit } from '../../sim/gun/card/fanFit.ts';
import { fanOpening } from '../../sim/gun/card/fanOpening.ts';
import { fitFan } from '../../sim/gun/card/fitFan.ts';
import { fittedFilm } from '../../sim/gun/card/fittedFilm.ts';
import { studentQuantile } from '../../sim/base/studentQuantile.ts';
import { betaProfile, FAN, PROFILES, readCard } from '../helpers/fanCards.ts';
import { bisect } from '../helpers/overlapTheory.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const PRINTED = 'half a unit in the last digit printed';
const NOISE_FREE = 'a card without noise: the fit ends where squares no longer fall, at 1e-10 of them or rounding';

/** What a fit's film is over its fog, from the fan's middle, in half widths. */
function stroke(fit: FanFit): (u: number) => number {
  const film = fittedFilm(fit);
  return (u) => film(fit.offset_m + (u * fit.width_m) / 2) - fit.fog;
}

/** Full width at half of the middle's film. */
function halfHeightWidth(fit: FanFit): number {
  const of = stroke(fit);
  return fit.width_m * bisect((u) => of(0) / 2 - of(u), 1e-6, 1 - 1e-9);
}

/** Mean over the full width, over the film in the middle: midpoint rule in θ with u = sin θ, which smooths the edges. */
function meanOverPeak(fit: FanFit): number {
  const of = stroke(fit);
  const steps = 4000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const angle = Math.PI * ((i + 0.5) / steps - 0.5);
    sum += of(Math.sin(angle)) * Math.cos(angle);
  }
  return ((sum * Math.PI) / steps) * (0.5 / of(0));
}

const betaRows: PublishedRow[] = [1.5, 2, 2.7, 3.5, 5].flatMap((beta1) => {
  const e = beta1 - 0.5;
  const fitted = () => fitFan(readCard({ ...FAN, profile: betaProfile(beta1) }, 41)).fits.find(({ family }) => family === 'double-beta')!;
  const row = (quantity: string, expected: number, ours: () => number): PublishedRow => ({ source: 'identity of (1-u²)^e: width at half height w √(1 - 2^(-1/e)), mean over peak ½ B(½, e+1)', quantity: `β1 ${beta1}, ${quantity}`, expected, tolerance: 1e-6, why: NOISE_FREE, ours });
  return [
    row('exponent recovered', beta1, () => fitted().beta1!),
    row('width at half height, m', FAN.width_m * Math.sqrt(1 - 2 ** (-1 / e)), () => halfHeightWidth(fitted())),
    row('mean over peak', 0.5 * beta(0.5, e + 1), () => meanOverPeak(fitted())),
  ];
});

const openingRows: PublishedRow[] = ([[1, 26.57, 2], [1.25, 32, 1], [1.5, 36.87, 2]] as const).map(([slope, half_deg, digits]) => ({
  source: 'identity: half angle of a fan that is s wide a unit of distance, atan(s/2)',
  quantity: `half opening angle of a fan ${slope} wide a unit of distance, degrees`,
  expected: half_deg,
  tolerance: lastDigit(digits),
  why: PRINTED,
  ours: () => (fanOpening([0.15, 0.2, 0.3].map((distance_m) => ({ distance_m, width_m: slope * distance_m }))).angle_rad.value * 90) / Math.PI,
}));

/** Two-sided 5 % points. */
const studentRows: PublishedRow[] = ([[1, 12.706], [2, 4.303], [3, 3.182], [4, 2.776], [5, 2.571], [10, 2.228], [15, 2.131], [30, 2.042], [60, 2], [120, 1.98]] as const).map(([freedom, expected]) => ({
  source: 'R.A. Fisher and F. Yates, Statistical Tables for Biological, Agricultural and Medical Research, 1938, table III, from memory',
  quantity: `Student's t, two-sided 5 % point, ${freedom} degrees of freedom`,
  expected,
  tolerance: lastDigit(3),
  why: PRINTED,
  ours: () => studentQuantile(0.975, freedom),
}));

describe('a card without noise', () => {
  testPublished(betaRows);

  it.each(Object.keys(PROFILES))('of the %s family gives its own numbers back and picks that family', (family) => {
    const imbalance = family === 'gaussian' ? 0 : 0.2;
    const { fits, tied } = fitFan(readCard({ ...FAN, profile: PROFILES[family]!, imbalance }, 41));
    const best = fits[0]!;
    expect(best.family).toBe(family);
    // A family that holds this one, with one number more, is 2 behind by that number and more by the correction.
    expect(tied).toEqual([]);
    const found = [best.width_m / FAN.width_m, best.offset_m / FAN.width_m, best.imbalance, best.fog / FAN.peak, best.peak / FAN.peak];
    const true_ = [1, FAN.offset_m / FAN.width_m, imbalance, FAN.fog / FAN.peak, 1];
    found.forEach((value, i) => expect(Math.abs(value - true_[i]!)).toBeLessThan(1e-6));
    if (family === 'flat-top') expect(best.taper_m! / FAN.width_m).toBeCloseTo(0.2, 6);
  });
});

describe('how a fan opens', () => testPublished(openingRows));

describe("Student's t", () => {
  testPublished(studentRows);

  it('is even about its middle, and tan of a share of a half turn with one degree of freedom', () => {
    for (const freedom of [1, 2, 7, 50]) expect(studentQuantile(0.1, freedom)).toBeCloseTo(-studentQuantile(0.9, freedom), 12);
    expect(studentQuantile(0.8, 1)).toBeCloseTo(Math.tan(Math.PI * 0.3), 12);
    expect(studentQuantile(0.5, 4)).toBe(0);
  });

  it.each([[0, 5], [1, 5], [NaN, 5], [0.9, 0], [0.9, 2.5], [0.9, 1e5]])('refuses share %s with %s degrees of freedom', (share, freedom) => {
    expect(() => studentQuantile(share, freedom)).toThrow(/studentQuantile/);
  });
});
