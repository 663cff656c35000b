import type { Warning } from '../../base/errors.ts';
import { checkReadings, type CardReadings } from './cardReadings.ts';
import { FIT_FAMILIES, type FanFit, type FanFits } from './fanFit.ts';
import { fitFamily, type FamilyFit } from './fitFamily.ts';
import { CENTRE, FEWEST_FOR_LEAN, FOG, IMBALANCE, LOG_HALF, PEAK, SHAPE } from './fitModel.ts';

/** Families whose criterion lies nearer than this cannot be told apart (K.P. Burnham and D.R. Anderson, Model Selection and Multimodel Inference, 2002, from memory). */
const APART = 2;
/** Mean square, in squares of the highest reading, that is the rounding of readings and of the fit, not scatter. */
const ROUNDING = 1e-24;
/** Assumed: a fan's edge that lies beyond the readings by more than this share of its width was not seen. */
const UNSEEN_RATIO = 0.02;

/**
 * Fits every family of stroke profiles to readings by least squares and ranks them by the corrected information
 * criterion `AICc = n ln(S/n) + 2k + 2k(k+1)/(n-k-1)`, S the sum of squared residuals and k the free numbers and the scatter
 * (C.M. Hurvich and C.-L. Tsai, "Regression and time series model selection in small samples", Biometrika 76, 297-307, 1989, from memory).
 *
 * The parabola is the double-beta with β1 = 3/2, and the triangle a flat top that is all taper: each counts one number less
 * and stands first where both fit alike. Peak, width and middle are free in all; fog and lean too from 11 readings
 * up (a Gaussian's lean never, being a shift).
 *
 * @throws CrosscoatError as `checkReadings` does.
 */
export function fitFan(readings: CardReadings, file = 'readings'): FanFits {
  checkReadings(readings, file);
  const count = readings.film.length;
  const fits = FIT_FAMILIES.map((family) => fitFamily(readings, family))
    .map((fit) => ({ fit, aicc: criterion(fit) }))
    .sort((a, b) => a.aicc - b.aicc);
  const best = Math.min(...fits.map(({ aicc }) => aicc));
  const total = fits.reduce((sum, { aicc }) => sum + evidence(aicc - best), 0);
  const ranked = fits.map(({ fit, aicc }) => stated(fit, aicc, best, total));
  const tied = ranked.slice(1).filter(({ behind }) => behind < APART).map(({ family }) => family);
  return { readings, fits: ranked, tied, warnings: [...countWarnings(count), ...edgeWarnings(readings, ranked[0] as FanFit)] };
}

function criterion({ model, squares }: FamilyFit): number {
  const count = model.y.length;
  const k = model.free.length + 1;
  return count * Math.log(Math.max(ROUNDING, squares / count)) + 2 * k + (2 * k * (k + 1)) / (count - k - 1);
}

function evidence(behind: number): number {
  return Math.exp(-behind / 2);
}

function stated({ model, of, squares }: FamilyFit, aicc: number, best: number, total: number): FanFit {
  const { family, form, middle_m, halfSpan_m, highest, free, y } = model;
  const half_m = Math.exp(of[LOG_HALF] as number) * halfSpan_m;
  const shape = of[SHAPE] as number;
  return {
    family,
    width_m: 2 * half_m,
    beta1: family === 'double-beta' ? Math.exp(shape) + 0.5 : null,
    taper_m: family === 'flat-top' ? shape * half_m : null,
    offset_m: middle_m + (of[CENTRE] as number) * halfSpan_m,
    imbalance: form.leans ? (of[IMBALANCE] as number) : 0,
    fog: (of[FOG] as number) * highest,
    peak: (of[PEAK] as number) * highest,
    freeCount: free.length,
    rms: Math.sqrt(squares / y.length) * highest,
    aicc,
    behind: aicc - best,
    weight: evidence(aicc - best) / total,
  };
}

function countWarnings(count: number): Warning[] {
  if (count >= FEWEST_FOR_LEAN) return [];
  const text = `${count} readings are too few to tell a lean to one side or a fog over the whole card from the fan's shape; both are taken as 0. Give ${FEWEST_FOR_LEAN} or more to have them fitted.`;
  return [{ code: 'model-limit', text, place: {} }];
}

/** A fan whose edges were not read is drawn on past the readings by its family. */
function edgeWarnings({ place_m }: CardReadings, fit: FanFit): Warning[] {
  const half_m = fit.width_m / 2;
  const beyond_m = Math.max((place_m[0] as number) - (fit.offset_m - half_m), fit.offset_m + half_m - (place_m[place_m.length - 1] as number));
  if (beyond_m <= UNSEEN_RATIO * fit.width_m) return [];
  const text = `The fitted fan reaches ${(beyond_m * 1000).toFixed(0)} mm past the last reading: its width is guessed from its middle. Read on until the card is bare on both sides.`;
  return [{ code: 'model-limit', text, place: {} }];
}
