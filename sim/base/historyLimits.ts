/** Most changes that a record's history holds. Assumed: far beyond what hands make, and small beside a photograph. */
export const MOST_CHANGES = 2000;

/** Longest text of what was there before a change, letters. Assumed: four times the longest text of a field. */
export const LONGEST_BEFORE = 20_000;
