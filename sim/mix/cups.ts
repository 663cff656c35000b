import { CrosscoatError, type Place } from '../base/errors.ts';
import { M2_S_PER_MM2_S } from '../base/units.ts';
import type { Cup } from '../materials/cups.ts';

/**
 * Kinematic viscosity from a cup's drain time, m²/s. Outside `cup.least_s` to `cup.most_s` the
 * formula is doubtful; see `isInCupRange`.
 * @param seconds to the first break of the stream, s.
 * @throws CrosscoatError `range` where the formula gives no viscosity above 0 (too short a time).
 */
export function cupViscosity_m2_s(cup: Cup, seconds: number, place?: Place): number {
  const mm2_s = cup.form === 'linear' ? cup.a * (seconds - cup.b) : cup.a * seconds - cup.b / seconds;
  if (mm2_s > 0 && Number.isFinite(mm2_s)) return mm2_s * M2_S_PER_MM2_S;
  const where = place?.pointer === undefined ? 'cupViscosity' : place.pointer;
  throw new CrosscoatError(
    'range',
    `${where}: ${seconds} s in the ${cup.name} is no viscosity (its formula holds from ${cup.least_s} to ${cup.most_s} s and falls to nothing ` +
      `at ${Math.ceil(zeroTime_s(cup))} s); use a cup with a smaller hole`,
    place,
  );
}

/** Drain time of a liquid, s: the inverse of `cupViscosity_m2_s`. */
export function cupSeconds(cup: Cup, viscosity_m2_s: number): number {
  const mm2_s = viscosity_m2_s / M2_S_PER_MM2_S;
  if (cup.form === 'linear') return mm2_s / cup.a + cup.b;
  return (mm2_s + Math.sqrt(mm2_s ** 2 + 4 * cup.a * cup.b)) / (2 * cup.a);
}

/** Whether a drain time lies where the cup's formula holds. */
export function isInCupRange(cup: Cup, seconds: number): boolean {
  return seconds >= cup.least_s && seconds <= cup.most_s;
}

/** Time at which the formula's viscosity is 0. */
function zeroTime_s(cup: Cup): number {
  return cup.form === 'linear' ? cup.b : Math.sqrt(cup.b / cup.a);
}
