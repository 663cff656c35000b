import { merged } from '../merged.ts';

/** The sheets of the log. */
export const LOG_TABS = ['entries', 'record'] as const;
export type LogTab = (typeof LOG_TABS)[number];

/** What the reader looks at of the log, kept in this browser. */
export interface LogPrefs {
  readonly tab: LogTab;
  /** Id of the entry whose fields are open; empty, or gone from the job: none. */
  readonly entry: string;
  /** Who writes, so that nobody types their name for every entry. */
  readonly who: string;
}

export const USUAL_LOG: LogPrefs = { tab: 'entries', entry: '', who: '' };

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function logFrom(kept: unknown): LogPrefs {
  const prefs = merged(USUAL_LOG, kept) as LogPrefs;
  return { ...prefs, tab: LOG_TABS.includes(prefs.tab) ? prefs.tab : USUAL_LOG.tab };
}
