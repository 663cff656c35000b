import type { Place } from '../base/errors.ts';
import { volumeFractions, type BlendPart, type MolePart } from './blend.ts';
import { knownEntry } from './known.ts';
import { solventById } from './solvents.ts';

/** A generic thinner by its use in the trade: no maker's product. */
export interface Thinner {
  readonly id: string;
  readonly name: string;
  readonly moles: readonly MolePart[];
  readonly parts: readonly BlendPart[];
  readonly source: string;
}

const SOURCE = 'Assumed: an invented blend of usual lacquer solvents, to stand for its kind; the maker’s own thinner differs';

function thinner(id: string, name: string, shares: Readonly<Record<string, number>>): Thinner {
  const moles = Object.entries(shares).map(([solvent, moleFraction]) => ({ solvent: solventById(solvent), moleFraction }));
  return { id, name, moles, parts: volumeFractions(moles), source: SOURCE };
}

/** The generic thinners, quick to slow; their shares are by moles. */
export const THINNERS: readonly Thinner[] = [
  thinner('fast', 'fast thinner', { mek: 0.6, toluene: 0.4 }),
  thinner('general', 'general thinner', { mek: 0.3, toluene: 0.45, 'n-butyl-acetate': 0.15, 'n-butanol': 0.1 }),
  thinner('retarded', 'retarded thinner', { toluene: 0.3, 'n-butyl-acetate': 0.5, 'n-butanol': 0.2 }),
];

/** A thinner by its id. @throws CrosscoatError `schema` for an unknown one. */
export function thinnerById(id: string, place?: Place): Thinner {
  return knownEntry(THINNERS, id, 'thinner', place);
}
