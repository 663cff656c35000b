import { shownUnit, type Field, type FieldKind, type LegendUnit, type MomentFieldKind, type UnitSystem } from '../../../sim/index.ts';

/** What can be shown of a film as laid. */
export const LAID_WORDS: readonly (readonly [kind: FieldKind, words: string])[] = [
  ['target', 'Film against target'],
  ['wet', 'Film, wet'],
  ['dry', 'Film, dry'],
  ['passes', 'Strokes over each place'],
  ['solids', 'Solids at impact'],
  ['dry-share', 'Share that arrived dry'],
];

/** What can be shown of a film at a time of its life. */
export const MOMENT_WORDS: readonly (readonly [kind: MomentFieldKind, words: string])[] = [
  ['wet-now', 'Wet film now'],
  ['dry-now', 'Dry film now'],
  ['viscosity', 'Viscosity, top layer'],
  ['dew-margin', 'Film above the dew point'],
  ['run', 'How far it has run'],
  ['top-solids', 'Solids, top layer'],
];

/** The unit that a field is read in. */
export function unitOfField({ kind, unit }: Pick<Field, 'kind' | 'unit'>, system: UnitSystem): LegendUnit {
  switch (unit) {
    case 'm':
      return shownUnit(kind === 'run' ? 'length' : 'film', system);
    case 'K':
      return shownUnit('temperature-step', system);
    case 'Pa s':
      return shownUnit('viscosity', system);
    case 'fraction':
      return { name: '%', size: 0.01 };
    case 'count':
      return { name: '', size: 1 };
  }
}
