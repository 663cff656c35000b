/** Most changes that a record's history holds. */
export const MOST_CHANGES = 2000;

/** Longest text of what was there before a change, letters. */
export const LONGEST_BEFORE = 20_000;
