import { checkRange } from '../base/check.ts';
import type { ViscosityLaw } from '../materials/finish.ts';

/**
 * Viscosity of a mix, Pa s, at any solids (0 to 1) and temperature (K). The exponential in solids
 * is common practice for lacquers; beyond the solids at which the surface sets it stands for
 * "does not flow". No shear thinning.
 */
export function viscosity_Pa_s(law: ViscosityLaw, solidsFraction: number, temperature_K: number): number {
  return law.reference_Pa_s * Math.exp(law.growth * (solidsFraction - law.referenceSolidsFraction)) * warmthFactor(law, temperature_K);
}

/** What temperature alone does to the viscosity: 1 at the law's own temperature. */
export function warmthFactor(law: ViscosityLaw, temperature_K: number): number {
  return Math.exp(law.sensitivity_K * (1 / temperature_K - 1 / law.temperature_K));
}

/** One viscosity at one temperature. */
export interface WarmthReading {
  readonly temperature_K: number;
  /** Any unit, the same in both readings. */
  readonly viscosity: number;
}

/**
 * B of ln(v2/v1) = B (1/T2 - 1/T1) from two readings of one liquid, K.
 * @throws CrosscoatError `range` where the readings lie within 2 K (the quotient is then noise) or
 * a viscosity is not above 0.
 */
export function fittedSensitivity_K(a: WarmthReading, b: WarmthReading): number {
  for (const { viscosity } of [a, b]) {
    checkRange({ name: 'fittedSensitivity: viscosity', value: viscosity, low: Number.MIN_VALUE, high: 1e6, advice: 'give a viscosity above 0' });
  }
  checkRange({
    name: 'fittedSensitivity: temperatures apart', value: Math.abs(a.temperature_K - b.temperature_K), low: 2, high: 100, unit: 'K',
    why: 'nearer than that the error of the cup hides the difference', advice: 'take the readings farther apart',
  });
  return Math.log(b.viscosity / a.viscosity) / (1 / b.temperature_K - 1 / a.temperature_K);
}
