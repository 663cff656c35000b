import { CrosscoatError, type Place } from '../../base/errors.ts';

/** Readings across a fan, by place; places may repeat, and both readings then count. */
export interface CardReadings {
  /** Places along the fan's long axis, rising, from any zero. */
  readonly place_m: Float64Array;
  /** Film there, or anything in proportion to it: weighed strips, darkness. Same length as `place_m`. */
  readonly film: Float64Array;
  /** What `film` is read in, as the header says it: 'um', 'mil', 'g'; '' where it says nothing. */
  readonly unit: string;
}

/** Most readings of a card. */
export const MOST_READINGS = 5000;

/** Fewest readings, and fewest different places, that say anything of a fan's shape: a shape has up to four numbers and needs a scatter to be judged by. */
export const FEWEST_READINGS = 7;
export const FEWEST_PLACES = 5;
/** Narrowest and widest stretch of readings, m: that of the fans that a set-up may have, and as much again beside them. */
const LEAST_SPAN_M = 5e-3;
const MOST_SPAN_M = 3;
/** Assumed: readings that scatter about 0 may fall below it by this share of the highest; what falls farther is no film. */
const BELOW_NOTHING_RATIO = 0.1;

/** Where readings came from, for messages. */
export interface ReadingsSource {
  readonly column: string;
  /** 1-based row of each reading, in the order of the readings. */
  readonly rows: readonly number[];
}

/**
 * Checks that readings can show a fan.
 * @throws CrosscoatError: `range` for readings that are not finite, below 0 by more than a zero error (10 % of the highest),
 *   fewer than 7, at fewer than 5 places, all equal, or over less than 5 mm or more than 3 m; `geometry` for places
 *   that do not rise or leave the middle third of their stretch empty.
 */
export function checkReadings(readings: CardReadings, file = 'readings', source?: ReadingsSource): void {
  const { place_m, film } = readings;
  const place = (i: number): Place => ({ file, ...(source === undefined ? {} : { row: source.rows[i] as number, column: source.column }) });
  const at = (i: number): string => (source === undefined ? `reading ${i + 1}` : `row ${source.rows[i]}, column ${source.column}`);
  checkCounts(readings, file);
  const highest = film.reduce((most, value) => Math.max(most, value), -Infinity);
  for (let i = 0; i < film.length; i++) {
    const value = film[i] as number;
    if (!Number.isFinite(value) || !Number.isFinite(place_m[i])) {
      throw new CrosscoatError('range', `${file}: ${at(i)}: ${value} at ${place_m[i]} m is not finite; mend the value or leave the reading out`, place(i));
    }
    if (value < -BELOW_NOTHING_RATIO * Math.max(0, highest)) {
      throw new CrosscoatError('range', `${file}: ${at(i)}: ${value} is below 0, which no film is (a zero error of ${100 * BELOW_NOTHING_RATIO} % of the highest reading is let pass); set the gauge to 0 on bare card and read again`, place(i));
    }
    if (i > 0 && (place_m[i] as number) < (place_m[i - 1] as number)) {
      throw new CrosscoatError('geometry', `${file}: ${at(i)} comes before the place ahead of it; sort the readings by place`, place(i));
    }
  }
  checkSpread(readings, highest, file);
}

function checkCounts({ place_m, film }: CardReadings, file: string): void {
  const places = new Set(place_m).size;
  if (film.length === place_m.length && film.length >= FEWEST_READINGS && places >= FEWEST_PLACES) return;
  throw new CrosscoatError('range', `${file}: ${film.length} readings at ${places} different places are too few to show a fan's shape; give at least ${FEWEST_READINGS} at ${FEWEST_PLACES} places, better 20, from bare card to bare card`, { file });
}

function checkSpread({ place_m, film }: CardReadings, highest: number, file: string): void {
  const [first, last] = [place_m[0] as number, place_m[place_m.length - 1] as number];
  const span_m = last - first;
  if (!(span_m >= LEAST_SPAN_M && span_m <= MOST_SPAN_M)) {
    throw new CrosscoatError('range', `${file}: the places span ${Number((span_m * 1000).toPrecision(6))} mm, which is not from ${LEAST_SPAN_M * 1000} to ${MOST_SPAN_M * 1000} mm (no hand gun's fan); look whether the column's unit is right`, { file });
  }
  if (film.every((value) => value === film[0])) {
    throw new CrosscoatError('range', `${file}: all readings are ${film[0]} (no fan shows in them); read across the whole fan, from bare card to bare card`, { file });
  }
  if (!(highest > 0)) {
    throw new CrosscoatError('range', `${file}: no reading is above 0 (no fan shows in them); read where the stroke was sprayed`, { file });
  }
  const inMiddle = place_m.some((place) => place >= first + span_m / 3 && place <= last - span_m / 3);
  if (!inMiddle) {
    throw new CrosscoatError('geometry', `${file}: no reading lies in the middle third, from ${((first + span_m / 3) * 1000).toFixed(0)} to ${((last - span_m / 3) * 1000).toFixed(0)} mm; read there too, since the fan's shape is in its middle`, { file });
  }
}
