import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../sim/base/errors.ts';
import { parseQuantity, UNITS, type QuantityName } from '../../sim/base/units.ts';
import { shown, shownUnit, type Quantity, type UnitSystem } from '../../sim/report/units.ts';

const unit = fc.constantFrom(...UNITS);
const number = fc.double({ min: -1e9, max: 1e9, noNaN: true });

/** Shown, but never typed: nothing reads them back. */
type OnlyShown = 'temperature-step' | 'viscosity' | 'weight' | 'areal-weight' | 'part-weight' | 'coverage' | 'room' | 'air-flow';

/** What is shown, by the quantity that it is read back as. */
const SHOWN: Readonly<Record<Exclude<Quantity, OnlyShown>, QuantityName>> = { film: 'length', length: 'length', volume: 'volume', area: 'area', speed: 'speed', 'panel-area': 'area', liquid: 'volume', face: 'area' };

describe('parseQuantity', () => {
  it('reads any number behind any unit name as (number + shift) · size', () => {
    fc.assert(
      fc.property(unit, fc.nat(), number, (one, pick, value) => {
        const name = one.names[pick % one.names.length]!;
        const expected = (value + (one.shift ?? 0)) * one.size;
        return parseQuantity(`${value} ${name}`, one.quantity, '') === expected && parseQuantity(String(value), one.quantity, name) === expected;
      }),
      { numRuns: 500 },
    );
  });

  it('reads back what a report shows, to half its last figure', () => {
    const quantity = fc.constantFrom(...(Object.keys(SHOWN) as (keyof typeof SHOWN)[]));
    const system = fc.constantFrom<UnitSystem>('metric', 'us');
    fc.assert(
      fc.property(quantity, system, fc.double({ min: 0.01, max: 5000, noNaN: true }), (what, how, count) => {
        const { size } = shownUnit(what, how);
        const text = shown(count * size, what, how);
        const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
        // Dropped zeros: three figures are shown at least, so the last one is worth 0.5 at most from 100 up.
        const half = 0.5 * 10 ** -(count >= 99.95 ? 0 : count >= 9.995 ? 1 : count >= 0.9995 ? 2 : 3);
        expect(decimals).toBeLessThanOrEqual(3);
        return Math.abs(parseQuantity(text, SHOWN[what], '') / size - count) <= half * (1 + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('gives a finite number or an error of its own for any text', () => {
    const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 30 }), fc.array(fc.constantFrom('1', '.', '/', ' ', '-', 'e', 'in', 'mm', '½', ',', '"', '%'), { maxLength: 8 }).map((parts) => parts.join('')));
    fc.assert(
      fc.property(anyText, fc.constantFrom<QuantityName>('length', 'ratio', 'temperature'), (text, quantity) => {
        try {
          return Number.isFinite(parseQuantity(text, quantity, quantity === 'length' ? 'mm' : ''));
        } catch (error) {
          return error instanceof CrosscoatError && error.code === 'unit' && error.message.length < 300;
        }
      }),
      { numRuns: 2000 },
    );
  });
});
