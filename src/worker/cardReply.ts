import {
  caughtFlow, CrosscoatError, fanFaults, fittedFilm, genericMix, makeMix, proveSetUp,
  type CardSpec, type Measured, type ProvedFit, type ProvedSetUp, type SetUpSpec, type SpotShape,
} from '../../sim/index.ts';
import { problemOf } from '../app/problem.ts';
import type { CardReply, CardRequest, FitReply, ProvedReply, Told } from './cardMessages.ts';

/** Points of the curve that is drawn. */
const CURVE_POINTS = 201;

/**
 * What a set-up's card comes to. Fan and flow are proved first; foil and comb are worked out from them, each by
 * itself, so that each is answered where another part is wrong.
 */
export function cardReply({ setUp, mix, family, spot, seed }: CardRequest): CardReply {
  const { foil, comb, ...ground } = setUp.card ?? {};
  const { readings, caught, widths } = ground;
  const options = { liquid: liquidOf(setUp, mix), seed, ...(family === null ? {} : { family }) };
  const prove = (spec: SetUpSpec, part: CardSpec): ProvedSetUp =>
    proveSetUp(spec, { ...part, ...(ground.distance_mm === undefined ? {} : { distance_mm: ground.distance_mm }) }, options);
  const proved = told(ground, (part) => prove(setUp, part));
  const base = proved !== null && 'answer' in proved ? proved.answer : null;
  const efficiency = (part: CardSpec): Measured =>
    efficiencyOf(base === null ? prove(setUp, { ...part, ...(caught === undefined ? {} : { caught }) }) : prove(base.setUp, part));
  return {
    fit: told(readings, (text) => fitReply(base ?? prove(setUp, { readings: text }), spot, seed)),
    caught: told(caught, caughtFlow),
    widths: told(widths, (rows) => (base ?? prove(setUp, { widths: rows, ...(ground.widthWithin_mm === undefined ? {} : { widthWithin_mm: ground.widthWithin_mm }) })).opening),
    foil: told(foil, (part) => efficiency({ foil: part })),
    comb: told(comb, (part) => efficiency({ comb: part })),
    proved: proved !== null && 'problem' in proved ? proved : told(base, (from) => together(from, prove(from.setUp, { ...(foil === undefined ? {} : { foil }), ...(comb === undefined ? {} : { comb }) }))),
  };
}

function liquidOf({ volumeSolids_percent }: SetUpSpec, mix: CardRequest['mix']): { readonly volumeSolidsFraction: number; readonly solidsDensity_kg_m3: number } {
  const { volumeSolidsFraction, finish } = mix === null ? genericMix(volumeSolids_percent / 100) : makeMix(mix, '/mixes');
  return { volumeSolidsFraction, solidsDensity_kg_m3: finish.solidsDensity_kg_m3.value };
}

/** Fan and flow with the efficiency that was found from them. */
function together(base: ProvedSetUp, whole: ProvedSetUp): ProvedReply {
  return { setUp: whole.setUp, changed: [...base.changed, ...whole.changed], warnings: [...base.warnings, ...whole.warnings] };
}

function efficiencyOf({ changed }: ProvedSetUp): Measured {
  const found = changed.find(({ key }) => key === 'efficiency_percent');
  if (typeof found?.to !== 'number' || found.within === null) throw new CrosscoatError('internal', 'the card gave no efficiency');
  return { value: found.to / 100, within: found.within / 100 };
}

function fitReply({ fit }: ProvedSetUp, spot: SpotShape | null, seed: number): FitReply {
  if (fit === null) throw new CrosscoatError('internal', 'the card gave no fit');
  return { fit, ...curveOf(fit), faults: fanFaults(fit, seed, spot ?? undefined) };
}

function curveOf({ readings: { place_m }, chosen }: ProvedFit): Pick<FitReply, 'fitted' | 'curvePlace_m' | 'curveFilm'> {
  const film = fittedFilm(chosen);
  const [first, last] = [place_m[0] as number, place_m[place_m.length - 1] as number];
  const curvePlace_m = Float64Array.from({ length: CURVE_POINTS }, (_, i) => first + ((last - first) * i) / (CURVE_POINTS - 1));
  return { fitted: place_m.map(film), curvePlace_m, curveFilm: curvePlace_m.map(film) };
}

/** What a part of the card comes to; its problem stays with it. */
function told<Part, Answer>(part: Part | null | undefined, answer: (part: Part) => Answer): Told<Answer> {
  if (part === null || part === undefined) return null;
  try {
    return { answer: answer(part) };
  } catch (thrown) {
    return { problem: problemOf('', thrown) };
  }
}
