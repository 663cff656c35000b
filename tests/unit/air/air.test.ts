import { describe, expect, it } from 'vitest';
import { airAnswer, type AirQuestion } from '../../../sim/air/airAnswer.ts';
import { dryingFactor } from '../../../sim/air/dryingFactor.ts';
import { evaporationLaw, pressureShareAt } from '../../../sim/air/evaporationLaw.ts';
import { filmTemperature_K, stefanDrive } from '../../../sim/air/filmTemperature.ts';
import { heatTransfer_W_m2_K, massTransfer_m_s } from '../../../sim/air/gasTransfer.ts';
import { heatedAir, makeAir } from '../../../sim/air/moistAir.ts';
import type { AirSpec } from '../../../sim/job/schema.ts';
import { moleFractions } from '../../../sim/materials/blend.ts';
import { solventById } from '../../../sim/materials/solvents.ts';
import { changedMixSpec, genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';
import type { Mix } from '../../../sim/mix/mix.ts';

const K = 273.15;
const USUAL: AirSpec = { temperature_C: 21, humidity_percent: 50, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 };

function air(change: Partial<AirSpec> = {}) {
  return makeAir({ ...USUAL, ...change }, '/air');
}

function mix(thinner: string): Mix {
  return makeMix(genericMixSpec('clear-dope', thinner, 1), '/mix');
}

describe('makeAir', () => {
  it('has a dew point below the wet bulb below the air, everywhere in its range', () => {
    for (let temperature_C = -20; temperature_C <= 60; temperature_C += 4) {
      for (const humidity_percent of [0, 0.05, 0.5, 5, 20, 50, 80, 99, 100]) {
        for (const altitude_m of [-400, 0, 5000]) {
          const { dewPoint_K, wetBulb_K, temperature_K } = air({ temperature_C, humidity_percent, altitude_m });
          const place = `${temperature_C} °C, ${humidity_percent} %, ${altitude_m} m`;
          // Both are solved to 0.001 K.
          expect(dewPoint_K, place).toBeLessThanOrEqual(wetBulb_K + 0.002);
          expect(wetBulb_K, place).toBeLessThanOrEqual(temperature_K + 0.002);
          expect(dewPoint_K, place).toBeGreaterThan(173.15);
        }
      }
    }
  });

  it('takes totally dry air as 0.1 % and says so', () => {
    const dry = air({ humidity_percent: 0 });
    expect(dry.relativeHumidityFraction).toBeCloseTo(0.001, 9);
    expect(dry.warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/0 % is taken as 0\.1 %/)]);
  });

  it.each<[string, Partial<AirSpec>, RegExp[]]>([
    ['usual air', {}, []],
    ['the edge of the window', { temperature_C: 15.6, humidity_percent: 75 }, []],
    ['cold air', { temperature_C: 15 }, [/60 °F.*FAA airframe handbook.*AC 43\.13-1B/]],
    ['frost', { temperature_C: -1 }, [/below freezing/, /60 °F/]],
    ['hot air', { temperature_C: 33 }, [/90 °F.*TM 55-1500-345-23/]],
    ['humid air', { humidity_percent: 76 }, [/75 %.*TM 55-1500-345-23.*AC 43\.13-1B/]],
  ])('advises on %s', (_what, change, texts) => {
    expect(air(change).warnings.map(({ text }) => text)).toEqual(texts.map((text) => expect.stringMatching(text) as unknown));
  });

  it.each<[Partial<AirSpec>, string]>([
    [{ temperature_C: 61 }, '/air: temperature = 61 °C is not from -20 to 60 °C'],
    [{ humidity_percent: 101 }, '/air: humidity = 101 % is not from 0 to 100 %'],
    [{ humidity_percent: NaN }, '/air: humidity = NaN %'],
    [{ altitude_m: 9000 }, '/air: altitude = 9000 m'],
    [{ speed_m_s: -1 }, '/air: air speed = -1 m/s'],
  ])('refuses %o', (change, message) => {
    expect(() => air(change)).toThrow(message);
  });
});

