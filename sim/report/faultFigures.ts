import type { Target } from '../verdict/target.ts';
import type { FaultKind, Zone } from '../verdict/verdict.ts';
import { roundedText, shown, shownPercent, shownTemperatureStep, type UnitSystem } from './units.ts';

/** Whether a value in the unit of a zone's worst is inside the limits: the target's for its film, the zone's own for the rest. */
export function isInside({ kind, worst, limit }: Zone, value: number, target: Target): boolean {
  if (kind !== 'holiday' && kind !== 'thin-lap' && kind !== 'heavy-spot') return worst < limit ? value >= limit : value <= limit;
  const share = value / target.thickness_m;
  return share >= target.minFraction && share <= target.maxFraction;
}

/** A value in the unit of `Zone.worst` as people read it: `88 µm wet`, `34 % arrived dry`. */
export function worstText(kind: FaultKind, value: number, target: Target, system: UnitSystem): string {
  switch (kind) {
    case 'holiday':
    case 'thin-lap':
    case 'heavy-spot':
      return `${shown(value, 'film', system)} ${target.film}`;
    case 'dry-spray':
      return `${shownPercent(value)} arrived dry`;
    case 'run':
      return `film that ran ${shown(value, 'length', system)}`;
    case 'orange-peel':
      return `ripple of ${shown(value, 'film', system)} left`;
    case 'dry-lap':
      return `${shownPercent(value)} of the coat laid on or under film that had set`;
    case 'blush':
      return `film ${shownTemperatureStep(Math.abs(value), system)} ${value < 0 ? 'below' : 'above'} the dew point`;
    case 'blister':
      return `fresh film times the solvent share beneath comes to ${shown(value, 'film', system)}`;
    case 'pinhole':
      return `evaporation ${roundedText(value)} times diffusion as it skinned over`;
    case 'over-thick':
      return `${shown(value, 'film', system)} dry`;
  }
}

/** How far past its limit: `52 % over the upper limit of 58 µm`. */
export function pastLimit({ kind, worst, limit }: Zone, system: UnitSystem): string {
  switch (kind) {
    case 'dry-spray':
    case 'dry-lap':
      return `the limit is ${shownPercent(limit)}`;
    case 'run':
      return `the limit is ${shown(limit, 'length', system)}`;
    case 'orange-peel':
    case 'blister':
    case 'over-thick':
      return `the limit is ${shown(limit, 'film', system)}`;
    case 'blush':
      return 'water can fall into it below the dew point';
    case 'pinhole':
      return `the limit is ${roundedText(limit)}`;
    case 'holiday':
    case 'thin-lap':
    case 'heavy-spot':
      break;
  }
  const apart = shownPercent(Math.abs(worst / limit - 1));
  const side = kind === 'heavy-spot' ? 'over the upper limit' : kind === 'thin-lap' ? 'under the lower limit' : 'under the holiday limit';
  return `${apart} ${side} of ${shown(limit, 'film', system)}`;
}
