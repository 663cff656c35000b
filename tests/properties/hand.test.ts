import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handSample, pooledHand } from '../../sim/stroke/handStatistics.ts';
import { normalNoise } from '../helpers/session.ts';
import { distanceTrace, distanceWander, strokesLike } from '../unit/stroke/handTraces.ts';

const amounts = fc.double({ min: 0.001, max: 0.1, noNaN: true });
const offsets = fc.double({ min: -0.05, max: 0.05, noNaN: true });

describe('handSample', () => {
  it('finds mean, deviation and correlation of a sine', () => {
    const phases = fc.array(fc.double({ min: 0, max: 6.3, noNaN: true }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(amounts, offsets, fc.integer({ min: 20, max: 200 }), fc.integer({ min: 4, max: 15 }), phases, (amplitude, offset, period, periods, starts) => {
        const turn = (2 * Math.PI) / period;
        const strokes = starts.map((phase) => Array.from({ length: period * periods }, (_, i) => offset + amplitude * Math.sin(turn * i + phase)));
        const { mean, deviation, correlation_s, count } = distanceWander(strokes);
        expect(count).toBe(starts.length * period * periods);
        // Whole periods: exact but for rounding (summing some 10⁴ values near 0.2).
        expect(Math.abs(mean - offset)).toBeLessThan(1e-12);
        expect(Math.abs(deviation - amplitude / Math.SQRT2)).toBeLessThan(1e-12);
        // The autocorrelation is cos, at 1/e after arccos(1/e) = 1.194 of a turn's radian. Of n pairs the part at
        // twice the frequency leaves at most 1 / (n sin turn); a chord lies at most turn² / 8 below its arc.
        // Both move the lag by their share over 1.194 · sin 1.194 = 1.11.
        const angle = Math.acos(1 / Math.E);
        const pairs = period * periods - Math.ceil(angle / turn) - 1;
        const slack = (1 / (pairs * Math.sin(turn)) + turn ** 2 / 8) / (angle * Math.sin(angle));
        expect(Math.abs(correlation_s / ((0.01 * angle) / turn) - 1)).toBeLessThan(slack * 1.1);
      }),
    );
  });

  it('finds mean, deviation and correlation of an error that forgets itself evenly', () => {
    const strokes = 40;
    const samples = 4000;
    fc.assert(
      fc.property(amounts, offsets, fc.double({ min: 5, max: 40, noNaN: true }), fc.integer({ min: 0, max: 1e6 }), (amount, offset, memory, seed) => {
        const kept = Math.exp(-1 / memory);
        const normal = normalNoise(seed);
        const runs = Array.from({ length: strokes }, () => {
          let error = amount * normal();
          return Array.from({ length: samples }, () => {
            error = kept * error + amount * Math.sqrt(1 - kept ** 2) * normal();
            return offset + error;
          });
        });
        const { mean, deviation, correlation_s } = distanceWander(runs);
        const count = strokes * samples;
        // Standard errors of a first-order process: of the mean, of a normal deviation, and of the
        // autocorrelation at lag `memory` (M. S. Bartlett 1946, from memory), which falls by 1/e per share of the lag.
        const meanError = amount * Math.sqrt((1 + kept) / (1 - kept) / count);
        const deviationError = Math.sqrt((1 + kept ** 2) / (1 - kept ** 2) / 2 / count);
        const last = kept ** (2 * memory);
        const lagError = Math.E * Math.sqrt((((1 + kept ** 2) * (1 - last)) / (1 - kept ** 2) - 2 * memory * last) / count);
        // Five of them: one trial in a million and more.
        expect(Math.abs(mean - offset)).toBeLessThan(5 * meanError);
        expect(Math.abs(deviation / amount - 1)).toBeLessThan(5 * deviationError);
        // A chord lies above the curve by 1 / (8 memory²).
        expect(Math.abs(correlation_s / (0.01 * memory) - 1)).toBeLessThan(5 * lagError + 1 / (8 * memory ** 2));
        expect(5 * lagError).toBeLessThan(0.2);
      }),
      { numRuns: 12 },
    );
  });
});

describe('pooledHand', () => {
  it('of the parts of a session has the spread of the whole', () => {
    const stroke = fc.array(fc.double({ min: -0.05, max: 0.05, noNaN: true }), { minLength: 3, maxLength: 40 });
    fc.assert(
      fc.property(fc.array(stroke, { minLength: 2, maxLength: 8 }), fc.nat(), (errors, at) => {
        const traces = errors.map((each, i) => distanceTrace(i, each));
        const strokes = strokesLike(errors.length);
        const cut = 1 + (at % (errors.length - 1));
        const whole = handSample(traces, strokes, []);
        const pooled = pooledHand([handSample(traces.slice(0, cut), strokes, []), handSample(traces.slice(cut), strokes, [])]);
        for (const key of ['distance_m', 'speed', 'tilt_rad'] as const) {
          expect(pooled[key].count).toBe(whole[key].count);
          expect(Math.abs(pooled[key].mean - whole[key].mean)).toBeLessThan(1e-12);
          // A spread of rounding alone has a root of half its digits.
          expect(Math.abs(pooled[key].deviation ** 2 - whole[key].deviation ** 2)).toBeLessThan(1e-14);
        }
      }),
    );
  });
});
