import { afterAll, describe, expect, it } from 'vitest';
import { fitFan } from '../../sim/gun/card/fitFan.ts';
import type { PhotoTask } from '../../sim/gun/card/photo/cardPhoto.ts';
import { readPhoto } from '../../sim/gun/card/photo/readPhoto.ts';
import { burstFilm, type Camera, movedCorners, photographed, PLAIN_CAMERA, strokeFilm } from '../helpers/cardPhotos.ts';

/**
 * Own synthetic photographs: no published set of test cards with their fans is known. Each is a double-beta fan on a card of
 * 400 × 300 mm, seen askew, darker to the corners, on tinted paper, with noise, in 8 bits.
 */
const SIZE_M = [0.4, 0.3] as const;
/** What this reading is asked to keep: the exponent and the share of the width. */
const BETA_WITHIN = 0.15;
const WIDTH_WITHIN = 0.02;
/** Halving the cells may move the exponent by this much: half of what is asked. */
const BETA_CONVERGED = 0.075;
/** Cases that are read at half the cells too. */
const CONVERGED = [0, 4, 6, 11];
const NOISE = 0.01;
const DEPTH_RATIO = 0.28;

interface Case {
  readonly kind: PhotoTask['kind'];
  readonly width_m: number;
  readonly beta1: number;
  readonly turn_deg: number;
  readonly vignette: number;
  readonly law: Camera['vignetteLaw'];
  readonly askew: number;
  readonly paper: Camera['paper'];
}

const CASES: readonly Case[] = [
  { kind: 'burst', width_m: 0.15, beta1: 1.5, turn_deg: 10, vignette: 0.1, law: 'cos4', askew: 0.05, paper: [0.8, 0.8, 0.8] },
  { kind: 'burst', width_m: 0.2, beta1: 2, turn_deg: -30, vignette: 0.3, law: 'square', askew: 0.15, paper: [0.85, 0.7, 0.5] },
  { kind: 'burst', width_m: 0.25, beta1: 2.5, turn_deg: 60, vignette: 0.3, law: 'cos4', askew: 0.15, paper: [0.6, 0.8, 0.7] },
  { kind: 'burst', width_m: 0.3, beta1: 3, turn_deg: 5, vignette: 0.2, law: 'square', askew: 0.15, paper: [0.5, 0.5, 0.5] },
  { kind: 'burst', width_m: 0.3, beta1: 4, turn_deg: 0, vignette: 0.3, law: 'cos4', askew: 0.1, paper: [0.85, 0.85, 0.85] },
  { kind: 'burst', width_m: 0.2, beta1: 4, turn_deg: 90, vignette: 0.3, law: 'cos4', askew: 0.15, paper: [0.4, 0.5, 0.6] },
  { kind: 'stroke', width_m: 0.15, beta1: 1.5, turn_deg: 2, vignette: 0.1, law: 'square', askew: 0.05, paper: [0.8, 0.8, 0.8] },
  { kind: 'stroke', width_m: 0.2, beta1: 2, turn_deg: -3, vignette: 0.3, law: 'cos4', askew: 0.15, paper: [0.85, 0.7, 0.5] },
  { kind: 'stroke', width_m: 0.18, beta1: 2.5, turn_deg: 90, vignette: 0.3, law: 'square', askew: 0.15, paper: [0.6, 0.8, 0.7] },
  { kind: 'stroke', width_m: 0.24, beta1: 3, turn_deg: 0, vignette: 0.2, law: 'cos4', askew: 0.15, paper: [0.5, 0.5, 0.5] },
  { kind: 'stroke', width_m: 0.15, beta1: 4, turn_deg: 0, vignette: 0.3, law: 'square', askew: 0.1, paper: [0.85, 0.85, 0.85] },
  { kind: 'stroke', width_m: 0.3, beta1: 4, turn_deg: 88, vignette: 0.3, law: 'cos4', askew: 0.15, paper: [0.4, 0.5, 0.6] },
];

function pictureOf({ kind, width_m, beta1, turn_deg, vignette, law, askew, paper }: Case, seed: number, stray = 0, peak = 0.7) {
  const fan = { width_m, beta1, peak, turn_rad: (turn_deg * Math.PI) / 180 };
  const corners = movedCorners(PLAIN_CAMERA.corners, askew, seed);
  const film = kind === 'burst' ? burstFilm(fan, width_m * DEPTH_RATIO) : strokeFilm(fan);
  const photo = photographed({ size_m: SIZE_M, film }, { ...PLAIN_CAMERA, corners, vignette, vignetteLaw: law, paper, noise: NOISE, stray, seed });
  const task: PhotoTask = { corners, size_m: SIZE_M, kind, strokeAlong: turn_deg > 45 ? 'y' : 'x' };
  return { photo, task };
}

function fittedBeta(read: ReturnType<typeof readPhoto>) {
  const fit = fitFan(read.readings).fits.find(({ family }) => family === 'double-beta')!;
  return { beta1: fit.beta1!, width_m: fit.width_m };
}

describe('fans from synthetic photographs', () => {
  const printed: Record<string, number | string>[] = [];
  afterAll(() => console.table(printed));
  for (const [i, one] of CASES.entries()) {
    it(`${one.kind}, ${one.width_m * 1000} mm, β1 = ${one.beta1}, turned ${one.turn_deg}°`, () => {
      const { photo, task } = pictureOf(one, 20 + i);
      const read = readPhoto(photo, task);
      const fine = fittedBeta(read);
      const widthOff = fine.width_m / one.width_m - 1;
      printed.push({ kind: one.kind, 'β1': one.beta1, read: fine.beta1, 'width off, %': 100 * widthOff });
      expect(Math.abs(fine.beta1 - one.beta1)).toBeLessThan(BETA_WITHIN);
      expect(Math.abs(widthOff)).toBeLessThan(WIDTH_WITHIN);
      if (CONVERGED.includes(i)) {
        const coarse = fittedBeta(readPhoto(photo, task, { longerSideCells: 200 }));
        expect(Math.abs(coarse.beta1 - fine.beta1)).toBeLessThan(BETA_CONVERGED);
      }
      if (one.kind === 'burst') expect(read.spot.depth_m! / (one.width_m * DEPTH_RATIO)).toBeCloseTo(1, 1);
    });
  }

  it('reads a fan a little too flat where stray light of 4 % lies on a dark spot, and says so', () => {
    const one: Case = { ...CASES[0]!, width_m: 0.2, beta1: 3, turn_deg: 0 };
    // Stray light takes an absorbance of 0.7 down to 0.64: the darkest blocks then come to 0.6, where the warning begins.
    const { photo, task } = pictureOf(one, 40, 0.04, 0.7);
    const read = readPhoto(photo, task);
    const { beta1 } = fittedBeta(read);
    printed.push({ kind: 'burst, stray light', 'β1': 3, read: beta1 });
    // The docstring's 2.87, give or take what noise did to the cases above.
    expect(Math.abs(beta1 - 2.87)).toBeLessThan(0.05);
    expect(read.warnings.map(({ text }) => text).join()).toMatch(/film may read 5 % too thin/);
  });
});
