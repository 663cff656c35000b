import type { AirAnswer } from './airAnswer.ts';
import type { DayVerdicts, Worsening } from './dayVerdicts.ts';
import type { Remedies } from './remedies.ts';

/** All that is to be said of the room, now and through the day. */
export interface AirAdvice {
  readonly answer: AirAnswer;
  readonly remedies: Remedies;
  readonly day: DayVerdicts | null;
  /** Time of the day that is looked at; null for the room as typed. */
  readonly minute: number | null;
  /** The air asked about is held from the first or the last row. */
  readonly held: 'before' | 'after' | null;
  /** The next turn for the worse within three hours of the time looked at. */
  readonly recheck: Worsening | null;
}
