import { ranged, type Sourced } from '../materials/sourced.ts';
import type { PlannedScheme, Spread } from './planned.ts';

/**
 * Light through aluminium-pigmented film. Its flakes shade, they do not scatter as Kubelka and Munk
 * ask: what passes falls as T = e^(-εX) (Beer). The trade's field test (AC 43.13-1B 2-21g)
 * decides: no visible light through the fabric.
 */

/** One-sided area of the flakes of a gram of aluminium, as for the pastes of 325 mesh, m²/kg. */
export const FLAKE_AREA_M2_KG: Sourced = ranged(1500, 700, 2500, 'Assumed: covering area of lining pastes on water, 0.7 to 2.5 m²/g, from memory');
/** Metal in a paste by weight. */
export const METAL_IN_PASTE: Sourced = ranged(0.65, 0.6, 0.7, 'common practice: paste is 60 to 70 % metal, the rest spirit');
/** Most paste in a litre of unthinned clear, kg/m³: 3 oz to the US gallon, 22.47 g/L, which the trade calls 22.5. */
export const MOST_PASTE_KG_M3 = 22.5;

/** ε of a dry film, 1/m: area of flakes, lying flat, in a cubic metre of it. */
export function aluminiumExtinction_1_m(paste_kg_m3: number, finishSolidsFraction: number, area_m2_kg = FLAKE_AREA_M2_KG.value, metal = METAL_IN_PASTE.value): number {
  return (paste_kg_m3 * metal * area_m2_kg) / finishSolidsFraction;
}

/** Share of light that passes a film: e^(-εX), 0 to 1. */
export function lightThrough(extinction_1_m: number, film_m: number): number {
  return Math.exp(-extinction_1_m * film_m);
}

/** Light through all aluminium coats of a scheme that cover the panels whole. */
export interface SchemeLight {
  readonly film_m: number;
  readonly coats: number;
  /** Share of light that passes: middle, and with least and most of what is not known of the flakes. */
  readonly through: Spread;
  /** Whether every coat states its paste; where one does not, it is taken as the most allowed. */
  readonly isPasteStated: boolean;
}

/** Light through the aluminium of a scheme; null where it has none. Cloth, clear and colour stop light too and are left out. */
export function schemeLight(plan: PlannedScheme): SchemeLight | null {
  const coats = plan.steps.flatMap(({ coat, area_m2 }) => (coat?.layer === 'aluminium' && area_m2 >= 0.99 * plan.area_m2 ? [coat] : []));
  if (coats.length === 0) return null;
  // Low light with much flake and film; the ends together are wider than likely.
  const through = (end: keyof Spread, flakes: 'low' | 'value' | 'high'): number => coats.reduce((product, { paste_kg_m3, mix, dry_m }) => {
    const extinction = aluminiumExtinction_1_m(paste_kg_m3 ?? MOST_PASTE_KG_M3, mix.finish.volumeSolidsFraction.value, FLAKE_AREA_M2_KG[flakes], METAL_IN_PASTE[flakes]);
    return product * lightThrough(extinction, dry_m[end]);
  }, 1);
  return {
    film_m: coats.reduce((sum, { dry_m }) => sum + dry_m.value, 0),
    coats: coats.length,
    through: { value: through('value', 'value'), low: through('high', 'high'), high: through('low', 'low') },
    isPasteStated: coats.every(({ paste_kg_m3 }) => paste_kg_m3 !== null),
  };
}
