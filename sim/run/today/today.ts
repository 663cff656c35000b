import { airAnswer, type RetardedMix } from '../../air/airAnswer.ts';
import { climateVerdict } from '../../air/climateVerdict.ts';
import { makeAir } from '../../air/moistAir.ts';
import { remedies } from '../../air/remedies.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import type { AirSpec, MixSpec } from '../../job/schema.ts';
import { backingById } from '../../materials/backings.ts';
import { solventById } from '../../materials/solvents.ts';
import { changedMixSpec, USUAL_RETARDER } from '../../mix/changedMixSpec.ts';
import { makeMix } from '../../mix/makeMix.ts';
import type { TodayAnswer, TodayQuestion } from '../../scheme/today.ts';
import { todayAmounts } from './todayAmounts.ts';
import { todayFilm, todayHold } from './todayFilm.ts';
import { sprayedMixSpec, tidy } from './todayMix.ts';
import { todayNext } from './todayNext.ts';
import { todayThinning } from './todayThinning.ts';
import { checkToday } from './usualToday.ts';

/** Shares of retarder that are tried, % of the thinner: from the least to the most of the usual ones. */
const TRIED_percent = [5, 10, 15];

/**
 * The front sheet: from a handful of numbers to whether one can spray now, how far to thin, the film wet
 * and dry, whether it holds, when the next step may begin, how much to mix and what it weighs.
 *
 * Plain arithmetic and the model's even film: no strokes, no fan, no edges. Every part carries what
 * its working needs. Takes a few milliseconds where it
 * goes and some tens where remedies are tried, so that it can answer as one types.
 * @throws CrosscoatError `range` for a number outside its limits, `schema` for an unknown finish,
 * thinner or cup; each message says what to give.
 */
export function answerToday(question: TodayQuestion): TodayAnswer {
  checkToday(question);
  const thinning = todayThinning(question);
  const mixSpec = sprayedMixSpec(question, thinning);
  const mix = makeMix(mixSpec, '/today');
  const air = makeAir(todayAirSpec(question), '/air');
  const tried = retarded(question, mixSpec);
  const answer = airAnswer(air, {
    mix,
    faces: backingById(question.backing).faces,
    ceiling_K: question.ceiling_K,
    retarded: tried,
  });
  // Nobody's guess passes a rule: where the surface was not measured, that rule is not known.
  const { surface_K } = question;
  const hold = todayHold(question, mix);
  const film = todayFilm(question, mix, hold);
  return {
    question,
    mix,
    mixSpec,
    climate: { answer, surface_K, verdict: climateVerdict(answer, surface_K), remedies: remedies({ answer, surface_K, retarded: tried, later: [] }) },
    thinning,
    film,
    hold,
    next: todayNext(question, mix, air, answer.drying, film),
    amounts: todayAmounts(question, mix, film),
  };
}

/** The air as a job states it. */
export function todayAirSpec({ temperature_K, humidityFraction, altitude_m, airSpeed_m_s, ceiling_K }: TodayQuestion): AirSpec {
  return {
    temperature_C: tidy(temperature_K - CELSIUS_0_K),
    humidity_percent: tidy(humidityFraction * 100),
    altitude_m,
    speed_m_s: airSpeed_m_s,
    ceiling_C: tidy(ceiling_K - CELSIUS_0_K),
  };
}

function retarded({ retarderFraction }: TodayQuestion, spec: MixSpec): RetardedMix[] {
  if (spec.thinnerPerFinish === 0) return [];
  return TRIED_percent.filter((percent) => percent > retarderFraction * 100).map((percent) => ({
    retarder: solventById(USUAL_RETARDER).name,
    retarderFraction: percent / 100,
    mix: makeMix(changedMixSpec(spec, { retarder_percent: percent }), '/today'),
  }));
}
