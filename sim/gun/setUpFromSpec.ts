import { checkRange } from '../base/check.ts';
import { CrosscoatError } from '../base/errors.ts';
import type { SetUpSpec } from '../job/schema.ts';
import type { Profile, SetUp } from './setUp.ts';

const M_PER_MM = 1e-3;
const M_PER_UM = 1e-6;
/** Between a fan's origin and the nearest distance at which it is believed. */
const LEAST_RAY_MM = 5;
const M3_S_PER_ML_MIN = 1e-6 / 60;

/**
 * Turns a set-up as a job states it into SI and checks what the schema cannot: that numbers fit
 * each other.
 * @param pointer JSON pointer of the set-up in the job, for the errors (`/setUps/0`).
 * @throws CrosscoatError `range` or `geometry`: depth above width, taper above half the width,
 *   an unusable table, distances the wrong way round.
 */
export function makeSetUp(spec: SetUpSpec, pointer = ''): SetUp {
  checkSpec(spec, pointer);
  const { fan, transfer, drops } = spec;
  const [low_mm, high_mm] = spec.distanceRange_mm;
  return {
    id: spec.id,
    name: spec.name,
    fan: {
      width_m: fan.width_mm * M_PER_MM,
      depth_m: fan.depth_mm * M_PER_MM,
      atDistance_m: fan.atDistance_mm * M_PER_MM,
      origin_m: (fan.origin_mm ?? 0) * M_PER_MM,
      profile: profileFromSpec(fan.profile),
    },
    fluidRate_m3_s: spec.fluidRate_mL_min * M3_S_PER_ML_MIN,
    transfer: {
      efficiencyFraction: transfer.efficiency_percent / 100,
      atDistance_m: transfer.atDistance_mm * M_PER_MM,
      decayLength_m: transfer.decayLength_mm * M_PER_MM,
    },
    volumeSolidsFraction: spec.volumeSolids_percent / 100,
    drops: {
      meanDiameter_m: drops.meanDiameter_um * M_PER_UM,
      spreadRatio: drops.spread,
      solventSpeedRatio: drops.solventSpeed,
      atViscosity_Pa_s: drops.atViscosity_mPa_s * 1e-3,
      atPressure_Pa: (drops.atPressure_kPa ?? spec.capPressure_kPa) * 1e3,
    },
    capPressure_Pa: spec.capPressure_kPa * 1e3,
    triggerLag_s: spec.triggerLag_ms * 1e-3,
    distanceRange_m: [low_mm * M_PER_MM, high_mm * M_PER_MM],
  };
}

function profileFromSpec(spec: SetUpSpec['fan']['profile']): Profile {
  if (spec.family === 'flat-top') return { family: 'flat-top', taper_m: spec.taper_mm * M_PER_MM };
  if (spec.family === 'table') {
    return { family: 'table', place_m: spec.place_mm.map((place) => place * M_PER_MM), film: spec.film };
  }
  return spec;
}

