import type { TodaySprayed } from '../scheme/today.ts';
import { roundedText, shown, type UnitSystem } from './units.ts';

const OTHER: Readonly<Record<UnitSystem, UnitSystem>> = { metric: 'us', us: 'metric' };

/** A film in both units, the reader's first, with what is meant by it: `83.1 µm (3.27 mil) wet`. */
export function bothFilms(film_m: number, kind: 'wet' | 'dry', system: UnitSystem): string {
  return `${shown(film_m, 'film', system)} (${shown(film_m, 'film', OTHER[system])}) ${kind}`;
}

/** Weight of a film in both units: `31.3 g/m² (0.92 oz/yd²)`. */
export function bothArealWeights(weight_kg_m2: number, system: UnitSystem): string {
  return `${shown(weight_kg_m2, 'areal-weight', system)} (${shown(weight_kg_m2, 'areal-weight', OTHER[system])})`;
}

/** Parts of finish to thinner: `1 : 0.33`. */
export function ratioText(thinnerPerFinish: number): string {
  return `1 : ${Number(thinnerPerFinish.toFixed(2))}`;
}

/** At which thinning it is worked out, and whose: `at 1 : 0.33 as typed`. */
export function sprayedAt({ from, thinnerRatio }: TodaySprayed): string {
  const ratio = ratioText(thinnerRatio);
  return from === 'typed' ? `at ${ratio} as typed` : from === 'recommended' ? `at the recommended ${ratio}` : `at an assumed ${ratio}`;
}

/** Kinematic viscosity; one unit for every reader. */
export function shownKinematic(viscosity_m2_s: number): string {
  return `${roundedText(viscosity_m2_s * 1e6)} mm²/s`;
}

/** Drain time: `31.2 s`. */
export function drainSeconds(seconds: number): string {
  return `${roundedText(seconds)} s`;
}
