import { describe } from 'vitest';
import { heatedAir, makeAir } from '../../sim/air/moistAir.ts';
import { dewPoint_K, humidityRatio, ratioFromWetBulb, saturationPressure_Pa, standardPressure_Pa, vapourFromRatio_Pa } from '../../sim/air/psychrometrics.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const K = 273.15;
const ATMOSPHERE_Pa = 101325;
const TABLE_3 = 'ASHRAE Handbook - Fundamentals (2017) ch. 1 table 3, as asserted in the tests of the open psychrolib';
const EXAMPLE = 'ASHRAE Handbook - Fundamentals (2017) ch. 1 example 1, as asserted in the tests of the open psychrolib';
const FORMULAS = 'Reference computation from ASHRAE Handbook - Fundamentals (2017) ch. 1 eq. 3, 5, 6, 20, 33, 35, in another program';
const MAGNUS = 'Reference computation: Magnus formula with 17.62 and 243.12 °C (WMO guide to instruments, constants from memory)';

function room(temperature_C: number, humidity_percent: number) {
  return makeAir({ temperature_C, humidity_percent, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 }, '/air');
}

function saturation(celsius: number, pressure_Pa: number): PublishedRow {
  return { source: TABLE_3, quantity: `saturation pressure at ${celsius} °C, Pa`, expected: pressure_Pa, tolerance: 3e-4 * pressure_Pa, why: 'the table was printed from another formulation, 0.03 % apart', ours: () => saturationPressure_Pa(celsius + K) };
}

function dewAndBulb([celsius, percent, dew, bulb, , grams]: readonly number[]): PublishedRow[] {
  const label = `at ${celsius} °C, ${percent} %`;
  return [
    { source: FORMULAS, quantity: `dew point ${label}, °C`, expected: dew!, tolerance: lastDigit(2) + 0.001, why: 'last printed digit, and the 0.001 K to which it is solved', ours: () => room(celsius!, percent!).dewPoint_K - K },
    { source: FORMULAS, quantity: `wet bulb ${label}, °C`, expected: bulb!, tolerance: lastDigit(2) + 0.001, why: 'last printed digit, and the 0.001 K to which it is solved', ours: () => room(celsius!, percent!).wetBulb_K - K },
    { source: FORMULAS, quantity: `moisture ${label}, g/kg`, expected: grams!, tolerance: lastDigit(2), why: 'last printed digit', ours: () => room(celsius!, percent!).humidityRatio * 1000 },
  ];
}

/** °C, RH %, dew, wet bulb, Magnus dew, g/kg. */
const ROWS = [
  [10, 80, 6.71, 8.29, 6.71, 6.09], [15, 65, 8.48, 11.38, 8.47, 6.88], [20, 50, 9.27, 13.78, 9.26, 7.26],
  [20, 65, 13.23, 15.8, 13.22, 9.47], [20, 85, 17.4, 18.28, 17.4, 12.45], [21.1, 65, 14.27, 16.77, 14.26, 10.15],
  [25, 60, 16.7, 19.47, 16.69, 11.9], [25, 80, 21.31, 22.38, 21.31, 15.96], [30, 40, 14.94, 20.06, 14.93, 10.6],
] as const;

const MAGNUS_ROWS = [...ROWS.map(([t, rh, , , magnus]) => [t, rh, magnus] as const), [20, 30, 1.88], [20, 80, 16.44], [24, 70, 18.19]] as const;

describe('moist air against published tables', () => {
  testPublished([
    saturation(-20, 103.24), saturation(-5, 401.74), saturation(5, 872.6), saturation(25, 3169.7), saturation(50, 12351.3), saturation(100, 101418),
    ...[[5, 0.005425], [25, 0.020173]].map(([celsius, ratio]) => ({
      source: TABLE_3, quantity: `moisture of saturated air at ${celsius} °C, kg/kg`, expected: ratio!, tolerance: 5e-3 * ratio!, why: 'the table holds the enhancement factor, 0.4 to 0.5 %, which the equations leave out',
      ours: () => humidityRatio(saturationPressure_Pa(celsius! + K), ATMOSPHERE_Pa),
    })),
    ...[[500, 95461], [1000, 89875]].map(([altitude, pressure]) => ({
      source: 'ASHRAE Handbook - Fundamentals (2017) ch. 1 table 1, as asserted in the tests of the open psychrolib', quantity: `pressure at ${altitude} m, Pa`, expected: pressure!, tolerance: 1, why: 'the table prints whole pascals from rounded constants', ours: () => standardPressure_Pa(altitude!),
    })),
    { source: TABLE_3, quantity: 'moisture at 30 °C, wet bulb 25 °C, 95 461 Pa, kg/kg', expected: 0.0192281, tolerance: 3e-4 * 0.0192281, why: 'the source asserts it to 0.03 %', ours: () => ratioFromWetBulb(30 + K, 25 + K, 95461) },
    { source: EXAMPLE, quantity: 'moisture at 40 °C, wet bulb 20 °C, kg/kg', expected: 0.0065, tolerance: 1e-4, why: 'read off a chart to 0.1 g/kg, as the source asserts it', ours: () => ratioFromWetBulb(40 + K, 20 + K, ATMOSPHERE_Pa) },
    { source: EXAMPLE, quantity: 'dew point of that air, °C', expected: 7, tolerance: lastDigit(0), why: 'last digit (read off a chart)', ours: () => dewPoint_K(40 + K, vapourFromRatio_Pa(ratioFromWetBulb(40 + K, 20 + K, ATMOSPHERE_Pa), ATMOSPHERE_Pa)) - K },
    { source: EXAMPLE, quantity: 'relative humidity of that air, %', expected: 14, tolerance: lastDigit(0), why: 'last digit (read off a chart)', ours: () => (100 * vapourFromRatio_Pa(ratioFromWetBulb(40 + K, 20 + K, ATMOSPHERE_Pa), ATMOSPHERE_Pa)) / saturationPressure_Pa(40 + K) },
    ...ROWS.flatMap(dewAndBulb),
    ...MAGNUS_ROWS.map(([celsius, percent, dew]): PublishedRow => ({
      source: MAGNUS, quantity: `Magnus dew point at ${celsius} °C, ${percent} %, °C`, expected: dew, tolerance: 0.04 + lastDigit(2), why: 'Magnus misses the vapour pressure by up to 0.3 % near 0 °C, which grows 7 % a degree', ours: () => room(celsius, percent).dewPoint_K - K,
    })),
  ]);
});

describe('warmed air with its own moisture', () => {
  testPublished([
    [15, 80, 21, 54.8], [10, 90, 21, 44.4], [18, 75, 24, 51.9], [20, 70, 26, 48.7],
  ].map(([from, percent, to, warmed]): PublishedRow => ({
    source: FORMULAS, quantity: `humidity of ${from} °C, ${percent} % warmed to ${to} °C, %`, expected: warmed!, tolerance: lastDigit(1), why: 'last printed digit', ours: () => 100 * heatedAir(room(from!, percent!), to! + K).relativeHumidityFraction,
  })).concat([[15, 80, 21, 11.58], [10, 90, 21, 8.44]].map(([from, percent, to, dew]) => ({
    source: FORMULAS, quantity: `its dew point (${from} °C, ${percent} %, warmed to ${to} °C), °C`, expected: dew!, tolerance: lastDigit(2) + 0.001, why: 'last printed digit, and the 0.001 K to which it is solved', ours: () => heatedAir(room(from!, percent!), to! + K).dewPoint_K - K,
  }))));
});
