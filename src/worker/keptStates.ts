/** What is kept of a coat's life, so that going back in time does not start at the first stroke. */
export interface KeptStates<State> {
  /** Keeps a copy of the state where its time has reached a mark that is still empty. */
  offer(state: State): void;
  /** The latest kept state at or before a time; the caller copies it before it moves on. */
  before(time_s: number): State | null;
}

/** No more of the life is kept than this, whatever the grid. */
const MOST_BYTES = 256 * 1024 * 1024;
/** A cell's numbers: six of 8 bytes and 16 of 4 in the film, four of 4 in what has landed. */
export const BYTES_PER_CELL = 128;

/**
 * When states are worth keeping, the most useful first: trigger on, gun put away, halves of the
 * spraying, then times after it in seconds. As many as memory has room for, but always the first.
 */
export function keptMarks_s(sprayed_s: number, cells: number): number[] {
  const wanted = [0, 1, 0.5, 0.25, 0.75].map((share) => share * sprayed_s);
  wanted.push(...[120, 900, 3600].map((after_s) => sprayed_s + after_s));
  const room = Math.floor(MOST_BYTES / (cells * BYTES_PER_CELL));
  return wanted.slice(0, Math.max(1, room)).sort((a, b) => a - b);
}

/** @param timeOf time of a state, s. @param copy a state that shares nothing with it. */
export function keepStates<State>(marks_s: readonly number[], timeOf: (state: State) => number, copy: (state: State) => State): KeptStates<State> {
  const kept: (State | null)[] = marks_s.map(() => null);
  return {
    offer(state) {
      const time_s = timeOf(state);
      const mark = marks_s.filter((at_s) => at_s <= time_s).length - 1;
      if (mark >= 0 && kept[mark] === null) kept[mark] = copy(state);
    },
    before(time_s) {
      return kept.filter((state) => state !== null && timeOf(state) <= time_s).at(-1) ?? null;
    },
  };
}
