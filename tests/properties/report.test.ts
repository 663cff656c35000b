import fc from 'fast-check';
import { csvParseRows } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { numberCell, textCell } from '../../sim/report/csvCell.ts';
import { faultJson } from '../../sim/report/faultJson.ts';
import { jsonNumber } from '../../sim/report/jsonValue.ts';
import { strokeJson } from '../../sim/report/strokeJson.ts';
import { faultSentences } from '../../sim/report/sentences.ts';
import { roundedText } from '../../sim/report/units.ts';
import { wrapped } from '../../sim/report/textLines.ts';
import type { StrokeMeasures } from '../../sim/stroke/stroke.ts';
import type { Cause, CauseKind, Change, FaultKind } from '../../sim/verdict/verdict.ts';
import { LIFE_LIMITS } from '../helpers/lifeLimits.ts';

const TARGET = { film: 'dry', thickness_m: 25e-6, minFraction: 0.8, maxFraction: 1.2, holidayFraction: 0.25, dryFraction: 0.1, life: LIFE_LIMITS } as const;
/** Any double, NaN and infinities with it. */
const anyNumber = fc.double();
const point = fc.tuple(anyNumber, anyNumber);
const strokes = fc.array(fc.nat(500), { maxLength: 12 });

const cause = fc.record<Cause>({
  kind: fc.constantFrom<CauseKind>('missing-stroke', 'stop', 'speed', 'distance', 'angle', 'overlap', 'trigger', 'edge', 'plan-edge', 'plan-lead', 'plan-overlap', 'plan-film', 'plan-distance', 'set-up', 'plan-speed', 'fluid', 'thinner', 'solvent', 'air', 'wait', 'unknown'),
  strokes,
  found: anyNumber,
  meant: anyNumber,
  unit: fc.constantFrom<Cause['unit']>('m', 'm/s', 's', 'rad', 'fraction', 'K', 'm3/s', 'ratio', ''),
  explains: anyNumber,
});
const change: fc.Arbitrary<Change> = fc.oneof(
  fc.record({ kind: fc.constant('no-stops' as const), strokes }),
  fc.record({ kind: fc.constant('even-speed' as const), strokes, speed_m_s: anyNumber }),
  fc.record({ kind: fc.constant('move-strokes' as const), strokes, overlapFraction: anyNumber }),
  fc.record({ kind: fc.constant('move-strokes' as const), strokes, overlapFraction: anyNumber, anchored: strokes }),
  fc.record({ kind: fc.constant('add-strokes' as const), strokes }),
  fc.record({ kind: fc.constant('plan' as const), overlapFraction: anyNumber, lead_m: anyNumber }),
  fc.record({ kind: fc.constant('fluid-rate' as const), rate_m3_s: anyNumber }),
  fc.record({ kind: fc.constant('thinner' as const), thinnerPerFinish: anyNumber }),
  fc.record({ kind: fc.constant('retarder' as const), retarderFraction: anyNumber }),
  fc.record({ kind: fc.constant('warm-room' as const), temperature_K: anyNumber }),
  fc.record({ kind: fc.constant('wait' as const), wait_s: anyNumber }),
);
const faultKind = fc.constantFrom<FaultKind>('holiday', 'thin-lap', 'heavy-spot', 'dry-spray', 'run', 'orange-peel', 'dry-lap', 'blush', 'blister', 'pinhole', 'over-thick');
const fault = fc.record({
  kind: faultKind,
  area_m2: anyNumber,
  zones: fc.array(
    fc.record({ kind: faultKind, area_m2: anyNumber, at_m: point, box_m: fc.tuple(anyNumber, anyNumber, anyNumber, anyNumber), worst: anyNumber, limit: anyNumber, margin: anyNumber, cells: fc.constant(new Uint32Array(0)) }),
    { minLength: 1, maxLength: 3 },
  ),
  cause,
  cure: fc.option(
    fc.record({ change, worst: anyNumber, areaBefore_m2: anyNumber, areaAfter_m2: anyNumber, inTargetBefore: anyNumber, inTargetAfter: anyNumber, worsens: fc.constant([]) }),
  ),
});

