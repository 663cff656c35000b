import { describe, expect, it } from 'vitest';
import { cardDomains, cardResiduals, linePath } from '../../../src/charts/cardFit.ts';

const CARD = { place_m: [-0.1, 0, 0.1], film: [1, 10, 2], fitted: [1.5, 9, 2], curvePlace_m: [-0.12, 0, 0.12], curveFilm: [0, 11, 0] };

describe('the picture of a fitted card', () => {
  it('leaves over the reading less the curve', () => {
    expect([...cardResiduals(CARD)]).toEqual([-0.5, 1, 0]);
  });

  it('holds readings and curve, film from 0, and residuals alike both ways', () => {
    expect(cardDomains(CARD)).toEqual({ place_m: [-0.12, 0.12], film: [0, 11], residual: 1 });
  });

  it('holds a reading that noise put below 0', () => {
    expect(cardDomains({ ...CARD, film: [-0.3, 10, 2] }).film).toEqual([-0.3, 11]);
  });

  it('has room around a single place and a fit without residuals', () => {
    const { place_m, residual } = cardDomains({ place_m: [0.05], film: [3], fitted: [3], curvePlace_m: [], curveFilm: [] });
    expect(place_m[0]).toBeLessThan(place_m[1]);
    expect(residual).toBe(1);
  });

  it('draws a line through every point, and none without points', () => {
    const asIs = (value: number): number => value;
    expect(linePath([0, 1, 2], [3, 4, 5], asIs, asIs)).toBe('M0.0,3.0 L1.0,4.0 L2.0,5.0');
    expect(linePath([], [], asIs, asIs)).toBe('');
  });
});
