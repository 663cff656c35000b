import { describe, expect, it } from 'vitest';
import { METRES_PER_FOOT, METRES_PER_MIL } from '../../sim/base/units.ts';
import { filmReadings } from '../../sim/survey/filmReadings.ts';
import { judgeReadings } from '../../sim/survey/judgeReadings.ts';
import type { JudgedSurvey } from '../../sim/survey/judgedSurvey.ts';
import { singleValueRange, spotLimits } from '../../sim/materials/filmRules.ts';
import { samplingNumbers } from '../../sim/survey/samplingNumbers.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';
import { combs, gauge, meanEighty, NINETY_TEN, spotsAreas, spotsInMil } from '../helpers/surveys.ts';

const ISO = 'ISO 19840:2012, section 8, from memory; verdicts derived by hand';
const ISO_TABLE = 'ISO 19840:2012, sampling table, from memory';
const PA2 = 'SSPC-PA 2 (2012 on), sampling and example as read';
const PA2_LEVELS = 'SSPC-PA 2 (2012 on), table 1, from memory; verdicts derived by hand';
const MSC = 'IMO resolution MSC.215(82), as quoted by others; verdicts derived by hand';
const IDENTITY = 'Identity: weight gained = film · density; wet film · solids = dry film';
const exact = { tolerance: 1e-9, why: 'exact but for rounding' };
const FT2 = METRES_PER_FOOT ** 2;
const FACTS = { dryDensity_kg_m3: 1300, solidsFraction: 0.1 };

/** Film of a coupon of 1 m² that gained so many grams at a density. */
const couponFilm_um = (gain_g: number, dryDensity_kg_m3: number): number => filmReadings([{ kind: 'coupon', before_g: 100, after_g: 100 + gain_g, area_cm2: 1e4 }], { ...FACTS, dryDensity_kg_m3 })[0]!.low_m * 1e6;
const levelThree = spotLimits({ min_um: 8 * 25.4, max_um: 12 * 25.4, level: 3 });

const rows: PublishedRow[] = [
  ...([[250, 3, 15, 45], [300, 3, 15, 45], [1000, 3, 15, 45], [2800, 5, 25, 75], [12_500, 15, 75, 225]] as const).flatMap(([ft2, areas, spots, readings]): PublishedRow[] => {
    const ours = () => samplingNumbers('spots-areas', ft2 * FT2, 'ft2');
    return [
      { source: PA2, quantity: `areas on ${ft2} ft²`, expected: areas, ...exact, ours: () => ours().areas },
      { source: PA2, quantity: `spots on ${ft2} ft²`, expected: spots, ...exact, ours: () => ours().spots },
      { source: PA2, quantity: `readings on ${ft2} ft²`, expected: readings, ...exact, ours: () => ours().readings },
    ];
  }),
  ...([[30, 3], [100, 3], [100.5, 4], [200, 4], [280, 5], [1250, 15]] as const).map(([m2, areas]): PublishedRow => ({ source: PA2, quantity: `areas on ${m2} m²`, expected: areas, ...exact, ours: () => samplingNumbers('spots-areas', m2).areas })),
  ...([[1, 5, 1], [1.01, 10, 2], [3, 10, 2], [10, 15, 3], [30, 20, 4], [100, 30, 6], [101, 40, 8], [200, 40, 8], [201, 50, 10]] as const).flatMap(([m2, readings, repeats]): PublishedRow[] => [
    { source: ISO_TABLE, quantity: `readings on ${m2} m²`, expected: readings, ...exact, ours: () => samplingNumbers('mean-80', m2).readings },
    { source: ISO_TABLE, quantity: `repeats on ${m2} m²`, expected: repeats, ...exact, ours: () => samplingNumbers('mean-80', m2).repeats },
  ]),
  { source: PA2, quantity: 'spot of 8 to 12 mil at level 3, least, mil', expected: 6.4, tolerance: lastDigit(9), why: 'exact', ours: () => levelThree.spotMin_m / METRES_PER_MIL },
  { source: PA2, quantity: 'spot of 8 to 12 mil at level 3, most, mil', expected: 14.4, tolerance: lastDigit(9), why: 'exact', ours: () => levelThree.spotMax_m! / METRES_PER_MIL },
  { source: 'SSPC-PA 2 (2012 on), a single value, as quoted by others', quantity: 'least of a single 100 µm', expected: 80, ...exact, ours: () => singleValueRange(100).min_um },
  { source: 'SSPC-PA 2 (2012 on), a single value, as quoted by others', quantity: 'most of a single 100 µm', expected: 120, ...exact, ours: () => singleValueRange(100).max_um },
  { source: PA2_LEVELS, quantity: 'area of 2.5, 2.1, 2.8, 3.1, 2.5 mil', expected: 2.6, ...exact, ours: () => judgeReadings(spotsAreas(2.5, 3), spotsInMil(2.5, 2.1, 2.8, 3.1, 2.5)).areas[0]!.mean_m[0] / METRES_PER_MIL },
  { source: IDENTITY, quantity: 'film of a coupon that gained 32.5 g/m² at 1300 kg/m³, µm', expected: 25, ...exact, ours: () => couponFilm_um(32.5, 1300) },
  { source: IDENTITY, quantity: 'film of 17.55 g/m² (2 L, 10 %, 1.35 kg/L, 65 % landed, 10 m²) at 1350 kg/m³, µm', expected: 13, ...exact, ours: () => couponFilm_um(17.55, 1350) },
  { source: 'ASTM D4414, as used: dry = wet · solids / (1 + thinner)', quantity: 'low bound of a comb at 156.25 µm, 20 % solids with 25 % thinner, µm dry', expected: 25, ...exact, ours: () => combs(0.2 / 1.25, [156.25, 200])[0]!.low_m * 1e6 },
  { source: 'ASTM D4414, as used; recomputed, since the sheet that carries the example is garbled', quantity: 'low bound of a comb at 8 mil, 35 % solids with 10 % thinner, mil dry', expected: 2.55, tolerance: lastDigit(2), why: 'half a unit in the last printed digit', ours: () => combs(0.35 / 1.1, [8 * 25.4, 300])[0]!.low_m / METRES_PER_MIL },
];

