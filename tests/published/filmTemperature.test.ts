import { describe, expect, it } from 'vitest';
import { criticalHumidityFraction, filmTemperature_K } from '../../sim/air/filmTemperature.ts';
import { makeAir, type MoistAir } from '../../sim/air/moistAir.ts';
import type { MolePart } from '../../sim/materials/blend.ts';
import { solventById } from '../../sim/materials/solvents.ts';
import { thinnerById } from '../../sim/materials/thinners.ts';
import { testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const K = 273.15;
const BALANCE = 'Reference computation in another program: wet-bulb balance for solvents (W. K. Lewis, Trans. ASME 44, 1922; Chilton-Colburn; Fuller diffusion)';

function dry(temperature_C: number): MoistAir {
  return makeAir({ temperature_C, humidity_percent: 0, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 }, '/air');
}

/** Film temperatures, °C, and critical humidities, %, one face then two. */
function rows(name: string, temperature_C: number, moles: readonly MolePart[], films: readonly number[], humidities: readonly number[], films_K: number, why: string): PublishedRow[] {
  const air = dry(temperature_C);
  return ([1, 2] as const).flatMap((faces, i): PublishedRow[] => {
    const ours_K = () => filmTemperature_K(air, moles, faces);
    const label = `${name}, ${faces === 1 ? 'one face' : 'two faces'}, air ${temperature_C} °C`;
    return [
      ...(films[i] === undefined ? [] : [{ source: BALANCE, quantity: `film of ${label}, °C`, expected: films[i], tolerance: films_K, why, ours: () => ours_K() - K }]),
      {
        source: BALANCE, quantity: `critical humidity, ${label}, %`, expected: humidities[i]!, tolerance: 0.5 + 0.07 * films_K * humidities[i]!,
        why: 'half of the last printed digit, and 7 % of it for each degree of the film, as vapour pressure goes', ours: () => 100 * criticalHumidityFraction(air, ours_K()),
      },
    ];
  });
}

/** One face and two at 20 °C; critical humidity one and two at 20 °C, then at 30 °C. */
const PURE: Readonly<Record<string, readonly number[]>> = {
  acetone: [-11.9, -4.5, 9, 18, 7, 14],
  'methyl-acetate': [-10.3, -3.2, 11, 20, 8, 15],
  'ethyl-acetate': [-0.7, 5.3, 25, 38, 18, 29],
  mek: [-0.6, 5.3, 25, 38, 19, 30],
  ethanol: [2.1, 7.3, 30, 44, 22, 34],
  isopropanol: [5.0, 9.6, 37, 51, 28, 40],
  toluene: [9.4, 13.3, 50, 65, 41, 56],
  mibk: [12.1, 15.2, 60, 74, 50, 64],
  'n-butyl-acetate': [14.5, 16.8, 71, 82, 60, 73],
  'n-butanol': [16.0, 17.7, 78, 87, 66, 78],
};

describe('film temperature of pure solvents', () => {
  const why = 'vapour pressures of different tables differ by 4 % (n-butanol 11 %), which moves a film by up to 0.5 K';
  testPublished(Object.entries(PURE).flatMap(([id, [one, two, ...humid]]) => {
    const moles = [{ solvent: solventById(id), moleFraction: 1 }];
    return [...rows(id, 20, moles, [one!, two!], humid.slice(0, 2), 0.5, why), ...rows(id, 30, moles, [], humid.slice(2), 0.5, why)];
  }));
});

/** By air temperature: one face, two faces, critical humidity one and two. */
const BLENDS: Readonly<Record<string, Readonly<Record<number, readonly number[]>>>> = {
  fast: { 18.3: [1.6, 6.9, 33, 47], 21.1: [3.0, 8.6, 30, 45], 23.9: [4.3, 10.2, 28, 42], 30: [7.1, 13.6, 24, 37] },
  general: { 18.3: [5.3, 9.9, 42, 58], 21.1: [6.9, 11.7, 40, 55], 23.9: [8.4, 13.5, 37, 52], 30: [11.5, 17.3, 32, 47] },
  retarded: { 18.3: [11.8, 14.5, 66, 78], 21.1: [13.8, 16.7, 63, 76], 23.9: [15.6, 18.9, 60, 73], 30: [19.5, 23.4, 53, 68] },
};

describe('film temperature of thinners', () => {
  const why = 'last printed digit (0.05 K), and n-butanol at a vapour pressure 5 % apart in at most a fifth of the moles (0.05 K)';
  testPublished(Object.entries(BLENDS).flatMap(([id, byAir]) =>
    Object.entries(byAir).flatMap(([celsius, [one, two, ...humid]]) => rows(`${id} thinner`, Number(celsius), thinnerById(id).moles, [one!, two!], humid, 0.1, why)),
  ));
});

describe('blush against the humidities that the trade prints', () => {
  const air = dry(21.1);
  const critical = (id: string, faces: 1 | 2) => 100 * criticalHumidityFraction(air, filmTemperature_K(air, thinnerById(id).moles, faces));

  it('brackets AC 43.13-1B 2-21 (below 65 %) and the FAA airframe handbook (usually above 80 %) on open cloth', () => {
    const [general, retarded] = [critical('general', 2), critical('retarded', 2)];
    console.table({ general, retarded });
    expect(general).toBeGreaterThan(50);
    // A usual thinner blushes before the circular's limit is passed, a retarded one between the two.
    expect(general).toBeLessThan(65);
    expect(retarded).toBeGreaterThan(65);
    expect(retarded).toBeLessThan(80);
  });

  it('at 21.1 °C and 65 % blushes the general thinner and spares the retarded one by 2.4 K', () => {
    const dew_K = makeAir({ temperature_C: 21.1, humidity_percent: 65, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 }, '/air').dewPoint_K;
    const margin = (id: string) => filmTemperature_K(air, thinnerById(id).moles, 2) - dew_K;
    expect(margin('general')).toBeLessThan(0);
    // Printed to 0.1 K, from two figures so rounded.
    expect(Math.abs(margin('retarded') - 2.4)).toBeLessThan(0.1);
  });

  it('is worse in hot air of the same humidity', () => {
    const at = (celsius: number) => criticalHumidityFraction(dry(celsius), filmTemperature_K(dry(celsius), thinnerById('general').moles, 2));
    expect(at(30)).toBeLessThan(at(18.3) - 0.05);
  });
});
