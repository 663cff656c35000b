/** Atoms in one molecule, and rings counted where the ring is aromatic. */
export interface Formula {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
  readonly rings?: number;
}

/** Standard atomic masses, kg/mol (IUPAC, abridged). */
const CARBON_kg_mol = 12.011e-3;
const HYDROGEN_kg_mol = 1.008e-3;
const OXYGEN_kg_mol = 15.999e-3;

/** Molar mass, kg/mol. */
export function molarMass_kg_mol({ carbon, hydrogen, oxygen }: Formula): number {
  return carbon * CARBON_kg_mol + hydrogen * HYDROGEN_kg_mol + oxygen * OXYGEN_kg_mol;
}

/**
 * Atomic diffusion volumes, cm³/mol: Fuller, Ensley and Giddings, "Diffusion of halogenated
 * hydrocarbons in helium", J. Phys. Chem. 73 (1969) 3679, as revised in Poling, Prausnitz and
 * O'Connell, The Properties of Gases and Liquids (2001), table 11-1; from memory.
 */
const CARBON_cm3_mol = 15.9;
const HYDROGEN_cm3_mol = 2.31;
const OXYGEN_cm3_mol = 6.11;
const RING_cm3_mol = -18.3;

/** Diffusion volume of the molecule for the Fuller equation, cm³/mol. */
export function diffusionVolume_cm3_mol({ carbon, hydrogen, oxygen, rings = 0 }: Formula): number {
  return carbon * CARBON_cm3_mol + hydrogen * HYDROGEN_cm3_mol + oxygen * OXYGEN_cm3_mol + rings * RING_cm3_mol;
}
