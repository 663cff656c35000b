import type { Place } from '../base/errors.ts';
import { knownEntry } from './known.ts';

/**
 * A flow cup. `linear`: ν = a (t - b). `inverse`: ν = a t - b/t. ν in mm²/s, t in s, the units in
 * which the standards state their constants.
 */
export interface Cup {
  readonly id: string;
  readonly name: string;
  readonly form: 'linear' | 'inverse';
  readonly a: number;
  readonly b: number;
  /** Drain times between which the formula holds, s. */
  readonly least_s: number;
  readonly most_s: number;
  /** Temperature of the liquid that the standard asks for, °C. */
  readonly standard_C: number;
  readonly source: string;
}

const FORD = 'ASTM D1200, formula and range as in a cup maker’s published table';
const ZAHN = 'ASTM D4212, formula and range as in a cup maker’s published table';
const ISO = 'ISO 2431:2011, from memory';
const DIN = 'DIN 53211 (withdrawn 1996), from memory';

function ford(number: number, a: number, b: number, least_s = 20): Cup {
  return { id: `ford-${number}`, name: `Ford cup No. ${number}`, form: 'linear', a, b, least_s, most_s: 100, standard_C: 25, source: FORD };
}

function zahn(number: number, a: number, b: number, least_s = 20): Cup {
  return { id: `zahn-${number}`, name: `Zahn cup No. ${number}`, form: 'linear', a, b, least_s, most_s: 80, standard_C: 25, source: ZAHN };
}

function iso(hole_mm: number, a: number, b: number): Cup {
  return { id: `iso-${hole_mm}`, name: `ISO cup, ${hole_mm} mm`, form: 'inverse', a, b, least_s: 30, most_s: 100, standard_C: 23, source: ISO };
}

/** The cups known. */
export const CUPS: readonly Cup[] = [
  ford(1, 0.49, 35, 55), ford(2, 1.44, 18, 40), ford(3, 2.31, 6.58), ford(4, 3.85, 4.49), ford(5, 12.1, 2),
  zahn(1, 1.1, 29, 35), zahn(2, 3.5, 14), zahn(3, 11.7, 7.5), zahn(4, 14.8, 5), zahn(5, 23, 0),
  iso(3, 0.443, 200), iso(4, 1.37, 200), iso(5, 3.28, 220), iso(6, 6.9, 570),
  { id: 'din-4', name: 'DIN cup, 4 mm', form: 'inverse', a: 4.57, b: 452, least_s: 25, most_s: 150, standard_C: 20, source: DIN },
];

/** A cup by its id. @throws CrosscoatError `schema` for an unknown one. */
export function cupById(id: string, place?: Place): Cup {
  return knownEntry(CUPS, id, 'cup', place);
}

/**
 * A cup as people type it: `ford4`, `Ford No. 4`, `zahn #2`, `ISO 4 mm`, or its id.
 * @throws CrosscoatError `schema` for an unknown one, with the near word and all ids.
 */
export function cupByWord(word: string, place?: Place): Cup {
  const bare = bareName(word);
  const found = CUPS.find(({ id }) => bareName(id) === bare);
  // An unknown one is looked up as an id would be written, so that the near word is found.
  return found ?? cupById(bare.replace(/(\D)(\d+)$/, '$1-$2') || word, place);
}

/** Letters and figures alone, without the words that only say that it is a cup with a number. */
function bareName(word: string): string {
  return word.toLowerCase().replaceAll(/\b(?:cup|no|number|nr)\b|(?<=\d)\s*mm\b|[^a-z\d]/g, '');
}
