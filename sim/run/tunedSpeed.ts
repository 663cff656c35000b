import type { TravelChange, Cure, Fault, Zone } from '../verdict/verdict.ts';
import type { Target } from '../verdict/target.ts';
import { heldSpeed_m_s } from './planTrials.ts';

/**
 * The even speed that would bring a fault's worst place to the target, where the meant speed alone
 * does not bring it inside the limits; null where it does, or where two points fix no speed.
 *
 * Film at a place is A + B/v: what other strokes lay, and this one's share. Two points are known,
 * as sprayed (`fault.cause.found`) and at the meant speed (`cure`). The speed of a stroke that
 * wavers is not one number, so the answer is tried like any other change.
 */
export function tunedSpeed(fault: Fault, cure: Cure, { thickness_m, minFraction, maxFraction }: Target): TravelChange | null {
  const { change } = cure;
  const share = cure.worst / thickness_m;
  if (fault.cause.kind !== 'speed' || change.kind !== 'even-speed' || fault.kind === 'dry-spray') return null;
  if (share >= minFraction && share <= maxFraction) return null;
  const { worst } = fault.zones[0] as Zone;
  const slowness = 1 / change.speed_m_s;
  const own = (worst - cure.worst) / (1 / fault.cause.found - slowness);
  const wanted = slowness + (thickness_m - cure.worst) / own;
  if (!(own > 0 && wanted > 0)) return null;
  return { ...change, speed_m_s: heldSpeed_m_s(1 / wanted) };
}
