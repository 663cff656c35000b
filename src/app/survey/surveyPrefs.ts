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

/** Maps of the film between the readings. */
export const TRUTH_MAPS = ['difference', 'error', 'planned'] as const;
export type TruthMap = (typeof TRUTH_MAPS)[number];

/** What the sheet Plan against truth shows and takes. */
export interface TruthPrefs {
  readonly map: TruthMap;
  /** Standard deviation of the gauge's own noise, µm; null: found or assumed. */
  readonly noise_um: number | null;
}

/** What the reader looks at of the surveys, kept in this browser. A sheet adds a key of its own for what it keeps. */
export interface SurveyPrefs {
  readonly tab: SurveyTab;
  /** Id of the survey that the sheets are about; empty, or gone from the job: the last. */
  readonly survey: string;
  readonly entry: EntryPrefs;
  /** Dry film that a new survey begins with, µm; null: what the coat says. */
  readonly nominal_um: number | null;
  /** Unit of a pasted column that does not say its own. */
  readonly pasteUnit: 'um' | 'mil';
  readonly truth: TruthPrefs;
}

export const USUAL_SURVEY: SurveyPrefs = {
  tab: 'readings',
  survey: '',
  entry: { kind: 'metal', area: '', allWetted: false, x_mm: null, y_mm: null },
  nominal_um: null,
  pasteUnit: 'um',
  truth: { map: 'difference', noise_um: null },
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
    pasteUnit: prefs.pasteUnit === 'mil' ? 'mil' : 'um',
    truth: { map: TRUTH_MAPS.includes(prefs.truth.map) ? prefs.truth.map : USUAL_SURVEY.truth.map, noise_um: numberOrNull(prefs.truth.noise_um) },
  };
}

function numberOrNull(value: unknown): number | null {
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}
