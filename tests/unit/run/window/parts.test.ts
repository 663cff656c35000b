import { describe, expect, it } from 'vitest';
import { saturationPressure_Pa } from '../../../../sim/air/psychrometrics.ts';
import { fanWidth_m } from '../../../../sim/run/fan.ts';
import { overlapCv } from '../../../../sim/run/flattestOverlap.ts';
import { strokesOf } from '../../../../sim/run/strokes.ts';
import { lapRipple, strokeShape } from '../../../../sim/run/window/lapRipple.ts';
import { lineTime_s, passClocks, passTime_s } from '../../../../sim/run/window/lineClock.ts';
import { conditionsFor } from '../../../../sim/run/window/pointConditions.ts';
import { axisValue, statedPoint, WINDOW_AXES, withAxis } from '../../../../sim/run/window/sprayPoint.ts';
import { viscosity_Pa_s } from '../../../../sim/mix/viscosity.ts';
import { namelessCoat, pointOf, wall } from '../../../helpers/walls.ts';

const setting = wall({ coat: { plan: { cross: true } } });

describe('a point on its axes', () => {
  it.each(WINDOW_AXES)('%s is what it is moved to', (axis) => {
    const value = axisValue(statedPoint(setting), axis) * 1.01;
    const moved = withAxis(statedPoint(setting), axis, value);
    expect(axisValue(moved, axis)).toBe(value);
    expect(Object.entries(moved).filter(([key, each]) => each !== statedPoint(setting)[key as keyof typeof moved])).toHaveLength(axis === 'temperature' ? 2 : 1);
  });

  it('keeps the water of the air when the room is warmed, and cools it no farther than to its dew point', () => {
    const point = statedPoint(setting);
    const water = (at: typeof point) => at.humidityFraction * saturationPressure_Pa(at.temperature_K);
    expect(water(withAxis(point, 'temperature', 305)) / water(point)).toBeCloseTo(1, 12);
    expect(withAxis(point, 'temperature', 270).humidityFraction).toBe(1);
  });
});

describe('the conditions of a point', () => {
  const conditionsAt = conditionsFor(setting);

  it('are the coat’s own where it is as stated', () => {
    const { mix, air, setUp } = conditionsAt(statedPoint(setting));
    expect(mix).toBe(setting.mix);
    expect(air).toBe(setting.air);
    expect(setUp).toEqual(setting.setUp);
  });

  it('share a law where only the humidity differs, but for the dew point', () => {
    const [dry, damp] = [0.3, 0.7].map((humidityFraction) => conditionsAt(pointOf(setting, { humidityFraction })).law);
    expect(damp!.bySolids).toBe(dry!.bySolids);
    expect(damp!.air.dewPoint_K - dry!.air.dewPoint_K).toBeGreaterThan(10);
  });

  it('keep what a cup has said of the finish when it is thinned further', () => {
    const read = wall({ mix: { cup: { kind: 'ford-4', seconds: 24, temperature_C: 21 } } });
    const thicker = conditionsFor(read)(pointOf(read, { thinnerRatio: 0.32999 }));
    const at = (mix: typeof read.mix) => viscosity_Pa_s(mix.viscosity, mix.volumeSolidsFraction, 294.15);
    expect(at(thicker.mix) / at(read.mix)).toBeCloseTo(1, 3);
    expect(at(setting.mix) / at(read.mix)).not.toBeCloseTo(1, 1);
  });

  it('thin the generic mix of a coat that names none, and leave its drops as stated', () => {
    const nameless = { ...setting, coat: namelessCoat(setting.coat) };
    const { mix, setUp } = conditionsFor(nameless)(pointOf(nameless, { thinnerRatio: 1 }));
    expect(mix.volumeSolidsFraction).toBeCloseTo(setting.mix.finish.volumeSolidsFraction.value / 2, 12);
    expect(setUp.volumeSolidsFraction).toBe(mix.volumeSolidsFraction);
    expect(setUp.drops.meanDiameter_m).toBeCloseTo(35e-6, 12);
  });
});

describe('lapRipple', () => {
  it('has the CV of the house’s other sum, and a place of least and of most film that are there', () => {
    const shape = strokeShape(setting.setUp.fan);
    for (const overlap of [0.2, 0.35, 0.5, 0.62]) {
      const ripple = lapRipple(shape, overlap);
      // The other takes 96 places of a sampled profile.
      expect(ripple.cv).toBeCloseTo(overlapCv(setting.spray.footprint, overlap), 3);
      expect(ripple.least).toBeLessThan(1);
      expect(ripple.most).toBeGreaterThan(1);
    }
    const half = lapRipple(shape, 0.35);
    expect([half.leastAt / half.pitch, half.mostAt]).toEqual([0.5, 0]);
  });
});

describe('the clock of the lines', () => {
  it.each([['serpentine', 0.36, 50], ['serpentine', 0.6, 50], ['one-way', 0.36, 50], ['serpentine', 0.36, 70]] as const)('keeps the time of a %s plan at %s m/s, %s %%', (order, speed_m_s, overlap_percent) => {
    const stated = wall({ coat: { plan: { cross: true, order } } });
    const asked = wall({ coat: { plan: { cross: true, order, speed_m_s, overlap_percent } } });
    const { strokes, path } = strokesOf(asked);
    const pitch_m = (1 - overlap_percent / 100) * fanWidth_m(asked.setUp, 0.2);
    const [first] = passClocks(stated);
    const begins = strokes.filter(({ pass }) => pass === 0).map(({ firstRow }) => path.t_s[firstRow]!);
    const mean_s = (begins.at(-1)! - begins[0]!) / (begins.length - 1);
    // Turns are straight lines from end to start: as long as the pitch and, one way, the line.
    expect(lineTime_s(first!, speed_m_s, pitch_m) / mean_s).toBeCloseTo(1, 2);
    const second_s = path.t_s[strokes.find(({ pass }) => pass === 1)!.firstRow]! - begins[0]!;
    // The way from the end of the first pass to the beginning of the second is not part of either.
    expect(Math.abs(passTime_s(first!, speed_m_s, pitch_m) / second_s - 1)).toBeLessThan(0.1);
  });
});
