import { describe, expect, it } from 'vitest';
import { handNow } from '../../../../sim/stroke/handNow.ts';
import { PathBuilder } from '../../../../sim/stroke/pathBuilder.ts';
import type { Pose } from '../../../../sim/stroke/path.ts';
import { StrokesLaid } from '../../../../src/app/practice/strokesLaid.ts';

const RATIO = 1;
const SPEED_M_S = 0.3;
const RATE = 100;

/** A session under way: rows are written and told as they come. */
class Hand {
  readonly rows = new PathBuilder();
  readonly laid = new StrokesLaid(this.rows, RATIO);
  private t_s = 0;

  /** Along x from `from_m` for `length_m` at a height, the trigger at `trigger`; the gun then moves on with it let go. */
  stroke(y_m: number, { from_m = 0, length_m = 0.6, trigger = 1, z_m = 0.2 }: { from_m?: number; length_m?: number; trigger?: number; z_m?: number } = {}): void {
    const steps = Math.round((length_m / SPEED_M_S) * RATE);
    for (let i = 0; i <= steps + 20; i++) this.add({ x_m: from_m + (i * SPEED_M_S) / RATE, y_m, z_m, trigger: i < steps ? trigger : 0 });
  }

  private add(part: Pick<Pose, 'x_m' | 'y_m' | 'z_m' | 'trigger'>): void {
    const pose = { t_s: this.t_s, fan_rad: Math.PI / 2, pitch_rad: 0, yaw_rad: 0, ...part };
    this.t_s += 1 / RATE;
    this.rows.add(pose);
    this.laid.note(pose);
  }
}

/** Heights of an edge's points. */
function heightsOf(edge: Float64Array): number[] {
  return Array.from(edge.filter((_, i) => i % 2 === 1));
}

describe('the strokes laid', () => {
  it('are none before the trigger is let go', () => {
    const { laid } = new Hand();
    expect([laid.laterals, laid.edges]).toEqual([[], []]);
  });

  it('have edges half a fan width to either side, from end to end', () => {
    const hand = new Hand();
    hand.stroke(0.1);
    expect(hand.laid.edges).toHaveLength(2);
    const [below, above] = [...hand.laid.edges].sort((a, b) => a[1]! - b[1]!);
    heightsOf(below!).forEach((y_m) => expect(y_m).toBeCloseTo(0, 9));
    heightsOf(above!).forEach((y_m) => expect(y_m).toBeCloseTo(0.2, 9));
    const places = below!.filter((_, i) => i % 2 === 0);
    // Middles of bins of at most 10 mm.
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(Math.min(...places)).toBeLessThan(0.0051);
    expect(Math.max(...places)).toBeGreaterThan(0.5949);
    expect(Math.max(...places)).toBeLessThan(0.6);
  });

  it('are wider where the gun was farther off', () => {
    const hand = new Hand();
    hand.stroke(0.1, { z_m: 0.3 });
    expect(hand.laid.edges.flatMap(heightsOf).map((y_m) => Math.abs(Math.abs(y_m - 0.1) - 0.15)).every((off) => off < 1e-9)).toBe(true);
  });

  it('give the overlap of the one being laid', () => {
    const hand = new Hand();
    hand.stroke(0);
    hand.stroke(0.06);
    const { t_s, count, ...rest } = hand.rows.since(0);
    expect(handNow({ t_s, count: count - 60, ...rest }, hand.laid.laterals.slice(0, 1), RATIO).overlapFraction).toBeCloseTo(0.7, 9);
  });

  it('leave out a trigger touched for less than a tenth of a second, and air alone', () => {
    const hand = new Hand();
    hand.stroke(0, { length_m: 0.024 });
    hand.stroke(0, { trigger: 0.5 });
    expect(hand.laid.laterals).toHaveLength(0);
    hand.stroke(0, { trigger: 0.51 });
    expect(hand.laid.laterals).toHaveLength(1);
  });

  it('draw the last three only, and look back at the last two dozen', () => {
    const hand = new Hand();
    for (let i = 0; i < 30; i++) hand.stroke(0.1 * i, { length_m: 0.1 });
    expect(hand.laid.laterals).toHaveLength(24);
    expect(hand.laid.edges).toHaveLength(6);
    const middles = hand.laid.edges.map((edge) => heightsOf(edge)[0]!);
    expect(Math.min(...middles)).toBeCloseTo(2.7 - 0.1, 9);
    expect(Math.max(...middles)).toBeCloseTo(2.9 + 0.1, 9);
  });

  it('hand out new lists, so that who holds the old ones sees no change', () => {
    const hand = new Hand();
    hand.stroke(0);
    const { laterals, edges } = hand.laid;
    hand.stroke(0.1);
    expect([laterals.length, edges.length]).toEqual([1, 2]);
    expect([hand.laid.laterals.length, hand.laid.edges.length]).toEqual([2, 4]);
  });
});
