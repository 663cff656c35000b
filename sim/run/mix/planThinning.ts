import { CrosscoatError } from '../../base/errors.ts';
import type { MixSpec } from '../../job/schema.ts';
import type { Cup } from '../../materials/cups.ts';
import { ranged, type Sourced } from '../../materials/sourced.ts';
import { thinningGuess } from '../../mix/blendRules.ts';
import { cupTime, cupTimeAt, viscosityInRange_m2_s } from '../../mix/cupTime.ts';
import { makeMix } from '../../mix/makeMix.ts';
import { partFractions, type MixRatio, type PartDensities } from '../../mix/mixRatio.ts';
import { specRatio } from '../../mix/partDensities.ts';
import { thinnedSpec } from '../../mix/thinnedSpec.ts';
import { fitThinning, ratioForViscosity, thinnedViscosity, type ThinningLaw, type ThinningReading } from '../../mix/thinningLaw.ts';
import { viscosity_Pa_s } from '../../mix/viscosity.ts';
import type { ReportedGuess, ReportedThinning, ThinningOrigin, WantedSeconds } from '../../report/reportedMixing.ts';
import { exactly } from '../../scheme/spread.ts';

/** What is asked of a thinning. */
export interface ThinningAsked {
  readonly cup: Cup;
  /** Of the liquid in the cup. */
  readonly temperature_K: number;
  /** The reader's own readings; with fewer than two the mix's own law stands in. */
  readonly readings?: readonly ThinningReading[];
  /** Seconds wanted for the gun. */
  readonly wanted_s?: number;
  /** Another temperature of the same mix. */
  readonly later_K?: number;
}

/** B of the temperature, K. Common practice for dope; two readings of one mix at two temperatures go before it. */
export const USUAL_SENSITIVITY_K: Sourced = ranged(2000, 1500, 2500, 'common practice for dope and lacquer; two readings of one mix at two temperatures fix it');
/** Kinematic viscosity of a lacquer thinner at room temperature, mm²/s: toluene has 0.67, n-butyl acetate 0.83, methyl ethyl ketone 0.53. */
export const THINNER_VISCOSITY_MM2_S: Sourced = ranged(0.7, 0.5, 1, 'handbook values of the usual solvents, from memory');

/** How far a mix is thinned, what a cup says of it, and how far it is to be thinned for so many seconds. */
export function planThinning(spec: MixSpec, pointer: string, ratio: MixRatio, densities: PartDensities, asked: ThinningAsked): ReportedThinning {
  const { law, origin } = lawOf(spec, pointer, asked);
  const at = thinnedViscosity(law, ratio.thinnerPerFinish);
  const time = cupTime(asked.cup, at.viscosity_m2_s);
  const sensitivity_K = law.sensitivityFitted ? exactly(law.sensitivity_K) : USUAL_SENSITIVITY_K;
  return {
    law,
    origin,
    sensitivity_K,
    time,
    viscosity_m2_s: at.viscosity_m2_s,
    isBeyondReadings: at.isBeyondReadings,
    wanted: asked.wanted_s === undefined ? null : wantedOf(law, asked.cup, asked.wanted_s, ratio),
    later: asked.later_K === undefined ? null : { temperature_K: asked.later_K, ...cupTimeAt(asked.cup, at.viscosity_m2_s, asked.temperature_K, asked.later_K, sensitivity_K) },
    guess: guessOf(thinnedViscosity(law, 0).viscosity_m2_s, ratio, densities, asked.cup),
  };
}

function lawOf(spec: MixSpec, pointer: string, { readings = [], temperature_K }: ThinningAsked): { readonly law: ThinningLaw; readonly origin: ThinningOrigin } {
  if (readings.length >= 2) return { law: fitThinning(readings, USUAL_SENSITIVITY_K.value, temperature_K), origin: 'readings' };
  return { law: usualLaw(spec, pointer, temperature_K), origin: spec.cup === undefined ? 'finish' : 'cup' };
}

/**
 * The viscosity law of the mix as a thinning law. Exponential in solids is linear in the share of thinner; the law runs through the
 * mix as it is and through the same with one more volume of thinner, and the small bend that the density brings is left out.
 */
function usualLaw(spec: MixSpec, pointer: string, temperature_K: number): ThinningLaw {
  const own = makeMix(spec, pointer);
  const reading = (thinnerPerFinish: number): ThinningReading => {
    const mix = makeMix(thinnedSpec(spec, { ...specRatio(spec), thinnerPerFinish }), pointer);
    return { thinnerPerFinish, temperature_K, viscosity_m2_s: viscosity_Pa_s(own.viscosity, mix.volumeSolidsFraction, temperature_K) / mix.density_kg_m3 };
  };
  const other = own.thinnerRatio > 5 ? 0 : own.thinnerRatio + 1;
  return { ...fitThinning([reading(own.thinnerRatio), reading(other)], own.viscosity.sensitivity_K, temperature_K), least: 0, most: 1 };
}

function wantedOf(law: ThinningLaw, cup: Cup, seconds: number, ratio: MixRatio): WantedSeconds {
  try {
    const found = ratioForViscosity(law, viscosityInRange_m2_s(cup, seconds));
    return { seconds, ratio: { thinnerPerFinish: found.thinnerPerFinish, retarderFraction: ratio.retarderFraction }, isBeyondReadings: found.isBeyondReadings, problem: null };
  } catch (error) {
    if (!(error instanceof CrosscoatError)) throw error;
    return { seconds, ratio: null, isBeyondReadings: false, problem: error.message };
  }
}

function guessOf(finish_m2_s: number, ratio: MixRatio, densities: PartDensities, cup: Cup): ReportedGuess | null {
  const shares = partFractions(ratio);
  const thinner_kg = shares.thinner * densities.thinner_kg_m3 + shares.retarder * densities.retarder_kg_m3;
  const thinnerMassFraction = thinner_kg / (thinner_kg + shares.finish * densities.finish_kg_m3);
  const thinner_m2_s = THINNER_VISCOSITY_MM2_S.value * 1e-6;
  try {
    const guess = thinningGuess({ massFraction: 1 - thinnerMassFraction, viscosity_m2_s: finish_m2_s }, { massFraction: thinnerMassFraction, viscosity_m2_s: thinner_m2_s });
    const times = { refutas: cupTime(cup, guess.refutas_m2_s), arrhenius: cupTime(cup, guess.arrhenius_m2_s), cubeRoot: cupTime(cup, guess.cubeRoot_m2_s) };
    return { ...guess, finish_m2_s, thinner_m2_s, thinnerMassFraction, times };
  } catch (error) {
    if (error instanceof CrosscoatError) return null;
    throw error;
  }
}
