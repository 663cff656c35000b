import { describe, expect, it } from 'vitest';
import { FIRE_FACE_m_s, flowForFace_m3_s } from '../../sim/air/boothAir.ts';
import { exposureAir_m3, ruleDilution_ft3_gal } from '../../sim/air/dilution.ts';
import { blendExplosiveFraction, explosiveLimits, mixtureIndex, SEA_PRESSURE_Pa, vapourInRoom, vapourRatio } from '../../sim/air/vapour.ts';
import { CUBIC_METRES_PER_US_GALLON, METRES_PER_FOOT } from '../../sim/base/units.ts';
import { solventById } from '../../sim/materials/solvents.ts';
import { VAPOUR_TABLE, type VapourRow } from '../../sim/materials/vapourTable.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const K = 273.15;
const AT_20 = { temperature_K: 20 + K, pressure_Pa: SEA_PRESSURE_Pa };
const AT_70F = { temperature_K: (70 + 459.67) / 1.8, pressure_Pa: SEA_PRESSURE_Pa };
const FT3 = METRES_PER_FOOT ** 3;
const FT3_GAL = FT3 / CUBIC_METRES_PER_US_GALLON;
const G11 = '29 CFR 1910.94(c)(6)(ii): 4 (100 - LEL) V / LEL, with table G-11, from memory';

function named(name: string): VapourRow {
  const found = VAPOUR_TABLE.find((row) => row.name === name);
  if (found === undefined) throw new Error(`no row ${name}`);
  return found;
}

/** Name, ft³ of air to a gallon, m³ to a litre. */
const DILUTION: readonly (readonly [string, number, number])[] = [
  ['acetone', 6593, 49.3], ['n-butyl acetate', 5736, 42.9], ['n-butyl alcohol', 9916, 74.2], ['ethyl acetate', 5117, 38.3], ['ethyl alcohol', 4914, 36.8],
  ['isopropyl alcohol', 8624, 64.5], ['methyl alcohol', 4104, 30.7], ['methyl ethyl ketone', 7856, 58.8], ['toluene', 8564, 64.1], ['xylene (o)', 10454, 78.2], ['VM&P naphtha', 9866, 73.8],
];

describe('dilution air to a quarter of the lower explosive limit, with the rule\'s own table values', () => {
  testPublished(DILUTION.flatMap(([name, ft3_gal, m3_L]): PublishedRow[] => [
    { source: name === 'toluene' ? `${G11}; the rule's own example` : `${G11}; worked arithmetic`, quantity: `${name}, ft³ to a US gallon`, expected: ft3_gal, tolerance: lastDigit(0), why: 'last printed digit', ours: () => ruleDilution_ft3_gal(named(name)) },
    { source: `${G11}; worked arithmetic`, quantity: `${name}, m³ to a litre`, expected: m3_L, tolerance: lastDigit(1), why: 'last printed digit', ours: () => (ruleDilution_ft3_gal(named(name)) * FT3_GAL) / 1000 },
  ]));

  testPublished([
    { source: `${G11}; 1 US quart of toluene evaporated in 15 min, worked arithmetic`, quantity: 'toluene, ft³/min', expected: 142.7, tolerance: lastDigit(1), why: 'last printed digit', ours: () => ruleDilution_ft3_gal(named('toluene')) / 4 / 15 },
  ]);
});

/** Densities that the rows stand on where ours is another, kg/m³: ethyl acetate 902 (ours 900), and the ortho isomer of xylene. */
const PRINTED_DENSITY: Readonly<Record<string, number>> = { 'ethyl-acetate': 902, 'm-xylene': 880 };

function ratioAsPrinted(id: string, air: typeof AT_20): number {
  const solvent = solventById(id);
  return vapourRatio(solvent, air) * ((PRINTED_DENSITY[id] ?? solvent.density_kg_m3.value) / solvent.density_kg_m3.value);
}

/** Solvent, ft³ of vapour to a gallon by the gas law at 70 °F. */
const BY_GAS_LAW: readonly (readonly [string, number])[] = [
  ['acetone', 44.0], ['n-butyl-acetate', 24.5], ['n-butanol', 35.3], ['ethyl-acetate', 33.0], ['ethanol', 55.3], ['isopropanol', 42.2], ['mek', 36.0], ['toluene', 30.4], ['m-xylene', 26.8],
];

