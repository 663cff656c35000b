import { CrosscoatError, parseQuantity, type Job, type QuantityName } from '../../sim/index.ts';

/** What an option's quantity is: its name, the unit of a bare number, and an example for a message. */
export type TypedQuantity = readonly [name: QuantityName, unit: string, example: string];

/** An option's quantity in SI. @throws `unit`, naming the option and giving the example. */
export function quantityOf(option: string, text: string, [name, unit, example]: TypedQuantity): number {
  try {
    return parseQuantity(text.trim(), name, unit);
  } catch (error) {
    if (!(error instanceof CrosscoatError)) throw error;
    throw new CrosscoatError('unit', `${option} = ${error.message}, such as ${example}`);
  }
}

/** `low..high` in SI; the example is one of a range. @throws `unit`. */
export function rangeOf(option: string, text: string, typed: TypedQuantity): readonly [low: number, high: number] {
  const ends = text.split('..');
  if (ends.length !== 2) throw new CrosscoatError('unit', `${option} = "${text}" has no two ends; give them as ${typed[2]}`);
  return [quantityOf(option, ends[0] as string, typed), quantityOf(option, ends[1] as string, typed)];
}

/** A whole number in a range. @throws `range`. */
export function wholeNumber(option: string, text: string, low: number, high: number, advice = 'give one'): number {
  const value = Number(text);
  if (text.trim() !== '' && Number.isInteger(value) && value >= low && value <= high) return value;
  throw new CrosscoatError('range', `${option} = "${text}" is not a whole number from ${low} to ${high}; ${advice}`);
}

/** The value of `--seed`. @throws `range`. */
export function seedOf(text: string): number {
  return wholeNumber('--seed', text, 0, 4294967295);
}

/** Ids parted by commas. */
export function idsOf(text: string): string[] {
  return text.split(',').map((id) => id.trim());
}

/** The set-ups asked for; without any, all of the job's. Unknown ids are found out by the run. */
export function setUpsAsked(job: Job, asked: string | undefined): string[] {
  return asked === undefined ? job.setUps.map(({ id }) => id) : idsOf(asked);
}
