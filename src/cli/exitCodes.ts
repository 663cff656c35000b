/** What the command tells a script. */
export const EXIT = {
  done: 0,
  /** The film has faults and `--strict` was given. */
  faults: 1,
  badInput: 2,
  /** Something went wrong that is no fault of the input. */
  bug: 3,
} as const;