describe('heatedAir', () => {
  it('keeps moisture and dew point', () => {
    const cold = air({ temperature_C: 15, humidity_percent: 80, altitude_m: 700 });
    const warm = heatedAir(cold, 23 + K);
    expect(warm.humidityRatio).toBe(cold.humidityRatio);
    expect(Math.abs(warm.dewPoint_K - cold.dewPoint_K)).toBeLessThan(0.002);
    expect(warm.relativeHumidityFraction).toBeLessThan(cold.relativeHumidityFraction);
  });

  it('refuses to go below the dew point', () => {
    expect(() => heatedAir(air({ humidity_percent: 80 }), 10 + K)).toThrow(/colder than its dew point/);
  });
});

describe('film temperature', () => {
  const toluene = [{ solvent: solventById('toluene'), moleFraction: 1 }];

  it('is warmer with two faces, and colder in thin air', () => {
    expect(filmTemperature_K(air(), toluene, 2)).toBeGreaterThan(filmTemperature_K(air(), toluene, 1));
    expect(filmTemperature_K(air({ altitude_m: 3000 }), toluene, 2)).toBeLessThan(filmTemperature_K(air(), toluene, 2));
  });

  it('is the air’s where nothing evaporates', () => {
    const none = [{ solvent: solventById('toluene'), moleFraction: 0 }];
    expect(filmTemperature_K(air(), none, 1)).toBeCloseTo(21 + K, 6);
  });

  it('stays finite for the quickest solvent in the hottest, thinnest air', () => {
    const acetone = [{ solvent: solventById('acetone'), moleFraction: 1 }];
    const hot = air({ temperature_C: 60, altitude_m: 5000, humidity_percent: 5 });
    const film_K = filmTemperature_K(hot, acetone, 2);
    expect(film_K).toBeGreaterThan(hot.temperature_K - 80);
    expect(film_K).toBeLessThan(hot.temperature_K);
  });
});

describe('evaporationLaw', () => {
  it('comes to the film temperature of the single solvents', () => {
    for (const thinner of ['fast', 'general', 'retarded']) {
      for (const faces of [1, 2] as const) {
        const of = mix(thinner);
        const law = evaporationLaw(air(), of);
        const share = moleFractions(of.solvents);
        const quick = new Set(of.fast.parts.map(({ solvent }) => solvent));
        const x = share.reduce((sum, { solvent, moleFraction }) => sum + (quick.has(solvent) ? moleFraction : 0), 0);
        const taken = (kelvin: number) =>
          ([[law.fast, x], [law.slow, 1 - x]] as const).reduce((sum, [each, fraction]) => sum + each.latentHeat_J_m3 * each.rate_m_s * stefanDrive(fraction * pressureShareAt(law, each, kelvin)), 0);
        let [low, high] = [230, law.air.temperature_K];
        for (let i = 0; i < 40; i++) {
          const middle = (low + high) / 2;
          if (faces * law.heatTransfer_W_m2_K * (law.air.temperature_K - middle) > taken(middle)) low = middle;
          else high = middle;
        }
        // The class gives off its solvents as mixed, the single ones the quicker first. By the mole MEK takes 8 %
        // less heat than toluene, so the class cools more, by 2 % of a chill of 8 to 15 K.
        expect(Math.abs(low - filmTemperature_K(air(), share, faces)), `${thinner}, ${faces}`).toBeLessThan(0.3);
      }
    }
  });

  it('holds heat and mass transfer together (Chilton and Colburn)', () => {
    // h/k = ρ c_p Le^⅔; for toluene Le is 2.74 at 20 °C (Fuller) and ρ c_p 1210 J/(m³ K).
    const at20 = air({ temperature_C: 20 });
    expect(heatTransfer_W_m2_K(at20) / massTransfer_m_s(at20, solventById('toluene')) / (1210 * 2.74 ** (2 / 3))).toBeCloseTo(1, 2);
  });

  it('quickens as the root of the air speed, from the floor of 0.1 m/s up', () => {
    const rate = (speed_m_s: number) => evaporationLaw(air({ speed_m_s }), mix('general')).slow.rate_m_s;
    expect(rate(1.2) / rate(0.3)).toBeCloseTo(2, 10);
    expect(rate(0)).toBe(rate(0.1));
  });

  it('has an empty class that gives off nothing', () => {
    const { fast, slow } = evaporationLaw(air(), { fast: mix('general').fast, slow: { volumeFraction: 0, parts: [], molarVolume_m3_mol: 0, relativeEvaporation: 0 } });
    expect(slow.rate_m_s).toBe(0);
    expect(slow.pressureShare).toHaveLength(fast.pressureShare.length);
    expect(slow.pressureShare.every((share) => share === 0)).toBe(true);
  });

  it('reads its table between nodes to 1e-4 and holds the ends', () => {
    const law = evaporationLaw(air(), mix('general'));
    const [a, b] = [291.25, 291.5].map((kelvin) => pressureShareAt(law, law.fast, kelvin));
    // Pressure grows 5.5 % a degree: the bend over 0.25 K is (0.25 · 0.055)²/8.
    expect(Math.abs(pressureShareAt(law, law.fast, 291.375) / Math.sqrt(a! * b!) - 1)).toBeLessThan(1e-4);
    expect(pressureShareAt(law, law.fast, 100)).toBe(law.fast.pressureShare[0]);
    expect(pressureShareAt(law, law.fast, 400)).toBe(law.fast.pressureShare.at(-1));
  });
});

