import { beforeAll, describe, expect, it } from 'vitest';
import { filmNow } from '../../../../sim/film/life/advance.ts';
import { parseJob } from '../../../../sim/job/parse.ts';
import { demoJob } from '../../../../sim/job/demo.ts';
import type { Job } from '../../../../sim/job/schema.ts';
import { USUAL_ROOM } from '../../../../sim/job/usualRoom.ts';
import { vapourSentence, solventSentence } from '../../../../sim/report/vapourWords.ts';
import { liveUntil, startCoat } from '../../../../sim/run/livingCoat.ts';
import { layCoat } from '../../../../sim/run/lay.ts';
import { coatVapour } from '../../../../sim/run/scheme/coatVapour.ts';
import { planScheme } from '../../../../sim/run/scheme/planScheme.ts';
import { schemeSolvent, solventByMinute } from '../../../../sim/run/scheme/solventByMinute.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import { strokesOf } from '../../../../sim/run/strokes.ts';
import type { PlannedScheme } from '../../../../sim/scheme/planned.ts';
import type { SolventByMinute } from '../../../../sim/scheme/solvent.ts';

/** One brushed and one sprayed coat of the demo's own mixes. */
function twoCoats(): Job {
  const job = parseJob(JSON.stringify(demoJob())).job;
  const coat = job.coats.find(({ recording }) => recording === undefined)!;
  const said = { wait_h: 1, layer: 'clear' as const, share_percent: 100 };
  return {
    ...job,
    schemes: [{
      id: 'two', name: 'Two', panels: [coat.panel], sides: 1, clearCoats: 0,
      steps: [
        { ...said, kind: 'brush', id: 'brushed', name: 'Brushed', mix: job.mixes[0]!.id, dry_um: 20, within_percent: 30, loss_percent: 10, work_min: 12 },
        { ...said, kind: 'spray', id: 'sprayed', name: 'Sprayed', coat: coat.id },
      ],
    }],
  };
}

let job: Job;
let plan: PlannedScheme;
let coats: SolventByMinute[];
beforeAll(() => {
  job = twoCoats();
  plan = planScheme(job);
  coats = schemeSolvent(job, plan);
});

const sum = (values: Iterable<number>): number => [...values].reduce((all, value) => all + value, 0);

