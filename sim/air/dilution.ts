import type { Solvent } from '../materials/solvent.ts';
import type { VapourRow } from '../materials/vapourTable.ts';
import { blendExplosiveFraction, explosiveLimits, exposureLimits, lowest, vapourRatio, type LiquidPart, type VapourAir } from './vapour.ts';

/** Most that the exhaust may hold of the lower explosive limit: 29 CFR 1910.94(c)(6)(ii), NFPA 33. */
export const FIRE_SHARE = 0.25;
/** The same in shipyards: WAC 296-304-03009. */
export const SHIPYARD_SHARE = 0.1;

/**
 * Volumes of air to one volume of liquid so that its vapour stays at a share of its lower explosive limit:
 * `(1/share) (1 - LEL) V / LEL`, the rule's `4 (100 - LEL) V / LEL` for a quarter.
 * @param ratio volumes of vapour from one of liquid. @param lel above 0, below 1. @param share 0 to 1.
 */
export function dilutionRatio(ratio: number, lel: number, share: number = FIRE_SHARE): number {
  return ((1 - lel) * ratio) / (lel * share);
}

/** Dilution air by the rule's own table values, ft³ to a US gallon. */
export function ruleDilution_ft3_gal({ vapour_ft3_gal, lel_percent }: VapourRow, share: number = FIRE_SHARE): number {
  return dilutionRatio(vapour_ft3_gal, lel_percent / 100, share);
}

/**
 * Air to keep the vapour of some liquid at a share of its lower explosive limit, m³; of a rate of liquid
 * (m³/s in place of m³) the air in m³/s. Blends by Le Chatelier, the lowest limits published.
 */
export function explosiveAir_m3(liquids: readonly LiquidPart[], air: VapourAir, share: number = FIRE_SHARE): number {
  const parts = liquids.map(({ solvent, liquid_m3 }) => ({ share: liquid_m3 * vapourRatio(solvent, air), limit: lowest(explosiveLimits(solvent)) }));
  const vapour_m3 = parts.reduce((sum, part) => sum + part.share, 0);
  return vapour_m3 > 0 ? dilutionRatio(vapour_m3, blendExplosiveFraction(parts), share) : 0;
}

/**
 * Air to keep the vapour of some liquid at its exposure limits, m³, or m³/s of a rate of liquid:
 * `K Σ V/L`. For one solvent it is the `403 SG 1e6 K ER/(M TLV)` ft³/min of the ACGIH, Industrial
 * Ventilation, from memory, by the gas law. Solvents without a limit are left out.
 * @param mixing K, 1 for air perfectly mixed; 3 to 10 is usual.
 * @param limitOf the limit used; the lowest published where not given.
 */
export function exposureAir_m3(liquids: readonly LiquidPart[], air: VapourAir, mixing: number, limitOf: (solvent: Solvent) => number | null = lowestExposure): number {
  return liquids.reduce((sum, { solvent, liquid_m3 }) => {
    const limit = limitOf(solvent);
    return limit === null ? sum : sum + (mixing * liquid_m3 * vapourRatio(solvent, air)) / limit;
  }, 0);
}

function lowestExposure(solvent: Solvent): number | null {
  const limits = exposureLimits(solvent);
  return limits.length === 0 ? null : lowest(limits);
}
