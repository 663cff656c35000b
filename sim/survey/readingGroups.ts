import type { FilmReading } from './filmReading.ts';
import type { Grouping } from './judgedSurvey.ts';
import type { Bounds } from './limits.ts';
import { meanBounds } from './meanFilm.ts';

/** Readings to a spot, and spots to an area (SSPC-PA 2, 2012 on, as read). */
export const READINGS_TO_A_SPOT = 3;
export const SPOTS_TO_AN_AREA = 5;

/** A spot or an area with the mean of what is in it. */
export interface Group {
  /** `spot 3`, `area fin, spot 2`, `area 1`. */
  readonly name: string;
  readonly mean_m: Bounds;
  /** Places in the survey of its readings. */
  readonly readings: readonly number[];
}

/** Readings put into spots, and those into areas. */
export interface ReadingGroups {
  readonly spots: readonly Group[];
  readonly areas: readonly Group[];
  readonly grouping: Grouping;
}

interface Spot {
  readonly area: string | null;
  readonly name: string | null;
  readonly how: 'named' | 'threes' | 'means-assumed';
  readonly readings: FilmReading[];
}

/**
 * Puts readings into spots and spots into areas: by the names that they give; where they name no spot, each three in order make one,
 * and where spots name no area, each five in order. A last spot or area may be short. Readings without a spot that are too few
 * for an area of fifteen, but whole fives, are taken as spots' means. Nothing is left out; `grouping` says what was done.
 */
export function groupReadings(readings: readonly FilmReading[]): ReadingGroups {
  const spots = spotsOf(readings);
  const areOneEach = spots.every(({ how, readings: own }) => how !== 'named' || own.length === 1);
  const hows = new Set(spots.map(({ how }) => (how === 'named' && areOneEach ? 'means-named' : how)));
  const groups = spots.map((spot, i) => ({ ...groupOf(spotName(spot, i), meanBounds(spot.readings), spot.readings.map(({ index }) => index)), area: spot.area }));
  const areas = areasOf(groups);
  const named = groups.filter(({ area }) => area !== null).length;
  const [only = 'named'] = hows;
  return {
    spots: groups.map(({ name, mean_m, readings: own }) => ({ name, mean_m, readings: own })),
    areas: areas.map(({ name, spots: own }) => groupOf(name, meanBounds(own.map(({ mean_m: [low_m, high_m] }) => ({ low_m, high_m }))), own.flatMap(({ readings: places }) => places))),
    grouping: {
      spots: hows.size > 1 ? 'mixed' : only,
      areas: named === 0 ? 'fives' : named === groups.length ? 'named' : 'mixed',
      shortSpots: spots.filter(({ how, readings: own }) => own.length < READINGS_TO_A_SPOT && how !== 'means-assumed' && !(how === 'named' && areOneEach)).length,
      shortAreas: areas.filter(({ spots: own }) => own.length < SPOTS_TO_AN_AREA).length,
    },
  };
}

function groupOf(name: string, mean_m: Bounds, readings: readonly number[]): Group {
  return { name, mean_m, readings };
}

/** In the order of their first readings. */
function spotsOf(readings: readonly FilmReading[]): Spot[] {
  const named = new Map<string, Spot>();
  const loose = new Map<string | null, { readonly reading: FilmReading; readonly place: number }[]>();
  const spots: { readonly first: number; readonly spot: Spot }[] = [];
  readings.forEach((reading, i) => {
    const { area, spot: name } = reading;
    if (name === null) {
      const pool = loose.get(area) ?? [];
      pool.push({ reading, place: i });
      loose.set(area, pool);
      return;
    }
    const key = JSON.stringify([area, name]);
    const spot = named.get(key) ?? { area, name, how: 'named', readings: [] };
    if (!named.has(key)) spots.push({ first: i, spot });
    named.set(key, spot);
    spot.readings.push(reading);
  });
  for (const [area, pool] of loose) {
    const areMeans = pool.length < READINGS_TO_A_SPOT * SPOTS_TO_AN_AREA && pool.length % SPOTS_TO_AN_AREA === 0;
    const size = areMeans ? 1 : READINGS_TO_A_SPOT;
    for (let i = 0; i < pool.length; i += size) {
      const own = pool.slice(i, i + size);
      spots.push({ first: own[0]?.place ?? 0, spot: { area, name: null, how: areMeans ? 'means-assumed' : 'threes', readings: own.map(({ reading }) => reading) } });
    }
  }
  return spots.sort((a, b) => a.first - b.first).map(({ spot }) => spot);
}

function spotName({ area, name }: Spot, place: number): string {
  const spot = labelled('spot', name ?? String(place + 1));
  return area === null ? spot : `${labelled('area', area)}, ${spot}`;
}

/** `area fin`; a name that says what it is stands as it is. */
function labelled(what: string, name: string): string {
  return name.toLowerCase().startsWith(what) ? name : `${what} ${name}`;
}

function areasOf<T extends { readonly area: string | null }>(spots: readonly T[]): { readonly name: string; readonly spots: readonly T[] }[] {
  const named = new Map<string, T[]>();
  const loose: T[] = [];
  for (const spot of spots) {
    if (spot.area === null) loose.push(spot);
    else {
      const own = named.get(spot.area) ?? [];
      own.push(spot);
      named.set(spot.area, own);
    }
  }
  const fives = Array.from({ length: Math.ceil(loose.length / SPOTS_TO_AN_AREA) }, (_, i) => ({
    name: `area ${named.size + i + 1}`,
    spots: loose.slice(i * SPOTS_TO_AN_AREA, (i + 1) * SPOTS_TO_AN_AREA),
  }));
  return [...[...named].map(([area, own]) => ({ name: labelled('area', area), spots: own })), ...fives];
}
