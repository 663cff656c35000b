import { largest, makeField, thicknessDomain, type Field, type FieldKind, type MomentFieldKind } from '../../picture/field.ts';
import { makeMomentField, MOMENT_FIELDS } from '../../picture/momentField.ts';
import { landedFilm } from '../landedFilm.ts';
import { JUDGED_COVER } from '../../verdict/judged.ts';
import { isWatched, type Comparison, type WatchedSide } from './comparison.ts';

/** Maps that can be set side by side. Strokes over each place are not kept through time. */
export type ComparedMap = Exclude<FieldKind, 'passes'> | MomentFieldKind;

/**
 * One map of every side at one time, null for a side without film. Places outside the panel are not a number. All have one domain, so that a colour means the
 * same on every side; thickness keeps it at every time.
 * @param index of a time of `comparison.at_s`, or `end` for the end of the watch.
 */
export function comparisonFields({ sides }: Comparison, map: ComparedMap, index: number | 'end'): (Field | null)[] {
  const held = heldDomain(sides.filter(isWatched), map);
  const fields = sides.map((side) => (isWatched(side) ? fieldOf(side, map, index, held) : null));
  const domain = held ?? widest(fields);
  return fields.map((field) => (field === null ? null : { ...field, domain, isClipped: largest(field.values) > domain[1] }));
}

function fieldOf({ life, setting }: WatchedSide, map: ComparedMap, index: number | 'end', held: readonly [number, number] | null): Field | null {
  const moment = index === 'end' ? life.end : life.moments[index];
  if (moment === undefined) return null;
  const { target, air } = setting;
  const field = isMomentMap(map) ? makeMomentField(map, moment, target, air.dewPoint_K, held ?? undefined) : makeField(map, landedFilm(moment), target);
  const { cover } = life.setting.panelGrid;
  return { ...field, values: field.values.map((value, cell) => ((cover[cell] as number) < JUDGED_COVER ? NaN : value)) };
}

function isMomentMap(map: ComparedMap): map is MomentFieldKind {
  return (MOMENT_FIELDS as readonly string[]).includes(map);
}

/** A thickness runs to what the sides have at the end of spraying; null for maps whose domain is fixed, or follows the moment. */
function heldDomain(sides: readonly WatchedSide[], map: ComparedMap): readonly [number, number] | null {
  const most = (each: (side: WatchedSide) => Float32Array): readonly [number, number] => [0, Math.max(0, ...sides.map((side) => thicknessDomain(each(side))[1]))];
  switch (map) {
    case 'wet':
    case 'wet-now':
      return most(({ laid }) => laid.film.wet_m);
    case 'dry':
      return most(({ laid }) => laid.film.dry_m);
    case 'dry-now':
      return most(({ life }) => life.end.dry_m);
    case 'target':
    case 'solids':
    case 'dry-share':
    case 'viscosity':
    case 'dew-margin':
    case 'run':
    case 'top-solids':
      return null;
  }
}

function widest(fields: readonly (Field | null)[]): readonly [number, number] {
  const domains = fields.flatMap((field) => (field === null ? [] : [field.domain]));
  return domains.reduce((wide, domain) => (domain[1] > wide[1] ? domain : wide), domains[0] ?? [0, 1]);
}
