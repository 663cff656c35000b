import { describe, expect, it } from 'vitest';
import type { CrosscoatError, ErrorCode } from '../../../../sim/base/errors.ts';
import { checkReadings, FEWEST_PLACES, FEWEST_READINGS, MOST_READINGS } from '../../../../sim/gun/card/cardReadings.ts';
import { parseReadings } from '../../../../sim/gun/card/parseReadings.ts';

const FILMS = [0, 9, 21, 30, 34, 31, 20, 10, 0];

/** Rows 30 mm apart from -120 mm on, with some of them put otherwise. */
function csv(header = 'x_mm,film_um', put: Readonly<Record<number, string>> = {}, films: readonly number[] = FILMS): string {
  return [header, ...films.map((film, i) => put[i] ?? `${-120 + 30 * i},${film}`)].join('\n');
}

function refusal(text: string): CrosscoatError {
  try {
    parseReadings(text, 'card.csv');
  } catch (thrown) {
    return thrown as CrosscoatError;
  }
  throw new Error('was not refused');
}

describe('readings of a card', () => {
  it('are sorted by place, in m, with the unit of the film as stated', () => {
    const { place_m, film, unit } = parseReadings('x_mm,film_mil\n30,3\n-30,3\n0,4\n60,2\n-60,2\n90,1\n-90,1\n');
    expect(Array.from(place_m, (place) => Math.round(place * 1000))).toEqual([-90, -60, -30, 0, 30, 60, 90]);
    expect(Array.from(film)).toEqual([1, 2, 3, 4, 3, 2, 1]);
    expect(unit).toBe('mil');
  });

  it.each([['x_mm', 0.001], ['x_cm', 0.01], ['X_IN', 0.0254], [' x_mm ', 0.001]])('reads places in %s', (column, size) => {
    const { place_m } = parseReadings(`${column},mass_g\n0,0\n1,1\n2,2\n10,3\n11,2\n12,1\n20,0\n`);
    expect(place_m[6]).toBeCloseTo(20 * size, 12);
  });

  it('keeps both readings at one place', () => {
    const { place_m, film } = parseReadings(`${csv()}\n0,36`);
    expect(place_m).toHaveLength(FILMS.length + 1);
    expect(Array.from(film).filter((value) => value === 34 || value === 36)).toHaveLength(2);
  });

  it('takes semicolons, tabs, quotes, a byte order mark, both line ends and empty lines', () => {
    const plain = parseReadings(csv());
    const written = [
      csv().replaceAll(',', ';'), csv().replaceAll(',', '\t'), `\uFEFF${csv().replaceAll('\n', '\r\n')}\r\n`,
      csv().replaceAll(',', '","').replaceAll('\n', '"\n"').replace(/^/, '"').replace(/$/, '"'), `\n${csv().replaceAll('\n', '\n\n')}\n\n`,
    ];
    for (const text of written) expect(parseReadings(text)).toEqual(plain);
  });

  it('finds the reading among other columns by its name, or the only other one by any', () => {
    expect(parseReadings(csv('x_mm,film_um').split('\n').map((row, i) => `${row},${i === 0 ? 'note' : 'dry'}`).join('\n')).unit).toBe('um');
    expect(parseReadings(csv('x_mm,strip_mg')).unit).toBe('mg');
    expect(parseReadings(csv('x_mm,shade')).unit).toBe('');
  });

  it('lets a zero error of a tenth of the highest pass', () => {
    expect(parseReadings(csv(undefined, { 0: '-120,-3' })).film[0]).toBe(-3);
  });

  const cases: readonly (readonly [what: string, text: string, code: ErrorCode, message: RegExp, row?: number, column?: string])[] = [
    ['no header', '', 'columns', /no column for the place.*x_mm,film_um/],
    ['no place', csv('y_mm,film_um'), 'columns', /row 1 has no column for the place/, 1],
    ['no reading', 'x_mm\n1\n', 'columns', /no column for the reading/, 1],
    ['two readings', csv('x_mm,film_um,film_mil'), 'columns', /columns film_um and film_mil both/, 1, 'film_mil'],
    ['two places', csv('x_mm,x_in'), 'columns', /columns x_mm and x_in both/, 1],
    ['a place without a unit', csv('x,film_um'), 'unit', /has no unit.*x_mm, x_cm, x_m, x_in/, 1, 'x'],
    ['an unknown unit', csv('x_ells,film_um'), 'unit', /the unit "ells", which is not known/, 1, 'x_ells'],
    ['a word', csv(undefined, { 2: '-60,thick' }), 'range', /row 4, column film_um: "thick" is not a finite number/, 4, 'film_um'],
    ['no value', csv(undefined, { 2: '-60,' }), 'range', /row 4, column film_um: "" is not/, 4, 'film_um'],
    ['infinity', csv(undefined, { 3: 'Infinity,3' }), 'range', /row 5, column x_mm/, 5, 'x_mm'],
    ['a number out of all bounds', csv(undefined, { 3: '-30,1e999' }), 'range', /row 5, column film_um/, 5, 'film_um'],
    ['a hexadecimal number', csv(undefined, { 3: '-30,0x1f' }), 'range', /row 5, column film_um/, 5, 'film_um'],
    ['a decimal comma', csv(undefined, { 2: '-60,21,5' }), 'columns', /row 4 has 3 fields and the header 2; decimals need a point/, 4],
    ['a short row', csv(undefined, { 2: '-60' }), 'columns', /row 4 has 1 fields and the header 2/, 4],
    ['a negative film', csv(undefined, { 2: '-60,-8' }), 'range', /row 4, column film_um: -8 is below 0/, 4, 'film_um'],
    ['too few', csv(undefined, {}, FILMS.slice(0, FEWEST_READINGS - 1)), 'range', /6 readings at 6 different places are too few/],
    ['too few places', csv(undefined, Object.fromEntries([3, 4, 5, 6, 7, 8].map((i) => [i, '0,30']))), 'range', /9 readings at 4 different places are too few/],
    ['all equal', csv(undefined, {}, FILMS.map(() => 12)), 'range', /all readings are 12/],
    ['all nothing', csv(undefined, {}, FILMS.map(() => 0)), 'range', /all readings are 0/],
    ['places too near', csv('x_mm,film_um').replace(/-?\d+,/g, (place) => `${Number(place.slice(0, -1)) / 1000},`), 'range', /span 0\.24 mm/],
    ['places too far', csv('x_m,film_um'), 'range', /span 240000 mm.*unit/],
    ['nothing in the middle', csv(undefined, { 3: '-100,30', 4: '-90,34', 5: '90,30' , 6: '100,20', 2: '-110,21' }), 'geometry', /middle third, from -40 to 40 mm/],
  ];
  it.each(cases.map((each) => [each[0], each] as const))('refuses %s', (_, [, text, code, message, row, column]) => {
    const error = refusal(text);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(message);
    expect(error.message).toMatch(/^card\.csv: /);
    expect(error.place.file).toBe('card.csv');
    if (row !== undefined) expect(error.place.row).toBe(row);
    if (column !== undefined) expect(error.place.column).toBe(column);
  });

  it('refuses more than it takes, at the row', () => {
    const rows = Array.from({ length: MOST_READINGS + 1 }, (_, i) => `${i / 50},${i % 7}`);
    expect(refusal(`x_mm,film\n${rows.join('\n')}`)).toMatchObject({ code: 'limit', place: { row: MOST_READINGS + 2 } });
    expect(parseReadings(`x_mm,film\n${rows.slice(0, MOST_READINGS).join('\n')}`).film).toHaveLength(MOST_READINGS);
  });
});

