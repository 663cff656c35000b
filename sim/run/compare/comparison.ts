import type { CrosscoatError } from '../../base/errors.ts';
import type { ReportedComparison, ReportedLaidSide, ReportedProblemSide } from '../../report/reportedComparison.ts';
import type { Recording } from '../../stroke/recordingReader.ts';
import type { LifeVerdict } from '../../verdict/lifeVerdict.ts';
import type { Verdict } from '../../verdict/verdict.ts';
import type { CoatLife } from '../coatLife.ts';
import type { CoatSetting, CoatStrokes, LaidCoat } from '../result.ts';
import type { StrokeChoice } from './sideJob.ts';

/** Which set-ups are compared, how their strokes run, how finely, and how it is watched and stopped. */
export interface CompareOptions {
  /** Ids of set-ups of the job, in the order of the table; any number, one may stand there twice. */
  readonly setUps: readonly string[];
  readonly strokes: StrokeChoice;
  /** Side of a cell, mm, 1 to 10; 4 where not given. */
  readonly cell_mm?: number;
  /** Times at which every film is kept, s on its own clock, rising; or how they follow from the end of the watch. */
  readonly at_s?: readonly number[] | ((end_s: number) => readonly number[]);
  /** To when every film is watched, s; where not given, until the last should be dry to touch. */
  readonly until_s?: number;
  /** Recordings already read, by id, for the coats beneath. */
  readonly recordings?: ReadonlyMap<string, Recording>;
  readonly shouldStop?: () => boolean;
  /** Share of the work done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/** A set-up's coat, laid, watched and judged, with all that maps and sections are made of. */
export interface WatchedSide extends ReportedLaidSide {
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly laid: LaidCoat;
  readonly verdict: Verdict;
  /** Watched as long as every other side, on cells of 6 mm or more (`life.setting`); its moments are at the times asked for. */
  readonly life: CoatLife;
  readonly lifeVerdict: LifeVerdict;
}

/** A set-up of which no coat can be made. */
export interface ProblemSide extends ReportedProblemSide {
  readonly error: CrosscoatError;
}

/** Set-ups side by side on the same panel, on the same clock. */
export interface Comparison extends ReportedComparison {
  readonly sides: readonly (WatchedSide | ProblemSide)[];
  readonly at_s: readonly number[];
}

/** Whether a side has figures. */
export function isWatched(side: WatchedSide | ProblemSide): side is WatchedSide {
  return side.problem === null;
}
