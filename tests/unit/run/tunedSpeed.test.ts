import { describe, expect, it } from 'vitest';
import { tunedSpeed } from '../../../sim/run/tunedSpeed.ts';
import type { Cure, Fault } from '../../../sim/verdict/verdict.ts';
import { LIFE_LIMITS } from '../../helpers/lifeLimits.ts';

const OTHERS_m = 30e-6;
/** Film of the stroke's own at 1 m/s, so that at 0.3 m/s it lays 30 µm. */
const OWN_m2_s = 9e-6;
const film_m = (speed_m_s: number) => OTHERS_m + OWN_m2_s / speed_m_s;

const TARGET = { film: 'wet', thickness_m: 40e-6, minFraction: 0.8, maxFraction: 1.2, holidayFraction: 0.25, dryFraction: 0.1, life: LIFE_LIMITS } as const;

function fault(found_m_s: number): Fault {
  const zone = { kind: 'heavy-spot', area_m2: 1e-3, at_m: [0, 0], box_m: [0, 0, 0, 0], worst: film_m(found_m_s), limit: 48e-6, margin: 1e-6, cells: new Uint32Array(1) } as const;
  return { kind: 'heavy-spot', zones: [zone], area_m2: 1e-3, cure: null, cause: { kind: 'speed', strokes: [2], found: found_m_s, meant: 0.3, unit: 'm/s', explains: 0.6 } };
}

function cureAt(speed_m_s: number): Cure {
  return { change: { kind: 'even-speed', strokes: [2], speed_m_s }, worst: film_m(speed_m_s), areaBefore_m2: 1e-3, areaAfter_m2: 1e-4, inTargetBefore: 0.8, inTargetAfter: 0.9, worsens: [] };
}

describe('tunedSpeed', () => {
  it('finds the speed at which a stroke and what lies beside it come to the target', () => {
    // 40 µm = 30 µm + 9 µm m/s / v at v = 0.9 m/s.
    expect(tunedSpeed(fault(0.15), cureAt(0.3), TARGET)).toEqual({ kind: 'even-speed', strokes: [2], speed_m_s: 0.9 });
  });

  it('asks for nothing where the meant speed is enough', () => {
    expect(tunedSpeed(fault(0.15), cureAt(0.3), { ...TARGET, thickness_m: 60e-6 })).toBeNull();
  });

  it('asks for nothing where no speed would do, or the two points fix none', () => {
    expect(tunedSpeed(fault(0.15), cureAt(0.3), { ...TARGET, thickness_m: 20e-6 })).toBeNull();
    expect(tunedSpeed(fault(0.3), cureAt(0.3), TARGET)).toBeNull();
  });

  it('holds to what a hand can do', () => {
    expect(tunedSpeed(fault(0.15), cureAt(0.3), { ...TARGET, thickness_m: 31e-6 })).toMatchObject({ speed_m_s: 1.2 });
  });
});
