import { CrosscoatError } from '../../base/errors.ts';
import { CUPS, cupById, type Cup } from '../../materials/cups.ts';
import { changedMixSpec } from '../../mix/changedMixSpec.ts';
import { cupTime, cupTimeAt, viscosityInRange_m2_s, type WarmedCup } from '../../mix/cupTime.ts';
import { cupViscosity_m2_s } from '../../mix/cups.ts';
import { makeMix, MOST_THINNER } from '../../mix/makeMix.ts';
import type { Mix } from '../../mix/mix.ts';
import { fitThinning, ratioForViscosity, type ThinningLaw } from '../../mix/thinningLaw.ts';
import { viscosity_Pa_s } from '../../mix/viscosity.ts';
import type { Spread } from '../../scheme/planned.ts';
import type { TodayQuestion, TodayRatio, TodayThinning } from '../../scheme/today.ts';
import { todayMixSpec } from './todayMix.ts';

/**
 * What lacquer-type finishes are sprayed at: 18 to 24 s in a Zahn No. 2 cup, common practice. The cup's
 * formula holds from 20 s, so the thin end is taken there.
 */
const SPRAY_CUP = 'zahn-2';
const THIN_S = 20;
const THICK_S = 24;

/** Coefficient of temperature of a dope or lacquer, least and most; common practice, so two readings of one's own are better. */
const SENSITIVITY_K = { low: 1500, high: 2500 };

/** Another ratio, to fix the law's slope: this much more of thinner to one of finish. */
const RATIO_STEP = 0.5;

/** Where the mix stands, how far to thin it, and what it is this afternoon. */
export function todayThinning(question: TodayQuestion, mix: Mix): TodayThinning {
  const cup = cupById(question.cup);
  const liquid_K = question.liquid_K ?? question.temperature_K;
  const viscosity_m2_s = viscosityAt(mix, mix, liquid_K);
  const now = cupTime(cup, viscosity_m2_s);
  const sensitivity_K: Spread = { value: mix.viscosity.sensitivity_K, ...SENSITIVITY_K };
  const law = lawOf(question, mix, liquid_K);
  const sprayCup = cupById(SPRAY_CUP);
  return {
    cup,
    liquid_K,
    read_s: question.seconds,
    refusal: question.seconds === null ? null : refusalOf(cup, question.seconds),
    viscosity_m2_s,
    now,
    otherCups: CUPS.filter(({ id }) => id !== cup.id).map((other) => cupTime(other, viscosity_m2_s)).filter(({ seconds }) => seconds !== null),
    sprayCup,
    thin: ratioFor(law, sprayCup, THIN_S),
    thick: ratioFor(law, sprayCup, THICK_S),
    afternoon_K: question.afternoon_K,
    afternoon: warmed(cup, now.seconds, viscosity_m2_s, liquid_K, question.afternoon_K, sensitivity_K),
    sensitivity_K,
  };
}

/** Viscosity by the law of one mix at the solids and density of another of the same finish. */
function viscosityAt(mix: Mix, thinned: Mix, temperature_K: number): number {
  return viscosity_Pa_s(mix.viscosity, thinned.volumeSolidsFraction, temperature_K) / thinned.density_kg_m3;
}

/** The mix as it is, and by the finish's own law a little thinner, make the slope. */
function lawOf(question: TodayQuestion, mix: Mix, liquid_K: number): ThinningLaw {
  const reading = (thinned: Mix) => ({ thinnerPerFinish: thinned.thinnerRatio, viscosity_m2_s: viscosityAt(mix, thinned, liquid_K), temperature_K: liquid_K });
  const up = mix.thinnerRatio + RATIO_STEP <= MOST_THINNER;
  const other = makeMix(changedMixSpec(todayMixSpec(question), { thinnerPerFinish: mix.thinnerRatio + (up ? RATIO_STEP : -5) }), '/today');
  return fitThinning([reading(mix), reading(other)], mix.viscosity.sensitivity_K, liquid_K);
}

function ratioFor(law: ThinningLaw, cup: Cup, seconds: number): TodayRatio {
  const viscosity_m2_s = cupViscosity_m2_s(cup, seconds);
  // From the can it is as thin already.
  if (law.level <= Math.log(viscosity_m2_s)) return { seconds, viscosity_m2_s, thinnerRatio: 0 };
  return { seconds, viscosity_m2_s, thinnerRatio: rangeOr(() => ratioForViscosity(law, viscosity_m2_s).thinnerPerFinish) };
}

function warmed(cup: Cup, seconds: number | null, viscosity_m2_s: number, from_K: number, to_K: number, sensitivity_K: Spread): WarmedCup {
  if (seconds !== null) return cupTimeAt(cup, seconds, from_K, to_K, sensitivity_K);
  const factorOf = (b: number) => Math.exp(b * (1 / to_K - 1 / from_K));
  const ends = [factorOf(sensitivity_K.low), factorOf(sensitivity_K.high)];
  const factor = { value: factorOf(sensitivity_K.value), low: Math.min(...ends), high: Math.max(...ends) };
  return { time: cupTime(cup, viscosity_m2_s * factor.value), factor, low_s: null, high_s: null };
}

function refusalOf(cup: Cup, seconds: number): string | null {
  try {
    viscosityInRange_m2_s(cup, seconds);
    return null;
  } catch (error) {
    if (error instanceof CrosscoatError && error.code === 'range') return error.message;
    throw error;
  }
}

/** Null where the law says that it would take more thinner than a finish is. */
function rangeOr<T>(ask: () => T): T | null {
  try {
    return ask();
  } catch (error) {
    if (error instanceof CrosscoatError && error.code === 'range') return null;
    throw error;
  }
}
