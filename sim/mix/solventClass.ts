import { moleFractions, volumeMean, type BlendPart } from '../materials/blend.ts';
import { molarVolume_m3_mol } from '../materials/solvent.ts';
import type { SolventClass } from './mix.ts';

/**
 * Relative evaporation from which a solvent counts as quick. Of the solvents known the slowest
 * quick ones have 1.4 (ethanol), the quickest slow one 1.0 (n-butyl acetate): the cut lies in that
 * gap, so the spread of published tables moves no solvent across it. Quick solvents chill the
 * film; slow ones keep it open afterwards.
 */
const QUICK_FROM = 1.2;

/** A blend cut into its quick and its slow solvents. */
export function solventClasses(solvents: readonly BlendPart[]): { readonly fast: SolventClass; readonly slow: SolventClass } {
  const isQuick = ({ solvent }: BlendPart) => solvent.relativeEvaporation.value >= QUICK_FROM;
  return {
    fast: solventClass(solvents.filter(isQuick)),
    slow: solventClass(solvents.filter((part) => !isQuick(part))),
  };
}

function solventClass(taken: readonly BlendPart[]): SolventClass {
  const volumeFraction = taken.reduce((sum, part) => sum + part.volumeFraction, 0);
  if (volumeFraction === 0) return { volumeFraction: 0, parts: [], molarVolume_m3_mol: 0, relativeEvaporation: 0 };
  const parts = taken.map((part) => ({ solvent: part.solvent, volumeFraction: part.volumeFraction / volumeFraction }));
  return {
    volumeFraction,
    parts,
    molarVolume_m3_mol: moleFractions(parts).reduce((sum, { solvent, moleFraction }) => sum + moleFraction * molarVolume_m3_mol(solvent), 0),
    relativeEvaporation: volumeMean(parts, (solvent) => solvent.relativeEvaporation.value),
  };
}
