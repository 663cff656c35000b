const US = 1e6;

/**
 * The clock of a session: the hand's own, shifted by time that was let pass or slept through. It keeps
 * whole microseconds, as a recording holds them, and rises with every row: two rows that a recording
 * could not tell apart would make it unreadable.
 */
export class SessionClock {
  private shift_us = 0;
  private last_us = -Infinity;

  /** @param gap_s a longer gap between two rows is a page that slept, and counts for no more. */
  constructor(private readonly gap_s: number) {}

  /** Time of a row on the session's clock, s. @param hand_s on the hand's. */
  read(hand_s: number): number {
    let at_us = Math.round(hand_s * US) + this.shift_us;
    const slept_us = at_us - this.last_us - Math.round(this.gap_s * US);
    if (slept_us > 0 && this.last_us > -Infinity) {
      this.shift_us -= slept_us;
      at_us -= slept_us;
    }
    this.last_us = Math.max(at_us, this.last_us + 1);
    return this.last_us / US;
  }

  /** Goes on from a time of the session, which the hand's clock reads as `hand_s`. */
  goOnFrom(session_s: number, hand_s: number): void {
    this.last_us = Math.round(session_s * US);
    this.shift_us = this.last_us - Math.round(hand_s * US);
  }
}
