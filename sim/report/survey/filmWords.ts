import type { Bounds } from '../../survey/limits.ts';
import { shown, shownNumber, shownUnit, type UnitSystem } from '../units.ts';

/** Digits behind the point at most, where fewer would say that a film is its limit. */
const MOST_DIGITS = 6;

/** A film found, written so closely that it does not read as its limit where it is not: `99.96 µm` beside `100 µm`. */
export function filmBeside(film_m: number, limit_m: number, system: UnitSystem): string {
  const plain = shown(film_m, 'film', system);
  if (plain !== shown(limit_m, 'film', system) || !Number.isFinite(film_m)) return plain;
  const { size, name } = shownUnit('film', system);
  const limitText = String(Number((limit_m / size).toFixed(MOST_DIGITS)));
  for (let digits = 0; digits <= MOST_DIGITS; digits++) {
    const text = String(Number((film_m / size).toFixed(digits)));
    if (text !== String(Number((limit_m / size).toFixed(digits)))) return `${text} ${name}`;
  }
  return `${limitText} ${name}`;
}

/** A limit, with digits enough for what people specify: `63.5 µm`, `2.5 mil`, `14.4 mil`. */
export function limitWords(limit_m: number, system: UnitSystem): string {
  const { size, name } = shownUnit('film', system);
  // Three figures for a limit of 812.5 µm would state another limit.
  return `${String(Number((limit_m / size).toPrecision(4)))} ${name}`;
}

/** What was found: one film, or from the low teeth of combs to the high ones. */
export function foundWords([low, high]: Bounds, limit_m: number, system: UnitSystem): string {
  if (low === high) return filmBeside(low, limit_m, system);
  if (high === Infinity) return `${shown(low, 'film', system)} or more`;
  return `${shownNumber(low, 'film', system)} to ${shown(high, 'film', system)}`;
}
