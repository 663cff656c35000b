import type { CoatAmount } from '../scheme/amounts.ts';
import type { CoverageAnswer } from '../scheme/coverage.ts';
import { shown, shownLiquid, shownPercent, type UnitSystem } from './units.ts';

/** How much of a coat is on the part, and how far the liquid went; or that it cannot be so. */
export function coverageSentence(found: CoverageAnswer, { coat }: CoatAmount, system: UnitSystem): string {
  const landed = shownPercent(found.landedFraction);
  if (!found.isPossible) return `That cannot be: the part would hold ${landed} of the solids used. Weigh again when it is dry, and check the solids of the mix and the area.`;
  const lossless = Number.isFinite(found.lossless_m2_m3) ? ` where nothing lost would be ${shown(found.lossless_m2_m3, 'coverage', system)} at that film` : '';
  return [
    `${landed} of the solids used are on the part, ${shown(found.dry_m, 'film', system)} dry on average; ${shownLiquid(found.lost_m3, system)} of the mix went elsewhere.`,
    `The plan reckons with ${shownPercent(coat.landedFraction)} of what leaves the gun.`,
    `A unit of volume covered ${shown(found.covered_m2_m3, 'coverage', system)}${lossless}.`,
  ].join(' ');
}

/** How the landed share is worked out, with its inputs and where its definition is from. */
export function coverageWorking({ step, coat: { mix } }: CoatAmount, system: UnitSystem): string {
  return [
    `Weight gained ÷ density of the dry film (${Math.round(mix.finish.solidsDensity_kg_m3.value)} kg/m³) = solids on the part;`,
    `used liquid × ${shownPercent(mix.volumeSolidsFraction)} solids by volume = solids used;`,
    'one over the other is the transfer efficiency with all losses in it, after the definition of US air-quality rules (solids that stay over solids used).',
    `Area ${shown(step.area_m2, 'panel-area', system)}. What was poured back does not count as used.`,
  ].join(' ');
}
