import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { layCoat } from '../../../sim/run/lay.ts';
import { filmsAtPlaces } from '../../../sim/run/placeFilms.ts';
import { meanPlannedFilm_m } from '../../../sim/run/planTrials.ts';
import { runJob } from '../../../sim/run/runJob.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import { writeRecording } from '../../../sim/stroke/writeRecording.ts';
import { session } from './session.ts';
import { MEAN_um, testJob, testSetting } from './testJob.ts';

describe('runJob', () => {
  it('runs every coat, or those asked for, and reports rising progress to the end', () => {
    const job = testJob();
    const two = { ...job, coats: [job.coats[0]!, { ...job.coats[0]!, id: 'second' }] };
    const shares: number[] = [];
    const results = runJob(two, { onProgress: (share) => shares.push(share) });
    expect(results.map((r) => r.setting.coat.id)).toEqual(['coat', 'second']);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBe(1);
    expect(runJob(two, { coatIds: ['second'] }).map((r) => r.setting.coat.id)).toEqual(['second']);
  });

  it('lays a coat by the recording in the job, and finds its strokes', () => {
    const setting = testSetting();
    const text = [...writeRecording(session(setting, { 1: { stop: { at: 0.4, duration_s: 0.6 } } }))].join('');
    const job = testJob();
    const recorded = {
      ...job,
      coats: [{ ...job.coats[0]!, recording: 'rec' }],
      recordings: [{ id: 'rec', name: 'rec.csv', text }],
    };
    const [result] = runJob(recorded, { cures: false });
    expect(result?.strokes.source).toBe('recording');
    expect(result?.strokes.strokes).toHaveLength(5);
    expect(result?.verdict.faults[0]?.cause).toMatchObject({ kind: 'stop', strokes: [1] });
    expect(result?.verdict.faults[0]?.cure).toBeNull();
  });

  it('names a recording that is not in the job', () => {
    const job = testJob();
    const missing = { ...job, coats: [{ ...job.coats[0]!, recording: 'gone' }] };
    expect(() => runJob(missing)).toThrow(/recording "gone" of coat "coat" is not in the job/);
  });

  it('stops when asked to', () => {
    const job = testJob({ hand: { kind: 'practised' } });
    let error: unknown = null;
    try {
      runJob(job, { shouldStop: () => true });
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(CrosscoatError);
    expect((error as CrosscoatError).code).toBe('cancelled');
  });

  it('gives the same hand for the same seed and another for another', () => {
    const mean = (seed: number) =>
      runJob({ ...testJob({ hand: { kind: 'beginner' }, cell_mm: 8 }), seed }, { cures: false })[0]?.verdict.wet.cv;
    expect(mean(1)).toBe(mean(1));
    expect(mean(1)).not.toBe(mean(2));
  });
});

describe('layCoat', () => {
  it('accounts for every drop: sprayed = landed + fog + missed + flight', () => {
    const setting = testSetting();
    const { account } = layCoat(setting, strokesOf(setting));
    const sum = account.landed_m3 + account.fog_m3 + account.missed_m3 + account.flight_m3;
    expect(sum / account.sprayed_m3).toBeCloseTo(1, 12);
    // Five strokes of 820 mm at 0.3 m/s and 200 mL/min.
    expect((account.sprayed_m3 / ((5 * 0.82) / 0.3 / 60) / 200e-6) ).toBeCloseTo(1, 6);
  });

  it('lays part of a coat up to a time, which the film carries', () => {
    const setting = testSetting();
    const strokes = strokesOf(setting);
    const half = layCoat(setting, strokes, { until_s: 5 });
    const whole = layCoat(setting, strokes);
    expect(half.film.time_s).toBe(5);
    expect(half.account.landed_m3).toBeLessThan(whole.account.landed_m3);
    expect(whole.film.time_s).toBeCloseTo(strokes.path.t_s.at(-1) ?? NaN, 12);
  });
});

describe('meanPlannedFilm_m', () => {
  it('is Q η / (v w (1 - o)), doubled by a cross coat', () => {
    const setting = testSetting();
    expect(meanPlannedFilm_m(setting, setting.plan) * 1e6).toBeCloseTo(MEAN_um, 3);
    expect(meanPlannedFilm_m(setting, { ...setting.plan, cross: true }) * 1e6).toBeCloseTo(2 * MEAN_um, 3);
  });
});

describe('filmsAtPlaces', () => {
  it('is the laid film at cell centres, and the sum of its strokes', () => {
    const setting = testSetting({ plan: { direction_deg: 20 } });
    for (const strokes of [strokesOf(setting), strokesOf(setting, { path: session(setting, { 1: { arcRadius_m: 0.35 }, 2: { distance_m: () => 0.28 } }), warnings: [] })]) {
      const { film } = layCoat(setting, strokes);
      const { columns, cellSize_m } = film.grid;
      const cells = [0, 1000, 5003, 9999, 14321, 21874];
      const places = Float64Array.from(cells.flatMap((cell) => [((cell % columns) + 0.5) * cellSize_m, (Math.floor(cell / columns) + 0.5) * cellSize_m]));
      const films = filmsAtPlaces(setting, strokes, places);
      cells.forEach((cell, i) => {
        const wet = film.wet_m[cell] as number;
        // Both in single precision, summed over some hundred stamps; and a stroke’s cut at its last row.
        expect(Math.abs((films.wet_m[i] as number) - wet)).toBeLessThan(1e-4 * MEAN_um * 1e-6);
        expect(films.solids_m[i] as number).toBeCloseTo(film.dry_m[cell] as number, 9);
        const sum = [...films.byStroke.values()].reduce((total, own) => total + (own[i] as number), 0);
        expect(sum).toBeCloseTo(films.wet_m[i] as number, 15);
      });
    }
  });
});
