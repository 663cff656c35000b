import { describe, expect, it } from 'vitest';
import { boundedBy, boundedIn, boundedPercent, within } from '../../../../src/app/setups/bounded.ts';

describe('a number with its interval', () => {
  it('is in the reader\'s unit', () => {
    const bounds = { low: 0.2413, high: 0.2794 };
    expect(boundedIn(0.254, bounds, 'length', 'metric')).toEqual({ value: '254 mm', interval: '241 to 279 mm' });
    // An inch is 25.4 mm by definition.
    expect(boundedIn(0.254, bounds, 'length', 'us')).toEqual({ value: '10 in', interval: '9.5 to 11 in' });
  });

  it('lies in the middle of a half width both ways', () => {
    expect(boundedBy(3, within(3, 0.5))).toEqual({ value: '3', interval: '2.5 to 3.5' });
    expect(boundedIn(150e-6, within(150e-6, 6e-6), 'volume', 'metric', '/min')).toEqual({ value: '150 mL/min', interval: '144 to 156 mL/min' });
  });

  it('is a share in per cent, below nothing too', () => {
    expect(boundedPercent(0.02, { low: -0.01, high: 0.05 })).toEqual({ value: '2 %', interval: '-1 to 5 %' });
  });

  it('has no interval where none is known', () => {
    expect(boundedPercent(0.65, null)).toEqual({ value: '65 %', interval: '' });
  });
});
