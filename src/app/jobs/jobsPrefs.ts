/** The sheets of the jobs. */
export const JOBS_TABS = ['list', 'zip', 'room'] as const;
export type JobsTab = (typeof JOBS_TABS)[number];

/** What the reader looks at of the jobs, kept in this browser. */
export interface JobsPrefs {
  readonly tab: JobsTab;
  /** Digests under which each job was handed over or taken in, by its id, oldest first: a restore knows the older state by them. */
  readonly earlier: Readonly<Record<string, readonly string[]>>;
}

export const USUAL_JOBS: JobsPrefs = { tab: 'list', earlier: {} };

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function jobsFrom(kept: unknown): JobsPrefs {
  const { tab, earlier } = (typeof kept === 'object' && kept !== null ? kept : {}) as { readonly tab?: unknown; readonly earlier?: unknown };
  const isList = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every((each) => typeof each === 'string');
  return {
    tab: JOBS_TABS.find((each) => each === tab) ?? USUAL_JOBS.tab,
    earlier: Object.fromEntries(Object.entries(typeof earlier === 'object' && earlier !== null ? earlier : {}).filter((pair): pair is [string, readonly string[]] => isList(pair[1]))),
  };
}
