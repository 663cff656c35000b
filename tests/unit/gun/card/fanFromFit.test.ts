import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../sim/base/noise.ts';
import type { CardReadings } from '../../../../sim/gun/card/cardReadings.ts';
import { fanFromFit, isLopsided, tableFromReadings } from '../../../../sim/gun/card/fanFromFit.ts';
import { fitFan } from '../../../../sim/gun/card/fitFan.ts';
import { fitIntervals } from '../../../../sim/gun/card/fitIntervals.ts';
import { makeSetUp } from '../../../../sim/gun/setUpFromSpec.ts';
import { strokeProfile } from '../../../../sim/gun/strokeProfile.ts';
import { defaultSetUp } from '../../../../sim/job/defaults.ts';
import { betaProfile, FAN, PROFILES, readCard, type FanOnCard } from '../../../helpers/fanCards.ts';

const SPEC = defaultSetUp('low-pressure', 'proved', 'Proved');

function best(readings: CardReadings) {
  const fit = fitFan(readings).fits[0]!;
  return { fit, intervals: fitIntervals(readings, fit.family, 1) };
}

/** The card's own fan, spread so that it is 1 over the whole, beside the set-up's stroke: the largest difference over the peak. */
function worstDifference(fanOnCard: FanOnCard, fan: typeof SPEC.fan): number {
  const film = strokeProfile(makeSetUp({ ...SPEC, fan }).fan);
  const half_m = fanOnCard.width_m / 2;
  const steps = 4000;
  const shape = (x_m: number) => fanOnCard.profile(x_m / half_m) * (1 + (fanOnCard.imbalance * x_m) / half_m);
  const places = Array.from({ length: steps }, (_, i) => 1.2 * fanOnCard.width_m * ((i + 0.5) / steps - 0.5));
  const area = places.reduce((sum, x_m) => sum + shape(x_m), 0) * (1.2 * fanOnCard.width_m / steps);
  return Math.max(...places.map((x_m) => Math.abs(film(x_m) - shape(x_m) / area))) / (shape(0) / area);
}

describe('a fan from a fit', () => {
  it.each(Object.keys(PROFILES).filter((family) => family !== 'gaussian'))('throws the stroke that the card shows: %s', (family) => {
    const onCard = { ...FAN, profile: PROFILES[family]! };
    const { fit, intervals } = best(readCard(onCard, 41));
    const { fan, warnings } = fanFromFit(SPEC.fan, 0.2, fit, intervals);
    expect(fan.profile.family).toBe(family);
    expect(fan.width_mm).toBe(210);
    expect(warnings).toEqual([]);
    // Width and taper are exact here; the areas are summed to 1e-6 or so of themselves.
    expect(worstDifference(onCard, fan)).toBeLessThan(1e-4);
  });

  it('keeps depth and exponent along the travel, as they are at the card', () => {
    const { fit, intervals } = best(readCard(FAN, 41));
    const at = { ...SPEC.fan, depth_mm: 30, origin_mm: -50, profile: { family: 'double-beta', beta1: 3, beta2: 4 } } as const;
    const { fan } = fanFromFit(at, 0.25, fit, intervals);
    expect(fan).toMatchObject({ depth_mm: 36, atDistance_mm: 250, origin_mm: -50, profile: { beta1: 2.7, beta2: 4 } });
    expect(Object.keys(fan)).toEqual(['width_mm', 'depth_mm', 'atDistance_mm', 'origin_mm', 'profile']);
    expect(fanFromFit({ ...at, profile: { family: 'triangle' } }, 0.25, fit, intervals).fan.profile).toMatchObject({ beta2: 3 });
  });

  it('holds the exponent to what a set-up takes and says so', () => {
    const { fit, intervals } = best(readCard({ ...FAN, profile: betaProfile(9.5) }, 41));
    const { fan, warnings } = fanFromFit(SPEC.fan, 0.2, fit, intervals);
    expect(fan.profile).toMatchObject({ family: 'double-beta', beta1: 8 });
    expect(warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/exponent across the fan of 9\.50; 8 is taken/)]);
  });

  it('holds the depth to the width and says so', () => {
    const { fit, intervals } = best(readCard(FAN, 41));
    const { fan, warnings } = fanFromFit({ ...SPEC.fan, depth_mm: 230, width_mm: 300 }, 0.2, fit, intervals);
    expect(fan.depth_mm).toBe(210);
    expect(warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/narrower than it was said to be deep/)]);
  });

  it('states width and exponent within half their intervals', () => {
    const readings = readCard(FAN, 41, 0.005, seededRandom(3));
    const fit = fitFan(readings).fits.find(({ family }) => family === 'double-beta')!;
    const intervals = fitIntervals(readings, 'double-beta', 1);
    const { knownWithin } = fanFromFit(SPEC.fan, 0.2, fit, intervals);
    expect(knownWithin.width_percent! / 100).toBeCloseTo((intervals.width!.high - intervals.width!.low) / 2 / fit.width_m, 4);
    expect(knownWithin.beta1).toBeCloseTo((intervals.beta1!.high - intervals.beta1!.low) / 2, 9);
  });

  it('hands a lopsided fan over as a table of 41 places that throws the same stroke', () => {
    const onCard = { ...FAN, imbalance: 0.4 };
    const { fit, intervals } = best(readCard(onCard, 41));
    expect(isLopsided(intervals)).toBe(true);
    const { fan, knownWithin } = fanFromFit(SPEC.fan, 0.2, fit, intervals);
    expect(fan.profile).toMatchObject({ family: 'table' });
    expect(knownWithin.beta1).toBeUndefined();
    if (fan.profile.family !== 'table') throw new Error('no table');
    expect(fan.profile.place_mm).toHaveLength(41);
    expect(fan.profile.place_mm[0]).toBe(-105);
    expect(fan.profile.film.at(-1)).toBe(0);
    // Lines between places a fortieth of the width apart lie off a curve by at most a²/8 of its second slope: (1/20)²/8 · 13 or so.
    expect(worstDifference(onCard, fan)).toBeLessThan(5e-3);
  });

  it('takes a lean that chance may have made for none', () => {
    const readings = readCard({ ...FAN, imbalance: 0.1 }, 21, 0.03, seededRandom(5));
    const { fit, intervals } = best(readings);
    expect(isLopsided(intervals)).toBe(false);
    expect(fanFromFit(SPEC.fan, 0.2, fit, intervals).fan.profile.family).toBe(fit.family);
  });
});

