import { describe, expect, it } from 'vitest';
import { evenScale, roundEnds } from '../../../sim/base/evenScale.ts';

describe('evenScale', () => {
  it('places values in step, beyond the ends too, either way round', () => {
    const down = evenScale([10, 20], [100, 0]);
    expect([10, 15, 20, 30].map(down)).toEqual([100, 50, 0, -100]);
  });

  it('puts the one value of an empty stretch in the middle', () => {
    expect(evenScale([3, 3], [0, 8])(3)).toBe(4);
  });

  it('has ticks at round values between the ends, with no more decimals than tell them apart', () => {
    const scale = evenScale([0.12, 0.91]);
    expect(scale.ticks(5)).toEqual([0.2, 0.4, 0.6, 0.8]);
    expect(scale.ticks(5).map(scale.tickText(5))).toEqual(['0.2', '0.4', '0.6', '0.8']);
    expect(evenScale([0, 12_000]).ticks(3).map(evenScale([0, 12_000]).tickText(3))).toEqual(['0', '5,000', '10,000']);
    expect(evenScale([-0.02, 0.02]).ticks(2).map(evenScale([-0.02, 0.02]).tickText(2))).toEqual(['−0.02', '0.00', '0.02']);
  });

  it('rounds ends outward, and leaves ends that are the same', () => {
    expect(roundEnds([0, 0.00013], 5)).toEqual([0, 0.00014]);
    expect(roundEnds([-7.2, 41], 4)).toEqual([-20, 60]);
    expect(roundEnds([0, 0], 5)).toEqual([0, 0]);
  });
});
