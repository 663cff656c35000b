import type { ColourSpec } from '../job/schema.ts';
import { colourOptics, type FilmOptics } from './hiding.ts';
import type { PlannedScheme } from './planned.ts';

/** Coats of one colour that follow each other without another colour between. */
export interface ColourRun {
  readonly colour: ColourSpec;
  readonly optics: FilmOptics;
  /** Dry film of all its coats, and of the thickest of them, m. */
  readonly film_m: number;
  readonly coat_m: number;
  readonly coats: number;
  readonly firstStep: number;
  readonly lastStep: number;
  /** The colour beneath; null where it is none that the job states. */
  readonly beneath: ColourSpec | null;
  /** Aluminium on the whole of the panels is what lies beneath, clear film between them aside. */
  readonly isOverAluminium: boolean;
}

/** Share of the panels from which a coat covers them whole: what a rounding leaves out. */
const WHOLE = 0.99;

/** Optics of a colour as the job states it. */
export function opticsOf({ reflectance_percent, scatter_per_mm }: ColourSpec): FilmOptics {
  return colourOptics(reflectance_percent / 100, scatter_per_mm * 1000);
}

/** The colours of a scheme in the order in which they are laid; coats without a stated colour are left out. */
export function colourRuns({ steps, area_m2: whole_m2 }: PlannedScheme): ColourRun[] {
  const runs: ColourRun[] = [];
  let beneath: ColourSpec | null = null;
  let isOverAluminium = false;
  let isOpen = false;
  for (const [k, { coat, area_m2 }] of steps.entries()) {
    if (coat === null) continue;
    const last = runs.at(-1);
    if (coat.colour !== null && isOpen && last?.colour.id === coat.colour.id) {
      runs[runs.length - 1] = { ...last, film_m: last.film_m + coat.dry_m.value, coat_m: Math.max(last.coat_m, coat.dry_m.value), coats: last.coats + 1, lastStep: k };
    } else if (coat.colour !== null) {
      runs.push({ colour: coat.colour, optics: opticsOf(coat.colour), film_m: coat.dry_m.value, coat_m: coat.dry_m.value, coats: 1, firstStep: k, lastStep: k, beneath, isOverAluminium });
    }
    isOpen = coat.colour !== null;
    // Clear film does not change what is beneath a colour; any other coat without a colour does.
    if (coat.layer === 'clear') continue;
    beneath = coat.colour;
    isOverAluminium = coat.layer === 'aluminium' && coat.colour === null && area_m2 >= WHOLE * whole_m2;
  }
  return runs;
}
