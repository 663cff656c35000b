import { strokesAtPlaces } from '../deposit/strokesAt.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import { dryShare } from '../verdict/judged.ts';
import type { Target } from '../verdict/target.ts';
import type { FaultKind } from '../verdict/verdict.ts';
import type { Travel } from './lay.ts';
import type { CoatSetting } from './result.ts';
import { strokeAlone } from './strokeAlone.ts';

/** Film at some places, one value a place. */
interface FilmList {
  readonly wet_m: Float64Array;
  readonly solids_m: Float64Array;
  readonly arrivedDry_m: Float64Array;
}

/** The film at some places, and the parts of the strokes that reach any of them, by stroke index. */
export interface PlaceFilms extends FilmList {
  /** Wet film of each stroke. */
  readonly byStroke: ReadonlyMap<number, Float64Array>;
  readonly parts: ReadonlyMap<number, FilmList>;
}

/** A fan reaches this much farther than its straight opening says: tilt, and the support of a long tail. */
const REACH_MARGIN = 1.25;

/**
 * The film that a travel would lay at some places, without laying the panel: each stroke is worked
 * out only at the places that its fan may reach. Fluid outside every stroke is left out.
 * @param places_m x0, y0, x1, y1, … in panel coordinates.
 * @param unchanged films at the same places of a travel that differs in the strokes `changed` only.
 */
export function filmsAtPlaces(
  setting: CoatSetting,
  travel: Travel,
  places_m: Float64Array,
  unchanged?: { readonly films: PlaceFilms; readonly changed: ReadonlySet<number> },
): PlaceFilms {
  const total = noFilm(places_m.length / 2);
  const byStroke = new Map<number, Float64Array>();
  const parts = new Map<number, FilmList>();
  for (const stroke of travel.strokes) {
    const isKnown = unchanged !== undefined && !unchanged.changed.has(stroke.index);
    const own = isKnown ? unchanged.films.parts.get(stroke.index) : strokeFilms(setting, travel.path, stroke, places_m);
    if (own === undefined || own === null) continue;
    parts.set(stroke.index, own);
    byStroke.set(stroke.index, own.wet_m);
    add(total.wet_m, own.wet_m);
    add(total.solids_m, own.solids_m);
    add(total.arrivedDry_m, own.arrivedDry_m);
  }
  return { ...total, byStroke, parts };
}

function noFilm(count: number): FilmList {
  return { wet_m: new Float64Array(count), solids_m: new Float64Array(count), arrivedDry_m: new Float64Array(count) };
}

function add(total: Float64Array, own: Float64Array): void {
  for (let i = 0; i < total.length; i++) total[i] = (total[i] as number) + (own[i] as number);
}

/** The film of one stroke alone; null where its fan reaches none of the places. */
function strokeFilms(setting: CoatSetting, whole: Path, stroke: Stroke, places_m: Float64Array): FilmList | null {
  const alone = strokeAlone(whole, stroke, setting.spray.triggerLag_s);
  const near = placesInReach(setting, alone.path, places_m);
  if (near.length === 0) return null;
  const shares = strokesAtPlaces({
    ...alone,
    spray: setting.spray,
    places_m: near.map((place) => [places_m[2 * place] as number, places_m[2 * place + 1] as number] as const),
  });
  const films = noFilm(places_m.length / 2);
  near.forEach((place, i) => {
    const share = shares[i]?.find((one) => one.stroke === stroke.index);
    if (share === undefined) return;
    films.wet_m[place] = share.wet_m;
    films.solids_m[place] = share.solids_m;
    films.arrivedDry_m[place] = share.arrivedDry_m;
  });
  return films;
}

/** Places inside the box of a path's feet, widened by what the fan and its swing may reach. */
function placesInReach({ spray }: CoatSetting, path: Path, places_m: Float64Array): number[] {
  const { halfLength_m, halfDepth_m, distance_m } = spray.footprint;
  const opening = Math.hypot(halfLength_m, halfDepth_m) / distance_m;
  let left = Infinity;
  let right = -Infinity;
  let low = Infinity;
  let high = -Infinity;
  for (let row = 0; row < path.count; row++) {
    const x = path.x_m[row] as number;
    const y = path.y_m[row] as number;
    const swing = Math.tan(Math.min(1.2, Math.abs(path.pitch_rad[row] as number) + Math.abs(path.yaw_rad[row] as number)));
    const reach = (path.z_m[row] as number) * (opening * (1 + swing * swing) * REACH_MARGIN + swing);
    left = Math.min(left, x - reach);
    right = Math.max(right, x + reach);
    low = Math.min(low, y - reach);
    high = Math.max(high, y + reach);
  }
  const near: number[] = [];
  for (let place = 0; 2 * place < places_m.length; place++) {
    const x = places_m[2 * place] as number;
    const y = places_m[2 * place + 1] as number;
    if (x >= left && x <= right && y >= low && y <= high) near.push(place);
  }
  return near;
}

/** What a kind of fault is judged by at places `first` to `last` (not included): the target's film, or the dry share. */
export function valuesAt(films: PlaceFilms, kind: FaultKind, [first, last]: readonly [number, number], target: Target): Float64Array {
  const wet = films.wet_m.subarray(first, last);
  if (kind !== 'dry-spray') return target.film === 'wet' ? wet : films.solids_m.subarray(first, last);
  const dry = films.arrivedDry_m.subarray(first, last);
  return wet.map((thickness, i) => dryShare(dry[i] as number, thickness));
}
