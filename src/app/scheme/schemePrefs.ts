import { merged } from '../merged.ts';

/** The sheets of the scheme. */
export const SCHEME_TABS = ['steps', 'mix', 'air', 'vapour', 'amounts', 'days', 'card'] as const;
export type SchemeTab = (typeof SCHEME_TABS)[number];

/** What the reader looks at of the scheme, kept in this browser. A sheet adds a key of its own for what it keeps. */
export interface SchemePrefs {
  readonly tab: SchemeTab;
  /** Id of the scheme that the sheets are about; empty, or gone from the job: the first. */
  readonly scheme: string;
}

export const USUAL_SCHEME: SchemePrefs = {
  tab: 'steps',
  scheme: '',
};

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function schemeFrom(kept: unknown): SchemePrefs {
  const prefs = merged(USUAL_SCHEME, kept) as SchemePrefs;
  return {
    ...prefs,
    tab: SCHEME_TABS.includes(prefs.tab) ? prefs.tab : USUAL_SCHEME.tab,
  };
}
