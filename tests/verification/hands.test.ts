import { beforeAll, describe, expect, it } from 'vitest';
import { DEMO_PLANNED_COAT, demoJob } from '../../sim/job/demo.ts';
import type { HandSpec } from '../../sim/job/schema.ts';
import { runLife } from '../../sim/run/coatLife.ts';
import { filmLawOf } from '../../sim/run/filmLaw.ts';
import { airMarks } from '../../sim/run/hands/handFilm.ts';
import { mixedSeed } from '../../sim/base/mixedSeed.ts';
import { handsSetting } from '../../sim/run/hands/handsOfSetUps.ts';
import type { HandOutcome } from '../../sim/run/hands/handsTally.ts';
import { judgeHands } from '../../sim/run/hands/judgeHands.ts';
import { HANDS_CELL_MM, sprayHands } from '../../sim/run/hands/sprayHands.ts';
import { layCoat } from '../../sim/run/lay.ts';
import { judgedLifeOf } from '../../sim/run/lifeCures.ts';
import { smallJob } from '../../sim/run/smallJob.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { planOf } from '../../sim/run/strokes.ts';
import { handOf, wander } from '../../sim/stroke/hand.ts';
import { filmFigures } from '../../sim/verdict/figures.ts';
import { JUDGED_COVER } from '../../sim/verdict/judged.ts';
import { findLifeZones } from '../../sim/verdict/lifeMaps.ts';
import type { CoatSetting } from '../../sim/run/result.ts';
import type { Planned } from '../../sim/stroke/plan.ts';
import { testJob, testSetting } from '../unit/run/testJob.ts';

const BEGINNER: HandSpec = { kind: 'beginner' };
const SEED = 3;

function travelOf(setting: CoatSetting, hand: HandSpec, index: number): Planned {
  return wander(planOf(setting, setting.plan), handOf(hand), mixedSeed(SEED, index));
}

describe('a hand sprayed coarsely, on a round panel', () => {
  const job = testJob({ cell_mm: HANDS_CELL_MM });
  const panel = { ...job.part.panels[0]!, outline: { circle_mm: [250, 250, 500] as [number, number, number] } };
  const setting = settleCoat({ ...job, part: { ...job.part, panels: [panel] } }, 'coat');
  const { cover } = setting.panelGrid;
  const area = cover.reduce((sum, share) => sum + share, 0);
  /** Share of the area in cells less than half covered, on which a living film does not lie. */
  const unjudged = cover.reduce((sum, share) => (share < JUDGED_COVER ? sum + share : sum), 0) / area;
  const practised: HandSpec = { kind: 'practised' };
  const outcomes = sprayHands(setting, { hand: practised, count: 4, seed: SEED }).outcomes;

  it('has the mean and the variation of the film laid in full', () => {
    expect(unjudged).toBeGreaterThan(0.005);
    for (const { index, mean_m, cv } of outcomes) {
      const exact = filmFigures(layCoat(setting, travelOf(setting, practised, index)).film.wet_m, setting.panelGrid);
      // Cells left out of the mean move it by their share times how far their film lies off the mean: a fifth of it,
      // since the target's limits are ± 20 %. Counted as bare they would move it by the whole share. Stamps half a half
      // depth apart, not a sixth, leave up to 27 times 0.1 % at single places, of either sign, and a tenth of that in the mean.
      expect(Math.abs(mean_m / exact.mean_m - 1)).toBeLessThan(0.2 * unjudged + 0.0027);
      // Variance is a mean as well: of squares, of which each cell left out has at most 0.2².
      expect(Math.abs(cv ** 2 - exact.cv ** 2)).toBeLessThan(0.2 ** 2 * unjudged + 2 * exact.cv * 0.0027);
    }
  });
});

