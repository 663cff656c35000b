import { describe, expect, it } from 'vitest';
import { fitKinds } from '../../../../sim/run/fit/fitKinds.ts';
import { firstStroke_m } from '../../../../sim/run/fit/fitPlan.ts';
import { tryPlaces, type Weighing } from '../../../../sim/run/fit/fitTries.ts';
import { handRooms } from '../../../../sim/run/fit/handRoom.ts';
import { nearestFault, roomsOf } from '../../../../sim/run/fit/rooms.ts';
import type { PointFilm, SprayPoint } from '../../../../sim/run/window/sprayPoint.ts';
import { fitJob } from './fitJob.ts';

const EVEN: PointFilm = {
  wetMean_m: 50e-6,
  dryMean_m: 7.5e-6,
  least_m: 50e-6,
  most_m: 50e-6,
  cv: 0,
  dryFraction: 0,
  run_m: 0,
  peel_m: 0,
  blushMargin_K: 5,
  landedFraction: 0.5,
  slack: { 'thin-lap': 1 / 0.8 - 1, 'heavy-spot': 1 - 1 / 1.2, run: 1, 'dry-spray': 1, 'orange-peel': 1, blush: 1 },
  distanceInRange: true,
};
const { kinds } = fitKinds(fitJob(), 'coat', {});
const { target } = kinds[0]!.setting;
const weighing: Weighing = { wish: {}, ignored: new Set() };

describe('roomsOf', () => {
  it('gives an even film at the target, with no fault near, the whole room to each', () => {
    for (const room of Object.values(roomsOf(EVEN, target))) expect(room).toBeCloseTo(1, 12);
  });

  it('is 0 at a limit, negative past it, never above 1', () => {
    const rooms = roomsOf({ ...EVEN, slack: { ...EVEN.slack, run: -2, 'dry-spray': 0, blush: 7, 'heavy-spot': (1 - 1 / 1.2) / 4 } }, target);
    expect(rooms).toMatchObject({ run: -2, 'dry-spray': 0, blush: 1 });
    expect(rooms['heavy-spot']).toBeCloseTo(0.25, 12);
    expect(nearestFault(rooms)).toBe('run');
    expect(nearestFault(rooms, new Set(['run']))).toBe('dry-spray');
  });
});

describe('handRooms', () => {
  /** A window with straight walls: heavy below 0.25 m/s, thin above 0.5 m/s, runs nearer than 0.17 m, nothing farther. */
  const walled = (points: readonly SprayPoint[]): PointFilm[] =>
    points.map(({ speed_m_s, distance_m }) => ({
      ...EVEN,
      distanceInRange: distance_m <= 0.23,
      slack: {
        ...EVEN.slack,
        'heavy-spot': (speed_m_s - 0.25) * 0.5,
        'thin-lap': (0.5 - speed_m_s) * 0.5,
        run: (distance_m - 0.17) * 3,
      },
    }));

  it('finds the walls of a window, and the end of what the fan may be believed for', () => {
    const kind = { ...kinds[0]!, predict: walled };
    const [one] = tryPlaces(kind, [{ distance: 0.2, overlap: 0.5, fluid: 3e-6, thinner: 0.33 }], weighing, {});
    const standing = { ...one!, point: { ...one!.point, speed_m_s: 0.3 } };
    const rooms = roomsOf(walled([standing.point])[0]!, target);
    const hand = handRooms({ ...standing, rooms }, weighing, {});
    const way = (axis: string, direction: string) => hand.find((room) => room.axis === axis && room.way === direction)!;
    expect(way('distance', 'less')).toMatchObject({ fault: 'run' });
    // Room and distance are both straight here, but the nearest fault of the start may be another: not nearer than that line says.
    expect(way('distance', 'less').by).toBeGreaterThan(0.025);
    expect(way('distance', 'less').by).toBeLessThan(0.05);
    expect(way('distance', 'more')).toMatchObject({ fault: 'distance-range' });
    expect(way('distance', 'more').by).toBeCloseTo(0.025, 12);
    expect(way('speed', 'less')).toMatchObject({ fault: 'heavy-spot' });
    expect(way('speed', 'less').by).toBeCloseTo(0.05, 9);
    expect(way('speed', 'more')).toMatchObject({ fault: null, steps: 3 });
  });
});

describe('tryPlaces', () => {
  it('solves the speed so that the mean film is the wish, in either kind of film', () => {
    for (const wish of [{}, { dry_m: 9e-6 }]) {
      for (const kind of fitKinds(fitJob(), 'coat', wish).kinds) {
        const places = [0.15, 0.2, 0.25].map((distance, i) => ({ distance, overlap: 0.4 + 0.1 * i, fluid: 2.5e-6 + i * 5e-7, thinner: 0.2 + 0.1 * i }));
        for (const { film } of tryPlaces(kind, places, { wish, ignored: new Set() }, {})) {
          const mean_m = kind.setting.target.film === 'wet' ? film.wetMean_m : film.dryMean_m;
          // The same closed form both ways: rounding only.
          expect(Math.abs(mean_m / kind.setting.target.thickness_m - 1)).toBeLessThan(1e-12);
        }
      }
    }
  });
});

describe('firstStroke_m', () => {
  it('stands so far out that the stroke before it would just miss the panel', () => {
    const [width_m, overlap] = [0.2, 0.7];
    const first_m = firstStroke_m({ firstStroke_m: 0 }, width_m, overlap);
    expect(first_m - (1 - overlap) * width_m + width_m / 2).toBeCloseTo(0, 12);
    expect(firstStroke_m({ firstStroke_m: 0 }, width_m, 0.4)).toBe(0);
  });
});
