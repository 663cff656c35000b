import { normalNoise } from '../../../../sim/base/normalNoise.ts';
import { DEMO_PLANNED_COAT, demoJob } from '../../../../sim/job/demo.ts';
import type { Job, ReadingSpec, SurveySpec } from '../../../../sim/job/schema.ts';
import { predictedAt, predictedFilm } from '../../../../sim/run/survey/predictedFilm.ts';

/** Twenty places of the demo's rudder, off its edges and hole. */
export const PLACES_MM: readonly (readonly [number, number])[] = [200, 400, 700, 900, 1080].flatMap((y) => [80, 190, 300, 410].map((x) => [x, y] as const));

/** A survey of the demo's planned coat. */
export function surveyOf(readings: ReadingSpec[], changed: Partial<SurveySpec> = {}): SurveySpec {
  return {
    id: 'tabs', name: 'Tabs', panel: 'left-side', coats: [DEMO_PLANNED_COAT], at: '2026-05-06T15:00+02:00', who: 'Invented Person',
    rule: { kind: 'mean-80', nominal_um: 10, low_percent: 80, share_percent: 20, boundary: 'strict', correction_um: 0 }, readings, history: [], ...changed,
  };
}

/** The film at places as the model lays it, m. */
export function filmAt(job: Job, places_mm: readonly (readonly [number, number])[] = PLACES_MM): number[] {
  return predictedAt(predictedFilm(job, [DEMO_PLANNED_COAT]), places_mm.map(([x, y]) => [x / 1e3, y / 1e3] as const)).map(({ dry_m }) => dry_m);
}

/** Gauge readings of films with noise of so many µm, a pure function of the seed. */
export function readingsOf(films_m: readonly number[], noise_um: number, seed: number, places_mm: readonly (readonly [number, number])[] = PLACES_MM): ReadingSpec[] {
  return films_m.map((film_m, i) => ({ kind: 'metal', dry_um: film_m * 1e6 + noise_um * normalNoise(seed, 0, i), x_mm: places_mm[i]?.[0] as number, y_mm: places_mm[i]?.[1] as number }));
}

/** The demo with the transfer of its set-ups times a factor. */
export function demoWithTransfer(factor: number): Job {
  const job = demoJob();
  return { ...job, setUps: job.setUps.map((setUp) => ({ ...setUp, transfer: { ...setUp.transfer, efficiency_percent: setUp.transfer.efficiency_percent * factor } })) };
}
