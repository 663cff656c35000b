import { describe, expect, it } from 'vitest';
import { findZones } from '../../../sim/verdict/zones.ts';
import { drawnFilm, TARGET } from './handFilm.ts';

const CELL_m = 0.01; // one cell = 1 cm², the least zone

function zonesOf(lines: readonly string[], cell_m = CELL_m) {
  const { film, panelGrid } = drawnFilm(lines, cell_m);
  return findZones(film, panelGrid, TARGET);
}

describe('findZones', () => {
  it('finds nothing on an even film', () => {
    expect(zonesOf(['....', '....'])).toEqual({ zones: [], warnings: [] });
  });

  it('joins cells that touch by a corner and gives area, box, worst place and margin', () => {
    const { zones } = zonesOf(['.....', '.H...', '..X..', '.....']);
    expect(zones).toHaveLength(1);
    const zone = zones[0];
    expect(zone?.kind).toBe('heavy-spot');
    expect(zone?.area_m2).toBeCloseTo(2e-4, 12);
    expect(zone?.box_m.map((v) => Math.round(v * 1e6) / 1e6)).toEqual([0.01, 0.01, 0.03, 0.03]);
    expect(zone?.at_m[0]).toBeCloseTo(0.025, 12);
    expect(zone?.at_m[1]).toBeCloseTo(0.015, 12);
    expect(zone?.worst).toBeCloseTo(120e-6, 9);
    expect(zone?.margin).toBeCloseTo(60e-6, 9);
    expect([...(zone?.cells ?? [])]).toEqual([7, 11]);
  });

  it('gives a holiday its own zone and leaves its core out of the thin lap around it', () => {
    const { zones } = zonesOf(['ttt', 'tht', 'ttt']);
    expect(zones.map((z) => [z.kind, z.cells.length])).toEqual([['holiday', 1], ['thin-lap', 8]]);
    expect(zones[0]?.margin).toBeCloseTo(7.5e-6, 9);
    expect(zones[1]?.margin).toBeCloseTo(10e-6, 9);
  });

  it('keeps regions of one kind apart at a gap of one cell of 10 mm, and joins them at 5 mm', () => {
    const lines = ['....', 'H.HH', 'H.HH', 'H...'];
    expect(zonesOf(lines, 0.01).zones).toHaveLength(2);
    expect(zonesOf(lines, 0.00599).zones).toHaveLength(1);
    expect(zonesOf(lines, 0.00601).zones).toHaveLength(2);
  });

  it('joins through a chain, also where the nearer region comes later', () => {
    // Gaps of 2 cells (4 mm) join; one of 3 cells (6 mm) does not.
    const row = 'HHHHHHHHHHHHHHHHHHHHHHHHHHHHHH';
    const blank = '.'.repeat(row.length);
    const chain = [row, blank, blank, row, blank, blank, row];
    expect(zonesOf(chain, 0.002).zones).toHaveLength(1);
    const apart = [row, blank, blank, blank, row];
    expect(zonesOf(apart, 0.002).zones).toHaveLength(2);
  });

  it('never joins zones of two kinds', () => {
    expect(zonesOf(['Ht', 'Ht']).zones.map((z) => z.kind)).toEqual(['thin-lap', 'heavy-spot']);
  });

  it('drops specks under 1 cm² and says how many and how much', () => {
    const { zones, warnings } = zonesOf(['H...............', '................', '...............t'], 0.005);
    expect(zones).toEqual([]);
    expect(warnings.map((w) => w.code)).toEqual(['small-zones-dropped']);
    expect(warnings[0]?.text).toContain('2 zones of less than 1 cm² each (0.5 cm² in all)');
  });

  it('joins specks before it drops them', () => {
    const { zones, warnings } = zonesOf(['H.H', '.H.', 'H.H'], 0.005);
    expect(zones[0]?.area_m2).toBeCloseTo(5 * 0.25e-4, 12);
    expect(warnings).toEqual([]);
  });

  it('judges only cells at least half covered and weights area by cover', () => {
    const { film, panelGrid } = drawnFilm(['HHH', 'HHH'], CELL_m);
    panelGrid.cover.set([1, 0.5, 0.49, 1, 0.75, 0]);
    const { zones } = findZones(film, panelGrid, TARGET);
    expect(zones[0]?.cells).toHaveLength(4);
    expect(zones[0]?.area_m2).toBeCloseTo(3.25e-4, 12);
  });

  it('finds dry spray over a thin lap but not over a holiday', () => {
    const { film, panelGrid } = drawnFilm(['.th'], CELL_m);
    film.arrivedDry_m.set([0.05 * 50e-6, 0.2 * 30e-6, 0.9 * 5e-6]);
    const { zones } = findZones(film, panelGrid, TARGET);
    const dry = zones.filter((z) => z.kind === 'dry-spray');
    expect(dry.map((z) => [...z.cells])).toEqual([[1]]);
    expect(dry[0]?.worst).toBeCloseTo(0.2, 6);
    expect(dry[0]?.margin).toBeCloseTo(0.1, 6);
  });

  it('puts the worst place of an even bare corner in its middle', () => {
    const { zones } = zonesOf(['hhh..', 'hhh..', 'hhh..']);
    expect(zones[0]?.at_m[0]).toBeCloseTo(0.015, 12);
    expect(zones[0]?.at_m[1]).toBeCloseTo(0.015, 12);
  });

  it('judges the dry film where the target is dry', () => {
    const { film, panelGrid } = drawnFilm(['.H'], CELL_m);
    const dryTarget = { ...TARGET, film: 'dry' as const, thickness_m: 5e-6 };
    const { zones } = findZones(film, panelGrid, dryTarget);
    expect(zones[0]?.worst).toBeCloseTo(8e-6, 10);
  });
});
