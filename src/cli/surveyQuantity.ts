import { CrosscoatError } from '../../sim/index.ts';
import { quantityOf, type TypedQuantity } from './optionValues.ts';

/** Units that messages offer for the quantities of a survey. */
const UNDERSTOOD: Readonly<Partial<Record<TypedQuantity[0], string>>> = { length: 'um, mil, mm or in', area: 'm2, ft2, cm2 or in2', ratio: '%' };

/**
 * An option's quantity in SI, its unit stated. A bare number is refused: limits and areas come off sheets of either system, and a
 * verdict by the wrong unit looks like any other.
 * @throws `unit`, naming the option, the value and the units understood.
 */
export function statedQuantity(option: string, text: string, typed: TypedQuantity): number {
  if (isBare(text)) throw noUnit(option, text, UNDERSTOOD[typed[0]] ?? typed[1], typed[2]);
  return quantityOf(option, text, typed);
}

/** A number without any sign of a unit; the e of an exponent is none. */
export function isBare(text: string): boolean {
  const plain = text.normalize('NFKC').trim();
  return /\d/.test(plain) && /^[\d.,/+\-−⁄\s]*$/.test(plain.replace(/(?<=\d)e(?=[+-]?\d)/i, ''));
}

/** A number that does not say its unit. */
export function noUnit(option: string, text: string, understood: string, example: string): CrosscoatError {
  return new CrosscoatError('unit', `${option} = "${text.slice(0, 40)}" does not say its unit; write it behind the number (understood: ${understood}), such as ${example}`);
}
