import { METRES_PER_INCH } from '../base/units.ts';
import type { Spread } from '../scheme/planned.ts';
import { KILOGRAMS_PER_POUND, twoFigures, type UnitSystem } from './units.ts';

/** By definition, third General Conference on Weights and Measures, 1901. */
const STANDARD_GRAVITY_m_s2 = 9.80665;

/** A weight's moment in the three units that scales and manuals use. */
export const MOMENT_UNITS = { g_mm: 1e-6, in_lb: METRES_PER_INCH * KILOGRAMS_PER_POUND, N_m: 1 / STANDARD_GRAVITY_m_s2 } as const;

type MomentUnit = keyof typeof MOMENT_UNITS;

/**
 * The size of a moment of weight with its ends, to two figures since it is known no better, the reader's unit first:
 * `1.1 N m, from 0.82 to 1.3 as the weight is known (9.5 in lb, 110000 g mm)`.
 */
export function shownMoment({ value, low, high }: Spread, system: UnitSystem): string {
  const number = (moment_kg_m: number, unit: MomentUnit): string => String(twoFigures(moment_kg_m / MOMENT_UNITS[unit]));
  const units: readonly MomentUnit[] = system === 'us' ? ['in_lb', 'N_m', 'g_mm'] : ['N_m', 'in_lb', 'g_mm'];
  const [first, ...others] = units.map((unit) => ({ unit, text: `${number(Math.abs(value), unit)} ${unit.replace('_', ' ')}` }));
  const { unit, text } = first as { unit: MomentUnit; text: string };
  const ends = [low, high].map(Math.abs).sort((a, b) => a - b).map((end) => number(end, unit));
  return `${text}${ends[0] === ends[1] ? '' : `, from ${ends[0]} to ${ends[1]} as the weight is known`} (${others.map((other) => other.text).join(', ')})`;
}
