import { describe, expect, it } from 'vitest';
import { burstSpot } from '../../../../../sim/gun/card/photo/burstSpot.ts';
import type { FilmMap } from '../../../../../sim/gun/card/photo/cardPhoto.ts';
import { strokeSpot } from '../../../../../sim/gun/card/photo/strokeSpot.ts';
import { burstFilm, type Card, strokeFilm } from '../../../../helpers/cardPhotos.ts';

/** A map without any camera: 300 × 240 mm in cells of 1 mm. */
function mapOf(film: Card['film']): { map: FilmMap; isSpot: Uint8Array; isClean: Uint8Array } {
  const [columns, rows, cellSize_m] = [300, 240, 0.001];
  const cells = Float32Array.from({ length: columns * rows }, (_, i) => film(((i % columns) + 0.5) * cellSize_m - 0.15, (Math.floor(i / columns) + 0.5) * cellSize_m - 0.12));
  return { map: { columns, rows, cellSize_m, film: cells }, isSpot: Uint8Array.from(cells, (value) => (value > 0 ? 1 : 0)), isClean: new Uint8Array(cells.length).fill(1) };
}

const FAN = { width_m: 0.18, beta1: 2.5, peak: 0.6 };

describe('burstSpot', () => {
  for (const turn_deg of [0, 25, 90, 130]) {
    it(`finds axis, width and depth of a spot turned ${turn_deg}°`, () => {
      const { map, isSpot, isClean } = mapOf(burstFilm({ ...FAN, turn_rad: (turn_deg * Math.PI) / 180, middle_m: [0.01, -0.01] }, 0.05));
      const { spot, doubts } = burstSpot(map, isSpot, isClean);
      expect((spot.angle_rad * 180) / Math.PI).toBeCloseTo(turn_deg, 1);
      // Cells of 1 mm: a width is known to about half a cell at each edge.
      expect(Math.abs(spot.width_m - 0.18)).toBeLessThan(0.002);
      expect(Math.abs(spot.depth_m! - 0.05)).toBeLessThan(0.0005);
      expect(Math.abs(spot.bendFraction!)).toBeLessThan(0.002);
      expect(doubts).toEqual([]);
    });
  }

  it('measures its film across the short axis: the stroke of the same fan', () => {
    const { map, isSpot, isClean } = mapOf(burstFilm({ ...FAN, turn_rad: 0.5 }, 0.05));
    const { readings } = burstSpot(map, isSpot, isClean);
    const peak = Math.max(...readings.film);
    for (const [i, place_m] of readings.place_m.entries()) {
      const u = place_m / 0.09;
      expect(Math.abs(readings.film[i]! / peak - Math.max(0, 1 - u * u) ** 2)).toBeLessThan(0.005);
    }
  });

  for (const bend of [0.3, -0.2]) {
    it(`measures a crescent bent by ${bend} of the depth, and the depth apart from it`, () => {
      const { map, isSpot, isClean } = mapOf(burstFilm({ ...FAN, turn_rad: 0.3 }, 0.05, bend * 0.05));
      const { spot } = burstSpot(map, isSpot, isClean);
      expect(spot.bendFraction!).toBeCloseTo(bend, 2);
      expect(Math.abs(spot.depth_m! - 0.05)).toBeLessThan(0.001);
    });
  }

  it('doubts the long axis of a round spot', () => {
    const { map, isSpot, isClean } = mapOf(burstFilm({ ...FAN, beta1: 3, width_m: 0.1 }, 0.095));
    expect(burstSpot(map, isSpot, isClean).doubts.join()).toMatch(/nearly round/);
  });

  it('names the heavy end alike on either side of upright', () => {
    const heavyUp = (turn_rad: number): Card['film'] => (x_m, y_m) => burstFilm({ ...FAN, turn_rad }, 0.05)(x_m, y_m) * (1 + 4 * y_m);
    for (const turn_deg of [88, 92]) {
      const { map, isSpot, isClean } = mapOf(heavyUp((turn_deg * Math.PI) / 180));
      const { film } = burstSpot(map, isSpot, isClean).readings;
      expect(film.slice(41).reduce((sum, value) => sum + value, 0)).toBeGreaterThan(film.slice(0, 40).reduce((sum, value) => sum + value, 0));
    }
  });
});

describe('strokeSpot', () => {
  for (const [along, turn_deg] of [['x', 0], ['x', 4], ['y', 90], ['y', 87]] as const) {
    it(`finds the profile of a stroke along ${along}, at ${turn_deg}°`, () => {
      const { map, isSpot, isClean } = mapOf(strokeFilm({ ...FAN, width_m: 0.12, turn_rad: (turn_deg * Math.PI) / 180 }));
      const { spot, readings, doubts } = strokeSpot(map, isSpot, isClean, along);
      expect((spot.angle_rad * 180) / Math.PI).toBeCloseTo(along === 'x' ? 90 + turn_deg : turn_deg - 90, 1);
      expect(Math.abs(spot.width_m - 0.12)).toBeLessThan(0.002);
      expect(spot.widthVariationFraction!).toBeLessThan(0.002);
      expect(doubts).toEqual([]);
      for (const [i, place_m] of readings.place_m.entries()) {
        const u = place_m / 0.06;
        expect(Math.abs(readings.film[i]! / 0.6 - Math.max(0, 1 - u * u) ** 2)).toBeLessThan(0.005);
      }
    });
  }

  it('lets places rise upward along x, to the right along y', () => {
    const upperRight: Card['film'] = (x_m, y_m) => (Math.hypot(x_m, y_m) < 0.1 ? 1 + (x_m + y_m) : 0);
    const { map, isSpot, isClean } = mapOf(upperRight);
    for (const along of ['x', 'y'] as const) {
      const { film } = strokeSpot(map, isSpot, isClean, along).readings;
      expect(film[60]!).toBeGreaterThan(film[20]!);
    }
  });

  it('measures flutter: a swing of 8 % has a standard deviation of 8 %/√2', () => {
    const { map, isSpot, isClean } = mapOf(strokeFilm({ ...FAN, width_m: 0.12 }, 0.08));
    // Twelve slices over 1.8 swings: a few per cent of it is lost within a slice or to the ends of the swings.
    expect(strokeSpot(map, isSpot, isClean, 'x').spot.widthVariationFraction!).toBeCloseTo(0.08 / Math.SQRT2, 2);
  });

  it('doubts a burst that is called a stroke, and one that runs askew', () => {
    const burst = mapOf(burstFilm(FAN, 0.05));
    expect(strokeSpot(burst.map, burst.isSpot, burst.isClean, 'y').doubts.join()).toMatch(/say whether it is a burst/);
    const askew = mapOf(strokeFilm({ ...FAN, width_m: 0.06, turn_rad: 0.3 }));
    expect(strokeSpot(askew.map, askew.isSpot, askew.isClean, 'x').doubts.join()).toMatch(/17° askew/);
  });
});