describe('a run under many hands', () => {
  /** Film as heavy as a wall holds, in the mean: some hands run, some do not. */
  const job = smallJob({ name: 'Wall', note: '', part: 'Wall', panel_mm: [300, 400], coat: { id: 'coat', name: 'Coat', plan: { cross: true, speed_m_s: 0.32 }, target: { thickness_um: 110 } } });
  const setting = settleCoat(job, 'coat', { cell_mm: HANDS_CELL_MM });
  const fine = settleCoat(job, 'coat', { cell_mm: 5 });
  const judged: { readonly outcome: HandOutcome; readonly run_m2: number }[] = [];

  beforeAll(() => {
    for (const outcome of sprayHands(setting, { hand: BEGINNER, count: 4, seed: SEED }).outcomes) {
      const life = judgedLifeOf(runLife(fine, travelOf(fine, BEGINNER, outcome.index)));
      const { zones } = findLifeZones(life, fine.panelGrid, fine.target);
      judged.push({ outcome, run_m2: zones.reduce((sum, zone) => (zone.kind === 'run' ? sum + zone.area_m2 : sum), 0) });
    }
  }, 60_000);

  it('is found where the full verdict finds one of more than two and a half cells, and never where it finds none', () => {
    console.log(judged.map(({ outcome, run_m2 }) => `hand ${outcome.index}: in full ${(run_m2 * 1e4).toFixed(1)} cm², here ${(outcome.area_m2.run * 1e4).toFixed(1)} cm²`).join('\n'));
    const sure = judged.filter(({ run_m2 }) => run_m2 === 0 || run_m2 > 2.5e-4);
    for (const { outcome, run_m2 } of sure) expect(outcome.area_m2.run > 0).toBe(run_m2 > 0);
    // Half a cell all round nearly doubles the nine cells of 9 cm². Film that slid but did not gather would be four times as much.
    for (const { outcome, run_m2 } of judged.filter((one) => one.run_m2 > 9e-4)) expect(outcome.area_m2.run / run_m2).toBeLessThan(2);
    // Both kinds are among them, or this would show nothing.
    expect(sure.some(({ run_m2 }) => run_m2 > 0)).toBe(true);
    expect(sure.some(({ run_m2 }) => run_m2 === 0)).toBe(true);
  });
});

describe('orange peel under many hands', () => {
  const setting = handsSetting(demoJob(), DEMO_PLANNED_COAT, 'conventional', 'to-target');

  it('is found where the gun’s air makes it, as with full steps', () => {
    const { outcomes } = sprayHands(setting, { hand: BEGINNER, count: 2, seed: SEED });
    for (const { index, area_m2 } of outcomes) {
      const life = judgedLifeOf(runLife(setting, travelOf(setting, BEGINNER, index)));
      const full_m2 = findLifeZones(life, setting.panelGrid, setting.target).zones.reduce((sum, zone) => (zone.kind === 'orange-peel' ? sum + zone.area_m2 : sum), 0);
      console.log(`hand ${index}: orange peel with full steps ${(full_m2 * 1e4).toFixed(0)} cm², here ${(area_m2['orange-peel'] * 1e4).toFixed(0)} cm²`);
      // Far from the limit of 1 cm² either way, or the coarse steps might tip it.
      expect(full_m2).toBeGreaterThan(10e-4);
      expect(area_m2['orange-peel']).toBeGreaterThan(0);
    }
  });

  it('needs the air of a hard-blowing gun only', () => {
    const soft = handsSetting(demoJob(), DEMO_PLANNED_COAT, 'low-pressure', 'to-target');
    expect([setting, soft].map((one) => airMarks(one, filmLawOf(one), planOf(one, one.plan)))).toEqual([true, false]);
  });
});

describe('a plan turned end for end', () => {
  it('has the same chances, within the counting error', () => {
    const [here, there] = [0, 180].map((direction_deg) => {
      const setting = testSetting({ size_mm: [400, 500], cell_mm: HANDS_CELL_MM, plan: { direction_deg } });
      return judgeHands(sprayHands(setting, { hand: { kind: 'own', name: 'Uneven', distance_mm: 20, across_mm: 15, speed_percent: 15, pitch_deg: 4, yaw_deg: 4, trigger_ms: 60, correlation_s: 1 }, count: 40, seed: SEED + direction_deg }));
    });
    const error = Math.hypot(here!.faultyError, there!.faultyError);
    // Four standard errors of the difference: one trial in sixteen thousand; and they are small beside what is compared.
    expect(Math.abs(here!.faultyShare.mean - there!.faultyShare.mean)).toBeLessThan(4 * error);
    expect(4 * error).toBeLessThan(0.8 * here!.faultyShare.mean);
    expect(Math.abs(here!.faultless.share - there!.faultless.share)).toBeLessThan(4 * Math.max(0.04, Math.hypot(here!.faultless.error, there!.faultless.error)));
  });
});
