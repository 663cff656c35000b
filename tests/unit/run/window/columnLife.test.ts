import { describe, expect, it } from 'vitest';
import { viscosity_Pa_s } from '../../../../sim/mix/viscosity.ts';
import { filmLawOf } from '../../../../sim/run/filmLaw.ts';
import { liveColumns, type ColumnCoat } from '../../../../sim/run/window/columnLife.ts';
import { wall } from '../../../helpers/walls.ts';

const setting = wall();
const law = filmLawOf(setting);

/** One stroke over both places, its air off unless given. */
function coat(wet_m: readonly [number, number], changed: Partial<ColumnCoat> = {}): ColumnCoat {
  return {
    law,
    apart_m: 0.05,
    strokes: [{ time_s: 0, centre_m: 0.025, wet_m }],
    speed_m_s: 0.36,
    blast: { halfLength_m: 0.1, halfDepth_m: 0.015, speed_m_s: 0 },
    solidsFraction: 0.15,
    fastFraction: law.fastFraction,
    stepScale: 1,
    ...changed,
  };
}

describe('liveColumns', () => {
  it('dries both places to the set point and keeps their solids', () => {
    const film = liveColumns(coat([60e-6, 90e-6]));
    for (const [cell, wet_m] of [[0, 60e-6], [2, 90e-6]] as const) {
      const solids = film.solids_m[cell]!;
      // Liquid comes as single-precision numbers.
      expect(solids / (0.15 * wet_m)).toBeCloseTo(1, 6);
      expect(solids / (solids + film.fast_m[cell]! + film.slow_m[cell]!)).toBeGreaterThanOrEqual(law.setFraction);
    }
    expect(film.solids_m[1]).toBe(0);
  });

  it('slides at the speed of a Bingham sheet: ρ g s²(3h - s)/(6 µ h), s the depth that is sheared', () => {
    // Nothing evaporates, so the film is as it landed for the three hours that it is watched.
    const sealed = { ...law, fast: { ...law.fast, rate_m_s: 0 }, slow: { ...law.slow, rate_m_s: 0 } };
    const pull = law.density_kg_m3 * 9.80665;
    const held_m = law.yieldStress_Pa / pull;
    const viscosity = viscosity_Pa_s(setting.mix.viscosity, 0.15, setting.air.temperature_K);
    for (const h of [1.5 * held_m, 4 * held_m]) {
      const s = h - held_m;
      const speed_m_s = (pull * s * s * (3 * h - s)) / (6 * viscosity * h);
      const film = liveColumns(coat([0.9 * held_m, h], { law: sealed }));
      expect(film.run_m[0]).toBe(0);
      // Fluidity is read at the nearest of 4096 nodes, right to 0.25 %; liquid and distance are single-precision sums.
      expect(film.run_m[2]! / (speed_m_s * 3 * 3600)).toBeCloseTo(1, 2);
    }
  });

  it('lets two places that are alike live alike, whatever lies between them', () => {
    const film = liveColumns(coat([150e-6, 150e-6], { blast: { halfLength_m: 0.1, halfDepth_m: 0.015, speed_m_s: 45 } }));
    for (const array of [film.run_m, film.levelling_m4, film.margin_K, film.blown_m, film.solids_m]) expect(array[0]).toBe(array[2]);
    expect(film.blown_m[0]).toBeGreaterThan(0);
    expect(film.gathered_m[0]).toBe(0);
  });

  it('chills and stiffens a film that is blown at', () => {
    const still = liveColumns(coat([250e-6, 250e-6]));
    const blown = liveColumns(coat([250e-6, 250e-6], { blast: { halfLength_m: 0.1, halfDepth_m: 0.015, speed_m_s: 15 } }));
    expect(blown.run_m[0]!).toBeLessThan(still.run_m[0]!);
  });

  it('converges as its steps are halved', () => {
    const run = (stepScale: number) => liveColumns(coat([250e-6, 250e-6], { stepScale })).run_m[0]!;
    const [coarse, middle, fine, finest] = [run(1), run(0.5), run(0.25), run(0.125)];
    expect(Math.abs(middle - finest)).toBeLessThan(Math.abs(coarse - finest));
    expect(Math.abs(fine - finest)).toBeLessThan(Math.abs(middle - finest));
    expect(Math.abs(coarse / finest - 1)).toBeLessThan(0.1);
  });

  it('mixes with film that is still wet and lies on film that has set', () => {
    const strokes = (gap_s: number) => [0, gap_s].map((time_s) => ({ time_s, centre_m: 0.025, wet_m: [50e-6, 50e-6] as const }));
    const soon = liveColumns(coat([0, 0], { strokes: strokes(5) }));
    const late = liveColumns(coat([0, 0], { strokes: strokes(3000) }));
    expect(soon.lapped_m[0]).toBe(0);
    expect(late.lapped_m[0]).toBeGreaterThan(0);
    expect(late.levelling_m4[0]!).toBeLessThan(soon.levelling_m4[0]!);
  });

  it('leaves a bare place bare', () => {
    const film = liveColumns(coat([0, 80e-6]));
    expect([film.solids_m[0], film.run_m[0], film.landed_m[0]]).toEqual([0, 0, 0]);
    expect(film.margin_K[0]).toBe(Infinity);
  });
});
