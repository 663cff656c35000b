import { CELSIUS_0_K } from '../base/units.ts';
import { checkRange } from '../base/check.ts';
import { CrosscoatError, type Place, type Warning } from '../base/errors.ts';
import type { MixSpec } from '../job/schema.ts';
import { blendDensity_kg_m3, blended, volumeMean, type BlendPart } from '../materials/blend.ts';
import { cupById } from '../materials/cups.ts';
import type { Finish, ViscosityLaw } from '../materials/finish.ts';
import { finishById } from '../materials/finishes.ts';
import { solventById } from '../materials/solvents.ts';
import { cupViscosity_m2_s, isInCupRange } from './cups.ts';
import type { Mix } from './mix.ts';
import { MOST_RETARDER } from './retarder.ts';
import { solventClasses } from './solventClass.ts';

/** How far the shares of a blend may be from 100 %. */
const SUM_TOLERANCE_percent = 0.1;
/** Volumes of thinner to one of finish beyond which nothing is a finish any more. */
export const MOST_THINNER = 10;

/**
 * What is in the cup, from what the job states: solvents, solids, density, speed and viscosity.
 * Volumes add, and the retarder is part of the stated thinner.
 * @param pointer JSON pointer of the mix, for messages.
 * @throws CrosscoatError `schema` for an unknown finish, solvent or cup; `range` for a blend that
 * does not add to 100 ± 0.1 %, or a cup reading that is no viscosity.
 */
export function makeMix(spec: MixSpec, pointer: string): Mix {
  const finish = finishById(spec.finish, { pointer: `${pointer}/finish` });
  const retarderFraction = spec.retarder === undefined ? 0 : spec.retarder.percent / 100;
  const thinner = blended([
    { parts: statedBlend(spec.thinner, `${pointer}/thinner`), weight: 1 - retarderFraction },
    ...(spec.retarder === undefined ? [] : [{ parts: [{ solvent: solventById(spec.retarder.solvent, { pointer: `${pointer}/retarder/solvent` }), volumeFraction: 1 }], weight: retarderFraction }]),
  ]);
  const mix = thinned(finish, thinner, spec.thinnerPerFinish, retarderFraction, pointer);
  const named = { ...mix, id: spec.id, name: spec.name };
  return spec.cup === undefined ? named : withCupReading(named, spec.cup, `${pointer}/cup`);
}

/** A finish with so many volumes of a thinner; the viscosity is the finish's own law. */
export function thinned(finish: Finish, thinner: readonly BlendPart[], thinnerRatio: number, retarderFraction: number, pointer: string): Mix {
  const place = { pointer };
  checkRange({ name: `${pointer}: thinner per finish`, value: thinnerRatio, low: 0, high: MOST_THINNER, advice: 'give volumes of thinner to one of finish', place });
  const ownSolvent = 1 - finish.volumeSolidsFraction.value;
  const solvents = blended([
    { parts: finish.solvents, weight: ownSolvent },
    ...(thinnerRatio === 0 ? [] : [{ parts: thinner, weight: thinnerRatio }]),
  ]);
  const volumeSolidsFraction = finish.volumeSolidsFraction.value / (1 + thinnerRatio);
  return {
    id: finish.id,
    name: finish.name,
    finish,
    solvents,
    ...solventClasses(solvents),
    volumeSolidsFraction,
    density_kg_m3: mixedDensity_kg_m3(finish, solvents, volumeSolidsFraction),
    solventSpeedRatio: volumeMean(solvents, (solvent) => solvent.relativeEvaporation.value),
    thinnerRatio,
    retarderFraction,
    viscosity: finish.viscosity,
    warnings: retarderFraction > MOST_RETARDER ? [retarderWarning(retarderFraction, place)] : [],
  };
}

/** Density of solids in solvents, kg/m³. */
export function mixedDensity_kg_m3(finish: Finish, solvents: readonly BlendPart[], solidsFraction: number): number {
  return solidsFraction * finish.solidsDensity_kg_m3.value + (1 - solidsFraction) * blendDensity_kg_m3(solvents);
}

function statedBlend(stated: MixSpec['thinner'], pointer: string): BlendPart[] {
  const sum = stated.reduce((total, { percent }) => total + percent, 0);
  // The sum as shown is checked, so that 99.9 passes although its binary sum is a hair less.
  const shownSum = Number(sum.toFixed(6));
  if (!(Math.abs(shownSum - 100) <= SUM_TOLERANCE_percent + 1e-9)) {
    throw new CrosscoatError(
      'range',
      `${pointer}: the shares add to ${shownSum} %, not to 100 ± ${SUM_TOLERANCE_percent} % (each is a share of the whole thinner by volume); change them so that they do`,
      { pointer },
    );
  }
  const parts = stated.map(({ solvent, percent }, i) => ({ solvent: solventById(solvent, { pointer: `${pointer}/${i}/solvent` }), volumeFraction: percent / sum }));
  // A solvent named twice becomes one.
  return blended([{ parts, weight: 1 }]);
}

function retarderWarning(fraction: number, place: Place): Warning {
  return {
    code: 'model-limit',
    text: `The retarder is ${Number((fraction * 100).toFixed(1))} % of the thinner; common practice is 5 to 15 % and never more than ${MOST_RETARDER * 100} %, as the film stays soft for long.`,
    place,
  };
}

function withCupReading(mix: Mix, reading: NonNullable<MixSpec['cup']>, pointer: string): Mix {
  const cup = cupById(reading.kind, { pointer: `${pointer}/kind` });
  const kinematic_m2_s = cupViscosity_m2_s(cup, reading.seconds, { pointer: `${pointer}/seconds` });
  const viscosity: ViscosityLaw = {
    ...mix.viscosity,
    reference_Pa_s: kinematic_m2_s * mix.density_kg_m3,
    referenceSolidsFraction: mix.volumeSolidsFraction,
    temperature_K: reading.temperature_C + CELSIUS_0_K,
  };
  if (isInCupRange(cup, reading.seconds)) return { ...mix, viscosity };
  const doubt: Warning = {
    code: 'model-limit',
    text: `${reading.seconds} s is outside the range of the ${cup.name}, ${cup.least_s} to ${cup.most_s} s; its viscosity is a guess there: use a cup with a ${reading.seconds < cup.least_s ? 'smaller' : 'larger'} hole.`,
    place: { pointer: `${pointer}/seconds` },
  };
  return { ...mix, viscosity, warnings: [...mix.warnings, doubt] };
}