describe('solvent by minute', () => {
  it('lets off all that is used, and never takes any back', () => {
    expect(coats.map(({ stepId }) => stepId)).toEqual(['brushed', 'sprayed']);
    coats.forEach((coat, k) => {
      const planned = plan.steps[k]!.coat!;
      const used_m3 = planned.liquid_m3.value * (1 - planned.mix.volumeSolidsFraction);
      const out_m3 = sum(coat.parts.map(({ liquid_m3, later_m3 }) => sum(liquid_m3) + later_m3));
      expect(Math.abs(out_m3 / used_m3 - 1)).toBeLessThan(1e-9);
      for (const { liquid_m3, later_m3, atOnce_m3, landed_m3, used_m3: own } of coat.parts) {
        expect(Math.min(...liquid_m3, later_m3, atOnce_m3, landed_m3)).toBeGreaterThanOrEqual(0);
        expect(Math.abs(atOnce_m3 + landed_m3 - own)).toBeLessThanOrEqual(1e-12 * own);
      }
    });
  });

  it('holds each solvent in the share that the mix has of it', () => {
    for (const [k, coat] of coats.entries()) {
      for (const { solvent, volumeFraction } of plan.steps[k]!.coat!.mix.solvents) {
        const part = coat.parts.find((one) => one.solvent.id === solvent.id)!;
        expect(part.used_m3 / coat.used_m3).toBeCloseTo(volumeFraction, 9);
      }
    }
  });

  it('lets the brushed loss off while it is laid, and the sprayed overspray with the gun', () => {
    const [brushed, sprayed] = coats as [SolventByMinute, SolventByMinute];
    expect(brushed.lay_s).toBe(720);
    expect(sum(brushed.parts.map(({ atOnce_m3 }) => atOnce_m3)) / brushed.used_m3).toBeCloseTo(0.1, 6);
    expect(sum(sprayed.parts.map(({ atOnce_m3 }) => atOnce_m3)) / sprayed.used_m3).toBeGreaterThan(0.3);
    const busy = sum(sprayed.parts.map(({ liquid_m3 }) => liquid_m3[0]!));
    const after = sum(sprayed.parts.map(({ liquid_m3 }) => liquid_m3[30]!));
    expect(busy).toBeGreaterThan(20 * after);
  });

  it('lets quick solvents off before slow ones', () => {
    const [, sprayed] = coats as [SolventByMinute, SolventByMinute];
    const half = (part: SolventByMinute['parts'][number]): number => {
      let out = 0;
      return part.liquid_m3.findIndex((liquid_m3) => (out += liquid_m3) > 0.9 * part.used_m3);
    };
    const by = [...sprayed.parts].sort((a, b) => b.solvent.relativeEvaporation.value - a.solvent.relativeEvaporation.value);
    expect(half(by[0]!)).toBeLessThan(half(by.at(-1)!));
  });

  it('lands near the whole film\'s own account, of which the even film is the short cut', () => {
    const [, sprayed] = coats as [SolventByMinute, SolventByMinute];
    const spec = plan.steps[1]!.spec;
    if (spec.kind !== 'spray') throw new Error('not sprayed');
    const setting = settleCoat(job, spec.coat, { cell_mm: 10 });
    const strokes = strokesOf(setting);
    const { account } = layCoat(setting, strokes);
    const coat = startCoat({ ...setting, coat: { ...setting.coat, over: undefined } }, strokes);
    const rows = [5, 10, 30, 60].map((minute) => {
      liveUntil(coat, minute * 60);
      const { landedFast_m3, landedSlow_m3, evaporatedFast_m3, evaporatedSlow_m3 } = filmNow(coat.film, coat.law).account;
      const left = (landedFast_m3 + landedSlow_m3 - evaporatedFast_m3 - evaporatedSlow_m3) / (account.sprayed_m3 * (1 - setting.setUp.volumeSolidsFraction));
      const ours = 1 - sum(sprayed.parts.map(({ liquid_m3 }) => sum(liquid_m3.subarray(0, minute)))) / sprayed.used_m3;
      return { minute, left, ours };
    });
    console.table(rows);
    // Share of all the solvent used that is still in the film. Edges and mist dry sooner than the mean film.
    for (const { left, ours } of rows) expect(Math.abs(ours - left)).toBeLessThan(0.03);
  }, 60_000);

  it('asks for a coat', () => {
    expect(() => solventByMinute(job, plan, { ...plan.steps[0]!, coat: null })).toThrow(/step brushed has no coat/);
  });
});

describe('a coat in a room', () => {
  it('is worse in a smaller room and with less fan, and says so in a sentence', () => {
    const [, sprayed] = coats as [SolventByMinute, SolventByMinute];
    const worst = (volume_m3: number, fresh_m3_h: number): number => {
      const { course } = coatVapour(sprayed, { volume_m3, fresh_m3_h, mixing: 4 }, plan.air);
      return course.lelFraction[course.worstLel]!;
    };
    expect(worst(60, 1000)).toBeGreaterThan(worst(120, 1000));
    expect(worst(60, 0)).toBeGreaterThan(worst(60, 3000));
    const { course, shut, needed } = coatVapour(sprayed, USUAL_ROOM, plan.air);
    expect(shut.lelFraction).toBeGreaterThanOrEqual(course.lelFraction.at(-1)!);
    expect(needed.exposure_m3_s).toBeGreaterThan(10 * needed.quarter_m3_s);
    expect(vapourSentence(course)).toMatch(/^At the worst, at the end of the [\d.]+ h watched, an estimated [\d.]+ % of the lower explosive limit, and [\d.]+ times the exposure limits together, .+: far from exploding is not fit to breathe\.$/);
    expect(vapourSentence(coatVapour(sprayed, { ...USUAL_ROOM, fresh_m3_h: 3000 }, plan.air).course)).toMatch(/^At the worst, minute \d+, /);
    expect(solventSentence(sprayed, 'metric')).toContain('all of it ends in the air');
  });
});
