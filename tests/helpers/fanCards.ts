import { seededRandom } from '../../sim/base/noise.ts';
import type { CardReadings } from '../../sim/gun/card/cardReadings.ts';

/** A fan to read: a stroke's profile over u = -1 to 1, drawn to a width and laid on a card. */
export interface FanOnCard {
  readonly profile: (u: number) => number;
  readonly width_m: number;
  readonly offset_m: number;
  readonly imbalance: number;
  readonly fog: number;
  readonly peak: number;
}

/** `(1-u²)^(β1-½)`, written here apart from the model's own. */
export function betaProfile(beta1: number): (u: number) => number {
  return (u) => (Math.abs(u) < 1 ? (1 - u * u) ** (beta1 - 0.5) : 0);
}

export const PROFILES: Readonly<Record<string, (u: number) => number>> = {
  'double-beta': betaProfile(2.7),
  gaussian: (u) => Math.exp(-2 * u * u),
  parabola: (u) => Math.max(0, 1 - u * u),
  triangle: (u) => Math.max(0, 1 - Math.abs(u)),
  'cosine-squared': (u) => (Math.abs(u) < 1 ? Math.cos((Math.PI * u) / 2) ** 2 : 0),
  'flat-top': (u) => Math.min(1, Math.max(0, (1 - Math.abs(u)) / 0.4)),
};

export const FAN: FanOnCard = { profile: betaProfile(2.7), width_m: 0.21, offset_m: 0.008, imbalance: 0, fog: 1.2, peak: 33 };

/** Normal deviates by G.E.P. Box and M.E. Muller, 1958. */
export function normalDeviates(random: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A card read at even places over 1.3 widths, about the card's own zero. @param noise standard deviation over the peak. */
export function readCard(fan: FanOnCard, count: number, noise = 0, random: () => number = seededRandom(1)): CardReadings {
  const deviate = normalDeviates(random);
  const place_m = Float64Array.from({ length: count }, (_, i) => 1.3 * fan.width_m * (i / (count - 1) - 0.5));
  const film = place_m.map((place) => {
    const u = (2 * (place - fan.offset_m)) / fan.width_m;
    return fan.fog + fan.peak * (fan.profile(u) * (1 + fan.imbalance * u) + (noise > 0 ? noise * deviate() : 0));
  });
  return { place_m, film, unit: 'um' };
}
