import type { Warning } from '../base/errors.ts';
import type { BlendPart } from '../materials/blend.ts';
import type { Finish, ViscosityLaw } from '../materials/finish.ts';

export type { ViscosityLaw } from '../materials/finish.ts';

/** A solvent and its share of all the solvent by volume, 0 to 1. */
export type MixSolvent = BlendPart;

/** The quick or the slow solvents of a mix, carried together as one. */
export interface SolventClass {
  /** Share of all the solvent by volume, 0 to 1. */
  readonly volumeFraction: number;
  /** Shares within the class, sum 1; empty when `volumeFraction` is 0. */
  readonly parts: readonly MixSolvent[];
  /** Of the class as mixed; 0 for an empty class. */
  readonly molarVolume_m3_mol: number;
  /** By volume, n-butyl acetate = 1; 0 for an empty class. */
  readonly relativeEvaporation: number;
}

/** What is in the cup, ready to spray. */
export interface Mix {
  readonly id: string;
  readonly name: string;
  readonly finish: Finish;
  /** All solvents, the finish's own with the thinner's; shares sum to 1. */
  readonly solvents: readonly MixSolvent[];
  readonly fast: SolventClass;
  readonly slow: SolventClass;
  /** Of the mixed liquid. */
  readonly volumeSolidsFraction: number;
  readonly density_kg_m3: number;
  /** Relative evaporation of all the solvent by volume, n-butyl acetate = 1. */
  readonly solventSpeedRatio: number;
  /** Volumes of thinner, retarder included, to one of finish. */
  readonly thinnerRatio: number;
  /** Share of the thinner that is retarder, by volume. */
  readonly retarderFraction: number;
  readonly viscosity: ViscosityLaw;
  readonly warnings: readonly Warning[];
}
