import { checkRange } from '../base/check.ts';
import { CrosscoatError } from '../base/errors.ts';
import { MOST_THINNER } from './makeMix.ts';
import { fittedSensitivity_K } from './viscosity.ts';

/** Shares of thinner nearer than this are one ratio: the cup's own error would set the slope. */
const LEAST_APART = 0.02;
/** Two shares of one ratio differ by rounding only. */
const SAME = 1e-9;

/** A viscosity at a ratio and a temperature. */
export interface ThinningReading {
  /** Volumes of thinner to one of finish, 0 to 10. */
  readonly thinnerPerFinish: number;
  readonly viscosity_m2_s: number;
  readonly temperature_K: number;
}

/** ln ν = level + slope · x at one temperature, x the share of thinner in the mix by volume. */
export interface ThinningLaw {
  readonly level: number;
  /** Below 0. */
  readonly slope: number;
  readonly temperature_K: number;
  /** B of ln(ν2/ν1) = B (1/T2 - 1/T1). */
  readonly sensitivity_K: number;
  /** Whether B comes from two readings of one ratio, or is the one that was given. */
  readonly sensitivityFitted: boolean;
  /** Shares of thinner between which there are readings. */
  readonly least: number;
  readonly most: number;
}

/** What a law says, and whether beyond its readings. */
export interface ThinningAnswer {
  readonly thinnerPerFinish: number;
  readonly viscosity_m2_s: number;
  readonly isBeyondReadings: boolean;
}

/**
 * The law of a finish and its thinner from the reader's own cup: ln ν is taken as linear in the share of thinner, by least
 * squares; two readings at two ratios fix it. Two readings of one ratio at temperatures 2 K apart or more give the
 * coefficient of temperature, by which the others are brought to one temperature.
 * @param sensitivity_K B used where the readings give none.
 * @param temperature_K at which the law is wanted.
 * @throws CrosscoatError `range` for fewer than two ratios, ratios too near each other, a viscosity not above 0, or a mix
 * that grows thicker with thinner.
 */
export function fitThinning(readings: readonly ThinningReading[], sensitivity_K: number, temperature_K: number): ThinningLaw {
  for (const { thinnerPerFinish, viscosity_m2_s } of readings) {
    checkRange({ name: 'fitThinning: thinner per finish', value: thinnerPerFinish, low: 0, high: MOST_THINNER, advice: 'give volumes of thinner to one of finish' });
    checkRange({ name: 'fitThinning: viscosity', value: viscosity_m2_s, low: Number.MIN_VALUE, high: 1, unit: 'm²/s', advice: 'give a viscosity above 0' });
  }
  const own = ownSensitivity_K(readings);
  const b = own ?? sensitivity_K;
  const points = readings.map(({ thinnerPerFinish, viscosity_m2_s, temperature_K: read_K }) => ({ x: thinnerShare(thinnerPerFinish), y: Math.log(viscosity_m2_s) + b * (1 / temperature_K - 1 / read_K) }));
  const least = Math.min(...points.map(({ x }) => x));
  const most = Math.max(...points.map(({ x }) => x));
  if (!(most - least >= LEAST_APART - SAME)) throw new CrosscoatError('range', 'fitThinning: the readings are of one ratio, or of two nearly alike; take the second at another, such as 4:1 beside 2:1');
  const { level, slope } = line(points);
  if (!(slope < 0)) throw new CrosscoatError('range', 'fitThinning: by these readings the mix is not thinner with more thinner; look at the ratios, the cup and the temperatures of the two');
  return { level, slope, temperature_K, sensitivity_K: b, sensitivityFitted: own !== null, least, most };
}

/** Viscosity at a ratio, at the law's temperature. */
export function thinnedViscosity(law: ThinningLaw, thinnerPerFinish: number): ThinningAnswer {
  const x = thinnerShare(thinnerPerFinish);
  return { thinnerPerFinish, viscosity_m2_s: Math.exp(law.level + law.slope * x), isBeyondReadings: isBeyond(law, x) };
}

/**
 * Ratio that gives a viscosity at the law's temperature.
 * @throws CrosscoatError `range` where the unthinned finish is thinner already, or where it would take more than ten volumes of thinner.
 */
export function ratioForViscosity(law: ThinningLaw, viscosity_m2_s: number): ThinningAnswer {
  const x = (Math.log(viscosity_m2_s) - law.level) / law.slope;
  if (x < -SAME) throw new CrosscoatError('range', 'thinning: by this law the finish is thinner than that before any thinner is added; thinner cannot thicken it');
  if (!(x <= thinnerShare(MOST_THINNER))) throw new CrosscoatError('range', `thinning: by this law that takes more than ${MOST_THINNER} volumes of thinner to one of finish; look at the seconds wanted and the cup`);
  return { thinnerPerFinish: Math.max(0, x) / (1 - Math.max(0, x)), viscosity_m2_s, isBeyondReadings: isBeyond(law, x) };
}

/** Share of thinner in the mix by volume, from volumes of thinner to one of finish. */
export function thinnerShare(thinnerPerFinish: number): number {
  return thinnerPerFinish / (1 + thinnerPerFinish);
}

function isBeyond({ least, most }: ThinningLaw, x: number): boolean {
  return x < least - SAME || x > most + SAME;
}

/** The widest pair of one ratio at two temperatures, if there is one. */
function ownSensitivity_K(readings: readonly ThinningReading[]): number | null {
  const pairs = readings.flatMap((a, i) => readings.slice(i + 1).map((b) => [a, b] as const));
  const apart = ([a, b]: (typeof pairs)[number]): number => Math.abs(a.temperature_K - b.temperature_K);
  const usable = pairs.filter((pair) => Math.abs(thinnerShare(pair[0].thinnerPerFinish) - thinnerShare(pair[1].thinnerPerFinish)) < SAME && apart(pair) >= 2);
  const widest = usable.sort((p, q) => apart(q) - apart(p))[0];
  if (widest === undefined) return null;
  const [a, b] = widest.map(({ temperature_K, viscosity_m2_s }) => ({ temperature_K, viscosity: viscosity_m2_s })) as [{ temperature_K: number; viscosity: number }, { temperature_K: number; viscosity: number }];
  return fittedSensitivity_K(a, b);
}

/** Least squares; through both points where there are two. */
function line(points: readonly { readonly x: number; readonly y: number }[]): { readonly level: number; readonly slope: number } {
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  return { level: meanY - slope * meanX, slope };
}
