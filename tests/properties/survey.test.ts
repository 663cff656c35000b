import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RuleSpec } from '../../sim/job/schema.ts';
import { parseSurveyReadings } from '../../sim/run/survey/readings/parseSurveyReadings.ts';
import { CrosscoatError } from '../../sim/base/errors.ts';
import { judgeReadings } from '../../sim/survey/judgeReadings.ts';
import type { FilmReading } from '../../sim/survey/filmReading.ts';
import { surveyReason } from '../../sim/report/survey/surveyReason.ts';
import { combs, gauge, meanEighty, NINETY_TEN, spotsAreas } from '../helpers/surveys.ts';

/** Tenths of a micrometre, as gauges print them, much of it near the limits. */
const film_um = fc.oneof(fc.integer({ min: 700, max: 1300 }), fc.integer({ min: 1, max: 4000 }), fc.constantFrom(800, 900, 1000, 3000)).map((tenths) => tenths / 10);
const films = fc.array(film_um, { minLength: 1, maxLength: 30 });
const rule: fc.Arbitrary<RuleSpec> = fc.constantFrom<RuleSpec>(meanEighty(), meanEighty({ boundary: 'lenient' }), NINETY_TEN, { kind: 'shop', name: 'x', meanMin_um: 95, meanMax_um: 130, eachMin_um: 70, eachMax_um: 200, spread_percent: 20 });
const named = (list: readonly number[]): FilmReading[] => gauge(...list).map((reading, i) => ({ ...reading, area: `A${i % 2}`, spot: `S${i % 6}` }));

describe('rules', () => {
  it('go by the readings, not by their order', () => {
    fc.assert(fc.property(films, rule, fc.infiniteStream(fc.nat()), (list, by, stream) => {
      const keys = list.map(() => stream.next().value as number);
      const shuffled = list.map((film, i) => [film, keys[i] as number] as const).sort((a, b) => a[1] - b[1]).map(([film]) => film);
      expect(judgeReadings(by, gauge(...shuffled)).answer).toBe(judgeReadings(by, gauge(...list)).answer);
      const grouped = named(list);
      const turned = [...grouped].reverse();
      expect(judgeReadings(spotsAreas(3, 5), turned).answer).toBe(judgeReadings(spotsAreas(3, 5), grouped).answer);
    }));
  });

  it('a heavier reading never breaks what asks for more film', () => {
    const low = ['reading-low', 'mean-low', 'low-share'];
    const passing = (list: readonly number[]) => judgeReadings(meanEighty(), gauge(...list)).checks.filter(({ code, answer }) => low.includes(code) && answer === 'pass').map(({ code }) => code);
    fc.assert(fc.property(films, fc.integer({ min: 1000, max: 4000 }), (list, tenths) => {
      expect(passing([...list, tenths / 10])).toEqual(expect.arrayContaining(passing(list)));
    }));
  });

  it('scaling readings and limits alike changes no answer', () => {
    fc.assert(fc.property(films, fc.constantFrom(0.1, 0.25, 25.4, 2, 7), fc.constantFrom('strict', 'lenient' as const), (list, scale, boundary) => {
      const scaled = judgeReadings(meanEighty({ boundary: boundary as 'strict', nominal_um: 100 * scale }), gauge(...list.map((film) => film * scale)));
      expect(scaled.answer).toBe(judgeReadings(meanEighty({ boundary: boundary as 'strict' }), gauge(...list)).answer);
    }));
  });

  it('a comb narrowed to any film within it answers as the comb, or decides what it left open', () => {
    const tooth = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 8 }), fc.integer({ min: 0, max: 100 }));
    fc.assert(fc.property(fc.array(tooth, { minLength: 1, maxLength: 8 }), rule, (teeth, by) => {
      const wide = judgeReadings(by, combs(1, ...teeth.map(([low, step]) => [low * 5, low * 5 + step * 5] as const)));
      const within = judgeReadings(by, gauge(...teeth.map(([low, step, percent]) => low * 5 + (step * 5 * percent) / 100)));
      if (wide.answer !== 'undecided') expect(within.answer).toBe(wide.answer);
    }));
  });

  it('the reason is one sentence without a hole', () => {
    fc.assert(fc.property(films, rule, fc.constantFrom('metric', 'us' as const), (list, by, system) => {
      const words = surveyReason(judgeReadings(by, gauge(...list)), system);
      expect(words).toMatch(/^(Passes|Fails|Not decided): .+\.$/);
      expect(words).not.toMatch(/NaN|undefined|null|\?/);
    }));
  });
});

describe('parseSurveyReadings', () => {
  it('any text is readings, or a clear error', () => {
    const cell = fc.oneof(fc.string({ maxLength: 8 }), fc.constantFrom('dft_um', 'dft', 'x_mm', 'y_mm', 'area_cm2', 'before_g', 'after_g', 'unit', 'mil', '3', '2.5', '1,5', '"', '=1+1'));
    const text = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 6 }).chain((lines) => fc.constantFrom(',', ';', '\t', ' ').map((sign) => lines.map((fields) => fields.join(sign)).join('\n')));
    fc.assert(fc.property(text, fc.constantFrom(undefined, 'um' as const), (given, unit) => {
      try {
        expect(parseSurveyReadings(given, 'f', { unit }).readings.length).toBeGreaterThan(0);
      } catch (error) {
        expect(error).toBeInstanceOf(CrosscoatError);
      }
    }), { numRuns: 2000 });
  });

  it('reads back what is written', () => {
    fc.assert(fc.property(films, (list) => {
      expect(parseSurveyReadings(`dft_um\n${list.join('\n')}`).readings.map((reading) => (reading.kind === 'metal' ? reading.dry_um : NaN))).toEqual(list);
    }));
  });
});
