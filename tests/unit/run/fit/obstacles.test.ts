import { describe, expect, it } from 'vitest';
import { fitKinds } from '../../../../sim/run/fit/fitKinds.ts';
import { tryPlaces } from '../../../../sim/run/fit/fitTries.ts';
import { obstaclesOf } from '../../../../sim/run/fit/obstacles.ts';
import { workOut } from '../../../../sim/run/fit/workOut.ts';
import { fitJob } from './fitJob.ts';

const UM = 1e-6;

describe('a wish that nothing meets', () => {
  /** One coat of 45 µm dry needs some 300 µm wet, which no wall holds; in a few coats it is easy. */
  const worked = workOut(fitJob(), 'coat', { dry_m: 45 * UM, coatCount: 1, limits: { passes: 'single' } });

  it('gives the nearest try, and the limits that it misses with the worst first', () => {
    expect(worked.proposals).toEqual([]);
    expect(worked.nearest?.margin).toBeLessThan(0);
    const misses = worked.obstacles.map(({ missedBy }) => missedBy);
    expect(worked.obstacles.map(({ limit }) => limit)).toContain('run');
    expect(misses).toEqual([...misses].sort((a, b) => b - a));
    for (const { limit, missedBy } of worked.obstacles) {
      expect(missedBy).toBeGreaterThan(0);
      if (limit === 'run') expect(missedBy).toBeCloseTo(-worked.nearest!.rooms.run, 9);
    }
  });

  it('says what each limit gives if taken away: more coats hold it', () => {
    const coats = worked.relaxations.find(({ relaxed }) => relaxed.kind === 'coats')!;
    expect(coats.meets).toBe(true);
    expect(coats.relaxed.kind === 'coats' && coats.relaxed.coatCount).toBeGreaterThan(1);
    expect(Math.min(...Object.values(coats.proposal.rooms))).toBeGreaterThanOrEqual(0);
    expect(worked.relaxations.map(({ relaxed }) => relaxed)).toContainEqual({ kind: 'dropped', limit: 'passes' });
    const withoutRuns = worked.relaxations.find(({ relaxed }) => relaxed.kind === 'ignored' && relaxed.limit === 'run')!;
    // What else is past stays past.
    expect(withoutRuns.margin).toBeGreaterThan(worked.nearest!.margin);
    expect(withoutRuns.meets).toBe(worked.obstacles.every(({ limit }) => limit === 'run'));
  });

  it('measures the film that would hold: at the speed that lays it, the run is at its limit', () => {
    const { kinds } = fitKinds(fitJob(), 'coat', { dry_m: 30 * UM, limits: { passes: 'single' } });
    const kind = kinds[0]!;
    const nearest = tryPlaces(kind, [{ distance: 0.2, overlap: 0.5, fluid: kind.setting.setUp.fluidRate_m3_s, thinner: 0.33 }], { wish: {}, ignored: new Set() }, {})[0]!;
    const held_m = obstaclesOf(nearest, {}).find(({ limit }) => limit === 'run')!.heldWet_m!;
    const at = (wet_m: number) => kind.predict([{ ...nearest.point, speed_m_s: (nearest.point.speed_m_s * nearest.film.wetMean_m) / wet_m }])[0]!.slack.run;
    expect(held_m).toBeLessThan(nearest.film.wetMean_m);
    // The straight line lies between two speeds a quarter apart, so the film is known to an eighth at worst.
    expect(at(held_m * 1.125)).toBeLessThan(0);
    expect(at(held_m / 1.125)).toBeGreaterThan(0);
  });

  it('tells of a hand that would have to be too fast', () => {
    const { nearest, obstacles } = workOut(fitJob(), 'coat', { dry_m: 3 * UM, limits: { passes: 'single', speed_m_s: [0.2, 0.3], fluidRate_m3_s: { gun: [3e-6, 3.2e-6] } } }, { relax: false });
    expect(nearest?.point.speed_m_s).toBeGreaterThan(0.3);
    expect(obstacles.find(({ limit }) => limit === 'speed')?.missedBy).toBeCloseTo(nearest!.past.speed, 9);
    const { kinds } = fitKinds(fitJob(), 'coat', { dry_m: 3 * UM, limits: { passes: 'single', fluidRate_m3_s: { gun: [3e-6, 3.2e-6] } } });
    // The film of endless strokes: no place of the kind needs less speed than the one of the farthest, least lapped, least fed and most thinned gun.
    const slowest = kinds[0]!.pointAt({ distance: 0.25, overlap: 0.25, fluid: 3e-6, thinner: 0.495 }).speed_m_s;
    expect(nearest!.point.speed_m_s).toBeGreaterThanOrEqual(slowest * (1 - 1e-9));
    expect(slowest).toBeGreaterThan(0.3);
  });
});
