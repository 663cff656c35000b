import { CUPS, FINISHES, SOLVENTS } from '../../../sim/index.ts';

/** Ids and names for a list to choose from. */
export type Choices = readonly (readonly [id: string, words: string])[];

function choices(table: readonly { readonly id: string; readonly name: string }[]): Choices {
  return table.map(({ id, name }) => [id, name.charAt(0).toUpperCase() + name.slice(1)]);
}

export const FINISH_CHOICES = choices(FINISHES);
export const CUP_CHOICES = choices(CUPS);
/** Chemists write n-butanol: a solvent's name keeps its small letter. */
export const SOLVENT_CHOICES: Choices = SOLVENTS.map(({ id, name }) => [id, name]);

/** The choices, and the one in hand where a file names what this build does not know. */
export function withChosen(known: Choices, id: string): Choices {
  return known.some(([each]) => each === id) ? known : [...known, [id, `${id} (unknown)`]];
}
