import type { BlendPart } from './blend.ts';
import type { Sourced } from './sourced.ts';

/**
 * How viscosity grows with solids and falls with warmth:
 * μ = reference · exp(growth · (φ - φ_ref)) · exp(sensitivity · (1/T - 1/T_ref)).
 */
export interface ViscosityLaw {
  readonly reference_Pa_s: number;
  /** Volume solids at which the reference holds. */
  readonly referenceSolidsFraction: number;
  /** Natural logarithm of the viscosity gained per unit of volume solids. */
  readonly growth: number;
  /** Temperature at which the reference holds. */
  readonly temperature_K: number;
  /** B of exp(B(1/T - 1/T_ref)). */
  readonly sensitivity_K: number;
}

/** A generic finish as it comes in the can: no maker's product. */
export interface Finish {
  readonly id: string;
  readonly name: string;
  /** Volume solids before thinning. */
  readonly volumeSolidsFraction: Sourced;
  readonly solidsDensity_kg_m3: Sourced;
  /** Of the unthinned liquid, from its solids and solvents. */
  readonly liquidDensity_kg_m3: number;
  readonly viscosity: ViscosityLaw;
  readonly viscositySource: string;
  readonly surfaceTension_N_m: Sourced;
  /** Stress below which a wet film on a slope does not move. */
  readonly yieldStress_Pa: Sourced;
  /** The solvents in the can, shares of all its solvent by volume. */
  readonly solvents: readonly BlendPart[];
  /** Diffusion of the last solvent in the film when it sets. */
  readonly setDiffusivity_m2_s: Sourced;
  /** Decades that the diffusion falls per unit of volume solids gained. */
  readonly diffusivityFall: Sourced;
  /** Dry film of the heaviest usual coat. */
  readonly heaviestCoat_kg_m2: Sourced;
}
