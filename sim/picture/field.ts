import { roundEnds } from '../base/evenScale.ts';
import type { Grid } from '../base/grid.ts';
import type { Film } from '../film/film.ts';
import type { Target } from '../verdict/target.ts';
import { COLOUR_COUNT, MOST_STEPS, colourTable } from './colours.ts';

/**
 * What a picture of the film can show: wet or dry thickness, the target's kind of film as a
 * share of the target, strokes over each cell, volume share of solids in what landed, share of
 * the film that arrived in dry drops.
 */
export type FieldKind = 'wet' | 'dry' | 'target' | 'passes' | 'solids' | 'dry-share';

/**
 * What a picture of a film at one time of its life can show besides: all that lies there wet and dry,
 * the uppermost layer's viscosity and solids, how much warmer than the dew point it is, how far it has run.
 */
export type MomentFieldKind = 'wet-now' | 'dry-now' | 'viscosity' | 'dew-margin' | 'run' | 'top-solids';

/** A film field with everything that a legend and a picture need. */
export interface Field {
  readonly kind: FieldKind | MomentFieldKind;
  readonly grid: Grid;
  /** Row-major from the lowest row; where the field has no meaning `NO_FILM`, or NaN in a field of a moment. */
  readonly values: Float32Array;
  /** Value at the first and at the last colour. */
  readonly domain: readonly [number, number];
  /** Whether some values lie above the domain and share the last colour. */
  readonly isClipped: boolean;
  /** Unit of values and domain; a fraction is shown in per cent. */
  readonly unit: 'm' | 'fraction' | 'count' | 'K' | 'Pa s';
  /** Whether values and domain are decimal logarithms of numbers in the unit. */
  readonly isLog: boolean;
  /** In the trade's words, without the unit. */
  readonly title: string;
  /** Values worth a tick of their own: the target and its limits. */
  readonly marks: readonly number[];
  /** 256 colours, RGBA bytes, first to last. */
  readonly colours: Uint8Array;
}

/** Stands for a share of a film that is not there, in a field whose domain lies above it. */
export const NO_FILM = -1;

/** Film above this many times the mean film has no colours of its own. */
const MOST_MEANS = 3;

/** The target's field runs from none to twice the target, so that its middle colour is the target. */
const TARGET_DOMAIN: readonly [number, number] = [0, 2];

const TITLES: Readonly<Record<FieldKind, string>> = {
  wet: 'wet film',
  dry: 'dry film',
  target: 'film against target',
  passes: 'strokes over each place',
  solids: 'solids at impact',
  'dry-share': 'share that arrived dry',
};

/**
 * A field of a film: values on its grid, the domain of its colours, unit, title and colours.
 *
 * Thickness runs from 0 to a round number at or above the thickest cell, but at most about three
 * times the mean film, so that one spot does not take all colours; a film against its target from
 * 0 to 2 times the target; strokes in whole steps, `MOST_STEPS - 1` or more sharing the last;
 * shares from 0 to a round number at or above the largest.
 */
export function makeField(kind: FieldKind, film: Film, target: Target): Field {
  const values = fieldValues(kind, film, target);
  const domain = fieldDomain(kind, values);
  const scheme = schemeOf(kind);
  const colours = scheme === 'passes' ? colourTable(scheme, domain[1] - domain[0]) : colourTable(scheme);
  return {
    kind,
    grid: film.grid,
    values,
    domain,
    isClipped: largest(values) > domain[1],
    unit: unitOf(kind),
    isLog: false,
    title: kind === 'target' ? `${target.film} film against target` : TITLES[kind],
    marks: fieldMarks(kind, target),
    colours,
  };
}

/** Index into `field.colours` for one value; NaN and everything below the domain take the first. */
export function colourIndex(field: Field, value: number): number {
  const [low, high] = field.domain;
  const place = Math.floor(((value - low) / (high - low)) * COLOUR_COUNT);
  return place > 0 ? Math.min(COLOUR_COUNT - 1, place) : 0;
}

function fieldValues(kind: FieldKind, film: Film, target: Target): Float32Array {
  switch (kind) {
    case 'wet':
      return film.wet_m;
    case 'dry':
      return film.dry_m;
    case 'passes':
      return Float32Array.from(film.passes);
    case 'solids':
      return shareOf(film.dry_m, film.wet_m);
    case 'dry-share':
      return shareOf(film.arrivedDry_m, film.wet_m);
    case 'target': {
      const thickness = target.film === 'wet' ? film.wet_m : film.dry_m;
      return thickness.map((value) => value / target.thickness_m);
    }
  }
}

function shareOf(part: Float32Array, whole: Float32Array): Float32Array {
  const share = new Float32Array(whole.length);
  for (let i = 0; i < whole.length; i++) {
    const all = whole[i] as number;
    share[i] = all > 0 ? (part[i] as number) / all : NO_FILM;
  }
  return share;
}

function fieldDomain(kind: FieldKind, values: Float32Array): readonly [number, number] {
  if (kind === 'target') return TARGET_DOMAIN;
  const most = largest(values);
  if (kind === 'passes') return [-0.5, Math.min(most, MOST_STEPS - 1) + 0.5];
  return kind === 'wet' || kind === 'dry' ? thicknessDomain(values) : roundDomain(most, 0.01);
}

/** From no film to a round number at or above the thickest cell, but at most about three times the mean film, m. */
export function thicknessDomain(values: Float32Array): readonly [number, number] {
  return roundDomain(Math.min(largest(values), MOST_MEANS * meanOfFilm(values)), 1e-6);
}

function roundDomain(most: number, least: number): readonly [number, number] {
  return [0, roundEnds([0, Math.max(most, least)], 5)[1]];
}

/** The largest value; NaN counts for nothing. */
export function largest(values: Float32Array): number {
  let most = 0;
  for (const value of values) if (value > most) most = value;
  return most;
}

/** Mean over the cells that have film. */
function meanOfFilm(values: Float32Array): number {
  let sum = 0;
  let count = 0;
  for (const value of values) {
    if (!(value > 0)) continue;
    sum += value;
    count++;
  }
  return count > 0 ? sum / count : 0;
}

function schemeOf(kind: FieldKind): 'film' | 'target' | 'passes' | 'solids' {
  if (kind === 'target' || kind === 'passes') return kind;
  return kind === 'wet' || kind === 'dry' ? 'film' : 'solids';
}

function unitOf(kind: FieldKind): Field['unit'] {
  if (kind === 'wet' || kind === 'dry') return 'm';
  return kind === 'passes' ? 'count' : 'fraction';
}

function fieldMarks(kind: FieldKind, target: Target): number[] {
  const limits = [target.holidayFraction, target.minFraction, 1, target.maxFraction];
  if (kind === 'target') return limits;
  if (kind === target.film) return limits.map((limit) => limit * target.thickness_m);
  return kind === 'dry-share' ? [target.dryFraction] : [];
}
