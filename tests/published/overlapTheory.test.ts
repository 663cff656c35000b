import { describe } from 'vitest';
import { fanShape } from '../../sim/gun/profile.ts';
import { makeSpray } from '../../sim/gun/makeSpray.ts';
import { strokeProfile } from '../../sim/gun/strokeProfile.ts';
import type { Profile } from '../../sim/gun/setUp.ts';
import { strokesAtPlaces } from '../../sim/deposit/strokesAt.ts';
import { evenness, filmAcross, OVERLAP_FANS } from '../helpers/coats.ts';
import { bisect, endlessCoat, endlessEvenness, findLeast, firstBesselZero, firstHarmonic, type StrokeOf } from '../helpers/overlapTheory.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';
import { plainSetUp, strokesPath } from '../helpers/sprayCases.ts';

const WIDTH_M = 0.4;
const POISSON = 'Poisson summation of (1-u²)^e: the first harmonic vanishes at o = 1 - π/j, j the first zero of the Bessel function of order β1';
const SEARCH = 'reference computation: bounded search over the sum of shifted profiles, 20 001 points a pitch';
const PRINTED = 'half a unit in the last digit printed';

function strokeOf(profile: Profile): StrokeOf {
  const { fan } = plainSetUp({ width_m: WIDTH_M, profile });
  return { film: strokeProfile(fan), half_m: fanShape(fan).halfLength_m };
}
const doubleBeta = (beta1: number) => strokeOf({ family: 'double-beta', beta1, beta2: 3 });

/** Order, zero, best overlap by first harmonic, by CV, CV there, by min/max, min/max there. */
const BEST = [
  [1, 3.83171, 0.1801, 0.1595, 0.0922, 0.135, 0.6811],
  [1.5, 4.49341, 0.3008, 0.3013, 0.0533, 0.2929, 0.8284],
  [2, 5.13562, 0.3883, 0.3919, 0.0267, 0.3917, 0.9245],
  [2.5, 5.76346, 0.4549, 0.4571, 0.0105, 0.4588, 0.9706],
  [3, 6.38016, 0.5076, 0.508, 0.0018, 0.508, 0.9949],
  [3.5, 6.98793, 0.5504, 0.5503, 0.0012, 0.5497, 0.9963],
  [4, 7.58834, 0.586, 0.5859, 0.0015, 0.5856, 0.9956],
] as const;

/** An even ellipse's best min/max is a kink at 1 - √3/2 = 0.13397 (held to that below); the reference's search stopped beside it. */
const BESIDE_KINK = { tolerance: 0.1351 - (1 - Math.sqrt(3) / 2), why: 'the reference stopped 0.0010 beside the exact kink 1 - √3/2' };

const bestRows: PublishedRow[] = BEST.flatMap(([beta1, zero, harmonic, byCv, cv, byRatio, ratio]) => {
  const stroke = doubleBeta(beta1);
  // A film with edges or kinks needs the reference's own 20 001 places: a place misses a kink by up to half a spacing.
  const places = beta1 <= 1.5 ? 20_001 : 4001;
  const leastCv = () => findLeast((o) => endlessEvenness(stroke, WIDTH_M, o, places).cv, harmonic - 0.06, harmonic + 0.06);
  const bestRatio = () => findLeast((o) => -endlessEvenness(stroke, WIDTH_M, o, places).minOverMax, harmonic - 0.06, harmonic + 0.06);
  // A vertical edge (β1 = 1) moves a CV by up to 1/20001 of its height, the least film by √(2/20001) of the stroke's peak.
  const sampled = beta1 === 1 ? 5e-5 : 0;
  return [
    { source: 'identity, Bessel zeros', quantity: `j, order ${beta1}`, expected: zero, tolerance: lastDigit(5), why: PRINTED, ours: () => firstBesselZero(beta1) },
    { source: POISSON, quantity: `β1 ${beta1}, overlap without first harmonic`, expected: harmonic, tolerance: lastDigit(4), why: PRINTED,
      ours: () => bisect((o) => firstHarmonic(stroke, (1 - o) * WIDTH_M), harmonic - 0.05, harmonic + 0.05) },
    { source: SEARCH, quantity: `β1 ${beta1}, overlap of least CV`, expected: byCv, tolerance: 2e-4, why: 'two units of the last digit: the CV is flat at its least, so the place is softer than the value', ours: leastCv },
    { source: SEARCH, quantity: `β1 ${beta1}, least CV`, expected: cv, tolerance: lastDigit(4) + sampled, why: PRINTED, ours: () => endlessEvenness(stroke, WIDTH_M, leastCv(), places).cv },
    { source: SEARCH, quantity: `β1 ${beta1}, overlap of best min/max`, expected: byRatio, ...(beta1 === 1 ? BESIDE_KINK : { tolerance: 2e-4, why: 'as for the CV' }), ours: bestRatio },
    { source: SEARCH, quantity: `β1 ${beta1}, best min/max`, expected: ratio, tolerance: lastDigit(4) + (beta1 === 1 ? Math.sqrt(2 / 20_001) * 0.3 : 2e-5), why: PRINTED, ours: () => endlessEvenness(stroke, WIDTH_M, bestRatio(), places).minOverMax },
  ];
});

