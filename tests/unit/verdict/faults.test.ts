import { describe, expect, it } from 'vitest';
import { groupFaults, severity_m2 } from '../../../sim/verdict/faults.ts';
import { representativePlaces } from '../../../sim/verdict/places.ts';
import type { Cause, Zone } from '../../../sim/verdict/verdict.ts';
import { findZones } from '../../../sim/verdict/zones.ts';
import { drawnFilm, TARGET } from './handFilm.ts';

function zone(kind: Zone['kind'], area_m2: number, margin: number): Zone {
  return { kind, area_m2, limit: 0, margin, at_m: [0, 0], box_m: [0, 0, 0, 0], worst: 0, cells: new Uint32Array(0) };
}

function cause(kind: Cause['kind'], strokes: number[]): Cause {
  return { kind, strokes, found: NaN, meant: NaN, unit: '', explains: 1 };
}

describe('groupFaults', () => {
  it('puts zones of one kind, cause and chief stroke together, worst first', () => {
    const small = zone('heavy-spot', 1e-4, 10e-6);
    const large = zone('heavy-spot', 9e-4, 10e-6);
    const other = zone('heavy-spot', 2e-4, 10e-6);
    const thin = zone('thin-lap', 1e-3, 20e-6);
    const faults = groupFaults(
      [
        { zone: small, cause: cause('stop', [4]) },
        { zone: other, cause: cause('stop', [5]) },
        { zone: large, cause: cause('stop', [4, 3]) },
        { zone: thin, cause: cause('plan-overlap', []) },
      ],
      TARGET,
    );
    expect(faults.map((f) => [f.kind, f.cause.kind, f.cause.strokes, f.zones.length])).toEqual([
      ['thin-lap', 'plan-overlap', [], 1],
      ['heavy-spot', 'stop', [4, 3], 2],
      ['heavy-spot', 'stop', [5], 1],
    ]);
    expect(faults[1]?.zones).toEqual([large, small]);
    expect(faults[1]?.area_m2).toBeCloseTo(1e-3, 15);
  });

  it('does not split a plan’s fault by stroke', () => {
    const faults = groupFaults(
      [
        { zone: zone('thin-lap', 1e-4, 1e-6), cause: cause('plan-film', [1]) },
        { zone: zone('thin-lap', 1e-4, 1e-6), cause: cause('plan-film', [2]) },
      ],
      TARGET,
    );
    expect(faults).toHaveLength(1);
  });

  it('puts a holiday before a thin lap of equal area, though it is nearer to its own limit', () => {
    // Of 50 µm at least 40, and 12.5 for a holiday: 12 µm lack 0.5 of the holiday's limit, 14 µm lack 26 of the lap's.
    const lower_m = TARGET.minFraction * TARGET.thickness_m;
    const bare = { ...zone('holiday', 1e-3, 0.5e-6), worst: TARGET.holidayFraction * TARGET.thickness_m - 0.5e-6 };
    const thin = { ...zone('thin-lap', 1e-3, lower_m - 14e-6), worst: 14e-6 };
    const faults = groupFaults([{ zone: thin, cause: cause('speed', [1]) }, { zone: bare, cause: cause('missing-stroke', [2]) }], TARGET);
    expect(faults.map(({ kind }) => kind)).toEqual(['holiday', 'thin-lap']);
  });

  it('weighs a film by the target and a dry share as it is', () => {
    expect(severity_m2(zone('thin-lap', 0.01, 10e-6), TARGET)).toBeCloseTo(0.002, 12);
    expect(severity_m2(zone('dry-spray', 0.01, 0.3), TARGET)).toBeCloseTo(0.003, 12);
  });
});

describe('representativePlaces', () => {
  it('starts at the worst place and spreads to the ends of the zone', () => {
    const { film, panelGrid } = drawnFilm(['tttttTtttt'], 0.01);
    const found = findZones(film, panelGrid, TARGET).zones[0] as Zone;
    const places = representativePlaces(found, film.grid, 3);
    const xs = [...places].filter((_, i) => i % 2 === 0).map((x) => Math.round(x * 1000));
    expect(xs).toEqual([55, 5, 95]);
  });

  it('gives no place twice', () => {
    const { film, panelGrid } = drawnFilm(['tT'], 0.01);
    const found = findZones(film, panelGrid, TARGET).zones[0] as Zone;
    expect(representativePlaces(found, film.grid, 5)).toHaveLength(4);
  });
});
