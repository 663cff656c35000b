import { describe, expect, it } from 'vitest';
import { FrameCosts } from '../../../../src/app/practice/frameCosts.ts';

function after(costs: readonly number[]): number {
  const kept = new FrameCosts();
  for (const cost of costs) kept.add(cost, 16);
  return kept.p95_ms;
}

describe('frame costs', () => {
  it('have a share of the time, whatever the frames’ lengths', () => {
    const kept = new FrameCosts();
    expect(kept.share).toBe(0);
    kept.add(3, 10);
    kept.add(9, 30);
    expect(kept.share).toBeCloseTo(0.3, 6);
    for (let i = 0; i < 600; i++) kept.add(1, 20);
    expect(kept.share).toBeCloseTo(0.05, 6);
    // A minute asleep counts as a quarter of a second: 599 frames of 20 ms and one of 250.
    kept.add(1, 60_000);
    expect(kept.share).toBeCloseTo(600 / (599 * 20 + 250), 6);
  });

  it('are 0 before the first frame, and the one frame’s after it', () => {
    expect(after([])).toBe(0);
    expect(after([7])).toBe(7);
  });

  it('are what a twentieth of the frames exceeds, in whatever order they came', () => {
    const costs = Array.from({ length: 101 }, (_, i) => i);
    expect(after(costs)).toBe(95);
    expect(after([...costs].reverse())).toBe(95);
    expect(after(costs.map((i) => (i * 37) % 101))).toBe(95);
  });

  it('sort by size, not as text', () => {
    expect(after([2, 10, 9, 100, 1])).toBe(10);
  });

  it('are unmoved by one slow frame in a hundred, and moved by ten', () => {
    expect(after(Array.from({ length: 100 }, (_, i) => (i === 50 ? 80 : 4)))).toBe(4);
    expect(after(Array.from({ length: 100 }, (_, i) => (i % 10 === 0 ? 80 : 4)))).toBe(80);
  });

  it('forget what is more than six hundred frames ago', () => {
    expect(after([...Array<number>(600).fill(50), ...Array<number>(570).fill(3)])).toBe(3);
    expect(after([...Array<number>(600).fill(50), ...Array<number>(569).fill(3)])).toBe(50);
    expect(after([...Array<number>(600).fill(3), ...Array<number>(600).fill(50)])).toBe(50);
  });

  it('may be asked between frames without changing what is kept', () => {
    const kept = new FrameCosts();
    const seen: number[] = [];
    for (const cost of [5, 1, 9]) {
      kept.add(cost, 16);
      seen.push(kept.p95_ms);
    }
    expect(seen).toEqual([5, 1, 5]);
  });
});
