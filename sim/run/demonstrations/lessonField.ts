import type { FilmMoment } from '../../film/life/snapshot.ts';
import { colourTable } from '../../picture/colours.ts';
import { largest, makeField, thicknessDomain, type Field } from '../../picture/field.ts';
import { makeMomentField } from '../../picture/momentField.ts';
import type { LessonMap } from './demonstration.ts';
import { peelOf } from '../coatLife.ts';
import { landedFilm } from '../landedFilm.ts';
import type { DemonstrationSide } from './runDemonstration.ts';

/** Ripple and solvent beneath: up to where the class has long seen it. Assumed. */
const PEEL_DOMAIN_M: readonly [number, number] = [0, 2.5e-6];
const TRAPPED_DOMAIN: readonly [number, number] = [0, 0.4];
/** A share that arrived dry below this is no lesson: the colours do not stretch to it. */
const LEAST_SHARE = 0.05;

/**
 * The maps of a demonstration's sides at each of the times that were kept, side by side: `[side][time]`.
 * All have one domain, so a colour means the same on every side at every time.
 */
export function lessonFields(watch: LessonMap, sides: readonly DemonstrationSide[]): Field[][] {
  const domain = sharedDomain(watch, sides);
  return sides.map((side) => side.kept.map((moment) => lessonField(watch, side, moment, domain)));
}

/** Null where the map has a domain of its own. */
function sharedDomain(watch: LessonMap, sides: readonly DemonstrationSide[]): readonly [number, number] | null {
  const most = (each: (side: DemonstrationSide) => number): readonly [number, number] => [0, sides.reduce((high, side) => Math.max(high, each(side)), 0)];
  switch (watch) {
    case 'wet-now':
      return most(({ end }) => thicknessDomain(end.landed.wet_m)[1]);
    case 'dry-share':
      return most(({ end, setting }) => Math.max(LEAST_SHARE, makeField('dry-share', end.landed, setting.target).domain[1]));
    case 'target':
    case 'run':
    case 'dew-margin':
    case 'peel':
    case 'trapped':
      return null;
  }
}

function lessonField(watch: LessonMap, { setting }: DemonstrationSide, moment: FilmMoment, domain: readonly [number, number] | null): Field {
  const { target, air } = setting;
  switch (watch) {
    case 'wet-now':
    case 'run':
      return makeMomentField(watch, moment, target, air.dewPoint_K, domain ?? undefined);
    case 'dew-margin':
      // A film that has been below the dew point stays marked when it has warmed again.
      return { ...makeMomentField(watch, moment, target, air.dewPoint_K), values: whereLanded(moment.film.margin_K, moment), title: 'coldest so far, above the dew point' };
    case 'target':
      return makeField('target', landedFilm(moment), target);
    case 'dry-share':
      return inDomain(makeField('dry-share', landedFilm(moment), target), domain ?? [0, 1]);
    case 'peel':
      return { ...inDomain({ ...shares(moment), values: whereLanded(peelOf(setting, moment), moment) }, PEEL_DOMAIN_M), unit: 'm', title: 'ripple left', colours: colourTable('film'), marks: [target.life.peel_m] };
    case 'trapped':
      return inDomain({ ...shares(moment), values: shareOf(moment.film.trapped_m, moment.film.landed_m), title: 'solvent in what lies beneath' }, TRAPPED_DOMAIN);
  }
}

/** A field of shares that another is made of: the pictures' kinds do not know every lesson's map. */
function shares({ grid }: FilmMoment): Omit<Field, 'values'> {
  return { kind: 'top-solids', grid, domain: TRAPPED_DOMAIN, isClipped: false, unit: 'fraction', isLog: false, title: '', marks: [], colours: colourTable('solids') };
}

function inDomain(field: Field, domain: readonly [number, number]): Field {
  return { ...field, domain, isClipped: largest(field.values) > domain[1] };
}

function whereLanded(values: Float32Array, { film }: FilmMoment): Float32Array {
  return values.map((value, cell) => ((film.landed_m[cell] as number) > 0 ? value : NaN));
}

function shareOf(part: Float32Array, whole: Float32Array): Float32Array {
  return part.map((value, cell) => ((whole[cell] as number) > 0 ? value / (whole[cell] as number) : NaN));
}
