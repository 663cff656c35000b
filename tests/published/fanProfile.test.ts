import { describe } from 'vitest';
import { beta } from '../../sim/base/special.ts';
import { fanShape } from '../../sim/gun/profile.ts';
import { strokeProfile } from '../../sim/gun/strokeProfile.ts';
import type { Profile, SetUp } from '../../sim/gun/setUp.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const GAMMA = 'identity B(a,b) = Γ(a)Γ(b)/Γ(a+b)';
const DOUBLE_BETA = 'elliptical double-beta fan (as used in Coatings 15(5) 581, 2025); closed stroke integral, checked by quadrature';
const ROUND = 'round beta gun, T. Balkan & M.A.S. Arıkan, Mech. Res. Commun. 26(5) 609-617, 1999; closed stroke integral';
const PRINTED = 'half a unit in the last digit printed';

function fan(a: number, b: number, profile: Profile): SetUp['fan'] {
  return { width_m: 2 * a, depth_m: 2 * b, atDistance_m: 0.2, origin_m: 0, profile };
}

/** Film of one stroke where the peak flux is 1 m/s and the speed 1 m/s. */
function unitStroke(of: SetUp['fan'], x_m: number): number {
  return strokeProfile(of)(x_m) / fanShape(of).peak_m2;
}

const betaRows: PublishedRow[] = [
  [1, 2], [1.5, 1.5707963], [2, 1.3333333], [2.5, 1.1780972], [3, 1.0666667], [3.5, 0.9817477], [4, 0.9142857],
].map(([n, expected]) => ({
  source: GAMMA, quantity: `B(½, ${n})`, expected: expected!, tolerance: lastDigit(7), why: PRINTED, ours: () => beta(0.5, n!),
}));

const strokeRows: PublishedRow[] = (
  [
    [2, 3, [0.0426666667, 0.0357569059, 0.0176676976]],
    [2.5, 2.5, [0.0471238898, 0.0372336907, 0.0145444104]],
    [1.5, 4, [0.0365714286, 0.0325079365, 0.0203174603]],
  ] as const
).flatMap(([beta1, beta2, films]) =>
  films.map((expected, i) => ({
    source: DOUBLE_BETA,
    quantity: `stroke, β ${beta1}, ${beta2}, x = ${i * 50} mm`,
    expected,
    tolerance: lastDigit(10),
    why: PRINTED,
    ours: () => unitStroke(fan(0.15, 0.04, { family: 'double-beta', beta1, beta2 }), i * 0.05),
  })),
);

const fluxRows: PublishedRow[] = ([[2, 3, 0.00753982237], [2.5, 2.5, 0.00753982237], [1.5, 4, 0.00731428571]] as const).map(([beta1, beta2, expected]) => ({
  source: DOUBLE_BETA,
  quantity: `whole flux at unit peak, β ${beta1}, ${beta2}`,
  expected,
  tolerance: lastDigit(11),
  why: PRINTED,
  ours: () => 1 / fanShape(fan(0.15, 0.04, { family: 'double-beta', beta1, beta2 })).peak_m2,
}));

const shop = fan(0.15, 0.04, { family: 'double-beta', beta1: 2, beta2: 3 });
const LANDING_M3_S = (0.65 * 200e-6) / 60;
const shopRows: PublishedRow[] = [
  { source: DOUBLE_BETA, quantity: 'peak flux, 200 mL/min at 65 %, µm/s', expected: 287.363, tolerance: lastDigit(3), why: PRINTED, ours: () => LANDING_M3_S * fanShape(shop).peak_m2 * 1e6 },
  ...([[0, 40.869], [0.05, 34.251], [0.1, 16.923]] as const).map(([x_m, expected]) => ({
    source: DOUBLE_BETA, quantity: `its stroke at 0.3 m/s, x = ${x_m * 1e3} mm, µm`, expected, tolerance: lastDigit(3), why: PRINTED,
    ours: () => ((LANDING_M3_S * strokeProfile(shop)(x_m)) / 0.3) * 1e6,
  })),
  { source: DOUBLE_BETA, quantity: 'area under it, m²', expected: 7.22222e-6, tolerance: 0.5e-11, why: PRINTED, ours: () => {
    let sum = 0;
    for (let i = 0; i < 3000; i++) sum += strokeProfile(shop)((i + 0.5) * 1e-4 - 0.15) * 1e-4;
    return (sum * LANDING_M3_S) / 0.3;
  } },
  { source: DOUBLE_BETA, quantity: 'dwell that adds one stroke peak, β2 = 3, b = 30 mm, 0.3 m/s, s', expected: 0.106667, tolerance: lastDigit(6), why: PRINTED, ours: () => {
    const held = fan(0.15, 0.03, { family: 'double-beta', beta1: 3, beta2: 3 });
    return strokeProfile(held)(0) / 0.3 / fanShape(held).peak_m2;
  } },
];

const roundRows: PublishedRow[] = ([[2, 0.1026496956, 0.01570796], [3, 0.0689805954, 0.01047198], [4, 0.0496660287, 0.00785398]] as const).flatMap(([power, stroke, volume]) => {
  const round = fan(0.1, 0.1, { family: 'double-beta', beta1: power, beta2: power });
  return [
    { source: ROUND, quantity: `round gun β ${power}, stroke at 40 mm`, expected: stroke, tolerance: lastDigit(10), why: PRINTED, ours: () => unitStroke(round, 0.04) },
    { source: ROUND, quantity: `round gun β ${power}, volume`, expected: volume, tolerance: lastDigit(8), why: PRINTED, ours: () => 1 / fanShape(round).peak_m2 },
  ];
});

const otherRows: PublishedRow[] = [
  { source: 'bivariate Gaussian, checked by quadrature', quantity: 'Gaussian stroke, σx 50 mm, 1e-6 m³/s, 0.3 m/s, x = 30 mm', expected: 2.22149735e-5,
    tolerance: 2.22149735e-5 * 6.4e-5, why: 'our support is cut at 4 σ along the travel: 6.33e-5 of each stroke',
    ours: () => (1e-6 / 0.3) * strokeProfile(fan(0.1, 0.02, { family: 'gaussian' }))(0.03) },
  { source: 'identity: the two factors of the double-beta collapse where β1 = β2', quantity: 'flux at (60, 15) mm, β 2.7', expected: 0.5445116507, tolerance: lastDigit(10), why: PRINTED,
    ours: () => {
      const shape = fanShape(fan(0.15, 0.04, { family: 'double-beta', beta1: 2.7, beta2: 2.7 }));
      const u = 0.06 / 0.15;
      return shape.across(u) * shape.along(0.015 ** 2 / (0.04 ** 2 * shape.chordSquared(u)));
    } },
];

describe('fan profiles against closed forms', () => {
  testPublished([...betaRows, ...strokeRows, ...fluxRows, ...shopRows, ...roundRows, ...otherRows]);
});
