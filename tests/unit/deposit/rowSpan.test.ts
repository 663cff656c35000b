import { describe, expect, it } from 'vitest';
import { keepBelowZero, keepInCone } from '../../../sim/deposit/rowSpan.ts';

const cut = (value0: number, step: number) => {
  const span = { low: 0, high: 100 };
  keepBelowZero(span, value0, step);
  return span;
};

describe('keepBelowZero', () => {
  it('cuts at the root of a rising and of a falling line', () => {
    expect(cut(-10, 1)).toEqual({ low: 0, high: 11 });
    expect(cut(10, -1)).toEqual({ low: 10, high: 100 });
  });

  // A recorded stroke whose fan was a rounding off square gave a root of 1e18, which wrapped round
  // in 32 bits to a column far below zero.
  it.each([1e-18, -1e-18, 1e-300, -1e-300])('keeps every column of a line below zero with a step of %g', (step) => {
    expect(cut(-1, step)).toEqual({ low: 0, high: 100 });
  });

  it.each([1e-18, -1e-18])('keeps no column of a line above zero with a step of %g', (step) => {
    const { low, high } = cut(1, step);
    expect(low).toBeGreaterThanOrEqual(high);
  });
});

describe('keepInCone', () => {
  it('holds the roots of a cone that almost never closes inside 32 bits', () => {
    const span = { low: 0, high: 100 };
    keepInCone(span, 0, 1e-10, 0, 0, 1, 0);
    expect(span).toEqual({ low: 0, high: 100 });
  });
});
