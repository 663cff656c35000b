import { ranged, type Sourced } from '../materials/sourced.ts';

/**
 * Light through aluminium-pigmented film. Its flakes shade, they do not scatter as Kubelka and Munk
 * ask: what passes falls as T = e^(-εX) (Beer). The trade has a better test, which decides.
 */
export const FIELD_LIGHT_RULE = 'Field test: no visible light may pass through the fabric (AC 43.13-1B 2-21g). Look from inside, in the dark, with a lamp behind.';

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