/** Films, what the strict and what the lenient boundary say. */
const ISO_ROWS: readonly (readonly [films: readonly number[], mean: number, strict: string, lenient: string])[] = [
  [[105, 98, 110, 120, 101], 106.8, 'fail', 'pass'],
  [[105, 98, 95, 120, 101], 103.8, 'fail', 'fail'],
  [[79, 130, 130, 130, 130], 119.8, 'fail', 'fail'],
  [[100, 100, 100, 100, 100], 100, 'pass', 'pass'],
  [[95, 101, 102, 103, 104, 105, 106, 107, 108, 109], 104, 'pass', 'pass'],
  // The limits themselves: 80 % passes, the nominal mean passes, three times the nominal film passes.
  [[80, 130, 130, 130, 130, 130], 730 / 6, 'pass', 'pass'],
  [[301, 100, 100, 100, 100, 100], 801 / 6, 'fail', 'fail'],
  [[300, 100, 100, 100, 100, 100], 800 / 6, 'pass', 'pass'],
];

describe('published numbers of surveys', () => {
  testPublished(rows);
});

describe(ISO, () => {
  it.each(ISO_ROWS)('%j: mean %d, strict %s, lenient %s', (films, mean, strict, lenient) => {
    const judged = judgeReadings(meanEighty(), gauge(...films));
    expect(judged.figures.mean_m * 1e6).toBeCloseTo(mean, 9);
    expect(judged.answer).toBe(strict);
    expect(judgeReadings(meanEighty({ boundary: 'lenient' }), gauge(...films)).answer).toBe(lenient);
  });

  it('says which check decides', () => {
    expect(judgeReadings(meanEighty(), gauge(105, 98, 110, 120, 101)).checks[0]).toMatchObject({ code: 'low-share', answer: 'fail', readings: [1], found: [0.2, 0.2], limit: 0.2 });
    expect(judgeReadings(meanEighty(), gauge(79, 130, 130, 130, 130)).checks[0]).toMatchObject({ code: 'reading-low', answer: 'fail', readings: [0] });
  });

  it('takes the correction for a rough surface off gauge readings first', () => {
    const rough = meanEighty({ correction_um: 25 });
    expect(judgeReadings(rough, gauge(125, 125, 125, 125, 125)).answer).toBe('pass');
    expect(judgeReadings(rough, gauge(124, 125, 125, 125, 125)).answer).toBe('fail');
  });
});

describe(PA2_LEVELS, () => {
  const spots = spotsInMil(2.5, 2.1, 2.8, 3.1, 2.5);
  const failing = ({ checks }: JudgedSurvey) => checks.filter(({ answer }) => answer === 'fail').map(({ code, where }) => [code, where]);
  it.each([
    [1, [['spot-low', 'spot 2'], ['spot-high', 'spot 4']]],
    [2, [['spot-low', 'spot 2']]],
    [3, []],
    [4, []],
    [5, []],
  ] as const)('2.5 to 3.0 mil at level %d', (level, faults) => {
    const judged = judgeReadings(spotsAreas(2.5, 3, level), spots);
    expect(failing(judged)).toEqual(faults);
    expect(judged.answer).toBe(faults.length === 0 ? 'pass' : 'fail');
  });

  it('8 to 12 mil: a spot at a bound passes, beyond it fails', () => {
    const withSpot = (mil: number) => judgeReadings(spotsAreas(8, 12), spotsInMil(mil, 10, 10, 10, 10)).answer;
    expect([6.4, 6.39, 14.4, 14.41].map(withSpot)).toEqual(['pass', 'fail', 'pass', 'fail']);
  });

  it('level 5 has no most, level 4 goes to 150 %', () => {
    const withSpot = (level: number, mil: number) => judgeReadings(spotsAreas(8, 12, level), spotsInMil(mil, 8, 8, 8, 8)).answer;
    expect(withSpot(4, 18)).toBe('pass');
    expect(withSpot(4, 18.1)).toBe('fail');
    expect(withSpot(5, 60)).toBe('pass');
  });
});

describe(MSC, () => {
  const tens = (...low: number[]) => gauge(...low, ...Array.from({ length: 10 - low.length }, () => 110));
  it.each([[[95], 'pass'], [[90], 'pass'], [[89.9], 'fail'], [[95, 95], 'fail'], [[], 'pass']] as const)('of ten readings %j low: %s', (low, answer) => {
    expect(judgeReadings(NINETY_TEN, tens(...low)).answer).toBe(answer);
  });
});

describe('a gauge’s units', () => {
  it('2.5 mil is 63.5 µm, as a limit and as a reading', () => {
    expect(judgeReadings({ kind: 'shop', name: 'x', eachMin_um: 63.5, eachMax_um: 63.5 }, spotsInMil(2.5, 2.5, 2.5)).answer).toBe('pass');
  });
});
