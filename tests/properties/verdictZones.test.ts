import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Film } from '../../sim/film/film.ts';
import type { PanelGrid } from '../../sim/panel/panelGrid.ts';
import { inTargetFraction } from '../../sim/verdict/figures.ts';
import { findZones, LEAST_ZONE_m2 } from '../../sim/verdict/zones.ts';
import { TARGET } from '../unit/verdict/handFilm.ts';

/** Blocky films, so that regions of every size come up: each block of 3 × 3 cells has one value. */
const films = fc
  .record({
    columns: fc.integer({ min: 1, max: 40 }),
    rows: fc.integer({ min: 1, max: 40 }),
    cell_m: fc.constantFrom(0.001, 0.002, 0.005, 0.01),
    seedValues: fc.array(fc.constantFrom(5, 30, 50, 50, 50, 80), { minLength: 196, maxLength: 196 }),
    seedCover: fc.array(fc.constantFrom(0, 0.3, 0.5, 0.8, 1, 1, 1, 1), { minLength: 50, maxLength: 50 }),
    seedDry: fc.array(fc.constantFrom(0, 0, 0.05, 0.2), { minLength: 196, maxLength: 196 }),
  })
  .map(({ columns, rows, cell_m, seedValues, seedCover, seedDry }) => {
    const count = columns * rows;
    const grid = { columns, rows, cellSize_m: cell_m };
    const wet_m = new Float32Array(count);
    const arrivedDry_m = new Float32Array(count);
    const cover = new Float32Array(count);
    for (let cell = 0; cell < count; cell++) {
      const block = (Math.floor(Math.floor(cell / columns) / 3) * 14 + Math.floor((cell % columns) / 3)) % 196;
      wet_m[cell] = (seedValues[block] as number) * 1e-6;
      arrivedDry_m[cell] = (seedDry[block] as number) * (wet_m[cell] as number);
      cover[cell] = seedCover[(cell * 7) % 50] as number;
    }
    const film: Film = { grid, time_s: 0, wet_m, dry_m: wet_m.map((v) => v / 8), arrivedDry_m, passes: new Uint16Array(count) };
    const area = cover.reduce((sum, share) => sum + share, 0) * cell_m * cell_m;
    const panelGrid: PanelGrid = { grid, cover, covered_m2: area };
    return { film, panelGrid };
  });

/** The same film seen in a mirror: columns turned about. */
function mirrored<T extends Float32Array>(values: T, columns: number): Float32Array {
  return values.map((_, cell) => {
    const row = Math.floor(cell / columns);
    return values[row * columns + (columns - 1 - (cell - row * columns))] as number;
  });
}

describe('findZones', () => {
  it('gives zones that are disjoint within a kind, at fault in every cell, and no larger than the panel', () => {
    fc.assert(
      fc.property(films, ({ film, panelGrid }) => {
        const { zones } = findZones(film, panelGrid, TARGET);
        const seen = new Set<string>();
        let filmArea = 0;
        for (const zone of zones) {
          expect(zone.margin).toBeGreaterThan(0);
          expect(zone.area_m2).toBeGreaterThanOrEqual(LEAST_ZONE_m2);
          if (zone.kind !== 'dry-spray') filmArea += zone.area_m2;
          for (const cell of zone.cells) {
            const key = `${zone.kind} ${cell}`;
            expect(seen.has(key)).toBe(false);
            seen.add(key);
            expect(panelGrid.cover[cell]).toBeGreaterThanOrEqual(0.5);
            const wet = film.wet_m[cell] as number;
            if (zone.kind === 'holiday') expect(wet).toBeLessThan(12.5e-6);
            if (zone.kind === 'thin-lap') expect(wet >= 12.5e-6 && wet < 40e-6).toBe(true);
            if (zone.kind === 'heavy-spot') expect(wet).toBeGreaterThan(60e-6);
            if (zone.kind === 'dry-spray') expect((film.arrivedDry_m[cell] as number) / wet).toBeGreaterThan(0.1);
          }
        }
        // Film kinds exclude each other, so together they fit the panel (to the rounding of the sum).
        expect(filmArea).toBeLessThanOrEqual(panelGrid.covered_m2 * (1 + 1e-9));
      }),
      { numRuns: 150 },
    );
  });

  it('sees the mirrored film as the mirrored zones', () => {
    fc.assert(
      fc.property(films, ({ film, panelGrid }) => {
        const { columns } = film.grid;
        const turned: Film = {
          ...film,
          wet_m: mirrored(film.wet_m, columns),
          dry_m: mirrored(film.dry_m, columns),
          arrivedDry_m: mirrored(film.arrivedDry_m, columns),
        };
        const turnedGrid = { ...panelGrid, cover: mirrored(panelGrid.cover, columns) };
        const mirror = (cell: number) => Math.floor(cell / columns) * columns + (columns - 1 - (cell % columns));
        const summary = (cells: Uint32Array) => [...cells].sort((a, b) => a - b).join();
        const here = findZones(film, panelGrid, TARGET).zones.map((z) => `${z.kind} ${summary(z.cells)}`);
        const there = findZones(turned, turnedGrid, TARGET).zones.map((z) => `${z.kind} ${summary(z.cells.map(mirror))}`);
        expect(there.sort()).toEqual(here.sort());
        expect(inTargetFraction(turned, turnedGrid, TARGET)).toBeCloseTo(inTargetFraction(film, panelGrid, TARGET), 12);
      }),
      { numRuns: 100 },
    );
  });
});
