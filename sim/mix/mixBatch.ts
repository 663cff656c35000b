import { checkRange } from '../base/check.ts';
import { ranged, type Sourced } from '../materials/sourced.ts';
import { productOf, type Between } from './between.ts';
import { partFractions, type MixRatio, type PartDensities } from './mixRatio.ts';

/** Share of what leaves the gun that lands on a broad panel, where nothing else is known. */
export const USUAL_LANDED: Sourced = ranged(0.65, 0.5, 0.8, 'Assumed: a low-pressure gun on a broad panel; conventional guns and narrow parts land less');

/** What one part of a mix comes to. */
export interface Amount {
  readonly volume_m3: number;
  readonly weight_kg: number;
}

/** A mix poured out: the parts add to the whole. */
export interface MixedParts {
  readonly finish: Amount;
  readonly thinner: Amount;
  readonly retarder: Amount;
  readonly total: Amount;
}

/** What a coat asks for. */
export interface BatchNeed {
  readonly area_m2: number;
  readonly coatCount: number;
  /** Wet film of one coat as it lies, m. */
  readonly wet_m: Between;
  /** Share of what leaves the gun that stays on the part, above 0 to 1. */
  readonly landedFraction: Between;
  /** What stays in pot and hose, m³. */
  readonly left_m3: number;
}

/**
 * Wet film that leaves a dry one, with the spread of the solids.
 * @param dry_m dry film, above 0.
 * @param volumeSolids of the finish as it comes in the can, above 0 to 1.
 */
export function wetForDry_m(dry_m: Between, volumeSolids: Between, thinnerPerFinish: number): Between {
  const { value, low, high } = productOf([[dry_m, 1], [volumeSolids, -1]]);
  const thinned = 1 + thinnerPerFinish;
  return { value: value * thinned, low: low * thinned, high: high * thinned };
}

/**
 * Mixed liquid for all coats, m³: area × wet film × coats / share landed, and what stays in pot and hose.
 * @throws CrosscoatError `range` for an area, a film or a share that is not above 0, coats that are not 1 to 100, or a negative rest.
 */
export function batchLiquid_m3({ area_m2, coatCount, wet_m, landedFraction, left_m3 }: BatchNeed): Between {
  checkRange({ name: 'mix: area', value: area_m2, low: 1e-4, high: 1e5, unit: 'm²', advice: 'give the area that is sprayed' });
  checkRange({ name: 'mix: coats', value: coatCount, low: 1, high: 100, advice: 'give how many coats are mixed for' });
  checkRange({ name: 'mix: wet film', value: wet_m.low, low: 1e-7, high: 0.01, unit: 'm', advice: 'give the film of one coat' });
  checkRange({ name: 'mix: share landed', value: landedFraction.low, low: 0.01, high: 1, advice: 'give the share that stays on the part, such as 65 %' });
  checkRange({ name: 'mix: share landed', value: landedFraction.high, low: 0.01, high: 1, advice: 'give the share that stays on the part, such as 65 %' });
  checkRange({ name: 'mix: left in pot and hose', value: left_m3, low: 0, high: 1, unit: 'm³', advice: 'give a volume of 0 or more' });
  const { value, low, high } = productOf([[wet_m, 1], [landedFraction, -1]]);
  const laid = area_m2 * coatCount;
  return { value: laid * value + left_m3, low: laid * low + left_m3, high: laid * high + left_m3 };
}

/** Parts of so much mix, by volume and by weight. Volumes add. */
export function mixedParts(total_m3: number, ratio: MixRatio, densities: PartDensities): MixedParts {
  const shares = partFractions(ratio);
  const of = (share: number, density_kg_m3: number): Amount => ({ volume_m3: total_m3 * share, weight_kg: total_m3 * share * density_kg_m3 });
  const [finish, thinner, retarder] = [of(shares.finish, densities.finish_kg_m3), of(shares.thinner, densities.thinner_kg_m3), of(shares.retarder, densities.retarder_kg_m3)];
  return { finish, thinner, retarder, total: { volume_m3: total_m3, weight_kg: finish.weight_kg + thinner.weight_kg + retarder.weight_kg } };
}

/** One pour into the pot: which part, and the mark and the weight that it is filled to, everything before it included. */
export interface Pour {
  readonly part: 'finish' | 'thinner' | 'retarder';
  readonly upTo: Amount;
}

/** A batch parted into pots that are all alike. */
export interface PotFill {
  readonly pot_m3: number;
  readonly potCount: number;
  readonly each: MixedParts;
  /** In the order of pouring; parts of nothing are left out. */
  readonly pours: readonly Pour[];
}

/**
 * A batch scaled to a pot: as few pots as hold it, all filled alike, so that each keeps the ratio.
 * @param pot_m3 what may be filled into the pot, m³.
 * @throws CrosscoatError `range` for a pot or a batch that is not above 0, or more than 1000 pots.
 */
export function fillPots(total_m3: number, pot_m3: number, ratio: MixRatio, densities: PartDensities): PotFill {
  checkRange({ name: 'mix: pot', value: pot_m3, low: 1e-6, high: 1, unit: 'm³', advice: 'give what may be filled into the pot, such as 2 L' });
  checkRange({ name: 'mix: batch', value: total_m3, low: 1e-7, high: 1000 * pot_m3, unit: 'm³', advice: 'give a batch that fits a thousand pots at most' });
  // A batch of exactly two pots must not need a third by rounding.
  const potCount = Math.max(1, Math.ceil(total_m3 / pot_m3 - 1e-9));
  const each = mixedParts(total_m3 / potCount, ratio, densities);
  let [volume_m3, weight_kg] = [0, 0];
  const pours = (['finish', 'thinner', 'retarder'] as const).flatMap((part) => {
    if (each[part].volume_m3 === 0) return [];
    volume_m3 += each[part].volume_m3;
    weight_kg += each[part].weight_kg;
    return [{ part, upTo: { volume_m3, weight_kg } }];
  });
  return { pot_m3, potCount, each, pours };
}
