import type { Job, UnitSystem } from '../../sim/index.ts';
import { limitsAt } from './limits.ts';
import { keyOf, type JobPath } from './path.ts';
import { kindOfKey, readTyped, typedText, unitOfKey } from './units.ts';

/** What the reader typed: a value in the file's unit, or why it is none. */
export type Typed = { readonly value: number } | { readonly problem: string };

/** Reads a text as the number at `path`, and checks it against the schema's limits. */
export function readNumber(job: Job, path: JobPath, text: string, system: UnitSystem): Typed {
  const key = keyOf(path);
  const typed = readTyped(text, key, system);
  if ('problem' in typed) return typed;
  const { low, high, whole, description } = limitsAt(job, path);
  const unit = unitOfKey(key, system);
  if (!(typed.value >= low && typed.value <= high)) {
    const shown = (value: number): string => typedText(value, key, system);
    const limits = `${shown(typed.value)} ${unit} is outside ${shown(low)} to ${shown(high)} ${unit}`.replaceAll('  ', ' ').trim();
    return { problem: `${limits}; give ${kindOfKey(key)} within these${meaningOf(description)}` };
  }
  if (whole && !Number.isInteger(typed.value)) return { problem: 'Give a whole number' };
  return typed;
}

/** What the schema says of the number, without the file's unit, which may not be the reader's. */
function meaningOf(description: string): string {
  return description === '' ? '' : ` (${description.replace(/, (?:mm|µm|ms|m\/s|mL\/min|mL|g|deg|m|s|minutes|°C|%|kPa|mPa s)$/, '')})`;
}
