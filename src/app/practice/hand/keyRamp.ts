/** An arrow key's speed rises and falls over this time. */
const RAMP_S = 0.15;

/**
 * The speed of a gun moved by keys: it goes toward the wanted speed in a straight line at full
 * speed a RAMP_S. The way is integrated exactly, so the frame rate does not change it.
 */
export class KeyRamp {
  /** Way of the last `advance`. */
  right_m = 0;
  up_m = 0;
  private vx_m_s = 0;
  private vy_m_s = 0;

  /** Moves on with the keys as they have been held for `step_s`; -1 to 1 each way, at most 1 together. */
  advance(step_s: number, right: number, up: number, full_m_s: number): void {
    const toX_m_s = right * full_m_s - this.vx_m_s;
    const toY_m_s = up * full_m_s - this.vy_m_s;
    const needed_s = (Math.hypot(toX_m_s, toY_m_s) / full_m_s) * RAMP_S;
    const ramp_s = Math.min(step_s, needed_s);
    const share = needed_s > 0 ? ramp_s / needed_s : 1;
    const rest_s = step_s - ramp_s;
    // Over the ramp the mean speed; after it the speed reached.
    this.right_m = (this.vx_m_s + (toX_m_s * share) / 2) * ramp_s + (this.vx_m_s + toX_m_s) * rest_s;
    this.up_m = (this.vy_m_s + (toY_m_s * share) / 2) * ramp_s + (this.vy_m_s + toY_m_s) * rest_s;
    this.vx_m_s += toX_m_s * share;
    this.vy_m_s += toY_m_s * share;
  }

  stop(): void {
    this.vx_m_s = 0;
    this.vy_m_s = 0;
  }
}