describe('the readings as they are', () => {
  it('become a table about the fitted middle, less fog, from bare card to bare card', () => {
    const readings = readCard({ ...FAN, imbalance: 0.3 }, 41, 0.02, seededRandom(8));
    const { fit, intervals } = best(readings);
    const { fan } = tableFromReadings(SPEC.fan, 0.2, readings, fit, intervals);
    if (fan.profile.family !== 'table') throw new Error('no table');
    const { place_mm, film } = fan.profile;
    expect(film[0]).toBe(0);
    expect(film.at(-1)).toBe(0);
    for (let i = 1; i + 1 < place_mm.length; i++) {
      const from = readings.place_m.findIndex((place) => Math.abs((place - fit.offset_m) * 1000 - place_mm[i]!) < 1e-3);
      expect(film[i]).toBeCloseTo(Math.max(0, readings.film[from]! - fit.fog), 3);
      expect(Math.abs(place_mm[i]!)).toBeLessThan(fit.width_m * 500);
    }
    expect(place_mm.length).toBeGreaterThan(30);
    expect(() => makeSetUp({ ...SPEC, fan })).not.toThrow();
  });

  it('average what was read twice at one place', () => {
    const once = readCard({ ...FAN, offset_m: 0 }, 41);
    const twice = { place_m: Float64Array.from(once.place_m.keys(), (i) => i).map((i) => once.place_m[i]!), film: once.film, unit: '' };
    const doubled = {
      place_m: Float64Array.from({ length: 82 }, (_, i) => twice.place_m[i >> 1]!),
      film: Float64Array.from({ length: 82 }, (_, i) => twice.film[i >> 1]! + (i % 2 === 0 ? 0.4 : -0.4)),
      unit: '',
    };
    const { fit, intervals } = best(once);
    const [one, two] = [once, doubled].map((readings) => tableFromReadings(SPEC.fan, 0.2, readings, fit, intervals).fan.profile);
    if (one!.family !== 'table' || two!.family !== 'table') throw new Error('no table');
    expect(two!.place_mm).toEqual(one!.place_mm);
    // Near the edges film less fog is held at 0, so that pairs about it no longer cancel; inside they do.
    const inside = one!.film.flatMap((value, i) => (value > 0.5 ? [i] : []));
    expect(inside.length).toBeGreaterThan(20);
    for (const i of inside) expect(two!.film[i]).toBeCloseTo(one!.film[i]!, 3);
  });

  it('are refused when they are more than a table takes', () => {
    const many = readCard(FAN, 3000);
    const { fit, intervals } = best(readCard(FAN, 41));
    expect(() => tableFromReadings(SPEC.fan, 0.2, many, fit, intervals)).toThrow(/places are more than the 2000/);
  });
});
