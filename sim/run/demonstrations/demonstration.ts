import type { FaultKind } from '../../verdict/verdict.ts';
import type { Job } from '../../job/schema.ts';
import type { Knob, LessonFigureName } from '../../report/reportedDemonstration.ts';

/** Id of the coat that a demonstration shows, in each of its jobs. */
export const SHOWN_COAT = 'shown';

/** The map that shows a fault best. */
export type LessonMap = 'target' | 'wet-now' | 'run' | 'dew-margin' | 'dry-share' | 'peel' | 'trapped';

/** A side beside the wrong and the cured one: another cure, at the same knob. */
export interface OtherSide {
  readonly id: string;
  /** Also how a sentence about it begins. */
  readonly title: string;
  /** The knob's value there, where it is not the one shown; null where the side does without. */
  readonly knob?: number | null;
  readonly job: (knob: number) => Job;
}

/**
 * A coat with one thing wrong, to be shown with time running beside the same coat cured. Each of its
 * jobs is an ordinary job, to be opened and changed. Everything in it is made up; the panel, the gun
 * and the mix are usual ones.
 */
export interface Demonstration {
  readonly id: string;
  readonly title: string;
  /** To ask the class before the knob is turned. */
  readonly question: string;
  readonly caution: string;
  readonly knob: Knob;
  /** The fault that the wrong side shows and the cured side does not. */
  readonly fault: FaultKind;
  readonly watch: LessonMap;
  readonly tells: readonly LessonFigureName[];
  /** @param knob from `knob.low` to `knob.high`. */
  readonly job: (knob: number) => Job;
  readonly others?: readonly OtherSide[];
  /** How long the film is watched, s from the first row of the path. */
  readonly until_s: number;
}
