import { describe, expect, it } from 'vitest';
import { newShape, pointsText, readPoints, shapeKind } from '../../../src/app/shapeText.ts';
import { readTable, tableText } from '../../../src/app/tableText.ts';

describe('corners as text', () => {
  it('reads back what it wrote', () => {
    const points: [number, number][] = [[0, 0], [10.5, 0], [10.5, -3]];
    expect(readPoints(pointsText(points))).toEqual({ points });
  });

  it('takes commas, blanks and empty lines', () => {
    expect(readPoints('0 0\n\n 10; 0\n10,5\n')).toEqual({ points: [[0, 0], [10, 0], [10, 5]] });
  });

  it('names the line that is wrong', () => {
    expect(readPoints('0, 0\n1, x\n2, 2')).toMatchObject({ problem: expect.stringMatching(/^Line 2, "1, x"/) as string });
    expect(readPoints('0, 0\n1, 1')).toMatchObject({ problem: expect.stringMatching(/at least 3/) as string });
  });

  it('makes a new shape of every kind', () => {
    for (const kind of ['rectangle', 'points', 'circle', 'path'] as const) {
      expect(shapeKind(newShape(kind, 300, 200))).toBe(kind);
    }
  });
});

describe('a measured stroke as text', () => {
  it('reads back what it wrote', () => {
    const stroke = { place_mm: [-50, 0, 60], film: [0, 40, 0] };
    expect(readTable(tableText(stroke.place_mm, stroke.film))).toEqual(stroke);
  });

  it.each([
    ['0, 1\n0, 2\n1, 3', /^Line 2: place 0 does not lie beyond 0/],
    ['0, 1\n1, -2\n2, 3', /^Line 2: film -2 is below 0/],
    ['0, 0\n1, 0\n2, 0', /Every film is 0/],
    ['0, 1\n1', /^Line 2, "1", is not two numbers/],
    ['0, 1\n1, 1', /at least 3/],
  ])('refuses %j', (text, words) => {
    expect(readTable(text)).toMatchObject({ problem: expect.stringMatching(words) as string });
  });
});
