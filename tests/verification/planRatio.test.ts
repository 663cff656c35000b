import { describe, expect, it } from 'vitest';
import { normalNoise } from '../../sim/base/normalNoise.ts';
import { compareWithPlan } from '../../sim/run/survey/compareWithPlan.ts';
import { setUpOffers } from '../../sim/run/survey/setUpOffers.ts';
import { planRatio } from '../../sim/survey/planRatio.ts';
import { demoWithTransfer, filmAt, readingsOf, surveyOf } from '../unit/run/survey/truthJob.ts';

const TRUE_FACTOR = 0.85;
const NOISE_UM = 0.6;
const REPEATS = 200;

describe('a known truth: the coat sprayed with 15 % less transfer, read at 20 places with noise', () => {
  const job = demoWithTransfer(1);
  const planned = filmAt(job);
  // Sprayed again by the model with the lower transfer, not the plan scaled.
  const sprayed = filmAt(demoWithTransfer(TRUE_FACTOR));
  const truth = (job.setUps[0]?.transfer.efficiency_percent ?? NaN) * TRUE_FACTOR;

  it('the offered transfer’s interval holds the truth in about 95 % of 200 seeded repeats', () => {
    let held = 0;
    for (let seed = 0; seed < REPEATS; seed++) {
      const ratio = planRatio(sprayed.map((film, i) => ({ measured_m: film + NOISE_UM * 1e-6 * normalNoise(seed, 0, i), predicted_m: planned[i] as number })));
      const [offer] = setUpOffers(job.setUps.slice(0, 1), 'either', ratio, null);
      if (offer !== undefined && offer.to.low <= truth && truth <= offer.to.high) held++;
    }
    console.log(`the interval of the offered transfer holds the truth (${truth} %) in ${held} of ${REPEATS} repeats`);
    // Three standard deviations of a share of 0.95 in 200: 0.046.
    expect(held / REPEATS).toBeGreaterThan(0.95 - 0.046);
    expect(held / REPEATS).toBeLessThanOrEqual(0.996);
  });

  it('the whole comparison offers the same, and holds the truth in at least 17 of 20 repeats', { timeout: 240_000 }, () => {
    let held = 0;
    let alike = 0;
    for (let seed = 0; seed < 20; seed++) {
      const told = compareWithPlan(job, surveyOf(readingsOf(sprayed, NOISE_UM, seed)), { gaugeNoise_m: NOISE_UM * 1e-6 });
      const [offer] = told.offers;
      if (!told.isCorrelated) alike++;
      if (offer !== undefined && offer.to.low <= truth && truth <= offer.to.high) held++;
    }
    console.log(`the whole comparison: ${held} of 20 hold the truth; ${alike} took the readings as independent`);
    expect(held).toBeGreaterThanOrEqual(17);
    expect(alike).toBeGreaterThanOrEqual(17);
  });
});
