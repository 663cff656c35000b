import { CrosscoatError, type Place } from '../base/errors.ts';
import { cupById, CUPS, type Cup } from '../materials/cups.ts';
import type { Between } from './between.ts';
import { cupSeconds, cupViscosity_m2_s, isInCupRange } from './cups.ts';

/** The cup in which the trade states what it sprays. */
export const SPRAY_CUP = 'zahn-2';
/**
 * Drain times of liquids that are sprayed, s in a Zahn No. 2 cup. Common practice: 18 to 24 s for lacquer-type finishes, up
 * to 33 s for heavier spray lacquers.
 */
const SPRAYED_S = [18, 33] as const;

/** What a cup says of a liquid, or that it says nothing and which cup would. */
export interface CupTime {
  readonly cup: Cup;
  /** Drain time, s; null outside the range in which the cup's formula holds. */
  readonly seconds: number | null;
  /** The cup itself where it fits; else the Zahn No. 2 for a liquid as thin as is sprayed, one of the same kind, or any that fits; null where none does. */
  readonly fitting: Cup | null;
}

/** Drain time of a liquid in a cup, with no figure outside the cup's range. */
export function cupTime(cup: Cup, viscosity_m2_s: number): CupTime {
  const seconds = cupSeconds(cup, viscosity_m2_s);
  return isInCupRange(cup, seconds) ? { cup, seconds, fitting: cup } : { cup, seconds: null, fitting: fittingCup(cup, viscosity_m2_s) };
}

/**
 * Viscosity from a drain time, m²/s, refused outside the cup's range.
 * @throws CrosscoatError `range`, naming the range and a cup that fits.
 */
export function viscosityInRange_m2_s(cup: Cup, seconds: number, place: Place = {}): number {
  if (isInCupRange(cup, seconds)) return cupViscosity_m2_s(cup, seconds, place);
  const where = place.pointer === undefined ? '' : `${place.pointer}: `;
  throw new CrosscoatError('range', `${where}${seconds} s is outside the range of the ${cup.name}, ${rangeWords(cup)}, so no viscosity is given; ${cupAdvice(cupBeside(cup, seconds), seconds < cup.least_s)}`, place);
}

/**
 * Drain time of a liquid in a cup, s, refused outside the cup's range.
 * @throws CrosscoatError `range`, naming the range and a cup that fits.
 */
export function secondsInRange(cup: Cup, viscosity_m2_s: number): number {
  const { seconds, fitting } = cupTime(cup, viscosity_m2_s);
  if (seconds !== null) return seconds;
  const isThin = cupSeconds(cup, viscosity_m2_s) < cup.least_s;
  const [least, most] = [cup.least_s, cup.most_s].map((end) => Number((cupViscosity_m2_s(cup, end) * 1e6).toPrecision(3)));
  throw new CrosscoatError('range', `${Number((viscosity_m2_s * 1e6).toPrecision(4))} mm²/s is ${isThin ? 'too thin' : 'too thick'} for the ${cup.name}, which holds for ${rangeWords(cup)} (${least} to ${most} mm²/s), so no seconds are given; ${cupAdvice(fitting, isThin)}`);
}

/** The same mix in the same cup at another temperature. */
export interface WarmedCup {
  readonly time: CupTime;
  /** With the spread of the coefficient. */
  readonly viscosity_m2_s: Between;
  /** The seconds at the ends of that spread; null where one of them leaves the cup's range. */
  readonly low_s: number | null;
  readonly high_s: number | null;
}

/**
 * The same mix in the same cup at another temperature, by ln(ν2/ν1) = B (1/T2 - 1/T1).
 * @param sensitivity_K B, with its spread.
 */
export function cupTimeAt(cup: Cup, viscosity_m2_s: number, from_K: number, to_K: number, sensitivity_K: Between): WarmedCup {
  const at = (b: number): number => viscosity_m2_s * Math.exp(b * (1 / to_K - 1 / from_K));
  const [one, other] = [at(sensitivity_K.low), at(sensitivity_K.high)];
  const warmed = { value: at(sensitivity_K.value), low: Math.min(one, other), high: Math.max(one, other) };
  return { time: cupTime(cup, warmed.value), viscosity_m2_s: warmed, low_s: cupTime(cup, warmed.low).seconds, high_s: cupTime(cup, warmed.high).seconds };
}

/** `20 to 100 s`. */
function rangeWords({ least_s, most_s }: Cup): string {
  return `${least_s} to ${most_s} s`;
}

function cupAdvice(fitting: Cup | null, isTooQuick: boolean): string {
  return fitting === null ? `use a cup with a ${isTooQuick ? 'smaller' : 'larger'} hole` : `use one that fits, such as the ${fitting.name} (${fitting.id}, ${rangeWords(fitting)})`;
}

/** A cup for a liquid that left another outside its range; the doubtful formula only chooses the cup. */
function cupBeside(cup: Cup, seconds: number): Cup | null {
  try {
    return fittingCup(cup, cupViscosity_m2_s(cup, seconds));
  } catch (error) {
    // So quick that the formula has no viscosity at all.
    if (error instanceof CrosscoatError) return null;
    throw error;
  }
}

/**
 * The cup that the trade has at hand, where the liquid drains in it as sprayed liquids do. Else of the cups in whose range it
 * falls, of the same kind before others, the one in which it falls nearest the middle.
 */
function fittingCup(cup: Cup, viscosity_m2_s: number): Cup | null {
  const usual = cupById(SPRAY_CUP);
  const usual_s = cupSeconds(usual, viscosity_m2_s);
  if (isInCupRange(usual, usual_s) && usual_s >= SPRAYED_S[0] && usual_s <= SPRAYED_S[1]) return usual;
  const kind = (id: string): string => id.split('-')[0] as string;
  const rank = (other: Cup): number => {
    const middle = Math.log(cupSeconds(other, viscosity_m2_s) / Math.sqrt(other.least_s * other.most_s));
    return Math.abs(middle) + (kind(other.id) === kind(cup.id) ? 0 : 100);
  };
  const fitting = CUPS.filter((other) => isInCupRange(other, cupSeconds(other, viscosity_m2_s)));
  return fitting.sort((a, b) => rank(a) - rank(b))[0] ?? null;
}
