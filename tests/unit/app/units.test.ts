import { describe, expect, it } from 'vitest';
import { readTyped, typedText, unitOfKey } from '../../../src/app/units.ts';

describe('readTyped', () => {
  // Inch 25.4 mm, foot 304.8 mm and the US gallon of 231 cubic inches are exact by definition.
  it.each([
    ['8 in', 'distance_mm', 203.2],
    ['8in', 'distance_mm', 203.2],
    ['8"', 'distance_mm', 203.2],
    ['1 ft', 'distance_mm', 304.8],
    ['20 cm', 'distance_mm', 200],
    ['200', 'distance_mm', 200],
    ['1/2 in', 'distance_mm', 12.7],
    ['−5', 'firstStroke_mm', -5],
    ['2 mil', 'thickness_um', 50.8],
    ['60 ft/min', 'speed_m_s', 0.3048],
    ['12 in/s', 'speed_m_s', 0.3048],
    ['1 fl oz US/min', 'fluidRate_mL_min', 29.5735295625],
    ['50 %', 'overlap_percent', 50],
    ['0.1 s', 'triggerLag_ms', 100],
    ['1e2', 'seed', 100],
  ])('%s in %s is %d', (text, key, value) => {
    expect(readTyped(text, key, 'metric')).toEqual({ value });
  });

  it('takes a bare number in the reader\'s own unit', () => {
    expect(readTyped('8', 'distance_mm', 'us')).toEqual({ value: 203.2 });
    expect(readTyped('200 mm', 'distance_mm', 'us')).toEqual({ value: 200 });
  });

  it.each([
    ['', 'Nothing is typed'],
    ['about 8', '"about 8" is not a length; give a number, with or without one of mm'],
    ['8 kg', '"8 kg" is not a length; give mm, cm, m, in'],
    ['1,5', 'decimals in some places and thousands in others'],
    ['1.2.3', 'is not a length'],
  ])('says what is wrong with "%s"', (text, words) => {
    expect(readTyped(text, 'distance_mm', 'metric')).toMatchObject({ problem: expect.stringContaining(words) as string });
  });
});

describe('typedText', () => {
  it('reads back what it shows to a part in ten thousand, in both systems', () => {
    for (const [value, key] of [[200, 'distance_mm'], [0.36, 'speed_m_s'], [180, 'fluidRate_mL_min'], [100, 'thickness_um']] as const) {
      for (const system of ['metric', 'us'] as const) {
        const read = readTyped(typedText(value, key, system), key, system);
        expect('value' in read ? read.value / value : NaN).toBeCloseTo(1, 4);
      }
    }
  });

  it('names the unit that the reader reads', () => {
    expect(unitOfKey('distance_mm', 'us')).toBe('in');
    expect(unitOfKey('fluidRate_mL_min', 'us')).toBe('fl oz US/min');
    expect(unitOfKey('beta1', 'us')).toBe('');
  });
});
