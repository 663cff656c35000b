import type { ReadingSpec } from '../job/schema.ts';
import type { GaugeNoise } from './comparison.ts';
import { middle_m, type FilmReading } from './filmReading.ts';
import { mean } from './meanFilm.ts';

/** Repeats beyond the first of each spot that a pooled deviation needs. Assumed: five, whose deviation is known within some 60 %. */
const LEAST_REPEATS = 5;

/** Half of the ± that such a gauge states, since it is taken as a 95 % interval. Common practice: ±(1 µm + 2 %) for electronic gauges, from memory. */
const METAL = { fixed_m: 0.5e-6, share: 0.01 };
/** Assumed: a workshop micrometer reads to 2 µm, twice. */
const MICROMETER_M = 2e-6 * Math.SQRT2;
/** No gauge says more than its last digit, taken as 0.1 µm; repeats that are all alike have this deviation. */
const LAST_DIGIT_M = 0.1e-6 / Math.sqrt(12);
/** Assumed: scales that show hundredths of a gram, read twice. */
const SCALES_KG = 5e-6 * Math.SQRT2;

/**
 * The noise of each dry reading, m: as stated; or pooled from spots that were read more than once, where these have five
 * repeats; or assumed by kind. A comb has bounds instead and is given their distance over √12.
 */
export function gaugeNoise(readings: readonly FilmReading[], specs: readonly ReadingSpec[], dryDensity_kg_m3: number | null, stated_m: number | null): { readonly noise: GaugeNoise; readonly of: readonly number[] } {
  if (stated_m !== null) return { noise: { origin: 'stated', typical_m: stated_m, words: 'as stated' }, of: readings.map(() => stated_m) };
  const pooled = pooledDeviation(readings);
  if (pooled !== null) return { noise: { origin: 'spots', typical_m: pooled.deviation_m, words: `pooled from ${pooled.repeats} repeats within spots` }, of: readings.map(() => pooled.deviation_m) };
  const of = readings.map((reading) => assumedNoise(reading, specs[reading.index], dryDensity_kg_m3));
  return { noise: { origin: 'assumed', typical_m: of.length === 0 ? NaN : mean(of), words: 'assumed by kind: gauge ±(1 µm + 2 %), micrometer ±4 µm at each reading, scales ±0.01 g at each weighing, all as 95 %' }, of };
}

function assumedNoise(reading: FilmReading, spec: ReadingSpec | undefined, density_kg_m3: number | null): number {
  switch (reading.kind) {
    case 'metal':
      return METAL.fixed_m + METAL.share * Math.abs(reading.low_m);
    case 'micrometer':
      return MICROMETER_M;
    case 'coupon':
      return spec?.kind === 'coupon' && density_kg_m3 !== null ? SCALES_KG / (spec.area_cm2 * 1e-4 * density_kg_m3) : NaN;
    case 'comb':
      return (reading.high_m - reading.low_m) / Math.sqrt(12);
  }
}

/** Deviation within spots of one kind of reading, pooled; null with too few repeats. */
function pooledDeviation(readings: readonly FilmReading[]): { readonly deviation_m: number; readonly repeats: number } | null {
  const spots = new Map<string, number[]>();
  for (const reading of readings) {
    const film_m = middle_m(reading);
    if (reading.spot === null || film_m === null) continue;
    const key = JSON.stringify([reading.area, reading.spot, reading.kind]);
    spots.set(key, [...(spots.get(key) ?? []), film_m]);
  }
  let [squares, repeats] = [0, 0];
  for (const films of spots.values()) {
    const middle = mean(films);
    squares += films.reduce((sum, film) => sum + (film - middle) ** 2, 0);
    repeats += films.length - 1;
  }
  return repeats < LEAST_REPEATS ? null : { deviation_m: Math.max(LAST_DIGIT_M, Math.sqrt(squares / repeats)), repeats };
}
