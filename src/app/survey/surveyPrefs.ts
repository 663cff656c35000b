import type { ReadingSpec } from '../../../sim/index.ts';
import { merged } from '../merged.ts';

/** The sheets of the survey. */
export const SURVEY_TABS = ['readings', 'verdict', 'where', 'truth'] as const;
export type SurveyTab = (typeof SURVEY_TABS)[number];

/** Kinds of reading, in the order in which they are offered. */
export const READING_KINDS = ['metal', 'coupon', 'micrometer', 'comb'] as const satisfies readonly ReadingSpec['kind'][];

/** What the next reading will be, as far as it stays from one to the next. */
export interface EntryPrefs {
  readonly kind: ReadingSpec['kind'];
  /** Name of the area; empty for none. */
  readonly area: string;
  /** Every tooth of the comb was wetted. */
  readonly allWetted: boolean;
  /** The place; null where it is left out. */
  readonly x_mm: number | null;
  readonly y_mm: number | null;
}

/** What the reader looks at of the surveys, kept in this browser. A sheet adds a key of its own for what it keeps. */
export interface SurveyPrefs {
  readonly tab: SurveyTab;
  /** Id of the survey that the sheets are about; empty, or gone from the job: the last. */
  readonly survey: string;
  readonly entry: EntryPrefs;
  /** Dry film that a new survey begins with, µm; null: what the coat says. */
  readonly nominal_um: number | null;
}

export const USUAL_SURVEY: SurveyPrefs = {
  tab: 'readings',
  survey: '',
  entry: { kind: 'metal', area: '', allWetted: false, x_mm: null, y_mm: null },
  nominal_um: null,
};

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function surveyFrom(kept: unknown): SurveyPrefs {
  const prefs = merged(USUAL_SURVEY, kept) as SurveyPrefs;
  const { entry } = prefs;
  return {
    ...prefs,
    tab: SURVEY_TABS.includes(prefs.tab) ? prefs.tab : USUAL_SURVEY.tab,
    entry: {
      ...entry,
      kind: READING_KINDS.includes(entry.kind) ? entry.kind : USUAL_SURVEY.entry.kind,
      x_mm: numberOrNull(entry.x_mm),
      y_mm: numberOrNull(entry.y_mm),
    },
    nominal_um: numberOrNull(prefs.nominal_um),
  };
}

function numberOrNull(value: unknown): number | null {
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}
