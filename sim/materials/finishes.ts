import type { Place } from '../base/errors.ts';
import { blendDensity_kg_m3 } from './blend.ts';
import type { Finish, ViscosityLaw } from './finish.ts';
import { knownEntry } from './known.ts';
import { ranged, type Sourced } from './sourced.ts';
import { thinnerById } from './thinners.ts';

/** One lb/ft², kg/m². */
const LB_FT2 = 4.88243;
const WOOD = 'K. D. Wood, Airplane Design, 8th ed. 1947, weight of coating, as quoted; "per coat" is read from the sums of whole schedules';
const PRACTICE = 'common practice; makers differ, use the product sheet';
const VISCOSITY_SOURCE =
  'common practice: 0.03 Pa s at 12.5 % volume solids and 25 °C and 1 Pa s at 30 %, growing exponentially; ' +
  'temperature coefficient 1500 to 2500 K for dope, from practice. A cup reading replaces it.';

/** A dope-like liquid: ln(1/0.03)/(0.30 - 0.125) = 20.0375. */
const DOPE_VISCOSITY: ViscosityLaw = { reference_Pa_s: 0.03, referenceSolidsFraction: 0.125, growth: 20.0375, temperature_K: 298.15, sensitivity_K: 2000 };
/** Assumed: a shorter resin, as thin at 25 % solids as dope at 12.5 %, thickening half as steeply. */
const SHORT_RESIN_VISCOSITY: ViscosityLaw = { ...DOPE_VISCOSITY, referenceSolidsFraction: 0.25, growth: 10 };

interface Given {
  readonly id: string;
  readonly name: string;
  readonly solids: Sourced;
  readonly solidsDensity: Sourced;
  readonly viscosity: ViscosityLaw;
  readonly coat_lb_ft2: readonly [number, number];
}

function finish({ id, name, solids, solidsDensity, viscosity, coat_lb_ft2 }: Given): Finish {
  // Assumed: the can holds the solvents of the general lacquer-type thinner.
  const solvents = thinnerById('general').parts;
  const [least, most] = coat_lb_ft2;
  return {
    id,
    name,
    volumeSolidsFraction: solids,
    solidsDensity_kg_m3: solidsDensity,
    liquidDensity_kg_m3: solids.value * solidsDensity.value + (1 - solids.value) * blendDensity_kg_m3(solvents),
    viscosity,
    viscositySource: VISCOSITY_SOURCE,
    surfaceTension_N_m: ranged(0.027, 0.024, 0.032, 'Assumed: that of lacquer solvents with resin'),
    yieldStress_Pa: ranged(1.0, 0.7, 1.4, 'common practice: the wet film that holds on an upright side; not measured'),
    solvents,
    setDiffusivity_m2_s: ranged(1e-12, 1e-13, 1e-11, 'Assumed: half of what a 25 µm film holds when it sets leaves in about 2 min'),
    diffusivityFall: ranged(10, 6, 15, 'Assumed: diffusion falls by powers of ten as solvent leaves (C. M. Hansen, two-stage drying, 1970, from memory)'),
    heaviestCoat_kg_m2: ranged(most * LB_FT2, least * LB_FT2, most * LB_FT2, WOOD),
  };
}

/** The generic finishes known. */
export const FINISHES: readonly Finish[] = [
  finish({ id: 'clear-dope', name: 'clear dope', solids: ranged(0.2, 0.12, 0.25, PRACTICE), solidsDensity: ranged(1250, 1200, 1300, PRACTICE), viscosity: DOPE_VISCOSITY, coat_lb_ft2: [0.0052, 0.0076] }),
  finish({ id: 'aluminium-dope', name: 'aluminium dope', solids: ranged(0.2, 0.12, 0.25, PRACTICE), solidsDensity: ranged(1400, 1300, 1600, PRACTICE), viscosity: DOPE_VISCOSITY, coat_lb_ft2: [0.0056, 0.0083] }),
  finish({ id: 'colour-dope', name: 'colour dope', solids: ranged(0.22, 0.14, 0.28, PRACTICE), solidsDensity: ranged(1450, 1300, 1600, PRACTICE), viscosity: DOPE_VISCOSITY, coat_lb_ft2: [0.0056, 0.0083] }),
  finish({ id: 'lacquer', name: 'lacquer', solids: ranged(0.22, 0.15, 0.3, PRACTICE), solidsDensity: ranged(1300, 1200, 1500, PRACTICE), viscosity: DOPE_VISCOSITY, coat_lb_ft2: [0.0056, 0.009] }),
  finish({ id: 'primer', name: 'primer', solids: ranged(0.35, 0.25, 0.45, PRACTICE), solidsDensity: ranged(1800, 1500, 2200, PRACTICE), viscosity: SHORT_RESIN_VISCOSITY, coat_lb_ft2: [0.0035, 0.0069] }),
  finish({ id: 'enamel', name: 'synthetic enamel', solids: ranged(0.4, 0.3, 0.5, PRACTICE), solidsDensity: ranged(1400, 1200, 1600, PRACTICE), viscosity: SHORT_RESIN_VISCOSITY, coat_lb_ft2: [0.0049, 0.0069] }),
];

/** A finish by its id. @throws CrosscoatError `schema` for an unknown one. */
export function finishById(id: string, place?: Place): Finish {
  return knownEntry(FINISHES, id, 'finish', place);
}