const halfRows: PublishedRow[] = [
  { source: 'FAA AC 43.13-1B para 2-20: half the fan over the last pass, with the first-harmonic identity', quantity: 'β1 whose flattest overlap is one half', expected: 2.92085, tolerance: lastDigit(5), why: PRINTED,
    ours: () => bisect((beta1) => firstHarmonic(doubleBeta(beta1), WIDTH_M / 2), 2.5, 3.5) },
  { source: 'thesis abstract on planar spray paths, ProQuest 304068244: best overlap of an even ellipse 16 to 18 %', quantity: 'even ellipse, overlap of least CV, %', expected: 16, tolerance: lastDigit(0), why: PRINTED,
    ours: () => 100 * findLeast((o) => endlessEvenness(doubleBeta(1), WIDTH_M, o).cv, 0.12, 0.24) },
  { source: 'same abstract', quantity: 'even ellipse, overlap without first harmonic, %', expected: 18, tolerance: lastDigit(0), why: PRINTED,
    ours: () => 100 * bisect((o) => firstHarmonic(doubleBeta(1), (1 - o) * WIDTH_M), 0.12, 0.24) },
  { source: 'identity: the parabola by hand, o = 1 - 1/√2', quantity: 'parabola, film at a neighbour\'s edge over film at its centre', expected: 2 * Math.SQRT2 - 2, tolerance: 1e-12, why: 'a closed form: rounding',
    ours: () => {
      const stroke = strokeOf({ family: 'parabola' });
      const pitch_m = WIDTH_M / Math.SQRT2;
      const at = (x_m: number) => stroke.film(x_m) + stroke.film(x_m - pitch_m);
      return at(WIDTH_M / 2) / at(0);
    } },
];

/** Film at a stroke's very edge, the least of an even ellipse's coat, over its highest; sampling a pitch would miss the edge. */
function edgeOverTop(stroke: StrokeOf, pitch_m: number): number {
  const at = (x_m: number) => [-2, -1, 0, 1, 2].reduce((sum, k) => sum + stroke.film(x_m - k * pitch_m), 0);
  return at(stroke.half_m) / Math.max(at(0), at(pitch_m / 2));
}
halfRows.push(
  { source: 'identity: twice √(1-(p/2)²) = 1 at p = √3', quantity: 'even ellipse, overlap of best min/max', expected: 1 - Math.sqrt(3) / 2, tolerance: 2e-6, why: 'the search stops at 1e-6',
    ours: () => findLeast((o) => -edgeOverTop(doubleBeta(1), (1 - o) * WIDTH_M), 0.12, 0.24) },
);

const meanRows: PublishedRow[] = (
  [['uniform', 2], ['triangular', 1], ['parabolic', 1.3333], ['beta e=2', 1.0667], ['beta e=2.5', 0.9817], ['cos²', 1], ['Gauss w=4σ', 1.2533]] as const
).map(([name, expected]) => ({
  source: 'identity ½B(½, e+1)/(1-o)', quantity: `${name}, mean film over stroke peak, o = 0.5`, expected, tolerance: lastDigit(4) + 1e-4 * Number(name === 'Gauss w=4σ'), why: 'printed digits; the Gaussian support loses 6e-5',
  ours: () => {
    const stroke = strokeOf(OVERLAP_FANS[name]!);
    return evenness(endlessCoat(stroke, WIDTH_M / 2, 20_001)).mean_m / stroke.film(0);
  },
}));

