import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../sim/base/noise.ts';
import type { CardReadings } from '../../../../sim/gun/card/cardReadings.ts';
import { proveSetUp } from '../../../../sim/gun/card/proveSetUp.ts';
import { UNMEASURED } from '../../../../sim/gun/knownWithin.ts';
import { makeSetUp } from '../../../../sim/gun/setUpFromSpec.ts';
import { strokeProfile } from '../../../../sim/gun/strokeProfile.ts';
import { defaultSetUp } from '../../../../sim/job/defaults.ts';
import type { CardSpec } from '../../../../sim/job/schema.ts';
import { FAN, PROFILES, readCard } from '../../../helpers/fanCards.ts';

const SPEC = defaultSetUp('low-pressure', 'gun', 'Gun');
const OPTIONS = { liquid: { volumeSolidsFraction: 0.1, solidsDensity_kg_m3: 1250 }, seed: 1 };
const caught = { volume_mL: 90, seconds: 30, volumeWithin_mL: 1.8, secondsWithin_s: 0.45 };
const widths = [{ distance_mm: 150, width_mm: 165 }, { distance_mm: 250, width_mm: 255 }];
const foil = { gain_g: 0.9, gainWithin_g: 0.018, length_mm: 300, strokes: 4, speed_m_s: 0.3, speedWithin_percent: 10 };

function csvOf({ place_m, film }: CardReadings): string {
  return ['x_mm,film_um', ...Array.from(place_m, (place, i) => `${place * 1000},${film[i]}`)].join('\n');
}

const readings = csvOf(readCard(FAN, 41, 0.01, seededRandom(6)));
const prove = (card: CardSpec, spec = SPEC) => proveSetUp(spec, card, OPTIONS);
const changes = (card: CardSpec, spec = SPEC) => Object.fromEntries(prove(card, spec).changed.map(({ key, from, to }) => [key, [from, to]]));