describe('readings that come from elsewhere than a file', () => {
  const readings = (place: readonly number[], film: readonly number[]) => ({ place_m: Float64Array.from(place), film: Float64Array.from(film), unit: '' });
  const places = [0, 1, 2, 3, 4, 5, 6].map((i) => i * 0.03);

  it('pass as they are', () => {
    expect(() => checkReadings(readings(places, [0, 1, 2, 3, 2, 1, 0]))).not.toThrow();
    expect(FEWEST_PLACES).toBeLessThanOrEqual(FEWEST_READINGS);
  });

  it.each([
    ['not finite', places, [0, 1, NaN, 3, 2, 1, 0], /reading 3: NaN at 0.06 m is not finite/],
    ['at no place', [0, 0.03, NaN, 0.09, 0.12, 0.15, 0.18], [0, 1, 2, 3, 2, 1, 0], /reading 3/],
    ['out of order', [0, 0.06, 0.03, 0.09, 0.12, 0.15, 0.18], [0, 1, 2, 3, 2, 1, 0], /reading 3 comes before/],
    ['of another count than their places', places.slice(1), [0, 1, 2, 3, 2, 1, 0], /too few/],
    ['of no film anywhere', places, [0, 0, 0, 0, 0, 0, -1e-9], /below 0|no reading is above 0/],
  ])('are refused when %s', (_, place, film, message) => {
    expect(() => checkReadings(readings(place, film))).toThrow(message);
  });
});
