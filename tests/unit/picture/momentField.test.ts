import { describe, expect, it } from 'vitest';
import { colourIndex } from '../../../sim/picture/field.ts';
import { filmPicture } from '../../../sim/picture/filmPicture.ts';
import { fieldLegend, legendIn } from '../../../sim/picture/legend.ts';
import { MOMENT_FIELDS, makeMomentField } from '../../../sim/picture/momentField.ts';
import { coatMoment, liveUntil, startCoat } from '../../../sim/run/livingCoat.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { settleCoat } from '../../../sim/run/settle.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import { MICROMETRE, TARGET, gridOf, filmOf } from './fields.ts';

const setting = settleCoat({ ...demoJob(), cell_mm: 10 }, 'planned');
const { dewPoint_K } = setting.air;
const coat = startCoat(setting, strokesOf(setting, null));
const before = coatMoment(coat);
liveUntil(coat, 300);
const moment = coatMoment(coat);
/** A cell well inside that has film. */
const cell = moment.wet_m.findIndex((wet) => wet > 20e-6);
const outside = coat.film.inside.indexOf(0);

const valueOf = (kind: (typeof MOMENT_FIELDS)[number]): number => makeMomentField(kind, moment, TARGET, dewPoint_K).values[cell] as number;

describe('makeMomentField', () => {
  it('shows what the moment holds, in SI, viscosity as its decimal logarithm', () => {
    expect(valueOf('wet-now')).toBe(moment.wet_m[cell]);
    expect(valueOf('dry-now')).toBe(moment.dry_m[cell]);
    expect(valueOf('run')).toBe(moment.run_m[cell]);
    expect(valueOf('top-solids')).toBe(moment.solidsFraction[cell]);
    expect(valueOf('viscosity')).toBe(Math.fround(Math.log10(moment.viscosity_Pa_s[cell] as number)));
    expect(valueOf('dew-margin')).toBe(Math.fround((moment.temperature_K[cell] as number) - dewPoint_K));
  });

  it('has no value off the panel, and no property of a film that is not there', () => {
    for (const kind of MOMENT_FIELDS) expect(makeMomentField(kind, moment, TARGET, dewPoint_K).values[outside]).toBeNaN();
    for (const kind of ['viscosity', 'dew-margin', 'top-solids'] as const) expect(makeMomentField(kind, before, TARGET, dewPoint_K).values[cell]).toBeNaN();
    expect(makeMomentField('wet-now', before, TARGET, dewPoint_K).values[cell]).toBe(0);
  });

  it('puts the dew point in the middle of its colours, colder red and warmer blue', () => {
    const field = makeMomentField('dew-margin', moment, TARGET, dewPoint_K);
    const colour = (value: number): readonly number[] => [...field.colours.subarray(4 * colourIndex(field, value), 4 * colourIndex(field, value) + 3)];
    expect(colourIndex(field, 0)).toBe(128);
    const [cold, warm] = [colour(-3), colour(3)];
    expect(cold[0]! - cold[2]!).toBeGreaterThan(60);
    expect(warm[2]! - warm[0]!).toBeGreaterThan(60);
    expect(field.marks).toEqual([0]);
  });

  it('keeps the domain that it is told to, and says where a value is past it', () => {
    const field = makeMomentField('wet-now', moment, TARGET, dewPoint_K, [0, 10e-6]);
    expect([field.domain, field.isClipped]).toEqual([[0, 10e-6], true]);
    expect(makeMomentField('wet-now', moment, TARGET, dewPoint_K).isClipped).toBe(false);
  });

  it('marks the limits of a dry target on the dry film, and those of a wet one nowhere', () => {
    expect(makeMomentField('wet-now', moment, TARGET, dewPoint_K).marks).toEqual([]);
    expect(makeMomentField('dry-now', moment, { ...TARGET, film: 'dry', thickness_m: 20e-6 }, dewPoint_K).marks).toEqual([0.25, 0.8, 1, 1.2].map((share) => expect.closeTo(share * 20e-6, 12) as number));
  });

  it('does not share its values with the moment', () => {
    for (const kind of MOMENT_FIELDS) {
      const { values } = makeMomentField(kind, moment, TARGET, dewPoint_K);
      for (const own of [moment.wet_m, moment.dry_m, moment.run_m, moment.solidsFraction]) expect(values).not.toBe(own);
    }
  });
});

describe('legendIn', () => {
  it('has powers of ten for viscosity, in the unit asked for', () => {
    const legend = legendIn(makeMomentField('viscosity', moment, TARGET, dewPoint_K), { name: 'mPa s', size: 1e-3 });
    expect(legend.ticks.map(({ text }) => text)).toEqual(['10', '100', '1000', '10⁴', '10⁵', '10⁶', '10⁷']);
    expect(legend.ticks.map(({ place }) => place)).toEqual([0, 1, 2, 3, 4, 5, 6].map((k) => expect.closeTo(k / 6, 9) as number));
    expect(legend.unit).toBe('mPa s');
  });

  it('shows a difference of temperatures in Fahrenheit without moving its zero', () => {
    const legend = legendIn(makeMomentField('dew-margin', moment, TARGET, dewPoint_K), { name: '°F', size: 5 / 9 });
    const zero = legend.ticks.find(({ text }) => text === '0');
    expect(zero?.place).toBeCloseTo(0.5, 9);
    // 5 °F is 2.78 K: 6 K and 2.78 K of 12 K.
    expect(legend.ticks.find(({ text }) => text === '5')?.place).toBeCloseTo((6 + 25 / 9) / 12, 9);
  });

  it('agrees with the legend of a film as laid', () => {
    const field = makeMomentField('wet-now', moment, TARGET, dewPoint_K);
    expect(legendIn(field, { name: 'µm', size: 1e-6 })).toEqual(fieldLegend(field, MICROMETRE));
  });
});

it('a picture leaves cells without a value bare', () => {
  const film = filmOf(2, 1, [100, 100]);
  const bare = { ...makeMomentField('dew-margin', moment, TARGET, dewPoint_K), grid: film.grid, values: Float32Array.of(NaN, -1) };
  const { rgba, width, panel } = filmPicture(bare, gridOf(film), { pixelsPerCell: 1, background: [9, 9, 9, 255], thickness: MICROMETRE });
  const at = (column: number): number[] => [...rgba.subarray(4 * (panel.top * width + panel.left + column), 4 * (panel.top * width + panel.left + column) + 3)];
  expect(at(0)).toEqual([9, 9, 9]);
  // One kelvin below the dew point is a value like any other, though NO_FILM of a share is -1 too.
  expect(at(1)).not.toEqual([9, 9, 9]);
});
