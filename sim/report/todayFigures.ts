import { CUBIC_METRES_PER_US_GALLON, METRES_PER_FOOT } from '../base/units.ts';
import { roundedText, shown, shownNumber, type UnitSystem } from './units.ts';

const OTHER: Readonly<Record<UnitSystem, UnitSystem>> = { metric: 'us', us: 'metric' };

/** A film in both units, the reader's first, with what is meant by it: `83.1 µm (3.27 mil) wet`. */
export function bothFilms(film_m: number, kind: 'wet' | 'dry', system: UnitSystem): string {
  return `${shown(film_m, 'film', system)} (${shown(film_m, 'film', OTHER[system])}) ${kind}`;
}

/** Weight of a film in both units: `31.3 g/m² (0.92 oz/yd²)`. */
export function bothArealWeights(weight_kg_m2: number, system: UnitSystem): string {
  return `${shown(weight_kg_m2, 'areal-weight', system)} (${shown(weight_kg_m2, 'areal-weight', OTHER[system])})`;
}

/** An area of a part: `4 m²`, `43.1 ft²`. */
export function partArea(area_m2: number, system: UnitSystem): string {
  return system === 'us' ? `${roundedText(area_m2 / METRES_PER_FOOT ** 2)} ft²` : `${roundedText(area_m2)} m²`;
}

/** A liquid to pour or to buy: litres from one up, US gallons from half of one up. */
export function pouredVolume(volume_m3: number, system: UnitSystem): string {
  if (system === 'metric') return volume_m3 < 0.9995e-3 ? shown(volume_m3, 'volume', system) : `${roundedText(volume_m3 * 1e3)} L`;
  const gallons = volume_m3 / CUBIC_METRES_PER_US_GALLON;
  return gallons < 0.5 ? shown(volume_m3, 'volume', system) : `${roundedText(gallons)} US gal`;
}

/** A weight on a part: kilograms from one up, pounds from one up. */
export function partWeight(weight_kg: number, system: UnitSystem): string {
  if (system === 'metric') return weight_kg < 0.9995 ? shown(weight_kg, 'weight', system) : `${roundedText(weight_kg)} kg`;
  const ounces = Number(shownNumber(weight_kg, 'weight', system));
  return ounces < 16 ? shown(weight_kg, 'weight', system) : `${roundedText(weight_kg / 0.45359237)} lb`;
}

/** Parts of finish to thinner: `1 : 0.33`. */
export function ratioText(thinnerPerFinish: number): string {
  return `1 : ${roundedText(thinnerPerFinish)}`;
}

/** Kinematic viscosity; one unit for every reader. */
export function shownKinematic(viscosity_m2_s: number): string {
  return `${roundedText(viscosity_m2_s * 1e6)} mm²/s`;
}

/** Drain time: `31.2 s`. */
export function drainSeconds(seconds: number): string {
  return `${roundedText(seconds)} s`;
}
