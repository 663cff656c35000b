import { describe, expect, it } from 'vitest';
import { fitJson } from '../../../sim/report/fitJson.ts';
import { fitText, obstacleWords } from '../../../sim/report/fitText.ts';
import type { ReportedFit, ReportedProposal } from '../../../sim/report/reportedFit.ts';
import type { PointFilm } from '../../../sim/verdict/workingWindow.ts';
import { sensitivityWords } from '../../../sim/report/sensitivityWords.ts';
import { workOut } from '../../../sim/run/fit/workOut.ts';
import { fitJob } from '../run/fit/fitJob.ts';

const UM = 1e-6;
const LIMITS = { passes: 'single', thinnerRatio: [0.33, 0.33] } as const;
/** What the search gives is what the report reads: a field that one side lacks does not compile. */
const met: ReportedFit = workOut(fitJob({ panel_mm: [300, 300], gun: { name: 'Gun' } }), 'coat', { dry_m: 20 * UM, coatCount: 2, limits: LIMITS });
const missed: ReportedFit = workOut(fitJob(), 'coat', { dry_m: 40 * UM, limits: LIMITS });

describe('fitText', () => {
  const text = fitText(met, 'metric').replace(/\s+/g, ' ');

  it('says what was wished for, and each way with its gun, strokes, film, room and check', () => {
    const [first] = met.proposals as [ReportedProposal];
    expect(text).toMatch(/Coat: 20 µm dry in 2 coats, 10 µm dry each\./);
    expect(text).toContain(`From ${Math.round(first.point.distance_m * 1000)} mm at `);
    expect(text).toContain(`${first.travel.strokes} strokes in one pass`);
    expect(text).toContain('10 µm dry a coat, 20 µm dry in all, 25 g/m²');
    expect(text).toMatch(/Nearest is .* of the room there can be/);
    expect(text).toMatch(/Laid on the panel and watched by the model: .* of the wished film on average/);
    expect(text).toMatch(/never calls a room safe/);
  });

  it('speaks US units throughout when asked', () => {
    const us = fitText(met, 'us');
    expect(us).toMatch(/0\.787 mil dry in 2 coats/);
    expect(us).toMatch(/ft\/min/);
    expect(us).not.toMatch(/\d (µm|mm|mL|m\/s)\b/);
  });

  it('says plainly that nothing meets a wish, what stands in the way and what would help', () => {
    const words = fitText(missed, 'metric').replace(/\s+/g, ' ');
    expect(words).toContain('Nothing that was tried meets this wish.');
    expect(words).toMatch(/Runs: past by [\d.]+ %; a coat is [\d.]+ µm wet, and there runs would begin above [\d.]+ µm\./);
    expect(words).toMatch(/With \d coats the rest of the wish is met/);
  });

  it('tells a blush in degrees', () => {
    const cold = { ...missed.nearest!, film: { ...missed.nearest!.film, blushMargin_K: -2 } };
    expect(obstacleWords({ limit: 'blush', missedBy: 0.4, heldWet_m: null }, cold, 'metric')).toBe('Blush: film 2.0 °C below the dew point.');
  });
});

describe('fitJson', () => {
  it('has the same figures, with their units in the keys, as plain JSON', () => {
    const json = JSON.parse(JSON.stringify(fitJson(met, 'metric'))) as { wish: object; meets: boolean; proposals: { plan: object; laid: { ofWish_percent: number }; predicted: { dry_um: number } }[] };
    expect(json.wish).toEqual({ film: 'dry', eachCoat_um: 10, inAll_um: 20 });
    expect(json.meets).toBe(true);
    json.proposals.forEach(({ plan, laid, predicted }, i) => {
      const proposal = met.proposals[i]!;
      expect(plan).toEqual(proposal.plan);
      expect(laid.ofWish_percent).toBeCloseTo(100 * proposal.laid!.filmRatio, 6);
      expect(predicted.dry_um).toBeCloseTo(10, 6);
    });
    const none = JSON.parse(JSON.stringify(fitJson(missed, 'metric'))) as { meets: boolean; obstacles: { limit: string; missedBy_percent: number }[]; relaxed: { kind: string }[] };
    expect(none.meets).toBe(false);
    expect(none.obstacles.map(({ limit }) => limit)).toEqual(missed.obstacles.map(({ limit }) => limit));
    expect(none.relaxed.length).toBe(missed.relaxations.length);
  });
});

describe('sensitivityWords', () => {
  const before: PointFilm = {
    wetMean_m: 50 * UM,
    dryMean_m: 7.5 * UM,
    least_m: 48 * UM,
    most_m: 52 * UM,
    landedFraction: 0.6,
    cv: 0,
    dryFraction: 0.02,
    run_m: 0,
    peel_m: 0.3 * UM,
    blushMargin_K: 2,
    slack: { 'thin-lap': 0, 'heavy-spot': 0, run: 0, 'dry-spray': 0, 'orange-peel': 0, blush: 0 },
    distanceInRange: true,
  };
  const step = (axis: 'distance' | 'speed' | 'temperature' | 'humidity' | 'thinner', by: number, value: number, after: Partial<PointFilm>, filmRatio = 1) => ({ axis, by, value, after: { ...before, ...after }, filmRatio });
  const words = (one: ReturnType<typeof step>, system: 'metric' | 'us' = 'metric') => sensitivityWords({ before, steps: [one] }, system)[0];

  it('tells a step and what it changes', () => {
    expect(words(step('distance', 0.025, 0.225, { dryFraction: 0.06 }, 0.89))).toBe('25 mm farther: 11 % less film, dry share up from 2 % to 6 %.');
    expect(words(step('speed', -0.03, 0.27, { run_m: 0.004 }, 1 / 0.9))).toBe('10 % slower: 11.1 % more film, slide up from 0 mm to 4 mm.');
    expect(words(step('temperature', 3, 297, { blushMargin_K: 4.1 }), 'us')).toBe('5.4 °F warmer: margin to the dew point up from 3.6 °F to 7.4 °F.');
  });

  it('says where nothing shows, and where the fan is not known', () => {
    expect(words(step('thinner', 0.033, 0.363, {}))).toBe('10 % more thinner: nothing that shows.');
    expect(words(step('distance', 0.025, 0.425, { distanceInRange: false }, 0.9))).toMatch(/10 % less film; a guess, outside the distances/);
  });
});
