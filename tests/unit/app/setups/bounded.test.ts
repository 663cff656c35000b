import { describe, expect, it } from 'vitest';
import { boundedBy, boundedIn } from '../../../../src/app/setups/bounded.ts';

describe('a number with its interval', () => {
  it('is in the reader\'s unit', () => {
    const bounds = { low: 0.2413, high: 0.2794 };
    expect(boundedIn(0.254, bounds, 'length', 'metric')).toEqual({ value: '254 mm', interval: '241 to 279 mm' });
    // An inch is 25.4 mm by definition.
    expect(boundedIn(0.254, bounds, 'length', 'us')).toEqual({ value: '10 in', interval: '9.5 to 11 in' });
  });

  it('has no unit, or any', () => {
    expect(boundedBy(3, { low: -2.5, high: 3.5 })).toEqual({ value: '3', interval: '-2.5 to 3.5' });
    expect(boundedBy(0.02, { low: 0.01, high: 0.05 }, '%', 0.01)).toEqual({ value: '2 %', interval: '1 to 5 %' });
  });

  it('has no interval where none is known', () => {
    expect(boundedBy(0.65, null)).toEqual({ value: '0.65', interval: '' });
  });
});
