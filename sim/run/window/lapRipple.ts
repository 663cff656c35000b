import { fanShape } from '../../gun/profile.ts';
import type { SetUp } from '../../gun/setUp.ts';
import { strokeProfile } from '../../gun/strokeProfile.ts';

/** The film of one square stroke across the fan. It has the same shape at every distance. */
export interface StrokeShape {
  /** Full width as stated and half extents of the support, at the fan's stated distance. */
  readonly width_m: number;
  readonly halfLength_m: number;
  readonly halfDepth_m: number;
  /** Share of the landing liquid on a half support of width, at `u` half supports from the centre; 0 outside -1 to 1, integral 1 - cut tail. */
  readonly shareAt: (u: number) => number;
  /** What an infinite tail lost by being cut. */
  readonly cutFraction: number;
}

/** Film of many equal strokes side by side at one overlap. Lengths in half supports, films as shares of the mean. */
export interface LapRipple {
  readonly pitch: number;
  readonly cv: number;
  /** Places of one pitch, from a stroke's centre line, where the film is least and most. */
  readonly leastAt: number;
  readonly mostAt: number;
  readonly least: number;
  readonly most: number;
}

/** Places of a pitch at which the film is summed. Even, so that mid-lap is one of them. */
export const RIPPLE_PLACES = 240;

/** The stroke of a set-up's fan, measured tables included. */
export function strokeShape(fan: SetUp['fan']): StrokeShape {
  const { halfLength_m, halfDepth_m, cutFraction } = fanShape(fan);
  const film = strokeProfile(fan);
  return { width_m: fan.width_m, halfLength_m, halfDepth_m, cutFraction, shareAt: (u) => film(u * halfLength_m) * halfLength_m };
}

/** Pitch of strokes, in half supports, for an overlap of the stated width. */
export function pitchAt({ width_m, halfLength_m }: StrokeShape, overlapFraction: number): number {
  return ((1 - overlapFraction) * width_m) / halfLength_m;
}

/** Film at a place of endless equal strokes, in shares of one stroke's liquid on a unit of width. */
export function lappedAt({ shareAt }: StrokeShape, pitch: number, place: number): number {
  let film = 0;
  const last = Math.floor((place + 1) / pitch);
  for (let k = Math.ceil((place - 1) / pitch); k <= last; k++) film += shareAt(place - k * pitch);
  return film;
}

/**
 * Ripple of endless parallel strokes, all alike.
 *
 * Summed at `places` even places of one pitch, a stroke's centre line and the middle between two among
 * them: the extremes of a symmetric fan lie there or nearly so. Beside them a film is missed by at most
 * `½ h″ (p/2n)²`, under 1e-4 of the mean for smooth fans; a vertical edge by up to its own height.
 * @param overlapFraction 0 to below 1.
 */
export function lapRipple(shape: StrokeShape, overlapFraction: number, places = RIPPLE_PLACES): LapRipple {
  const pitch = pitchAt(shape, overlapFraction);
  const films = Float64Array.from({ length: places }, (_, i) => lappedAt(shape, pitch, (i / places) * pitch));
  const mean = films.reduce((sum, film) => sum + film, 0) / places;
  const variance = films.reduce((sum, film) => sum + (film - mean) ** 2, 0) / places;
  const least = films.reduce((low, film, i) => (film < (films[low] as number) ? i : low), 0);
  const most = films.reduce((high, film, i) => (film > (films[high] as number) ? i : high), 0);
  return {
    pitch,
    cv: Math.sqrt(variance) / mean,
    leastAt: (least / places) * pitch,
    mostAt: (most / places) * pitch,
    least: (films[least] as number) / mean,
    most: (films[most] as number) / mean,
  };
}
