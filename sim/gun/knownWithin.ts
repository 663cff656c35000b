import type { KnownWithinSpec } from '../job/schema.ts';
import type { Profile, SetUp } from './setUp.ts';

/** A number of a set-up that a shop can measure, and that the film depends on. */
export type KnownNumber = 'width' | 'beta1' | 'fluidRate' | 'efficiency';

/** Every such number, in the order in which a report names them. */
export const KNOWN_NUMBERS: readonly KnownNumber[] = ['width', 'beta1', 'fluidRate', 'efficiency'];

/**
 * A number that nobody has measured: shares of it, and for the exponent the exponent itself. Assumed,
 * as half 95 % intervals: together in quadrature fluid rate and efficiency make the ±30 % that an
 * unmeasured absolute film has; guns of one kind differ by a tenth in width.
 */
export const UNMEASURED = { widthRatio: 0.1, beta1: 0.75, fluidRateRatio: 0.15, efficiencyRatio: 0.25 } as const;

/** How well a set-up's numbers are known: half-widths of their 95 % intervals, SI. */
export interface KnownWithin {
  readonly width_m: number;
  /** 0 for a fan whose profile has no such exponent. */
  readonly beta1: number;
  readonly fluidRate_m3_s: number;
  readonly efficiencyFraction: number;
  /** Numbers that were not measured, whose intervals are those of `UNMEASURED`. */
  readonly assumed: readonly KnownNumber[];
}

/**
 * The 95 % half intervals of a set-up's numbers: as stated, or the wide ones of `UNMEASURED`. Depth,
 * drops, decay of the transfer with distance and the shape of a measured table are taken as exact.
 * @param spec what the job says of it; undefined where it says nothing.
 */
export function knownWithin({ fan, fluidRate_m3_s, transfer }: SetUp, spec: KnownWithinSpec | undefined): KnownWithin {
  const hasExponent = fan.profile.family === 'double-beta';
  const { width_percent, beta1, fluidRate_percent, efficiency_percent } = spec ?? {};
  const stated: Readonly<Record<KnownNumber, number | undefined>> = { width: width_percent, beta1, fluidRate: fluidRate_percent, efficiency: efficiency_percent };
  const share = (percent: number | undefined, unmeasured: number) => (percent === undefined ? unmeasured : percent / 100);
  return {
    width_m: fan.width_m * share(width_percent, UNMEASURED.widthRatio),
    beta1: hasExponent ? (beta1 ?? UNMEASURED.beta1) : 0,
    fluidRate_m3_s: fluidRate_m3_s * share(fluidRate_percent, UNMEASURED.fluidRateRatio),
    efficiencyFraction: transfer.efficiencyFraction * share(efficiency_percent, UNMEASURED.efficiencyRatio),
    assumed: KNOWN_NUMBERS.filter((name) => stated[name] === undefined && (name !== 'beta1' || hasExponent)),
  };
}

/** How far each number is moved, in half intervals; 0 where not given. */
export type Moves = { readonly [name in KnownNumber]?: number };

/** The exponent below which a fan's film would be endless at its edge. */
const LEAST_BETA = 1;
/** What is left of a number that is moved to nothing: a fan of no width, or no fluid, is no set-up. */
const LEAST_RATIO = 0.01;

/**
 * A set-up with some of its numbers moved. The fan is stretched along its long axis with its tapers
 * and its measured places; an exponent is held to 1 and more, every other number to a hundredth of
 * itself and more; transfer above all that leaves the gun is held where it is worked out.
 */
export function movedSetUp(setUp: SetUp, known: KnownWithin, moves: Moves): SetUp {
  const { fan, transfer } = setUp;
  const ratio = (within: number, of: number, move = 0) => Math.max(LEAST_RATIO, 1 + (within / of) * move);
  const stretch = ratio(known.width_m, fan.width_m, moves.width);
  return {
    ...setUp,
    fan: { ...fan, width_m: fan.width_m * stretch, profile: movedProfile(fan.profile, stretch, known.beta1 * (moves.beta1 ?? 0)) },
    fluidRate_m3_s: setUp.fluidRate_m3_s * ratio(known.fluidRate_m3_s, setUp.fluidRate_m3_s, moves.fluidRate),
    transfer: { ...transfer, efficiencyFraction: transfer.efficiencyFraction * ratio(known.efficiencyFraction, transfer.efficiencyFraction, moves.efficiency) },
  };
}

function movedProfile(profile: Profile, stretch: number, beta1: number): Profile {
  switch (profile.family) {
    case 'double-beta':
      return { ...profile, beta1: Math.max(LEAST_BETA, profile.beta1 + beta1) };
    case 'flat-top':
      return { ...profile, taper_m: profile.taper_m * stretch };
    case 'table':
      return { ...profile, place_m: profile.place_m.map((place_m) => place_m * stretch) };
    case 'gaussian':
    case 'parabola':
    case 'triangle':
    case 'cosine-squared':
      return profile;
  }
}
