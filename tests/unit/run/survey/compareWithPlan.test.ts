import { beforeAll, describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import { parseJob } from '../../../../sim/job/parse.ts';
import { serialiseJob } from '../../../../sim/job/serialise.ts';
import { belowSentences, causeSentences, offerWords, planRatioSentence, trendSentences } from '../../../../sim/report/survey/truthWords.ts';
import { compareWithPlan } from '../../../../sim/run/survey/compareWithPlan.ts';
import { predictedAt, predictedFilm } from '../../../../sim/run/survey/predictedFilm.ts';
import { withOffer } from '../../../../sim/run/survey/setUpOffers.ts';
import type { PlanComparison } from '../../../../sim/survey/comparison.ts';
import { filmAt, PLACES_MM, readingsOf, surveyOf } from './truthJob.ts';

const job = demoJob();
const planned = filmAt(job);
const times = (factor: number) => planned.map((film) => film * factor);

describe('a predicted film', () => {
  it('at a cell’s middle is that of the cell, and two coats are their sum', () => {
    const one = predictedFilm(job, ['planned']);
    const both = predictedFilm(job, ['planned', 'second-coat']);
    const { columns, cellSize_m } = one.panelGrid.grid;
    const cell = 40 * columns + 20;
    const at = [20.5 * cellSize_m, 40.5 * cellSize_m] as const;
    // Cells are in single precision, 2^-24 of the film for each of some dozens of strokes.
    expect(Math.abs((predictedAt(one, [at])[0]?.dry_m ?? 0) / (one.dry_m[cell] as number) - 1)).toBeLessThan(1e-5);
    expect(both.dry_m[cell]! / one.dry_m[cell]!).toBeCloseTo(2, 4);
  });
});

describe('a survey that reads 0.85 of the plan', () => {
  let told: PlanComparison;
  beforeAll(() => {
    told = compareWithPlan(job, surveyOf(readingsOf(times(0.85), 0.3, 1)), { gaugeNoise_m: 0.3e-6 });
  });

  it('says so with an interval, and that the gauge alone may scatter like that', () => {
    expect(told.ratio!.low).toBeLessThan(0.85);
    expect(told.ratio!.high).toBeGreaterThan(0.85);
    expect(told.noiseShare!).toBeGreaterThan(0.4);
    expect(planRatioSentence(told)).toMatch(/^The dry film measured is 8\d(\.\d)? % \(8\d.* of that planned: 20 readings, 95 % interval/);
  });

  it('offers transfer or fluid rate, which the dry film cannot tell apart', () => {
    expect(told.cause).toBe('either');
    expect(causeSentences(told).join(' ')).toContain('cannot tell them apart');
    expect(told.offers.map(({ setUp, number }) => `${setUp} ${number}`)).toEqual(['low-pressure efficiency', 'low-pressure fluidRate']);
    const [offer] = told.offers;
    expect(offer!.to.value).toBeCloseTo(offer!.from * told.ratio!.value, 2);
    expect(offerWords(offer!, 'metric')).toMatch(/^Transfer efficiency 65 % to 5\d(\.\d)? % \(5\d.* to 5\d.* %\)$/);
  });

  it('with an offer taken is a job that reads back, whose plan agrees with the readings', () => {
    const [offer] = told.offers;
    const taken = { ...job, setUps: job.setUps.map((setUp) => (setUp.id === offer!.setUp ? withOffer(setUp, offer!) : setUp)) };
    expect(parseJob(serialiseJob(taken)).job.setUps[0]!.transfer.efficiency_percent).toBe(offer!.to.value);
    expect(taken.setUps[0]!.knownWithin!.efficiency_percent!).toBeCloseTo(((offer!.to.high - offer!.to.value) / offer!.to.value) * 100, 1);
    const again = compareWithPlan(taken, surveyOf(readingsOf(times(0.85), 0.3, 1)), { gaugeNoise_m: 0.3e-6 });
    expect(again.ratio!.value).toBeCloseTo(1, 3);
    expect(again.offers).toEqual([]);
    expect(again.cause).toBe('none');
  });

  it('believes 0.85 of the plan between the readings, hatches what is far, and shows an error everywhere on the panel', () => {
    const { between, panelGrid, predicted_m } = told;
    const { columns, cellSize_m } = panelGrid.grid;
    const cell = Math.floor(0.7 / cellSize_m) * columns + Math.floor(0.19 / cellSize_m);
    expect(Math.abs((between!.difference_m[cell] as number) / (predicted_m[cell] as number) + 0.15)).toBeLessThan(0.04);
    expect(between!.isGuess[cell]).toBe(0);
    for (let i = 0; i < predicted_m.length; i++) {
      if ((panelGrid.cover[i] as number) < 0.5) expect(between!.error_m[i]).toBeNaN();
      else expect(between!.error_m[i]).toBeGreaterThan(0);
    }
  });
});

describe('what differs besides a ratio', () => {
  it('a hand that thins out with the strokes shows as a drift of their order, of that size', () => {
    const predicted = predictedFilm(job, ['planned']);
    const at = predictedAt(predicted, PLACES_MM.map(([x, y]) => [x / 1e3, y / 1e3] as const));
    const thinning = at.map(({ dry_m, orderMoment_m }) => dry_m - 0.3 * (orderMoment_m - 0.5 * dry_m));
    const told = compareWithPlan(job, surveyOf(readingsOf(thinning, 0.05, 2)), { gaugeNoise_m: 0.05e-6 });
    const drift = told.trends.find(({ kind }) => kind === 'order')!;
    expect(drift.isSeen).toBe(true);
    expect(drift.change.low).toBeLessThan(-0.3);
    expect(drift.change.high).toBeGreaterThan(-0.3);
    expect(trendSentences(told).join(' ')).toContain('spread thinner as the coat went on');
  });

  it('combs that agree with the wet plan put a low dry film on the solids, and nothing is offered', () => {
    const predicted = predictedFilm(job, ['planned']);
    const combs = PLACES_MM.slice(0, 6).map(([x, y]) => {
      const wet_um = predictedAt(predicted, [[x / 1e3, y / 1e3]])[0]!.lastWet_m * 1e6;
      return { kind: 'comb' as const, low_um: wet_um - 3, high_um: wet_um + 3, x_mm: x, y_mm: y };
    });
    const told = compareWithPlan(job, surveyOf([...readingsOf(times(0.85), 0.2, 3), ...combs]));
    expect(told.cause).toBe('solids');
    expect(told.offers).toEqual([]);
    expect(told.wet!.solids!.value).toBeCloseTo(0.85, 1);
    const thin = compareWithPlan(job, surveyOf([...readingsOf(times(0.85), 0.2, 3), ...combs.map((comb) => ({ ...comb, low_um: comb.low_um * 0.85, high_um: comb.high_um * 0.85 }))]));
    expect(thin.cause).toBe('transfer-or-flow');
    expect(thin.offers).toHaveLength(2);
  });
});

describe('few readings, or none with a place', () => {
  it('below eight no range is estimated, and it is said', () => {
    const told = compareWithPlan(job, surveyOf(readingsOf(times(0.9), 0.3, 4).slice(0, 5)));
    expect(told.between!.origin).toBe('few');
    expect(told.between!.law.range_m).toBeCloseTo(0.2, 6);
    expect(told.trends).toEqual([]);
  });

  it('one reading has a ratio without an interval, and none has no ratio', () => {
    expect(compareWithPlan(job, surveyOf(readingsOf(times(0.9), 0, 4).slice(0, 1))).ratio!.low).toBeNaN();
    const none = compareWithPlan(job, surveyOf([]));
    expect([none.ratio, none.between, none.below]).toEqual([null, null, null]);
  });

  it('without places the mean stands against the mean of the plan', () => {
    const told = compareWithPlan(job, surveyOf([9, 9.4, 9.2].map((dry_um) => ({ kind: 'metal' as const, dry_um }))));
    expect(told.ratio!.value).toBeCloseTo(9.2e-6 / told.predictedMean_m, 6);
    expect(told.doubts.join()).toContain('no map');
  });

  it('a survey that names no coat of its panel is refused, saying what to do', () => {
    expect(() => compareWithPlan(job, surveyOf([], { coats: [] }))).toThrow(/say on the sheet Readings whose film was read/);
  });
});

describe('the chance that the film is too thin where nobody read', () => {
  const nominal = (share: number) => ({ rule: { kind: 'mean-80' as const, nominal_um: share, low_percent: 80, share_percent: 20, boundary: 'strict' as const, correction_um: 0 } });
  it('is small far above the limit, near 1 far below it, and the same each time', () => {
    const survey = (nominal_um: number) => compareWithPlan(job, surveyOf(readingsOf(times(1), 0.2, 5), nominal(nominal_um)), { gaugeNoise_m: 0.2e-6 });
    const high = survey(3);
    expect(high.below!.anywhere).toBeLessThan(0.05);
    expect(survey(20).below!.anywhere).toBe(1);
    expect(survey(3).below).toEqual(high.below);
    expect(belowSentences(high, 'metric')[1]).toContain('1000 draws');
  });
});
