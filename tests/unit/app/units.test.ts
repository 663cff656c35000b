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
    // 70 °F is (70 - 32) / 1.8 °C; 32 °F is 0 °C by definition.
    ['70 F', 'temperature_C', 21.1111111111],
    ['32 °F', 'temperature_C', 0],
    ['-5', 'temperature_C', -5],
    ['20 C', 'temperature_C', 20],
    ['1000 ft', 'altitude_m', 304.8],
    ['1 h', 'wait_min', 60],
    ['1 min', 'seconds', 60],
    ['10', 'percent', 10],
    ['50 mPa s', 'atViscosity_mPa_s', 50],
    ['55 kPa', 'capPressure_kPa', 55],
  ])('%s in %s is %d', (text, key, value) => {
    expect(readTyped(text, key, 'metric')).toEqual({ value });
  });

  it('takes a bare number in the reader\'s own unit', () => {
    expect(readTyped('8', 'distance_mm', 'us')).toEqual({ value: 203.2 });
    expect(readTyped('200 mm', 'distance_mm', 'us')).toEqual({ value: 200 });
    expect(readTyped('212', 'temperature_C', 'us')).toEqual({ value: 100 });
    expect(readTyped('60', 'capPressure_kPa', 'us')).toEqual({ value: 60 });
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
    for (const [value, key] of [[200, 'distance_mm'], [0.36, 'speed_m_s'], [180, 'fluidRate_mL_min'], [100, 'thickness_um'], [21.3, 'temperature_C'], [1500, 'altitude_m'], [20, 'wait_min'], [240, 'capPressure_kPa']] as const) {
      for (const system of ['metric', 'us'] as const) {
        const read = readTyped(typedText(value, key, system), key, system);
        expect('value' in read ? read.value / value : NaN).toBeCloseTo(1, 4);
      }
    }
  });

  it('shows temperatures by their own zero', () => {
    expect(typedText(21, 'temperature_C', 'us')).toBe('69.8');
    expect(typedText(0, 'temperature_C', 'us')).toBe('32');
    expect(typedText(-160 / 9, 'temperature_C', 'us')).toBe('0');
    expect(typedText(21.5, 'temperature_C', 'metric')).toBe('21.5');
  });

  it('names the unit that the reader reads', () => {
    expect(unitOfKey('distance_mm', 'us')).toBe('in');
    expect(unitOfKey('fluidRate_mL_min', 'us')).toBe('fl oz US/min');
    expect(unitOfKey('beta1', 'us')).toBe('');
  });
});