describe('a set-up proved on a card', () => {
  it('is as stated where the card says nothing', () => {
    expect(prove({})).toEqual({ setUp: SPEC, changed: [], fit: null, opening: null, faults: [], warnings: [] });
    expect(prove({ widths: [] }).setUp).toEqual(SPEC);
  });

  it('takes the fluid rate from the cup', () => {
    const { setUp, changed } = prove({ caught: { ...caught, volume_mL: 75 } });
    expect(setUp).toEqual({ ...SPEC, fluidRate_mL_min: 150, knownWithin: { fluidRate_percent: 2.83 } });
    expect(changed).toMatchObject([{ key: 'fluidRate_mL_min', from: 180, to: 150 }]);
    expect(changed[0]!.within).toBeCloseTo(150 * Math.hypot(1.8 / 75, 0.015), 9);
  });

  it('names a measured number although it came out as stated', () => {
    expect(changes({ caught })).toEqual({ fluidRate_mL_min: [180, 180] });
  });

  it('takes width, profile and the range about it from readings at one distance', () => {
    const { setUp, fit, changed, faults } = prove({ readings, distance_mm: 180 });
    expect(setUp.fan).toMatchObject({ atDistance_mm: 180, profile: { family: fit!.chosen.family } });
    expect(setUp.fan.width_mm).toBeCloseTo(1000 * fit!.chosen.width_m, 0);
    expect(setUp.distanceRange_mm).toEqual([144, 225]);
    expect(setUp.knownWithin!.width_percent).toBeGreaterThan(0);
    expect(changed.find(({ key }) => key === 'width_mm')!.within).toBeGreaterThan(0);
    expect(faults).toEqual([]);
    expect(fit!.intervals.width).not.toBeNull();
  });

  it('takes the family that is asked for, or the readings as they are', () => {
    const asked = (family: 'triangle' | 'table') => proveSetUp(SPEC, { readings }, { ...OPTIONS, family });
    expect(asked('triangle').setUp.fan.profile).toEqual({ family: 'triangle' });
    expect(asked('triangle').fit!.chosen.family).toBe('triangle');
    expect(asked('table').setUp.fan.profile.family).toBe('table');
    expect(asked('table').setUp.knownWithin!.beta1).toBeUndefined();
  });

  it('forgets how well a fan was known that it replaces, and keeps the rest', () => {
    const known = { ...SPEC, knownWithin: { width_percent: 9, beta1: 0.9, fluidRate_percent: 4 } };
    const { knownWithin } = proveSetUp(known, { readings }, { ...OPTIONS, family: 'triangle' }).setUp;
    expect(Object.keys(knownWithin!)).toEqual(['width_percent', 'fluidRate_percent']);
    expect(knownWithin!.fluidRate_percent).toBe(4);
    expect(knownWithin!.width_percent).toBeLessThan(9);
  });

  it('takes origin, range and width at the card from widths at two distances', () => {
    const { setUp, opening, changed } = prove({ widths, widthWithin_mm: 4 });
    expect(opening!.slope.value).toBeCloseTo(0.9, 12);
    expect(setUp.fan).toMatchObject({ width_mm: 210, atDistance_mm: 200, origin_mm: -33.3, profile: SPEC.fan.profile });
    expect(setUp.distanceRange_mm).toEqual([150, 250]);
    expect(setUp.knownWithin).toEqual({ width_percent: 1.35 });
    expect(changed.map(({ key }) => key)).toEqual(['width_mm', 'origin_mm', 'nearest_mm', 'farthest_mm']);
    const fan = makeSetUp(setUp).fan;
    for (const { distance_mm, width_mm } of widths) {
      expect(fan.width_m * ((distance_mm / 1000 - fan.origin_m) / (fan.atDistance_m - fan.origin_m)) * 1000).toBeCloseTo(width_mm, 0);
    }
  });

  it('puts a card that lies outside the widths into the range and says that the width there is drawn on', () => {
    const { setUp, warnings } = prove({ widths, distance_mm: 300 });
    expect(setUp.distanceRange_mm).toEqual([150, 300]);
    expect(setUp.fan.width_mm).toBe(300);
    expect(warnings.map(({ code }) => code)).toEqual(['distance-range']);
  });

  it('takes one width where it was read', () => {
    const { setUp } = prove({ widths: [{ distance_mm: 160, width_mm: 180 }] });
    expect(setUp.fan).toMatchObject({ width_mm: 180, atDistance_mm: 160, profile: SPEC.fan.profile });
    expect(setUp.distanceRange_mm).toEqual([128, 200]);
    expect(setUp.knownWithin).toEqual({ width_percent: 2.78 });
  });

  it('stretches tapers and measured places with a width by tape', () => {
    const one = { widths: [{ distance_mm: 200, width_mm: 300 }] };
    expect(prove(one, { ...SPEC, fan: { ...SPEC.fan, profile: { family: 'flat-top', taper_mm: 100 } } }).setUp.fan.profile).toEqual({ family: 'flat-top', taper_mm: 150 });
    const table = { family: 'table' as const, place_mm: [-100, 0, 100], film: [0, 1, 0] };
    expect(prove(one, { ...SPEC, fan: { ...SPEC.fan, profile: table } }).setUp.fan.profile).toEqual({ ...table, place_mm: [-150, 0, 150] });
  });

  it('says when tape and readings disagree', () => {
    const texts = (width_mm: number) => prove({ readings: csvOf(readCard({ ...FAN, profile: PROFILES['parabola']! }, 41, 0.01)), widths: [{ distance_mm: 150, width_mm: width_mm - 50 }, { distance_mm: 250, width_mm: width_mm + 50 }] }).warnings.map(({ text }) => text);
    expect(texts(210)).toEqual([]);
    expect(texts(240)).toEqual([expect.stringMatching(/By tape the fan is 240 mm wide at the card, by its readings 210 mm/)]);
  });

  it('takes the efficiency from the foil by the fluid rate just caught', () => {
    const { setUp } = prove({ foil, caught, distance_mm: 180 });
    expect(setUp.transfer).toEqual({ ...SPEC.transfer, efficiency_percent: 60, atDistance_mm: 180 });
    expect(setUp.knownWithin!.efficiency_percent).toBeCloseTo(100 * Math.hypot(0.02, 0.1, 0.025), 2);
    const alone = prove({ foil });
    expect(alone.setUp.transfer.efficiency_percent).toBe(60);
    expect(alone.setUp.knownWithin!.efficiency_percent).toBeCloseTo(100 * Math.hypot(0.02, 0.1, UNMEASURED.fluidRateRatio), 2);
  });

  it('takes the efficiency from a comb so that the stroke has that film in its middle', () => {
    const still = { ...SPEC, drops: { ...SPEC.drops, solventSpeed: 0 } };
    const { setUp } = prove({ comb: { low_um: 25, high_um: 35, strokes: 1, speed_m_s: 0.3, speedWithin_percent: 5 }, distance_mm: 250 }, still);
    const { fan, fluidRate_m3_s } = makeSetUp(setUp);
    const film_um = (strokeProfile(fan)(0) * (200 / 250) * fluidRate_m3_s * (setUp.transfer.efficiency_percent / 100) * 1e6) / 0.3;
    // The file holds a tenth of a per cent of some 60.
    expect(Math.abs(film_um - 30)).toBeLessThan(30 * (0.05 / 50));
    expect(setUp.transfer.atDistance_mm).toBe(250);
  });

  it('says when foil and comb disagree, and takes the foil', () => {
    const { setUp, warnings } = prove({ foil, comb: { low_um: 10, high_um: 12, strokes: 1, speed_m_s: 0.3, speedWithin_percent: 1 } });
    expect(setUp.transfer.efficiency_percent).toBe(60);
    expect(warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/By the foil 60 % of the solids landed, by the comb/)]);
  });

  it('keeps the card and the order of keys, so that the job is written as it is read', () => {
    const spec = { ...SPEC, card: { caught } };
    expect(Object.keys(prove({ caught }, spec).setUp)).toEqual([...Object.keys(SPEC), 'knownWithin', 'card']);
  });

  it.each([
    ['readings that show no fan', { readings: 'x_mm,film_um\n0,1\n' }, /too few/],
    ['widths at one distance', { widths: [{ distance_mm: 200, width_mm: 200 }, { distance_mm: 200, width_mm: 210 }] }, /10 mm apart/],
    ['a foil that gained more than was sprayed', { foil: { ...foil, gain_g: 9 } }, /foil: 600 %/],
    ['a cup that says nothing', { caught: { ...caught, secondsWithin_s: 60 } }, /catch cup/],
    ['a fan wider than any', { widths: [{ distance_mm: 150, width_mm: 900 }, { distance_mm: 250, width_mm: 1500 }], distance_mm: 600 }, /fan\/width_mm/],
  ] satisfies readonly (readonly [string, CardSpec, RegExp])[])('refuses %s', (_, card, message) => {
    expect(() => prove(card)).toThrow(message);
  });
});
