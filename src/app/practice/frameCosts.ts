/** Frames remembered: ten seconds at 60 a second. */
const KEPT = 600;
/** A page that slept longer was not drawing, ms. */
const LONGEST_FRAME_MS = 250;

/** What the last frames cost in script, from the hand's samples to the film on the GPU, ms. */
export class FrameCosts {
  private readonly costs = new Float32Array(KEPT);
  private readonly times = new Float32Array(KEPT);
  private count = 0;

  /** @param time_ms from the frame before to this one. */
  add(cost_ms: number, time_ms: number): void {
    const at = this.count++ % KEPT;
    this.costs[at] = cost_ms;
    this.times[at] = Math.min(time_ms, LONGEST_FRAME_MS);
  }

  /** Share of the last frames' time that went into script: how much a longer frame has to do in it does not count against it. 0 before the first. */
  get share(): number {
    const sum = (of: Float32Array): number => of.reduce((total, each) => total + each, 0);
    const time_ms = sum(this.times);
    return time_ms === 0 ? 0 : sum(this.costs) / time_ms;
  }

  /** The cost that a twentieth of the last frames exceeds; 0 before the first. */
  get p95_ms(): number {
    const known = Math.min(this.count, KEPT);
    if (known === 0) return 0;
    return this.costs.slice(0, known).sort()[Math.floor(0.95 * (known - 1))] as number;
  }
}
