import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../../sim/base/errors.ts';
import { parseSurveyReadings, type ReadingsOptions } from '../../../../sim/run/survey/readings/parseSurveyReadings.ts';

const readings = (text: string, options?: ReadingsOptions) => parseSurveyReadings(text, 'f.csv', options).readings;
const dry = (text: string, options?: ReadingsOptions) => readings(text, options).map((reading) => (reading.kind === 'metal' ? reading.dry_um : NaN));

describe('columns of films', () => {
  it.each([
    ['dft_um\n105\n98\n', [105, 98]],
    ['\uFEFF"dft_um"\r\n"105"\r\n\r\n98', [105, 98]],
    ['DFT (µm)\n105\n', [105]],
    ['dft_mil\n2.5\n2.1\n', [63.5, 53.34]],
    ['Thickness (mils);Note\n2,5;edge\n', [63.5]],
    ['dft_mm\n0.0635', [63.5]],
    ['No.\tDFT µm\n1\t63,5', [63.5]],
    ['Reading,Thickness_um\n1,20\n2,21', [20, 21]],
    ['DFT (um)  Unit\n2  mil\n3  mil'.replace(' (um)', ''), [50.8, 76.2]],
    ['x_in y_in dft_mil\n1 2 2.5', [63.5]],
  ])('%j', (text, films) => {
    expect(dry(text)).toEqual(films);
  });
  it('numbers alone need the unit of the file', () => {
    expect(dry('105\n98', { unit: 'um' })).toEqual([105, 98]);
    expect(dry('2.5 2.1 2.8', { unit: 'mil' })).toEqual([63.5, 53.34, 71.12]);
    expect(dry('63,5;62', { unit: 'um' })).toEqual([63.5, 62]);
  });
  it('a header’s own unit stands before the stated one', () => {
    expect(dry('dft_mil\n1', { unit: 'um' })).toEqual([25.4]);
  });
  it('means of spots make a spot each', () => {
    expect(readings('spot_mil\n2.5\n2.1')).toMatchObject([{ spot: '2' }, { spot: '3' }]);
  });
});

describe('other kinds and columns', () => {
  it('a row may hold a gauge and a comb; what has no field of its own goes to the note', () => {
    const { readings: both, warnings } = parseSurveyReadings('timestamp,part,area_id,spot_id,reading_no,dft_um,wft_low_um,wft_high_um,gauge,operator,note\n2026-05-04 08:10:03+02:00,rudder,A,1,1,45.5,100,150,g7,AB,edge\n2026-05-04 08:12,rudder,A,1,2,46,,,,,\n', 'f.csv');
    expect(both).toEqual([
      { kind: 'metal', dry_um: 45.5, area: 'A', spot: '1', at: '2026-05-04T08:10:03+02:00', note: 'edge; part: rudder; gauge: g7; operator: AB' },
      { kind: 'comb', low_um: 100, high_um: 150, area: 'A', spot: '1', at: '2026-05-04T08:10:03+02:00', note: 'edge; part: rudder; gauge: g7; operator: AB' },
      { kind: 'metal', dry_um: 46, area: 'A', spot: '1', note: 'read 2026-05-04 08:12; part: rudder' },
    ]);
    expect(warnings.map(({ text }) => text)).toEqual(['f.csv: columns passed over: reading_no']);
  });
  it('coupons, micrometers, combs', () => {
    expect(readings('before_g,after_g,area_cm2\n1.2,1.525,100')).toEqual([{ kind: 'coupon', before_g: 1.2, after_g: 1.525, area_cm2: 100 }]);
    expect(readings('before_oz,after_oz,area_in2\n1,1,1')).toEqual([{ kind: 'coupon', before_g: 28.349523125, after_g: 28.349523125, area_cm2: 6.4516 }]);
    expect(readings('before_um,after_mil\n500,25')).toEqual([{ kind: 'micrometer', before_um: 500, after_um: 635 }]);
    expect(readings('wft_low_mil,wft_high_mil\n4,5\n6,')).toEqual([{ kind: 'comb', low_um: 101.6, high_um: 127 }, { kind: 'comb', low_um: 152.4 }]);
  });
});

describe('what is refused, with its row and column', () => {
  it.each([
    ['', 'columns', /is empty/],
    ['dft_um', 'columns', /header and no rows/],
    ['dft\n3', 'unit', /column dft does not say its unit; .*or state the unit of the file/],
    ['3\n4', 'unit', /f\.csv has no header that says the unit/],
    ['before\tafter\n1\t2', 'unit', /before_um for a thickness or before_g for a weight/],
    ['dtf_um\n3', 'columns', /did you mean dft_um by "dtf_um"/],
    ['dft_um\n3,5', 'columns', /row 2 has 2 fields and the header 1; decimals need a point/],
    ['dft_um\nabc\n\nx', 'range', /row 2, column dft_um: "abc".*row 4, column dft_um: "x"/],
    ['dft_um\n=1+1', 'range', /row 2, column dft_um/],
    ['dft_um,dft_mil\n1,2', 'columns', /"dft_um" and "dft_mil" hold the same/],
    ['dft_um,note\n,gap', 'columns', /row 2 holds no reading/],
    ['x_mm,dft_um\n1,2', 'columns', /x_mm and y_mm/],
    ['x_mm,y_mm,dft_um\n1,,2', 'columns', /row 2 gives only one of x and y/],
    ['before_g,after_g\n1,2', 'columns', /a coupon needs/],
    ['wft_low_um,wft_high_um\n100,90', 'range', /row 2: the dry tooth, 90 µm, is not above/],
    ['dft_um\n99999', 'range', /row 2, column dft_um: 99999 does not fit; give a number from -50 to 5000/],
    ['thickness_mil\n-98', 'range', /row 2, column thickness_mil: -98, which is -2489.2 µm, does not fit/],
    ['x_in,y_in,dft_um\n1e9,2,3', 'range', /column x_in: 1e9, which is 25400000000 mm, does not fit/],
    [`dft_um,spot_id\n1,${'x'.repeat(60)}`, 'range', /row 2, column spot_id/],
    ['1,2\n3,4', 'columns', /2 columns of numbers and no header/],
    ['dft,unit\n3,furlong', 'unit', /row 2, column unit: "furlong"/],
    [`dft_um\n${'1\n'.repeat(20_001)}`, 'limit', /20001 readings/],
    [' '.repeat(8_000_001), 'limit', /letters/],
  ])('%.30j', (text, code, message) => {
    const thrown = (() => {
      try {
        return parseSurveyReadings(text, 'f.csv');
      } catch (error) {
        return error;
      }
    })();
    expect(thrown).toBeInstanceOf(CrosscoatError);
    expect(thrown).toMatchObject({ code, message: expect.stringMatching(message) as string });
  });
});