function checkSpec(spec: SetUpSpec, pointer: string): void {
  const { fan, transfer, drops } = spec;
  /** One row a number: pointer below the set-up, value, limits, unit, why. */
  const limits: readonly (readonly [string, number, number, number, string, string?])[] = [
    ['/fan/width_mm', fan.width_mm, 5, 1500, 'mm'],
    ['/fan/depth_mm', fan.depth_mm, 1, fan.width_mm, 'mm', 'the width is the long axis'],
    ['/fan/atDistance_mm', fan.atDistance_mm, 20, 1000, 'mm'],
    ['/fan/origin_mm', fan.origin_mm ?? 0, -500, Math.min(spec.distanceRange_mm[0], fan.atDistance_mm) - LEAST_RAY_MM, 'mm', 'the rays start before the nearest believed distance'],
    ['/fluidRate_mL_min', spec.fluidRate_mL_min, 0.1, 5000, 'mL/min'],
    ['/transfer/efficiency_percent', transfer.efficiency_percent, 1, 100, '%'],
    ['/transfer/atDistance_mm', transfer.atDistance_mm, 20, 1000, 'mm'],
    ['/transfer/decayLength_mm', transfer.decayLength_mm, 50, 1e6, 'mm'],
    ['/volumeSolids_percent', spec.volumeSolids_percent, 0.1, 100, '%'],
    ['/drops/meanDiameter_um', drops.meanDiameter_um, 1, 500, 'µm'],
    ['/drops/spread', drops.spread, 1, 5, ''],
    ['/drops/solventSpeed', drops.solventSpeed, 0, 20, ''],
    ['/drops/atViscosity_mPa_s', drops.atViscosity_mPa_s, 1, 2000, 'mPa s'],
    ['/drops/atPressure_kPa', drops.atPressure_kPa ?? spec.capPressure_kPa, 1, 500, 'kPa'],
    ['/capPressure_kPa', spec.capPressure_kPa, 1, 500, 'kPa'],
    ['/triggerLag_ms', spec.triggerLag_ms, 0, 1000, 'ms'],
    ['/distanceRange_mm/0', spec.distanceRange_mm[0], 10, spec.distanceRange_mm[1], 'mm', 'nearest comes before farthest'],
    ['/distanceRange_mm/1', spec.distanceRange_mm[1], 10, 2000, 'mm'],
  ];
  for (const [below, value, low, high, unit, why] of limits) {
    checkNumber(pointer + below, value, low, high, unit, why);
  }
  checkProfile(fan.profile, fan.width_mm, `${pointer}/fan/profile`);
}

function checkNumber(pointer: string, value: number, low: number, high: number, unit: string, why?: string): void {
  checkRange({
    name: `set-up: ${pointer}`,
    value,
    low,
    high,
    ...(unit === '' ? {} : { unit }),
    ...(why === undefined ? {} : { why }),
    advice: `give a number from ${low} to ${high}`,
    place: { pointer },
  });
}

function checkProfile(profile: SetUpSpec['fan']['profile'], width_mm: number, pointer: string): void {
  if (profile.family === 'double-beta') {
    checkNumber(`${pointer}/beta1`, profile.beta1, 1, 8, '', 'below 1 the film would be endless at the edge');
    checkNumber(`${pointer}/beta2`, profile.beta2, 1, 8, '', 'below 1 the film would be endless at the edge');
  } else if (profile.family === 'flat-top') {
    checkNumber(`${pointer}/taper_mm`, profile.taper_mm, 0, width_mm / 2, 'mm', 'the tapers meet at half the width');
  } else if (profile.family === 'table') {
    checkTable(profile.place_mm, profile.film, width_mm, pointer);
  }
}

function checkTable(place_mm: readonly number[], film: readonly number[], width_mm: number, pointer: string): void {
  if (place_mm.length !== film.length || place_mm.length < 3) {
    throw new CrosscoatError(
      'geometry',
      `set-up: ${pointer} has ${place_mm.length} places and ${film.length} films; give as many films as places, at least 3`,
      { pointer },
    );
  }
  for (let i = 0; i < place_mm.length; i++) {
    const place = place_mm[i] as number;
    checkNumber(`${pointer}/place_mm/${i}`, place, -width_mm, width_mm, 'mm', 'a place cannot lie beyond twice the stated fan');
    checkNumber(`${pointer}/film/${i}`, film[i] as number, 0, 1e9, '', 'film is not negative');
    const before = place_mm[i - 1];
    if (before !== undefined && !(place > before)) {
      const at = `${pointer}/place_mm/${i}`;
      throw new CrosscoatError(
        'geometry',
        `set-up: ${at} = ${place} mm does not come after ${before} mm (places rise across the fan); sort the table and drop repeats`,
        { pointer: at },
      );
    }
  }
  if (!film.some((value) => value > 0)) {
    throw new CrosscoatError(
      'geometry',
      `set-up: ${pointer}/film is zero everywhere (no fan can be made of it); give the film that one stroke left`,
      { pointer: `${pointer}/film` },
    );
  }
}
