import { CrosscoatError, type Warning } from '../../base/errors.ts';
import type { CardSpec } from '../../job/schema.ts';
import { withinRatio, type Measured } from './measured.ts';

/** Transfer efficiency (solids that landed over solids that left the gun), as a fraction. */
export interface EfficiencyFound extends Measured {
  readonly warnings: readonly Warning[];
}

/** What the cup holds. Both are taken as exact. */
export interface CardLiquid {
  readonly volumeSolidsFraction: number;
  readonly solidsDensity_kg_m3: number;
}

/** What a comb's film depends on beside the comb. */
export interface CombSetting {
  readonly fluidRate_m3_s: Measured;
  /** Film in the middle of one stroke per liquid laid on a unit of travel: `strokeProfile(fan)(0)` of the fan as wide as it is at the card, 1/m. */
  readonly middle_per_m: Measured;
  readonly volumeSolidsFraction: number;
  /** Share of the solvent that is still there on impact (`solventKept`). */
  readonly solventKeptFraction: number;
}

/** Assumed: below this share no air gun works as it should, so that a measure is the likelier fault. */
const LITTLE_LANDS = 0.05;
/** Least that a set-up takes. */
const LEAST_LANDS = 0.01;

/**
 * Efficiency by a weighed foil: n strokes of speed v lay Q/v of liquid on a unit of travel each, so that over a foil of
 * length L, as wide as the fan, `η = m v / (L n Q φ ρ)`, m the dry weight gained. Weight, speed and fluid
 * rate err in quadrature; length, solids and their density are taken as exact. Left out: film that flies past the foil's ends.
 * @throws CrosscoatError `range` for a weight no better known than itself, and an efficiency that cannot be (see `checkLanding`).
 */
export function foilEfficiency(foil: NonNullable<CardSpec['foil']>, fluidRate_m3_s: Measured, liquid: CardLiquid): EfficiencyFound {
  const gain_kg = { value: foil.gain_g * 1e-3, within: foil.gainWithin_g * 1e-3 };
  if (!(gain_kg.within < gain_kg.value)) {
    throw new CrosscoatError('range', `foil: gain_g = ${foil.gain_g} g is known within ${foil.gainWithin_g} g only, which says nothing; spray more strokes over the foil, or weigh finer`);
  }
  const speed_m_s = speedOf(foil);
  const solids_kg_m3 = liquid.volumeSolidsFraction * liquid.solidsDensity_kg_m3;
  const value = (gain_kg.value * speed_m_s.value) / (foil.length_mm * 1e-3 * foil.strokes * fluidRate_m3_s.value * solids_kg_m3);
  return checkLanding('foil', { value, within: value * withinRatio(gain_kg, speed_m_s, fluidRate_m3_s) }, 'the foil was fully dry');
}

/**
 * Efficiency by a wet-film comb in the middle of the fan: `η = h v / (n Q P(0) (φ + (1 - φ) f))`, h the film halfway
 * between the last wetted and the next dry tooth and half their gap its interval, f the share of solvent kept in flight.
 * Film, speed, fluid rate and the fan's middle err in quadrature. Left out: solvent that leaves before the
 * comb is read, which makes the efficiency too low.
 * @throws CrosscoatError `range` for teeth the wrong way round, and as `checkLanding`.
 */
export function combEfficiency(comb: NonNullable<CardSpec['comb']>, setting: CombSetting): EfficiencyFound {
  const { low_um, high_um, strokes } = comb;
  if (!(low_um < high_um)) {
    throw new CrosscoatError('range', `comb: low_um = ${low_um} µm is not below high_um = ${high_um} µm (the film lies between the last wetted and the next dry tooth); give them the other way round`);
  }
  const film_m = { value: ((low_um + high_um) / 2) * 1e-6, within: ((high_um - low_um) / 2) * 1e-6 };
  const speed_m_s = speedOf(comb);
  const { fluidRate_m3_s, middle_per_m, volumeSolidsFraction, solventKeptFraction } = setting;
  const wetRatio = volumeSolidsFraction + (1 - volumeSolidsFraction) * solventKeptFraction;
  const value = (film_m.value * speed_m_s.value) / (strokes * fluidRate_m3_s.value * middle_per_m.value * wetRatio);
  return checkLanding('comb', { value, within: value * withinRatio(film_m, speed_m_s, fluidRate_m3_s, middle_per_m) }, 'the comb was read at once, in the middle of the fan');
}

function speedOf({ speed_m_s, speedWithin_percent }: { readonly speed_m_s: number; readonly speedWithin_percent: number }): Measured {
  return { value: speed_m_s, within: (speed_m_s * speedWithin_percent) / 100 };
}

/**
 * Refuses an efficiency that lies above 1 or below 1 % even at the end of its interval; holds one that is above 1 within it
 * to 1; doubts one below 5 %.
 */
function checkLanding(name: string, { value, within }: Measured, care: string): EfficiencyFound {
  const look = `look at strokes, speed, fluid rate and solids, and whether ${care}`;
  const percent = `${(100 * value).toPrecision(3)} %`;
  if (!(value - within <= 1) || !(value + within >= LEAST_LANDS)) {
    throw new CrosscoatError('range', `${name}: ${percent} (within ${(100 * within).toPrecision(2)} %) of the solids would have landed, which is not from ${100 * LEAST_LANDS} to 100 %; ${look}`);
  }
  if (value > 1) return { value: 1, within, warnings: [doubt(`By the ${name} ${percent} of the solids landed, more than left the gun; 100 % is taken, which is inside the interval. Please ${look}.`)] };
  if (value < LITTLE_LANDS) return { value: Math.max(LEAST_LANDS, value), within, warnings: [doubt(`By the ${name} only ${percent} of the solids landed, less than any gun in order; ${look}.`)] };
  return { value, within, warnings: [] };
}

function doubt(text: string): Warning {
  return { code: 'model-limit', text, place: {} };
}
