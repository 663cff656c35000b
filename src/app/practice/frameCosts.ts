/** Frames remembered: ten seconds at 60 a second. */
const KEPT = 600;

/** What the last frames cost in script, from the hand's samples to the film on the GPU, ms. */
export class FrameCosts {
  private readonly costs = new Float32Array(KEPT);
  private count = 0;

  add(cost_ms: number): void {
    this.costs[this.count++ % KEPT] = cost_ms;
  }

  /** The cost that a twentieth of the last frames exceeds; 0 before the first. */
  get p95_ms(): number {
    const known = Math.min(this.count, KEPT);
    if (known === 0) return 0;
    return this.costs.slice(0, known).sort()[Math.floor(0.95 * (known - 1))] as number;
  }
}
