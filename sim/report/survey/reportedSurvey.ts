import type { Warning } from '../../base/errors.ts';
import type { SurveySpec } from '../../job/schema.ts';
import type { Panel } from '../../panel/panel.ts';
import type { JudgedSurvey } from '../../survey/judgedSurvey.ts';
import type { MoreReadings } from '../../survey/moreReadings.ts';
import type { SamplingNumbers } from '../../survey/samplingNumbers.ts';

/** A figure that turns readings into film, and where it is from. */
export interface TakenFigure {
  readonly value: number;
  /** Name of the mix that it is from; null where the survey states it. */
  readonly mix: string | null;
}

/** What was taken to turn weight and wet film into dry film; null where it is not known. */
export interface SurveyTaken {
  /** Of the dry film, kg/m³. */
  readonly dryDensity_kg_m3: TakenFigure | null;
  /** Of the mix as sprayed, by volume, 0 to 1. */
  readonly solidsFraction: TakenFigure | null;
}

/** A survey, judged, with all that a report says of it. */
export interface ReportedSurvey {
  readonly name: string;
  /** Null for readings that belong to no job. */
  readonly survey: SurveySpec | null;
  /** Where it was read; null for readings that belong to no job. */
  readonly panel: Panel | null;
  readonly judged: JudgedSurvey;
  readonly taken: SurveyTaken;
  readonly more: MoreReadings;
  /** What the rule's own table asks for on that panel; null without a panel. */
  readonly sampling: SamplingNumbers | null;
  readonly warnings: readonly Warning[];
}
