import { knownEntry } from './known.ts';
import { ranged, single, type Sourced } from './sourced.ts';

/** What lies under the film, as far as it lends the film heat. */
export interface Backing {
  readonly id: 'open-cloth' | 'thin-sheet' | 'thick-board';
  readonly name: string;
  /** Faces that take heat from the room's air: the film's own, and the back where it is open. */
  readonly faces: 1 | 2;
  /** Heat that the backing gives for each degree it cools with the film. */
  readonly arealHeat_J_m2_K: Sourced;
}

/** Cotton cloth of 136.7 g/m² (K. D. Wood, Airplane Design, 8th ed. 1947, as quoted) × 1300 J/(kg K), cotton, from memory. */
const CLOTH_kg_m2 = 0.137;
const COTTON_J_kg_K = 1300;
/** Aluminium sheet 0.5 mm thick, 2700 kg/m³, 900 J/(kg K), from memory. */
const SHEET_J_m2_K = 0.5e-3 * 2700 * 900;
/**
 * Softwood, 0.12 W/(m K), 500 kg/m³, 1600 J/(kg K), from memory. A thick solid whose face drops by
 * one degree has given 2 √(λρc t/π) per area after time t (Carslaw and Jaeger, Conduction of Heat
 * in Solids, 2nd ed. 1959, section 2.4). Assumed: one lump of what it has given after 100 s, about
 * the time in which a sprayed film is coldest; it gives less before and more after.
 */
const BOARD_TIME_s = 100;
const BOARD_J_m2_K = 2 * Math.sqrt((0.12 * 500 * 1600 * BOARD_TIME_s) / Math.PI);

/** The backings known. */
export const BACKINGS: readonly Backing[] = [
  { id: 'open-cloth', name: 'open cloth', faces: 2, arealHeat_J_m2_K: ranged(CLOTH_kg_m2 * COTTON_J_kg_K, 90, 250, 'cotton cloth of 137 g/m², 1300 J/(kg K); thin to doped cloth') },
  { id: 'thin-sheet', name: 'thin metal sheet', faces: 2, arealHeat_J_m2_K: ranged(SHEET_J_m2_K, 700, 2500, 'aluminium sheet of 0.5 mm (0.3 to 1 mm), its back open to the air; Assumed') },
  { id: 'thick-board', name: 'thick board', faces: 1, arealHeat_J_m2_K: single(BOARD_J_m2_K, 'softwood, what it has given 100 s after its face cooled; Assumed') },
];

/** A backing by its id. @throws CrosscoatError `schema` for an unknown one. */
export function backingById(id: string): Backing {
  return knownEntry(BACKINGS, id, 'backing');
}
