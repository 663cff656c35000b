import { convert } from 'convert';
import { describe, expect, it } from 'vitest';
import { parseQuantity, UNITS, type QuantityName } from '../../../sim/base/units.ts';

describe('parseQuantity', () => {
  it.each<[string, QuantityName, string, number]>([
    ['8 in', 'length', 'mm', 0.2032],
    ['7.9in', 'length', 'mm', 0.20066],
    ['8"', 'length', 'mm', 0.2032],
    ['8”', 'length', 'mm', 0.2032],
    ['8″', 'length', 'mm', 0.2032],
    ['200', 'length', 'mm', 0.2],
    ['200', 'length', 'µm', 200e-6],
    ['1/2 in', 'length', 'mm', 0.0127],
    ['3 5/8 in', 'length', 'mm', 3.625 * 0.0254],
    ['3-5/8"', 'length', 'mm', 3.625 * 0.0254],
    ['3½ in', 'length', 'mm', 3.5 * 0.0254],
    ['.5 mm', 'length', 'mm', 0.0005],
    ['-5 mm', 'length', 'mm', -0.005],
    ['−5 mm', 'length', 'mm', -0.005],
    ['1e2mm', 'length', 'in', 0.1],
    ['2 mil', 'length', 'µm', 50.8e-6],
    ['50 µm', 'length', 'mm', 50e-6],
    ['50 μm', 'length', 'mm', 50e-6],
    ['50\u00a0um', 'length', 'mm', 50e-6],
    ['6 ft', 'length', 'mm', 1.8288],
    ['2 L', 'volume', 'mL', 2e-3],
    ['1 US qt', 'volume', 'mL', 946.352946e-6],
    ['2 us pints', 'volume', 'mL', 946.352946e-6],
    ['1 imp qt', 'volume', 'mL', 1136.5225e-6],
    ['1 imp pint', 'volume', 'mL', 568.26125e-6],
    ['180', 'flow', 'mL/min', 3e-6],
    ['6 US fl oz/min', 'flow', 'mL/min', 6 * 29.5735295625e-6 / 60],
    ['1 m/s', 'speed', 'mm/s', 1],
    ['60 ft/min', 'speed', 'm/s', 0.3048],
    ['80 ms', 'time', 's', 0.08],
    ['90', 'angle', '°', Math.PI / 2],
    ['21 °C', 'temperature', '°C', 294.15],
    ['70 F', 'temperature', '°C', (70 - 32) / 1.8 + 273.15],
    ['50 %', 'ratio', '%', 0.5],
    ['50', 'ratio', '%', 0.5],
    ['0.5', 'ratio', '', 0.5],
  ])('%s is a %s (bare numbers in %s): %d', (text, quantity, defaultUnit, si) => {
    // A few roundings of 1.1e-16 each.
    expect(Math.abs(parseQuantity(text, quantity, defaultUnit) / si - 1)).toBeLessThan(1e-14);
  });

  it.each<[string, QuantityName, string]>([
    ['3 kg', 'length', '"3 kg" is not a length; give mm, cm, m, in, ft, µm or mil'],
    ['3 mL', 'length', '"3 mL" is not a length'],
    ['3 mm', 'angle', '"3 mm" is not an angle; give ° or rad'],
    ['', 'length', '"" is not a length; give a number'],
    ['mm', 'length', '"mm" is not a length; give a number'],
    ['about 8', 'length', '"about 8" is not a length; give a number'],
    ['1.2.3', 'length', 'is not a length'],
    ['1/0 in', 'length', 'is not a length'],
    ['NaN', 'length', 'is not a length'],
    ['Infinity mm', 'length', 'is not a length'],
    ['1e999 mm', 'length', 'is not a length'],
    ['1,5 mm', 'length', '"1,5 mm" holds a comma, which means decimals in some places and thousands in others; write 1.5 or 1500'],
    ['1,500', 'length', 'holds a comma'],
    ['3 fl oz', 'volume', 'may be US or imperial; write US or imp before it: US fl oz, US pt, US qt, US gal, imp fl oz, imp pt, imp qt or imp gal'],
    ...['qt', 'qts', 'quart', 'Quarts', 'pt', 'pints'].map((name): [string, QuantityName, string] => [`1 ${name}`, 'volume', `"1 ${name}" may be US or imperial`]),
    ['1 gal', 'volume', 'may be US or imperial'],
    ['3 oz/min', 'flow', 'may be US or imperial'],
  ])('refuses %s as a %s', (text, quantity, words) => {
    expect(() => parseQuantity(text, quantity, quantity === 'length' ? 'mm' : '')).toThrow(words);
  });

  it('shortens a long text in its message', () => {
    expect(() => parseQuantity('x'.repeat(5000), 'length', 'mm')).toThrow(/^"x{39}…" is not a length/);
  });
});

describe('UNITS', () => {
  it('has no name twice in one quantity', () => {
    const names = UNITS.flatMap(({ quantity, names }) => names.map((name) => `${quantity} ${name.toLowerCase()}`));
    expect(new Set(names).size).toBe(names.length);
  });

  /** What a general-purpose units package makes of one of each, where it has the unit. */
  const THEIRS: Readonly<Record<string, () => number>> = {
    'mm': () => convert(1, 'mm').to('m'),
    'cm': () => convert(1, 'cm').to('m'),
    'in': () => convert(1, 'in').to('m'),
    'ft': () => convert(1, 'ft').to('m'),
    'µm': () => convert(1, 'µm').to('m'),
    'cm²': () => convert(1, 'cm2').to('m2'),
    'mm²': () => convert(1, 'mm2').to('m2'),
    'ft²': () => convert(1, 'sq ft').to('m2'),
    'in²': () => convert(1, 'sq in').to('m2'),
    'mL': () => convert(1, 'mL').to('m3'),
    'L': () => convert(1, 'L').to('m3'),
    'US fl oz': () => convert(1, 'US fluid ounce').to('m3'),
    'US qt': () => convert(1, 'quart').to('m3'),
    'US pt': () => convert(1, 'pint').to('m3'),
    'imp qt': () => convert(1, 'imperial quart').to('m3'),
    'imp pt': () => convert(1, 'imperial pint').to('m3'),
    'US gal': () => convert(1, 'gal').to('m3'),
    'imp fl oz': () => convert(1, 'imperial fluid ounce').to('m3'),
    'imp gal': () => convert(1, 'imperial gallon').to('m3'),
    'ms': () => convert(1, 'ms').to('s'),
    'min': () => convert(1, 'min').to('s'),
    'h': () => convert(1, 'h').to('s'),
    '°': () => convert(1, 'deg').to('rad'),
    '°C': () => convert(1, 'C').to('K'),
    '°F': () => convert(1, 'F').to('K'),
  };

  it.each(Object.keys(THEIRS))('%s agrees with a general-purpose package', (name) => {
    const unit = UNITS.find(({ names }) => names[0] === name)!;
    const ours = parseQuantity(`1 ${name}`, unit.quantity, '');
    // Both work in double precision by different routes: some roundings of 1.1e-16.
    expect(Math.abs(ours / THEIRS[name]!() - 1)).toBeLessThan(1e-14);
  });
});
