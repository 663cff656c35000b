import { describe, expect, it } from 'vitest';
import { roundedText, shown, shownAngle, shownPercent, shownPlace, shownTime } from '../../../sim/report/units.ts';

describe('shown', () => {
  it.each([
    ['film', 88e-6, '88 µm', '3.46 mil'],
    ['length', 0.2, '200 mm', '7.87 in'],
    ['volume', 29.5735295625e-6, '29.6 mL', '1 fl oz US'],
    ['area', 12.4e-4, '12.4 cm²', '1.92 in²'],
    ['speed', 0.34, '0.34 m/s', '66.9 ft/min'],
    ['temperature-step', 2.5, '2.5 °C', '4.5 °F'],
    ['viscosity', 0.025, '25 mPa s', '25 mPa s'],
  ] as const)('%s', (quantity, value, metric, us) => {
    expect(shown(value, quantity, 'metric')).toBe(metric);
    expect(shown(value, quantity, 'us')).toBe(us);
  });

  it('names a place once with its unit', () => {
    expect(shownPlace([0.41, 0.62], 'metric')).toBe('x 410, y 620 mm');
  });
});

describe('roundedText', () => {
  it.each([
    [0, '0'],
    [-0.0001, '0'],
    [0.3119, '0.312'],
    [9.994, '9.99'],
    [9.996, '10'],
    [99.94, '99.9'],
    [99.96, '100'],
    [1240, '1240'],
    [-12.34, '-12.3'],
    [1e6, '1000000'],
    [NaN, '?'],
    [Infinity, '?'],
  ])('%d as %s', (value, text) => {
    expect(roundedText(value)).toBe(text);
  });
});

describe('shownPercent', () => {
  it.each([
    [0, '0 %'],
    [0.0004, '<0.1 %'],
    [0.0625, '6.25 %'],
    [0.834, '83.4 %'],
    [0.9951, '99.5 %'],
    [0.99999, '>99.9 %'],
    [1, '100 %'],
    [NaN, '?'],
  ])('%d as %s', (value, text) => {
    expect(shownPercent(value)).toBe(text);
  });
});

it('shows angles and times', () => {
  expect(shownAngle(Math.PI / 12)).toBe('15°');
  expect(shownTime(0.7)).toBe('0.7 s');
});
