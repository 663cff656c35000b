import { describe, expect, it } from 'vitest';
import { faultJson } from '../../../sim/report/faultJson.ts';
import { reportJson } from '../../../sim/report/reportJson.ts';
import type { Change, Fault } from '../../../sim/verdict/verdict.ts';
import { CAUSE, CURE, FAULT, TARGET, ZONE, sampleCoats } from './sampleCoat.ts';

const coats = sampleCoats();
interface PanelResult {
  readonly film: Record<'wet' | 'dry', Record<string, number>>;
  readonly paint: Record<string, number>;
  readonly faults: readonly Record<string, unknown>[];
  readonly strokes: readonly Record<string, unknown>[];
}
const result = reportJson(coats, { name: 'Board', seed: 20 });
const [panel] = result['panels'] as unknown as PanelResult[];
if (panel === undefined) throw new Error('the sample has a coat');

describe('reportJson', () => {
  it('has the keys that scripts rely on', () => {
    expect(result).toMatchObject({ schemaVersion: 1, job: 'Board', seed: 20, curesTried: true });
    expect(Object.keys(panel)).toEqual(expect.arrayContaining(['panel', 'coat', 'setUp', 'film', 'target', 'inTargetFraction', 'paint', 'faults', 'strokes', 'warnings']));
    expect(Object.keys(panel.film.wet)).toEqual(['mean_um', 'min_um', 'max_um', 'cv']);
    expect(Object.keys(panel.faults[0] ?? {})).toEqual(['kind', 'area_mm2', 'at_mm', 'worst', 'worst_unit', 'limit', 'zones', 'cause', 'cure']);
    expect(Object.keys(panel.strokes[0] ?? {})).toEqual(expect.arrayContaining(['number', 'length_mm', 'speed_m_s', 'distance_mm', 'tilt_deg', 'overlap_percent', 'overlap_mm', 'triggerOn_mm', 'triggerOff_mm', 'stops']));
  });

  it('closes the paint account', () => {
    const { sprayed_mL = NaN, landed_mL = NaN, lost_mL = NaN, fog_mL = NaN, missed_mL = NaN, flight_mL = NaN } = panel.paint;
    // Twelve figures are printed of each.
    expect(Math.abs(landed_mL + lost_mL - sprayed_mL)).toBeLessThan(1e-9 * sprayed_mL);
    expect(Math.abs(fog_mL + missed_mL + flight_mL - lost_mL)).toBeLessThan(1e-9 * sprayed_mL);
  });

  it('turns metres to the units of its keys', () => {
    const coat = coats[0];
    expect(panel.film.wet['mean_um']).toBeCloseTo((coat?.verdict.wet.mean_m ?? NaN) * 1e6, 6);
    expect(panel.strokes[0]).toMatchObject({ number: 1, pass: 1, overlap_percent: null });
    expect(panel.strokes[1]).toMatchObject({ overlapWith: 1, overlap_percent: { mean: expect.closeTo(30, 3) as number } });
  });

  it('gives the area of each kind of fault once', () => {
    expect(panel.faults.length).toBe(coats[0]?.verdict.faults.length);
    for (const fault of panel.faults) {
      const zones = fault['zones'] as { area_mm2: number }[];
      expect(zones.reduce((sum, zone) => sum + zone.area_mm2, 0)).toBeCloseTo(fault['area_mm2'] as number, 6);
    }
  });
});

describe('faultJson', () => {
  it('numbers strokes from 1 and gives a place as a program reads it', () => {
    expect(faultJson(FAULT, TARGET)).toMatchObject({
      kind: 'heavy-spot',
      at_mm: [410, 620],
      worst: 88,
      worst_unit: 'um',
      limit: 60,
      cause: { kind: 'stop', strokes: [5], found: 0.7, meant: 0, unit: 's' },
      cure: { change: { kind: 'no-stops', strokes: [5] }, worst: 46, areaBefore_mm2: 1240, areaAfter_mm2: 0 },
    });
  });

  it('gives dry spray in per cent, film causes in µm, angles in degrees', () => {
    const dry = { ...FAULT, kind: 'dry-spray', zones: [{ ...ZONE, worst: 0.34, limit: 0.1 }] } as const;
    expect(faultJson(dry, TARGET)).toMatchObject({ worst: 34, worst_unit: 'percent', limit: 10 });
    const film = { ...FAULT, cause: { ...CAUSE, kind: 'plan-film', found: 88e-6, meant: 50e-6, unit: 'm' } } as const;
    expect(faultJson(film, TARGET)).toMatchObject({ cause: { found: 88, meant: 50, unit: 'um' } });
    const tilted = { ...FAULT, cause: { ...CAUSE, kind: 'angle', found: Math.PI / 6, meant: 0, unit: 'rad' } } as const;
    expect(faultJson(tilted, TARGET)).toMatchObject({ cause: { found: 30, unit: 'deg' } });
  });

  it('has null where there is no figure and no cure', () => {
    const bare = { ...FAULT, cure: null, cause: { ...CAUSE, kind: 'unknown', found: NaN, meant: NaN, unit: '' } } as const;
    expect(faultJson(bare, TARGET)).toMatchObject({ cure: null, cause: { found: null, meant: null } });
  });

  it('gives the figures of a changed plan under the keys of the job file', () => {
    const change: Change = { kind: 'plan', overlapFraction: 0.5, speed_m_s: 0.4, distance_m: 0.2, firstStroke_m: 0, lead_m: 0.03 };
    const planned: Fault = { ...FAULT, cure: { ...CURE, change } };
    expect(faultJson(planned, TARGET)).toMatchObject({
      cure: { change: { kind: 'plan', overlap_percent: 50, speed_m_s: 0.4, distance_mm: 200, firstStroke_mm: 0, lead_mm: 30 } },
    });
  });
});
