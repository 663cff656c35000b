import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHours } from '../../../sim/air/readHours.ts';
import { localTimeOf } from '../../../sim/base/localTime.ts';

const HEAD = 'time,temperature_C,humidity_percent';

describe('readHours', () => {
  it('reads the plain form', () => {
    expect(readHours(`${HEAD}\n2026-05-04T08:00,15.5,80\n2026-05-04T09:00,17,72\n`)).toEqual({
      hours: [{ at: '2026-05-04T08:00', temperature_C: 15.5, humidity_percent: 80 }, { at: '2026-05-04T09:00', temperature_C: 17, humidity_percent: 72 }],
      warnings: [],
    });
  });

  it.each([
    ['°F and another name', 'timestamp,temp_F,rh_percent\n2026-05-04T08:00,68,50'],
    ['°F in words', 'Date Time,Air temperature (°F),Relative humidity (%)\n2026-05-04 08:00:00,68,50 %'],
    ['a byte order mark, semicolons, commas as points, blank lines', '\uFEFFtime;temp_C;RH%\r\n\r\n2026-05-04T08:00:59;20,0;50,0\r\n'],
    ['tabs', 'time\ttemperature_celsius\thumidity\n2026-05-04T08:00\t20\t50'],
    ['shares of one that say so', 'time,temperature_C,humidity_fraction\n2026-05-04T08:00,20,0.5'],
  ])('reads %s', (_what, text) => {
    expect(readHours(text)).toEqual({ hours: [{ at: '2026-05-04T08:00', temperature_C: 20, humidity_percent: 50 }], warnings: [] });
  });

  it('takes a dew point for a missing humidity', () => {
    // ASHRAE: 9.27 °C is the dew point of 20 °C and 50 %; half of its last digit moves humidity by 0.02 %.
    const read = (text: string) => readHours(text).hours[0]!.humidity_percent;
    expect(Math.abs(read('time,temperature_C,dewpoint_C\n2026-05-04T08:00,20,9.27') - 50)).toBeLessThan(0.03);
    expect(Math.abs(read('time,temp_F,Dew Point (°F)\n2026-05-04T08:00,68,48.69') - 50)).toBeLessThan(0.03);
    expect(read('time,temperature_C,dewpoint_C\n2026-05-04T08:00,20,20.05')).toBe(100);
  });

  it('keeps the wall clock of a time with an offset, and says so', () => {
    const { hours, warnings } = readHours(`${HEAD}\n2026-05-04T08:00+02:00,20,50\n2026-05-04T09:00Z,20,50`);
    expect(hours.map(({ at }) => at)).toEqual(['2026-05-04T08:00', '2026-05-04T09:00']);
    expect(warnings.map(({ text }) => text)).toEqual(['hours: the times name an offset from world time; their wall clock is kept as it stands']);
  });

  it('thins a long file to the hour, and says so', () => {
    const rows = Array.from({ length: 6000 }, (_, i) => `${localTimeOf(13_853_285 + i)},20,50`);
    const { hours, warnings } = readHours(`${HEAD}\n${rows.join('\n')}`);
    expect(hours).toHaveLength(101);
    expect(hours.slice(0, 2).map(({ at }) => at)).toEqual(['2026-05-04T08:05', '2026-05-04T09:00']);
    expect(warnings[0]!.text).toMatch(/6000 rows are more than the 2000 that a job keeps; the first of each hour is kept, 101 in all/);
  });

  it('drops rows of one minute and passes over other columns, and says so', () => {
    const { hours, warnings } = readHours(`${HEAD},lux\n2026-05-04T08:00:00,20,50,1\n2026-05-04T08:00:30,21,50,2`);
    expect(hours).toHaveLength(1);
    expect(warnings.map(({ text }) => text)).toEqual(['hours: 1 row of a minute that has one already; the first is kept', 'hours: columns passed over: lux']);
  });

  it.each<[string, string, RegExp]>([
    ['an empty file', '', /log\.csv is empty; give a header such as time,temperature_C,humidity_percent/],
    ['blank lines alone', '\n \n', /is empty/],
    ['a header alone', HEAD, /has a header and no rows/],
    ['no header', '2026-05-04T08:00,20,50\n2026-05-04T09:00,20,50', /no column holds the time/],
    ['no humidity', 'time,temperature_C\n2026-05-04T08:00,20', /no column holds the humidity or the dew point/],
    ['no unit', 'time,temperature,humidity\n2026-05-04T08:00,20,50', /column "temperature" does not say °C or °F; write temperature_C or temperature_F/],
    ['two temperatures', 'time,temperature_C,temp_F,humidity\n2026-05-04T08:00,20,68,50', /columns "temperature_C" and "temp_F" both hold the air temperature; leave one out/],
    ['humidity as a share of one', `${HEAD}\n2026-05-04T08:00,20,0\n2026-05-04T09:00,20,0.65`, /row 3, column humidity_percent: 0\.65 may mean 0\.65 % or 65 %, and no row is above 1; name the column humidity_fraction/],
    ['per cent as a fraction', 'time,temperature_C,humidity_fraction\n2026-05-04T08:00,20,65', /row 2, column humidity_fraction: 65 is not from 0 to 1/],
    ['humidity over 100', `${HEAD}\n2026-05-04T08:00,20,101`, /row 2, column humidity_percent: 101 is not from 0 to 100 %/],
    ['°F in a °C column', `${HEAD}\n2026-05-04T08:00,70,50`, /row 2, column temperature_C: 70 is not from -20 to 60 °C; check the unit/],
    ['a word', `${HEAD}\n2026-05-04T08:00,warm,50`, /row 2, column temperature_C: "warm" is not a number/],
    ['a time of day alone', `${HEAD}\n08:00,20,50`, /row 2, column time: "08:00" is not a date and time such as/],
    ['a day that is none', `${HEAD}\n2026-02-30T08:00,20,50`, /row 2, column time: "2026-02-30T08:00"/],
    ['a clock put back', `${HEAD}\n2026-05-04T08:00,20,50\n2026-05-04T07:00,20,50`, /row 3, column time: 2026-05-04T07:00 is before the 2026-05-04T08:00 of the row before it; sort/],
    ['a short row', `${HEAD}\n2026-05-04T08:00,20`, /row 2 has 2 fields and the header 3/],
    ['decimal commas between commas', `${HEAD}\n2026-05-04T08:00,20,5,50`, /row 2 has 4 fields and the header 3; decimals need a point/],
    ['a dew point above the air', 'time,temperature_C,dewpoint_C\n2026-05-04T08:00,20,25', /row 2, column dewpoint_C: 25 is not from/],
  ])('refuses %s', (_what, text, message) => {
    expect(() => readHours(text, 'log.csv')).toThrow(message);
  });

  it('names several bad rows at once', () => {
    const rows = Array.from({ length: 8 }, (_, i) => `2026-05-04T0${i}:00,20,x`);
    expect(() => readHours(`${HEAD}\n${rows.join('\n')}`, 'log.csv')).toThrow(/^log\.csv: row 2, .*; row 3, .*; row 6, .*; and 3 more bad rows$/);
  });

  it('refuses a file that is too long', () => {
    expect(() => readHours('x'.repeat(8_000_001))).toThrow(/more than 8000000; cut it into parts/);
    const rows = Array.from({ length: 2101 }, (_, i) => `${localTimeOf(i * 60)},20,50`);
    expect(() => readHours(`${HEAD}\n${rows.join('\n')}`)).toThrow(/covers 2101 hours, more than the 2000/);
  });

  it('gives back what was written', () => {
    const rows = fc.uniqueArray(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 50 }).chain((minutes) => fc.tuple(...[...minutes].sort((a, b) => a - b).map((minute) => fc.record({
      at: fc.constant(localTimeOf(13_000_000 + minute)), temperature_C: fc.integer({ min: -200, max: 600 }).map((tenths) => tenths / 10), humidity_percent: fc.integer({ min: 11, max: 1000 }).map((tenths) => tenths / 10),
    }))));
    fc.assert(fc.property(rows, fc.constantFrom(',', ';', '\t'), fc.boolean(), (hours, sign, seconds) => {
      const text = [HEAD, ...hours.map(({ at, temperature_C, humidity_percent }) => `${at}${seconds ? ':00' : ''},${temperature_C},${humidity_percent}`)].join('\r\n').replaceAll(',', sign);
      expect(readHours(text).hours).toEqual(hours);
    }), { numRuns: 60 });
  });
});
