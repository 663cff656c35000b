import type { Target } from '../verdict/target.ts';
import type { FaultKind, Zone } from '../verdict/verdict.ts';
import { shown, shownPercent, type UnitSystem } from './units.ts';

/** Whether a value in the unit of `Zone.worst` is between the target's limits, both included. */
export function isInside(kind: FaultKind, value: number, target: Target): boolean {
  if (kind === 'dry-spray') return value <= target.dryFraction;
  const share = value / target.thickness_m;
  return share >= target.minFraction && share <= target.maxFraction;
}

/** A value in the unit of `Zone.worst` as people read it: `88 µm wet`, `34 % arrived dry`. */
export function worstText(kind: FaultKind, value: number, target: Target, system: UnitSystem): string {
  if (kind === 'dry-spray') return `${shownPercent(value)} arrived dry`;
  return `${shown(value, 'film', system)} ${target.film}`;
}

/** How far past its limit: `52 % over the upper limit of 58 µm`. */
export function pastLimit({ kind, worst, limit }: Zone, system: UnitSystem): string {
  if (kind === 'dry-spray') return `the limit is ${shownPercent(limit)}`;
  const apart = shownPercent(Math.abs(worst / limit - 1));
  const side = kind === 'heavy-spot' ? 'over the upper limit' : kind === 'thin-lap' ? 'under the lower limit' : 'under the holiday limit';
  return `${apart} ${side} of ${shown(limit, 'film', system)}`;
}