/** Every number in a JSON value. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('JSON results', () => {
  it('hold finite numbers only, whatever the run gave', () => {
    fc.assert(
      fc.property(fault, (any) => {
        const json = faultJson(any, TARGET);
        expect(numbersIn(json).every(Number.isFinite)).toBe(true);
        expect(JSON.parse(JSON.stringify(json))).toEqual(JSON.parse(JSON.stringify(json, (_, value: unknown) => (value === undefined ? 'lost' : value))));
      }),
    );
  });

  it('hold finite technique measures only', () => {
    const spread = (mean: string, low: string, high: string) => fc.record({ [mean]: anyNumber, cv: anyNumber, [low]: anyNumber, [high]: anyNumber });
    const measures = fc.record({
      stroke: fc.nat(),
      pass: fc.nat(),
      start_s: anyNumber,
      duration_s: anyNumber,
      start_m: point,
      end_m: point,
      length_m: anyNumber,
      direction_rad: anyNumber,
      speed: spread('mean_m_s', 'low_m_s', 'high_m_s'),
      distance: spread('mean_m', 'low_m', 'high_m'),
      tilt: fc.record({ mean_rad: anyNumber, worst_rad: anyNumber }),
      overlap: fc.option(fc.record({ neighbour: fc.nat(), meanFraction: anyNumber, mean_m: anyNumber, worstFraction: anyNumber, worst_m: anyNumber, worstAt_m: point })),
      triggerOn_m: fc.option(anyNumber),
      triggerOff_m: fc.option(anyNumber),
      stops: fc.array(fc.record({ at_m: point, start_s: anyNumber, duration_s: anyNumber }), { maxLength: 3 }),
    });
    fc.assert(
      fc.property(measures, (any) => {
        expect(numbersIn(strokeJson(any as unknown as StrokeMeasures)).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  it('keep a number to twelve figures', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (value) => {
        expect(Math.abs((jsonNumber(value, 1e-3) ?? NaN) / (value * 1000) - 1)).toBeLessThan(1e-11);
      }),
    );
  });
});

describe('sentences', () => {
  it('stand whatever the figures are, without NaN or undefined', () => {
    fc.assert(
      fc.property(fault, fc.constantFrom('metric' as const, 'us' as const), (any, system) => {
        const { what, cause: why, cure } = faultSentences(any, TARGET, system);
        for (const text of [what, why, cure]) {
          expect(text).not.toMatch(/NaN|undefined|Infinity/);
          expect(text.endsWith('.')).toBe(true);
        }
      }),
    );
  });

  it('round to three figures or better', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), (value) => {
        // Half a unit of the third figure of the smallest number in each range: 0.005/1, 0.05/10, 0.5/100.
        expect(Math.abs(Number(roundedText(value)) / value - 1)).toBeLessThanOrEqual(0.0051);
      }),
    );
  });

  it('wrap without losing or adding a word', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z0-9µ%,.]{1,30}$/), { minLength: 1, maxLength: 60 }), (words) => {
        expect(wrapped(words.join(' ')).join(' ')).toBe(words.join(' '));
      }),
    );
  });
});

describe('CSV cells', () => {
  it('never start a formula in a spreadsheet', () => {
    const risky = fc.tuple(fc.constantFrom('', '=', '+', '-', '@', '\t', '\r'), fc.string()).map(([first, rest]) => first + rest);
    fc.assert(
      fc.property(risky, (text) => {
        const [[shown = ''] = []] = csvParseRows(textCell(text));
        expect(shown).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });

  it('read back to their text, but for the guard', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (first, second) => {
        const rows = csvParseRows(`${textCell(first)},${textCell(second)}`);
        const plain = (cell = '') => (/^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell);
        expect(rows).toHaveLength(1);
        expect([plain(rows[0]?.[0]), plain(rows[0]?.[1])]).toEqual([plain(first), plain(second)]);
      }),
    );
  });

  it('leave numbers as numbers, negative ones too', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(Number(numberCell(value)) - value)).toBeLessThanOrEqual(Math.abs(value) * 5e-7);
      }),
    );
    expect(numberCell(NaN)).toBe('');
    expect(numberCell(-12.5)).toBe('-12.5');
  });
});
