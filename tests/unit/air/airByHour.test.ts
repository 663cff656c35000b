import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airAt, airByHour } from '../../../sim/air/airByHour.ts';
import { dayVerdicts, recheckAfter } from '../../../sim/air/dayVerdicts.ts';
import { makeAir } from '../../../sim/air/moistAir.ts';
import { localTimeOf, minutesOf } from '../../../sim/base/localTime.ts';
import type { HourSpec } from '../../../sim/job/schema.ts';
import { genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';

const K = 273.15;
const place = { temperature_C: 0, humidity_percent: 0, altitude_m: 300, speed_m_s: 0.5, ceiling_C: 32 };
const hour = (clock: string, temperature_C: number, humidity_percent: number): HourSpec => ({ at: `2026-05-04T${clock}`, temperature_C, humidity_percent });
const at = (clock: string) => minutesOf(`2026-05-04T${clock}`);

describe('airAt', () => {
  const day = airByHour([hour('08:00', 15, 80), hour('10:00', 21, 55), hour('16:00', 25, 40)], place);

  it('gives each row its own air, pressure and speed included', () => {
    const { air, held } = airAt(day, at('10:00'));
    expect(held).toBeNull();
    const stated = makeAir({ ...place, temperature_C: 21, humidity_percent: 55 }, '/air');
    expect([air.temperature_K, air.relativeHumidityFraction, air.pressure_Pa, air.speed_m_s]).toEqual([stated.temperature_K, stated.relativeHumidityFraction, stated.pressure_Pa, 0.5]);
  });

  it('runs straight in temperature and moisture, not in relative humidity', () => {
    const [a, b, middle] = ['08:00', '10:00', '09:00'].map((clock) => airAt(day, at(clock)).air);
    expect(middle!.temperature_K).toBeCloseTo(18 + K, 9);
    expect(middle!.humidityRatio).toBeCloseTo((a!.humidityRatio + b!.humidityRatio) / 2, 12);
    // 80 and 55 % would make 67.5 % if humidity ran straight.
    expect(middle!.relativeHumidityFraction).toBeLessThan(0.672);
    // Warming of the same moisture between two rows keeps the dew point.
    const warmed = airByHour([hour('08:00', 15, 80), hour('10:00', 21, 54.8)], place);
    expect(Math.abs(airAt(warmed, at('09:20')).air.dewPoint_K - airAt(warmed, at('08:00')).air.dewPoint_K)).toBeLessThan(0.02);
  });

  it('holds the ends, and says so', () => {
    expect(airAt(day, at('07:59'))).toMatchObject({ held: 'before', air: { temperature_K: 15 + K } });
    expect(airAt(day, at('16:00')).held).toBeNull();
    expect(airAt(day, at('16:01'))).toMatchObject({ held: 'after', air: { temperature_K: 25 + K } });
  });

  it('never holds more water than the air can', () => {
    const fog = airByHour([hour('08:00', 5, 100), hour('10:00', 25, 100)], place);
    const { air } = airAt(fog, at('09:00'));
    expect(air.relativeHumidityFraction).toBeGreaterThan(0.999999);
    expect(air.relativeHumidityFraction).toBeLessThanOrEqual(1);
    expect(Math.abs(air.dewPoint_K - air.temperature_K)).toBeLessThan(0.002);
  });

  it.each<[string, HourSpec[], RegExp]>([
    ['no hours', [], /\/hours is empty; give the air of at least one hour/],
    ['a fall', [hour('08:00', 20, 50), hour('07:00', 20, 50)], /\/hours\/1\/at = "2026-05-04T07:00" is not after/],
    ['the same time', [hour('08:00', 20, 50), hour('08:00', 20, 50)], /is not after/],
    ['no time', [{ at: 'noon', temperature_C: 20, humidity_percent: 50 }], /"noon" is not a local date/],
    ['a hot hour', [hour('08:00', 70, 50)], /\/hours\/0: temperature = 70 °C/],
  ])('refuses %s', (_what, hours, message) => {
    expect(() => airByHour(hours, place)).toThrow(message);
  });

  it('gives every typed row back, whatever the rows', () => {
    const rows = fc.uniqueArray(fc.integer({ min: 0, max: 20_000 }), { minLength: 1, maxLength: 30 }).chain((minutes) =>
      fc.tuple(...[...minutes].sort((a, b) => a - b).map((minute) => fc.record({ at: fc.constant(localTimeOf(13_000_000 + minute)), temperature_C: fc.double({ min: -20, max: 60, noNaN: true }), humidity_percent: fc.double({ min: 0.1, max: 100, noNaN: true }) }))));
    fc.assert(fc.property(rows, (hours) => {
      const air = airByHour(hours, place);
      for (const { at: text, temperature_C, humidity_percent } of hours) {
        const found = airAt(air, minutesOf(text)).air;
        expect(Math.abs(found.temperature_K - K - temperature_C)).toBeLessThan(1e-9);
        expect(Math.abs(found.relativeHumidityFraction * 100 - humidity_percent)).toBeLessThan(1e-9);
      }
    }), { numRuns: 50 });
  });
});

describe('dayVerdicts', () => {
  const film = { mix: makeMix(genericMixSpec('clear-dope', 'general', 1), '/mix'), faces: 2 as const, ceiling_K: 32 + K };
  const hours = [hour('07:20', 13, 85), hour('14:00', 22.8, 45), hour('17:00', 22.2, 50), hour('20:00', 16.7, 75)];
  const day = dayVerdicts(airByHour(hours, { ...place, altitude_m: 0 }), film);

  it('judges the first row, each whole hour, and the last', () => {
    expect(day.hours.map(({ minute }) => localTimeOf(minute).slice(11))).toEqual(['07:20', ...Array.from({ length: 13 }, (_, i) => `${String(i + 8).padStart(2, '0')}:00`)]);
    expect(day.step_min).toBe(60);
  });

  it('finds the hours that go, the first of them, and the turn for the worse', () => {
    expect(day.goes).toHaveLength(1);
    expect(day.firstGo_min).toBe(day.goes[0]!.from_min);
    expect(day.goes[0]!.to_min).toBe(at('17:00'));
    expect(day.worsenings[0]).toMatchObject({ minute: at('18:00'), from: 'go' });
    expect(recheckAfter(day, at('15:30'))!.minute).toBe(at('18:00'));
    expect(recheckAfter(day, at('14:00'))).toBeNull();
    // By the circular more hours pass than by the film of this mix.
    expect(day.passing.circular.length).toBeGreaterThan(day.passing.film.length);
    expect(day.passing.surface).toEqual([]);
  });

  it('tells the trend of the dew point', () => {
    expect(day.dewPointChange_K).toBeGreaterThan(1);
  });

  it('takes one row alone, and long spans in longer steps', () => {
    const alone = dayVerdicts(airByHour([hour('08:20', 21, 45)], place), film);
    expect(alone.hours).toHaveLength(1);
    expect(alone.goes).toEqual([{ from_min: at('08:20'), to_min: at('08:20') }]);
    const long = dayVerdicts(airByHour([{ at: '2026-01-01T00:00', temperature_C: 20, humidity_percent: 50 }, { at: '2026-12-31T00:00', temperature_C: 20, humidity_percent: 50 }], place), film);
    expect(long.hours.length).toBeLessThan(340);
    expect(long.step_min % 60).toBe(0);
  });
});
