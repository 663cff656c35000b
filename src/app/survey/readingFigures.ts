import type { Job, ReadingSpec } from '../../../sim/index.ts';
import type { JobPath } from '../path.ts';

export type ReadingKind = ReadingSpec['kind'];

/** One number of a reading, as it is typed. */
export interface FigureField {
  readonly key: string;
  readonly label: string;
  /** May be left out. */
  readonly isOptional?: true;
}

export const KIND_WORDS: Readonly<Record<ReadingKind, string>> = {
  metal: 'Gauge on metal', coupon: 'Coupon, weighed', micrometer: 'Micrometer', comb: 'Wet-film comb',
};

/** What is typed of each kind of reading. Wet or dry is said in each, since “3 mil” alone is neither. */
export const FIGURES: Readonly<Record<ReadingKind, readonly FigureField[]>> = {
  metal: [{ key: 'dry_um', label: 'Film as read, dry' }],
  coupon: [
    { key: 'before_g', label: 'Weight before the coat' },
    { key: 'after_g', label: 'Weight when dry' },
    { key: 'area_cm2', label: 'Coated area, all coated faces' },
  ],
  micrometer: [
    { key: 'before_um', label: 'Thickness before' },
    { key: 'after_um', label: 'Thickness with the dry film' },
  ],
  comb: [
    { key: 'low_um', label: 'Last wetted tooth, wet film' },
    { key: 'high_um', label: 'Next dry tooth, wet film', isOptional: true },
  ],
};

/** A job that holds one reading of a kind, for the schema's limits of a number that no job holds yet. */
export function blankOf(kind: ReadingKind): Job {
  return { surveys: [{ readings: [{ kind }] }] } as unknown as Job;
}

/** Path of a figure in `blankOf`. */
export function blankPath(key: string): JobPath {
  return ['surveys', 0, 'readings', 0, key];
}
