import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CUPS } from '../../sim/materials/cups.ts';
import { FINISHES } from '../../sim/materials/finishes.ts';
import { THINNERS } from '../../sim/materials/thinners.ts';
import { BACKING_WORDS } from '../../sim/job/schema.ts';
import { parseJob } from '../../sim/job/parse.ts';
import { serialiseJob } from '../../sim/job/serialise.ts';
import { todayJson } from '../../sim/report/todayJson.ts';
import { todayText } from '../../sim/report/todayText.ts';
import { TODAY_PARTS, todayLine, todaySentences } from '../../sim/report/todayWords.ts';
import { todayWorking } from '../../sim/report/todayWorking.ts';
import { jobOfToday } from '../../sim/run/today/jobOfToday.ts';
import { answerToday } from '../../sim/run/today/today.ts';
import { TODAY_LIMITS, USUAL_TODAY } from '../../sim/run/today/usualToday.ts';
import type { TodayQuestion } from '../../sim/scheme/today.ts';

const within = ([min, max]: readonly [number, number]) => fc.double({ min, max, noNaN: true });
/** Thin and thick films alike, small and large areas alike. */
const spreadOver = ([low, high]: readonly [number, number]) => fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((log) => Math.min(high, Math.max(low, Math.exp(log))));
const temperature_K = within([253.15, 333.15]);

const question: fc.Arbitrary<TodayQuestion> = fc.record({
  temperature_K,
  humidityFraction: within([0, 1]),
  finish: fc.constantFrom(...FINISHES.map(({ id }) => id)),
  thinner: fc.constantFrom(...THINNERS.map(({ id }) => id)),
  thinnerRatio: fc.oneof(fc.constant(null), fc.constant(0), within(TODAY_LIMITS.thinnerRatio)),
  retarderFraction: fc.oneof(fc.constant(0), within(TODAY_LIMITS.retarderFraction)),
  cup: fc.constantFrom(...CUPS.map(({ id }) => id)),
  seconds: fc.oneof(fc.constant(null), spreadOver(TODAY_LIMITS.seconds)),
  area_m2: spreadOver(TODAY_LIMITS.area_m2),
  dry_m: spreadOver(TODAY_LIMITS.dry_m),
  coats: fc.oneof(fc.constant(null), fc.integer({ min: 1, max: 60 })),
  tilt_rad: fc.oneof(fc.constant(0), fc.constant(Math.PI), within(TODAY_LIMITS.tilt_rad)),
  backing: fc.constantFrom(...BACKING_WORDS),
  surface_K: fc.oneof(fc.constant(null), temperature_K),
  liquid_K: fc.oneof(fc.constant(null), temperature_K),
  afternoon_K: temperature_K,
  sanded_m: within(TODAY_LIMITS.sanded_m),
  efficiencyFraction: within(TODAY_LIMITS.efficiencyFraction),
  altitude_m: within([-400, 5000]),
  airSpeed_m_s: within([0, 5]),
  ceiling_K: fc.constant(USUAL_TODAY.ceiling_K),
});

/** Numbers in a record that are neither finite nor said to be without end. */
function unfinished(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => unfinished(each, `${path}.${key}`));
}

describe('the front sheet', () => {
  it('answers every question with finite figures, and says in words what it cannot', () => {
    fc.assert(
      fc.property(question, (asked) => {
        const answer = answerToday(asked);
        const endless = unfinished(answer).filter((path) => !/^\.hold\.(held_m\.\w+|working_m\.\d|limit_m|sags_m)$/.test(path) && !/\.(climate|mix)\./.test(path));
        expect(endless).toEqual([]);
        for (const system of ['metric', 'us'] as const) {
          for (const [part] of TODAY_PARTS) {
            const working = todayWorking(answer, part, system);
            const sentences = [todayLine(answer, part, system), ...(part === 'climate' ? [] : todaySentences(answer, part, system)), ...working.formula, ...working.inputs.flat()];
            for (const text of sentences) expect(text).not.toMatch(/NaN|Infinity|undefined|null|(?<!\w)\?/);
          }
        }
        const text = todayText(answer, 'metric', { working: true, stated: new Set() });
        expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
        if (answer.hold.held_m.value === Infinity) expect(todayLine(answer, 'hold', 'metric')).toContain('Level');
        if (answer.next.recoat_s === null) expect(todayLine(answer, 'next', 'metric')).toContain('cannot be planned');
      }),
      { numRuns: 150 },
    );
  });

  it('says the same in both units: its JSON figures do not depend on them', () => {
    const numbers = (json: unknown): number[] => (typeof json === 'number' ? [json] : typeof json === 'object' && json !== null ? Object.values(json).flatMap(numbers) : []);
    fc.assert(fc.property(question, (asked) => {
      const answer = answerToday(asked);
      expect(numbers(todayJson(answer, 'us'))).toEqual(numbers(todayJson(answer, 'metric')));
    }), { numRuns: 25 });
  });

  it('keeps its books: of the solids that are mixed and leave the gun, the share that lands is the dry film on the area', () => {
    fc.assert(fc.property(question, (asked) => {
      const { amounts, mix } = answerToday(asked);
      const { mix_m3, pot_m3, finish_m3, all_kg } = amounts;
      const film_m3 = asked.dry_m * asked.area_m2;
      expect(((mix_m3 - pot_m3) * mix.volumeSolidsFraction * asked.efficiencyFraction) / film_m3).toBeCloseTo(1, 9);
      // Thinner brings no solids: the finish that is bought has all of them.
      expect((finish_m3 * mix.finish.volumeSolidsFraction.value) / (mix_m3 * mix.volumeSolidsFraction)).toBeCloseTo(1, 9);
      expect(all_kg / (film_m3 * mix.finish.solidsDensity_kg_m3.value)).toBeCloseTo(1, 9);
    }), { numRuns: 50 });
  });

  it('passes no rule by a surface that nobody measured', () => {
    fc.assert(fc.property(question, (asked) => {
      const { verdict, surface_K } = answerToday(asked).climate;
      const unknown = verdict.rules.filter((each) => each.verdict === 'unknown');
      if (asked.surface_K === null) expect([surface_K, verdict.surfaceMargin_K, verdict.reasons.some(({ of }) => of === 'surfaceMargin')]).toEqual([null, null, false]);
      else expect(unknown).toEqual([]);
    }), { numRuns: 30 });
  });

  it('works film and amounts at the ratio typed, and else between the thick and the thin end', () => {
    fc.assert(fc.property(question, (asked) => {
      const { mix, thinning: { sprayed, thin, thick } } = answerToday(asked);
      expect(mix.thinnerRatio).toBeCloseTo(sprayed.thinnerRatio, 12);
      if (asked.thinnerRatio !== null) expect([sprayed.from, sprayed.thinnerRatio]).toEqual(['typed', asked.thinnerRatio]);
      else if (thick.thinnerRatio === null) expect(sprayed.from).toBe('assumed');
      else {
        expect(sprayed.thinnerRatio).toBeGreaterThanOrEqual(thick.thinnerRatio - 0.005);
        expect(sprayed.thinnerRatio).toBeLessThanOrEqual((thin.thinnerRatio ?? 10) + 0.005);
      }
    }), { numRuns: 100 });
  });

  it('makes of every answer a job that is read back as it is', () => {
    fc.assert(fc.property(question, (asked) => {
      const job = jobOfToday(answerToday(asked));
      expect(parseJob(JSON.parse(serialiseJob(job)), 'today').job).toEqual(JSON.parse(JSON.stringify(job)));
    }), { numRuns: 15 });
  });
});