describe('vapour of a liquid by the gas law', () => {
  testPublished([
    ...BY_GAS_LAW.map(([id, expected]): PublishedRow => ({
      source: 'V = 8.345 SG 386.8 / M, worked arithmetic', quantity: `${id}, ft³ of vapour to a gallon at 70 °F`, expected, tolerance: lastDigit(1) + 0.002 * expected,
      why: 'last printed digit; handbook densities differ by 0.2 %', ours: () => ratioAsPrinted(id, AT_70F) / FT3_GAL,
    })),
    ...([['acetone', 327.6], ['mek', 268.5], ['ethyl-acetate', 246.3], ['toluene', 226.3], ['n-butyl-acetate', 182.8]] as const).map(([id, expected]): PublishedRow => ({
      source: 'density / M × 24.04 L/mol at 20 °C, worked arithmetic', quantity: `${id}, litres of vapour to a litre at 20 °C`, expected, tolerance: lastDigit(1) + 0.001 * expected,
      why: 'last printed digit; the molar volume is printed to four figures (24.055 by the gas law) and densities differ by 0.1 %', ours: () => ratioAsPrinted(id, AT_20),
    })),
  ]);
});

const MEK = [{ solvent: solventById('mek'), liquid_m3: 1e-3 }];
const WORKED = 'worked arithmetic on 29 CFR 1910.94 table G-11 and 29 CFR 1910.1000 table Z-1';

describe('shares of the limits', () => {
  const room = vapourInRoom(MEK, 120, AT_20);
  const table = explosiveLimits(solventById('mek'))[1]!;
  testPublished([
    { source: WORKED, quantity: '1 L of MEK in 120 m³, % of the air', expected: 0.224, tolerance: lastDigit(3), why: 'last printed digit', ours: () => room.airFraction * 100 },
    { source: `${WORKED}; table limit 1.8 %`, quantity: '% of the rule\'s explosive limit', expected: 12.4, tolerance: lastDigit(1), why: 'last printed digit', ours: () => (room.airFraction / table.fraction) * 100 },
    { source: 'the same with NFPA 497, 1.5 %', quantity: '% of the lower, newer limit', expected: 14.9, tolerance: lastDigit(1), why: 'last printed digit', ours: () => room.lelFraction * 100 },
    { source: `${WORKED}; 200 ppm`, quantity: 'multiple of the exposure limit', expected: 11, tolerance: lastDigit(0), why: 'last printed digit', ours: () => room.timesLimit ?? NaN },
    { source: 'Le Chatelier: MEK .4 at 1.8, toluene .3 at 1.4, n-butyl acetate .3 at 1.7 %, worked arithmetic', quantity: 'explosive limit of the blend, %', expected: 1.631, tolerance: lastDigit(3), why: 'last printed digit', ours: () => blendExplosiveFraction([{ share: 0.4, limit: 1.8 }, { share: 0.3, limit: 1.4 }, { share: 0.3, limit: 1.7 }]) },
    { source: 'Σ C/L = 200/1000 + 50/200 + 60/200, worked arithmetic; 29 CFR 1910.1000(d)(2)', quantity: 'mixture index', expected: 0.75, tolerance: 1e-12, why: 'rounding', ours: () => mixtureIndex([{ fraction: 200, limit: 1000 }, { fraction: 50, limit: 200 }, { fraction: 60, limit: 200 }]) },
  ]);

  it('uses the lower of two limits and names both', () => {
    expect(explosiveLimits(solventById('mek')).map(({ fraction }) => Number((fraction * 100).toFixed(9)))).toEqual([1.5, 1.8]);
    expect(table.source).toContain('1910.94 table G-11');
  });
});

const PINT_H = CUBIC_METRES_PER_US_GALLON / 8 / 3600;

describe('air to the exposure limits, and through a booth\'s face', () => {
  testPublished([
    ...([['acetone', 366], ['toluene', 1264], ['mek', 1500], ['n-butyl-acetate', 1361]] as const).map(([id, expected]): PublishedRow => ({
      source: 'ACGIH, Industrial Ventilation: 403 SG 1e6 K ER / (M TLV), from memory; 1 pint/h, K = 4, at the OSHA PEL, worked arithmetic',
      quantity: `${id}, ft³/min`, expected, tolerance: lastDigit(0) + 0.002 * expected, why: 'last printed digit; 403 stands for 403.4 and densities differ by 0.1 %',
      ours: () => (exposureAir_m3([{ solvent: solventById(id), liquid_m3: PINT_H }], AT_70F, 4, (solvent) => (solvent.oshaPel_ppm?.value ?? NaN) * 1e-6) * 60) / FT3,
    })),
    { source: '29 CFR 1910.107(b)(5)(i): 100 ft/min; worked arithmetic', quantity: 'through a face of 8 × 7 ft at 100 ft/min, ft³/min', expected: 5600, tolerance: 1e-6, why: 'rounding', ours: () => (flowForFace_m3_s(FIRE_FACE_m_s, 8 * 7 * METRES_PER_FOOT ** 2) * 60) / FT3 },
    { source: 'the foot is 0.3048 m', quantity: '100 ft/min, m/s', expected: 0.508, tolerance: 1e-12, why: 'rounding', ours: () => FIRE_FACE_m_s },
  ]);
});