const gaussRows: PublishedRow[] = ([[2, 0.0143838], [2.5, 0.0849981], [3, 0.2231082]] as const).map(([sigmas, expected]) => ({
  source: 'identity 2 exp(-2π²σ²/p²)', quantity: `Gaussian first harmonic, pitch ${sigmas} σ`, expected, tolerance: 2e-4, why: 'the support is cut at 4 σ, which holds 6.3e-5 of a stroke outside',
  ours: () => firstHarmonic(strokeOf({ family: 'gaussian' }), (sigmas * WIDTH_M) / 4),
}));
gaussRows.push({ source: POISSON, quantity: 'e = 2, o = 0.5, signed first harmonic', expected: -0.0577462, tolerance: lastDigit(7), why: PRINTED, ours: () => firstHarmonic(doubleBeta(2.5), WIDTH_M / 2) });

/** Films of a coat beyond its first stroke, at places in half widths, over the mean of the plateau. */
function edgeFilm(profile: Profile, place: number): number {
  const spray = makeSpray(plainSetUp({ width_m: WIDTH_M, profile }));
  const { path, strokes } = strokesPath(Array.from({ length: 8 }, (_, i) => ({ from: [-1, (i * WIDTH_M) / 2], to: [1, (i * WIDTH_M) / 2] })), 0.3);
  const places_m = [[0, (place * WIDTH_M) / 2] as const];
  const wet_m = strokesAtPlaces({ path, strokes, spray, places_m })[0]!.reduce((sum, share) => sum + share.wet_m, 0);
  const plateau_m = spray.fluidRate_m3_s / (0.3 * 0.5 * WIDTH_M);
  return wet_m / plateau_m;
}

const edgeRows: PublishedRow[] = [-1, -0.75, -0.5, -0.25, 0, 0.25].flatMap((place, i) => [
  { source: SEARCH, quantity: `edge film e = 2.5 at ${place}`, expected: [0, 0.129, 0.4962, 0.8668, 1.0186, 0.9958][i]!, tolerance: lastDigit(4) + 1e-5, why: 'printed digits and our tables',
    ours: () => edgeFilm({ family: 'double-beta', beta1: 3, beta2: 3 }, place) },
  { source: 'identity', quantity: `edge film, triangle at ${place}`, expected: [0, 0.25, 0.5, 0.75, 1, 1][i]!, tolerance: 1e-5, why: 'our tables', ours: () => edgeFilm({ family: 'triangle' }, place) },
]);

/** Thinnest and thickest over the mean of 20 strokes at half overlap with one index between them changed. */
function badLap(overlap: number): readonly [number, number] {
  const setUp = plainSetUp({ width_m: WIDTH_M, profile: { family: 'triangle' } });
  const centres_m = Array.from({ length: 20 }, (_, i) => (i * WIDTH_M) / 2 - (i < 10 ? 0 : (overlap - 0.5) * WIDTH_M));
  const film = filmAcross(setUp, centres_m.map((y_m) => y_m - 1), 1000, 2e-3);
  const mean_m = setUp.fluidRate_m3_s / (0.3 * 0.5 * WIDTH_M);
  const middle = film.slice(200, 700);
  return [Math.min(...middle) / mean_m, Math.max(...middle) / mean_m];
}

const lapRows: PublishedRow[] = [
  { source: SEARCH, quantity: 'triangle, one lap at 30 %: thinnest over mean', expected: 0.6, tolerance: 1e-4, why: 'flat there; printed digits', ours: () => badLap(0.3)[0] },
  { source: SEARCH, quantity: 'triangle, one lap at 70 %: thickest over mean', expected: 1.4, tolerance: 1e-4, why: 'flat there; printed digits', ours: () => badLap(0.7)[1] },
];

describe('overlap theory', () => {
  testPublished([...bestRows, ...halfRows, ...meanRows, ...gaussRows, ...edgeRows, ...lapRows]);
});
