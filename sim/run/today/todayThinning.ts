import { CrosscoatError } from '../../base/errors.ts';
import { CUPS, cupById, type Cup } from '../../materials/cups.ts';
import { changedMixSpec } from '../../mix/changedMixSpec.ts';
import { cupTime, cupTimeAt, viscosityInRange_m2_s } from '../../mix/cupTime.ts';
import { cupViscosity_m2_s } from '../../mix/cups.ts';
import { makeMix, MOST_THINNER } from '../../mix/makeMix.ts';
import type { Mix } from '../../mix/mix.ts';
import { fitThinning, ratioForViscosity, type ThinningLaw } from '../../mix/thinningLaw.ts';
import { viscosity_Pa_s } from '../../mix/viscosity.ts';
import type { TodayQuestion, TodayRatio, TodayThinning } from '../../scheme/today.ts';
import { USUAL_SENSITIVITY_K } from '../mix/planThinning.ts';
import { todayMixSpec } from './todayMix.ts';

/**
 * What lacquer-type finishes are sprayed at: 18 to 24 s in a Zahn No. 2 cup, common practice. The cup's
 * formula holds from 20 s, so the thin end is taken there.
 */
const SPRAY_CUP = 'zahn-2';
const THIN_S = 20;
const THICK_S = 24;

/** Assumed: how much warmer the room is in the afternoon where nobody says. */
const WARMER_K = 5;

/** Another ratio, to fix the law's slope: this much more of thinner to one of finish. */
const RATIO_STEP = 0.5;

/** Where the mix stands, how far to thin it, and what it is this afternoon. */
export function todayThinning(question: TodayQuestion, mix: Mix): TodayThinning {
  const cup = cupById(question.cup);
  const liquid_K = question.liquid_K ?? question.temperature_K;
  const afternoon_K = question.afternoon_K ?? question.temperature_K + WARMER_K;
  const viscosity_m2_s = viscosityAt(mix, mix, liquid_K);
  const now = cupTime(cup, viscosity_m2_s);
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
    afternoon_K,
    afternoon: cupTimeAt(cup, viscosity_m2_s, liquid_K, afternoon_K, USUAL_SENSITIVITY_K),
    sensitivity_K: USUAL_SENSITIVITY_K,
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