describe('dryingFactor', () => {
  it('is 1 by both at 70 °F and moves less in the model than by the rule', () => {
    const factor = (celsius: number) => dryingFactor(air({ temperature_C: celsius }), mix('general').solvents, 2);
    const [at70, at60, at80] = [factor((70 - 32) / 1.8), factor((60 - 32) / 1.8), factor((80 - 32) / 1.8)];
    expect([at70.ruleRatio, at70.modelRatio].map((ratio) => ratio.toFixed(9))).toEqual(['1.000000000', '1.000000000']);
    expect(at60.ruleRatio).toBeCloseTo(2, 9);
    expect(at60.modelRatio).toBeGreaterThan(1.1);
    expect(at60.modelRatio).toBeLessThan(2);
    expect(at80.modelRatio).toBeGreaterThan(0.5);
    expect(at80.modelRatio).toBeLessThan(0.9);
  });
});

describe('airAnswer', () => {
  const spec = genericMixSpec('clear-dope', 'general', 1);
  const asked = (change: Partial<AirQuestion> = {}): AirQuestion => ({
    mix: makeMix(spec, '/mix'), faces: 2, ceiling_K: 32 + K,
    retarded: [10, 20].map((percent) => ({ retarder: 'n-butyl alcohol', retarderFraction: percent / 100, mix: makeMix(changedMixSpec(spec, { retarder_percent: percent }), '/mix') })),
    ...change,
  });
  const damp = air({ temperature_C: 18, humidity_percent: 70 });

  it('warms the room just enough', () => {
    const { warmEnough_K, blushMargin_K } = airAnswer(damp, asked());
    expect(blushMargin_K).toBeLessThan(-1);
    const margin = (kelvin: number) => airAnswer(heatedAir(damp, kelvin), asked()).blushMargin_K;
    expect(margin(warmEnough_K! + 0.01)).toBeGreaterThan(0);
    expect(margin(warmEnough_K! - 0.05)).toBeLessThan(0);
  });

  it('finds no warmth up to a low ceiling, nor one that is passed already', () => {
    expect(airAnswer(damp, asked({ ceiling_K: 19 + K })).warmEnough_K).toBeNull();
    expect(airAnswer(damp, asked({ ceiling_K: 10 + K })).warmEnough_K).toBeNull();
  });

  it('leaves clear air as it is', () => {
    const clear = airAnswer(air({ humidity_percent: 40 }), asked());
    expect(clear.blushMargin_K).toBeGreaterThan(0);
    expect(clear.warmEnough_K).toBe(21 + K);
  });

  it('agrees with the critical humidity on both sides', () => {
    const critical = airAnswer(air(), asked()).criticalHumidityFraction * 100;
    expect(airAnswer(air({ humidity_percent: critical + 0.5 }), asked()).blushMargin_K).toBeLessThan(0);
    expect(airAnswer(air({ humidity_percent: critical - 0.5 }), asked()).blushMargin_K).toBeGreaterThan(0);
  });

  it('finds the film warmer the more retarder it holds', () => {
    const { film_K, retarders } = airAnswer(damp, asked());
    expect(retarders[0]!.film_K).toBeGreaterThan(film_K);
    expect(retarders[1]!.film_K).toBeGreaterThan(retarders[0]!.film_K);
    expect(retarders[1]!.blushMargin_K).toBeCloseTo(retarders[1]!.film_K - damp.dewPoint_K, 12);
  });
});
