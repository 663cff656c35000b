import { describe, expect, it } from 'vitest';
import { makeFootprint } from '../../../sim/gun/footprint.ts';
import { strokeProfile } from '../../../sim/gun/strokeProfile.ts';
import type { Profile } from '../../../sim/gun/setUp.ts';
import type { Footprint } from '../../../sim/gun/spray.ts';
import { plainSetUp } from '../../helpers/sprayCases.ts';

const families: Profile[] = [
  { family: 'double-beta', beta1: 3, beta2: 3 },
  { family: 'double-beta', beta1: 1, beta2: 1 },
  { family: 'gaussian' },
  { family: 'parabola' },
  { family: 'triangle' },
  { family: 'cosine-squared' },
  { family: 'flat-top', taper_m: 0 },
  { family: 'flat-top', taper_m: 0.04 },
  { family: 'table', place_m: [-0.12, -0.05, 0.02, 0.15], film: [0, 3, 5, 0] },
];

/** Integral of the sampled footprint, by the trapezoid rule on its own nodes. */
function integral(footprint: Footprint): number {
  const { across, chordSquared, along } = footprint;
  const du = 2 / (across.length - 1);
  let acrossSum = 0;
  across.forEach((value, i) => {
    acrossSum += value * Math.sqrt(chordSquared[i]!) * du * (i === 0 || i === across.length - 1 ? 0.5 : 1);
  });
  let alongSum = 0;
  const last = along.length - 1;
  // ∫ along(t²) dt over -1..1 by the midpoint rule in t, linear between nodes.
  for (let k = 0; k < 20_000; k++) {
    const place = ((k + 0.5) / 20_000) ** 2 * last;
    const j = Math.floor(place);
    alongSum += (along[j]! + (place - j) * (along[Math.min(j + 1, last)]! - along[j]!)) * (2 / 20_000);
  }
  return footprint.halfLength_m * footprint.halfDepth_m * acrossSum * alongSum;
}

describe('a footprint', () => {
  for (const profile of families) {
    it(`holds all its liquid: ${JSON.stringify(profile)}`, () => {
      const footprint = makeFootprint(plainSetUp({ profile }).fan);
      // The trapezoid of √(1-u²) at 2048 intervals is off by 0.41 h^1.5 = 1.3e-5 of the width; the rest by less than 1e-6.
      expect(Math.abs(integral(footprint) - (1 - footprint.cutFraction))).toBeLessThan(1.4e-5);
    });
  }
  it('cuts a Gaussian at 4 standard deviations each way', () => {
    expect(makeFootprint(plainSetUp({ profile: { family: 'gaussian' } }).fan).cutFraction).toBeCloseTo(1.2668e-4, 8);
  });
  it('keeps a lopsided table lopsided', () => {
    const stroke = strokeProfile(plainSetUp({ profile: families[8]! }).fan);
    expect(stroke(0.02) / stroke(-0.05)).toBeCloseTo(5 / 3, 12);
    expect(stroke(-0.13)).toBe(0);
    expect(stroke(0.13)).toBeGreaterThan(0);
  });
});

describe('a turned fan', () => {
  it('with β1 = β2 has its closed form, which a sum along the travel confirms', () => {
    const closed = strokeProfile(plainSetUp({ profile: { family: 'double-beta', beta1: 3, beta2: 3 } }).fan, 0.7);
    const summed = strokeProfile(plainSetUp({ profile: { family: 'double-beta', beta1: 3, beta2: 3 + 1e-12 } }).fan, 0.7);
    for (const offset of [0, 0.03, -0.08, 0.11]) expect(summed(offset) / closed(0)).toBeCloseTo(closed(offset) / closed(0), 5);
  });
  it('of Gaussian shape has σ² = σx² cos² + σy² sin²', () => {
    const { fan } = plainSetUp({ profile: { family: 'gaussian' } });
    const turned = strokeProfile(fan, 0.7);
    const sigma = Math.hypot((fan.width_m / 4) * Math.cos(0.7), (fan.depth_m / 4) * Math.sin(0.7));
    // Cutting the support costs up to exp(-8) of the peak.
    for (const offset of [0, 0.03, -0.08]) {
      const exact = Math.exp((-offset * offset) / (2 * sigma * sigma)) / (Math.sqrt(2 * Math.PI) * sigma);
      expect(Math.abs(turned(offset) - exact) * sigma).toBeLessThan(3.4e-4);
    }
  });
});
