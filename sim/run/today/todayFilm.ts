import { dryFromWet, wetFromDry } from '../../film/arithmetic.ts';
import { GRAVITY_M_S2 } from '../../film/makeLaw.ts';
import type { Mix } from '../../mix/mix.ts';
import type { Spread } from '../../scheme/planned.ts';
import type { TodayFilm, TodayHold, TodayQuestion } from '../../scheme/today.ts';

/**
 * Wet films of a lacquer-type finish on an upright side, m. Common practice, reported for spray
 * lacquers of 26 to 33 s in a Zahn No. 2 cup: 75 to 125 µm is the working coat, about 127 µm (5 mil)
 * its limit, 150 µm sags.
 */
const WORKING_M = [75e-6, 125e-6] as const;
const LIMIT_M = 127e-6;
const SAGS_M = 150e-6;

/** Coats beyond which nobody would ask. */
const MOST_COATS = 100;

/** A side less steep than a thousandth of a degree is level. */
const LEVEL = 1e-5;

/** What the side holds, and how many coats the wanted film then takes. */
export function todayHold(question: TodayQuestion, mix: Mix): TodayHold {
  const { dry_m, tilt_rad, coats } = question;
  const steepness = Math.sin(tilt_rad);
  const perSlope = (upright_m: number) => (steepness > LEVEL ? upright_m / steepness : Infinity);
  const { value, low, high } = mix.finish.yieldStress_Pa;
  const held = (stress_Pa: number) => perSlope(stress_Pa / (mix.density_kg_m3 * GRAVITY_M_S2));
  const held_m: Spread = { value: held(value), low: held(low), high: held(high) };
  const working_m = [perSlope(WORKING_M[0]), perSlope(WORKING_M[1])] as const;
  const limits = { held_m, working_m, limit_m: perSlope(LIMIT_M), sags_m: perSlope(SAGS_M) };
  const allWet_m = wetOf(dry_m, mix);
  const fewest = Math.max(1, Math.ceil(allWet_m / Math.min(held_m.value, working_m[1]) - 1e-9));
  const wet_m = allWet_m / (coats ?? Math.min(fewest, MOST_COATS));
  return { word: holdWord(wet_m, limits), wet_m, ...limits, fewestCoats: fewest <= MOST_COATS ? fewest : null };
}

function holdWord(wet_m: number, { held_m, working_m, sags_m }: Pick<TodayHold, 'held_m' | 'working_m' | 'sags_m'>): TodayHold['word'] {
  if (wet_m <= Math.min(held_m.value, working_m[1]) * (1 + 1e-9)) return 'holds';
  return wet_m <= Math.min(held_m.high, sags_m) ? 'care' : 'runs';
}

/** Film of one coat and of all, wet as mixed and dry. */
export function todayFilm({ dry_m, sanded_m, coats }: TodayQuestion, mix: Mix, { fewestCoats }: TodayHold): TodayFilm {
  const count = coats ?? fewestCoats ?? MOST_COATS;
  const allWet_m = wetOf(dry_m, mix);
  const coatWet_m = allWet_m / count;
  const { value, low, high } = mix.finish.volumeSolidsFraction;
  return {
    coats: count,
    coatDry_m: dryFromWet(coatWet_m, value, mix.thinnerRatio),
    coatWet_m,
    passWet_m: coatWet_m / 2,
    allDry_m: dry_m,
    allWet_m,
    left_m: dry_m - sanded_m,
    coatWetRange_m: { value: coatWet_m, low: (coatWet_m * value) / high, high: (coatWet_m * value) / low },
  };
}

function wetOf(dry_m: number, mix: Mix): number {
  return wetFromDry(dry_m, mix.finish.volumeSolidsFraction.value, mix.thinnerRatio);
}
