/** Which of the page's clocks a time was read from: an event's own stamp, or the frame's. */
export type TimeSource = 'event' | 'frame';

/** A step longer than this is no step: the machine slept, or a clock was set. Assumed: a busy page may stall for a second, hardly longer. */
export const LEAP_MS = 1500;

/**
 * The recording's time: seconds from the first sample, strictly rising, in whole microseconds.
 *
 * A sample that comes late is put 1 µs after the last. Where a clock went back by more than a leap
 * its origin moves along, so that the samples that follow keep their distances. Each source has an
 * origin of its own: after a sleep the stamps of events and the frame's clock may part for good.
 */
export class RisingClock {
  private last_us = NaN;
  private readonly origin_ms: Record<TimeSource, number> = { event: NaN, frame: NaN };

  /** How long after the last sample `time_ms` lies; negative before it, NaN where there is none. */
  passed_ms(time_ms: number, source: TimeSource): number {
    return (this.since_us(time_ms, source) - this.last_us) / 1000;
  }

  /** Takes a sample. @returns its time in the recording, s. */
  read(time_ms: number, source: TimeSource): number {
    if (Number.isNaN(this.last_us)) {
      this.origin_ms.event = time_ms;
      this.origin_ms.frame = time_ms;
      this.last_us = -1;
    }
    const next_us = this.last_us + 1;
    let at_us = this.since_us(time_ms, source);
    if (at_us < next_us - LEAP_MS * 1000) {
      this.origin_ms[source] = time_ms - next_us / 1000;
      at_us = next_us;
    }
    this.last_us = Math.max(at_us, next_us);
    return this.last_us / 1e6;
  }

  /** A time just after the last sample, s, for what is made up between two. */
  justAfter(): number {
    this.last_us += 1;
    return this.last_us / 1e6;
  }

  private since_us(time_ms: number, source: TimeSource): number {
    return Math.round((time_ms - this.origin_ms[source]) * 1000);
  }
}
