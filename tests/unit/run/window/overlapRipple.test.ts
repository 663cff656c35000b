import { describe, expect, it } from 'vitest';
import type { SetUpSpec } from '../../../../sim/job/schema.ts';
import { overlapRipple, ripplePoint } from '../../../../sim/run/window/overlapRipple.ts';
import { strokeShape } from '../../../../sim/run/window/lapRipple.ts';
import { wall } from '../../../helpers/walls.ts';

function settingOf(profile: SetUpSpec['fan']['profile'], width_mm = 200) {
  return wall({ gun: { fan: { width_mm, depth_mm: 30, atDistance_mm: 200, profile } } });
}

const doubleBeta = (beta1: number) => settingOf({ family: 'double-beta', beta1, beta2: 3 });
const lopsided = settingOf({ family: 'table', place_mm: [-100, -60, -20, 20, 60, 80, 100], film: [0, 14, 29, 40, 47, 30, 0] });

describe('overlapRipple', () => {
  it('is evenest where nothing on its curve is evener', () => {
    for (const setting of [doubleBeta(1.5), doubleBeta(3), lopsided]) {
      const { evenest, curve } = overlapRipple(setting);
      const sought = curve.filter(({ overlapFraction }) => overlapFraction <= 0.75);
      expect(Math.min(...sought.map(({ cv }) => cv))).toBeGreaterThanOrEqual(evenest.cv);
      expect(ripplePoint(strokeShape(setting.setUp.fan), evenest.overlapFraction)).toEqual(evenest);
    }
  });

  it('gives a band whose ends are on the limit and whose inside is within it', () => {
    for (const limit of [{ cv: 0.05 }, { cv: 0.02 }, { minOverMax: 0.9 }]) {
      const setting = doubleBeta(3);
      const { band } = overlapRipple(setting, { limit });
      const excess = (overlap: number) => {
        const { cv, minOverMax } = ripplePoint(strokeShape(setting.setUp.fan), overlap);
        return 'cv' in limit ? cv - limit.cv : limit.minOverMax - minOverMax;
      };
      expect(Math.abs(excess(band!.low))).toBeLessThan(1e-6);
      for (let i = 1; i < 40; i++) expect(excess(band!.low + ((band!.high - band!.low) * i) / 40)).toBeLessThanOrEqual(1e-9);
      expect(excess(band!.low - 0.004)).toBeGreaterThan(0);
    }
    expect(overlapRipple(doubleBeta(3), { limit: { cv: 1e-6 } }).band).toBeNull();
  });

  it('shows why texts differ: a half suits a tapering fan, two thirds a full or lopsided one', () => {
    const tapering = overlapRipple(doubleBeta(2.92));
    expect(tapering.half.cv).toBeLessThan(0.01);
    const full = overlapRipple(doubleBeta(1.5));
    expect(full.half.cv).toBeGreaterThan(0.1);
    expect(full.evener).toBe('two-thirds');
    const worn = overlapRipple(lopsided);
    expect(worn.twoThirds.cv).toBeLessThan(0.5 * worn.half.cv);
    // A hand that is out by a twentieth of the width spoils a half more than two thirds.
    for (const each of [tapering, worn]) expect(each.twoThirdsOut).toBeLessThan(each.halfOut);
    const triangle = overlapRipple(settingOf({ family: 'triangle' }));
    expect(triangle.evener).toBe('half');
    expect(triangle.half.cv).toBeLessThan(1e-12);
  });

  it('finds no overlap without first harmonic for a lopsided or a bell-shaped fan', () => {
    expect(overlapRipple(lopsided).withoutFirstHarmonic).toBeNull();
    expect(overlapRipple(settingOf({ family: 'gaussian' })).withoutFirstHarmonic).toBeNull();
    expect(overlapRipple(settingOf({ family: 'parabola' })).withoutFirstHarmonic).toBeCloseTo(0.30084, 5);
  });

  it('judges a lap of fixed length by the width of the fan as stated', () => {
    const flat = overlapRipple(settingOf({ family: 'flat-top', taper_mm: 50 }, 300));
    expect(flat.fixedLap).toMatchObject({ lap_m: 0.05, overlapFraction: expect.closeTo(1 / 6, 12) as number, idealTaper_m: 0.05 });
    expect(flat.fixedLap.cv).toBeLessThan(1e-12);
    expect(overlapRipple(doubleBeta(3)).fixedLap.cv).toBeGreaterThan(0.3);
  });
});
