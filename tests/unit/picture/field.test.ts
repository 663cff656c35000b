import { describe, expect, it } from 'vitest';
import { NO_FILM, colourIndex, makeField } from '../../../sim/picture/field.ts';
import { fieldLegend } from '../../../sim/picture/legend.ts';
import { MICROMETRE, TARGET, filmOf } from './fields.ts';

describe('makeField', () => {
  const film = filmOf(2, 2, [0, 80, 100, 130], [0, 1, 2, 3]);

  it('runs thickness from nothing to a round number that holds the thickest cell', () => {
    const wet = makeField('wet', film, TARGET);
    expect(wet.domain[0]).toBe(0);
    expect(wet.domain[1]).toBeCloseTo(140e-6, 12);
    expect(wet.isClipped).toBe(false);
    expect(wet.values).toBe(film.wet_m);
    expect(wet.marks.map((mark) => Math.round(mark * 1e6))).toEqual([25, 80, 100, 120]);
    expect(makeField('dry', film, TARGET).marks).toEqual([]);
  });

  it('does not let one spot take all colours', () => {
    const spotted = makeField('wet', filmOf(3, 1, [50, 50, 5000]), TARGET);
    // Mean 1700 µm, so the domain still holds the spot; with many thin cells it does not.
    expect(spotted.isClipped).toBe(false);
    const many = makeField('wet', filmOf(100, 1, [900, ...Array<number>(99).fill(100)]), TARGET);
    expect(many.isClipped).toBe(true);
    expect(many.domain[1]).toBeLessThan(400e-6);
    expect(fieldLegend(many, MICROMETRE).isClipped).toBe(true);
  });

  it('puts the target in the middle of the colours', () => {
    const field = makeField('target', film, TARGET);
    expect(field.domain).toEqual([0, 2]);
    expect(colourIndex(field, field.values[2] as number)).toBe(128);
    expect(colourIndex(field, 5)).toBe(255);
    expect(colourIndex(field, NaN)).toBe(0);
    expect(field.title).toBe('wet film against target');
  });

  it('gives every count of strokes its own colour', () => {
    const field = makeField('passes', film, TARGET);
    const colours = [0, 1, 2, 3].map((count) => field.colours.subarray(colourIndex(field, count) * 4, colourIndex(field, count) * 4 + 4).join());
    expect(new Set(colours).size).toBe(4);
    expect(fieldLegend(field, MICROMETRE).ticks.map(({ text }) => text)).toEqual(['0', '1', '2', '3']);
  });

  it('marks cells without film where the field is a share of it', () => {
    const solids = makeField('solids', film, TARGET);
    expect(solids.values[0]).toBe(NO_FILM);
    expect(solids.values[1]).toBeCloseTo(0.2, 6);
    expect(makeField('dry-share', film, TARGET).values[3]).toBeCloseTo(0.1, 6);
  });

  it('stands an empty film', () => {
    const none = filmOf(2, 1, [0, 0], [0, 0]);
    for (const kind of ['wet', 'dry', 'target', 'passes', 'solids', 'dry-share'] as const) {
      const { domain } = makeField(kind, none, TARGET);
      expect(domain[1]).toBeGreaterThan(domain[0]);
    }
  });
});

describe('fieldLegend', () => {
  it('has round ticks in the unit asked for, at their places on the bar', () => {
    const field = makeField('wet', filmOf(1, 1, [100]), TARGET);
    const legend = fieldLegend(field, { name: 'mil', metres: 25.4e-6 });
    expect(legend.unit).toBe('mil');
    expect(legend.ticks.map(({ text }) => text)).toEqual(['0', '1', '2', '3']);
    expect(legend.ticks.map(({ place }) => place)).toEqual([0, 0.254, 0.508, 0.762].map((place) => expect.closeTo(place, 6) as number));
  });

  it('shows shares in per cent', () => {
    const legend = fieldLegend(makeField('target', filmOf(1, 1, [100]), TARGET), MICROMETRE);
    expect([legend.unit, ...legend.ticks.map(({ text }) => text)]).toEqual(['%', '0', '50', '100', '150', '200']);
  });
});
