/**
 * Film arithmetic by volume: what stays of a wet film, and how far a volume goes. Volumes are
 * taken to add up on mixing, and nothing is lost but the volatile part.
 */

/**
 * Dry film of a wet one: wet · VS / (1 + R).
 * @param volumeSolidsFraction VS of the liquid before thinning, 0 to 1.
 * @param thinnerRatio R, thinner per volume of liquid, 0 or more (1:1 is 1).
 */
export function dryFromWet(wet_m: number, volumeSolidsFraction: number, thinnerRatio = 0): number {
  return (wet_m * volumeSolidsFraction) / (1 + thinnerRatio);
}

/** Wet film that leaves a dry one; the reverse of `dryFromWet`. */
export function wetFromDry(dry_m: number, volumeSolidsFraction: number, thinnerRatio = 0): number {
  return (dry_m * (1 + thinnerRatio)) / volumeSolidsFraction;
}

/**
 * Area that a volume covers at a dry film with nothing lost, m²/m³. With VS 1 it is the spreading
 * of a wet film.
 */
export function spreadingRate_m2_m3(dry_m: number, volumeSolidsFraction: number): number {
  return volumeSolidsFraction / dry_m;
}
