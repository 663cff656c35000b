import { CrosscoatError } from '../../base/errors.ts';
import { CUPS, cupById, type Cup } from '../../materials/cups.ts';
import { cupTime, cupTimeAt, SPRAY_CUP, viscosityInRange_m2_s } from '../../mix/cupTime.ts';
import { cupViscosity_m2_s } from '../../mix/cups.ts';
import { makeMix, MOST_THINNER } from '../../mix/makeMix.ts';
import type { Mix } from '../../mix/mix.ts';
import { fitThinning, ratioForViscosity, thinnedViscosity, type ThinningLaw } from '../../mix/thinningLaw.ts';
import { viscosity_Pa_s } from '../../mix/viscosity.ts';
import type { TodayQuestion, TodayRatio, TodaySprayed, TodayThinning } from '../../scheme/today.ts';
import { USUAL_SENSITIVITY_K } from '../mix/planThinning.ts';
import { readMixSpec, todayMixSpec } from './todayMix.ts';
import { ASSUMED_RATIO } from './usualToday.ts';

/**
 * What lacquer-type finishes are sprayed at: 18 to 24 s in a Zahn No. 2 cup, common practice. The cup's
 * formula holds from 20 s, so the thin end is taken there.
 */
const THIN_S = 20;
const THICK_S = 24;

/** Assumed: how much warmer the room is in the afternoon where nobody says. */
const WARMER_K = 5;

/**
 * Another ratio, to fix the law's slope: this much more of thinner to one of finish; of a mix thinned twofold or more half
 * as much, as there half a volume changes the share of thinner by too little to fix a slope.
 */
const RATIO_STEP = 0.5;
const HALVED_FROM = 2;

/** Where the mix stands, how far to thin it, and what it is this afternoon. */
export function todayThinning(question: TodayQuestion): TodayThinning {
  const cup = cupById(question.cup);
  const liquid_K = question.liquid_K ?? question.temperature_K;
  const afternoon_K = question.afternoon_K ?? question.temperature_K + WARMER_K;
  const spec = readMixSpec(question, question.thinnerRatio ?? ASSUMED_RATIO);
  const read = makeMix(spec, '/today');
  const law = lawOf(question, read, liquid_K);
  const sprayCup = cupById(SPRAY_CUP);
  const [thin, thick] = [ratioFor(law, sprayCup, THIN_S), ratioFor(law, sprayCup, THICK_S)];
  const sprayed = sprayedOf(question, law, thin, thick);
  const of = spec.cup === undefined ? sprayed : { thinnerRatio: read.thinnerRatio, viscosity_m2_s: viscosityAt(read, read, liquid_K) };
  const { viscosity_m2_s } = of;
  return {
    cup,
    liquid_K,
    read_s: question.seconds,
    refusal: question.seconds === null ? null : refusalOf(cup, question.seconds),
    viscosity_m2_s,
    thinnerRatio: of.thinnerRatio,
    now: cupTime(cup, viscosity_m2_s),
    otherCups: CUPS.filter(({ id }) => id !== cup.id).map((other) => cupTime(other, viscosity_m2_s)).filter(({ seconds }) => seconds !== null),
    sprayCup,
    thin,
    thick,
    sprayed,
    afternoon_K,
    afternoon: cupTimeAt(cup, viscosity_m2_s, liquid_K, afternoon_K, USUAL_SENSITIVITY_K),
    sensitivity_K: USUAL_SENSITIVITY_K,
  };
}

/** The ratio typed, or the middle of what is recommended, to as many figures as are said of it. */
function sprayedOf({ thinnerRatio }: TodayQuestion, law: ThinningLaw, thin: TodayRatio, thick: TodayRatio): TodaySprayed {
  const at = (from: TodaySprayed['from'], ratio: number): TodaySprayed => ({ from, thinnerRatio: ratio, viscosity_m2_s: thinnedViscosity(law, ratio).viscosity_m2_s });
  if (thinnerRatio !== null) return at('typed', thinnerRatio);
  if (thick.thinnerRatio === null) return at('assumed', ASSUMED_RATIO);
  return at('recommended', Number(((thick.thinnerRatio + (thin.thinnerRatio ?? MOST_THINNER)) / 2).toFixed(2)));
}

/** Viscosity by the law of one mix at the solids and density of another of the same finish. */
function viscosityAt(mix: Mix, thinned: Mix, temperature_K: number): number {
  return viscosity_Pa_s(mix.viscosity, thinned.volumeSolidsFraction, temperature_K) / thinned.density_kg_m3;
}

/** The mix as it is, and by the finish's own law a little thinner, make the slope. */
function lawOf(question: TodayQuestion, mix: Mix, liquid_K: number): ThinningLaw {
  const reading = (thinned: Mix) => ({ thinnerPerFinish: thinned.thinnerRatio, viscosity_m2_s: viscosityAt(mix, thinned, liquid_K), temperature_K: liquid_K });
  const other = makeMix(todayMixSpec(question, mix.thinnerRatio < HALVED_FROM ? mix.thinnerRatio + RATIO_STEP : mix.thinnerRatio / 2), '/today');
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
