import { describe, expect, it } from 'vitest';
import { PEEL_BANDS_M, peelAmplitude_m, PEEL_WAVES_M, rippleLeft, weightedDrop_m3 } from '../../../../sim/film/level/peel.ts';

const DROP = weightedDrop_m3(35e-6, 1.8);
const WET_M = 80e-6;

describe('orange peel', () => {
  it('before any levelling is the count of drops alone: √(h V) over each wave, summed as squares', () => {
    const squares = PEEL_WAVES_M.reduce((sum, wave_m) => sum + (WET_M * DROP) / wave_m ** 2, 0);
    expect(peelAmplitude_m(0, WET_M, DROP, 0)).toBeCloseTo(Math.sqrt(squares), 15);
    expect(rippleLeft(0, 1e-3)).toBe(1);
  });

  it('falls with levelling, down to nothing', () => {
    const peel = [0, 1e-14, 1e-13, 1e-12, 1e-6].map((levelling_m4) => peelAmplitude_m(levelling_m4, WET_M, DROP, 1e-3));
    for (let i = 1; i < peel.length; i++) expect(peel[i]).toBeLessThan(peel[i - 1]!);
    expect(peel.at(-1)).toBe(0);
  });

  it('grows with the drops, with the film they make and with how far air has pushed it', () => {
    const at = (ratio: number, wet_m: number, blown_m: number) => peelAmplitude_m(1e-13, wet_m, DROP * ratio ** 3, blown_m);
    // As the root of a volume: 2^1.5 for drops twice as wide, √2 for twice the film.
    expect(at(2, WET_M, 0) / at(1, WET_M, 0)).toBeCloseTo(2 ** 1.5, 9);
    expect(at(1, 2 * WET_M, 0) / at(1, WET_M, 0)).toBeCloseTo(Math.SQRT2, 9);
    expect(at(1, WET_M, 1e-3)).toBeGreaterThan(at(1, WET_M, 0));
  });

  it('has its bands in order, and a usual fresh film starts above them', () => {
    expect(PEEL_BANDS_M[0]).toBeLessThan(PEEL_BANDS_M[1]);
    expect(peelAmplitude_m(0, WET_M, DROP, 0)).toBeGreaterThan(PEEL_BANDS_M[1]);
  });
});
