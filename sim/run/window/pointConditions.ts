import { makeAir, type MoistAir } from '../../air/moistAir.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import type { FilmLaw } from '../../film/law.ts';
import { makeSetUp } from '../../gun/setUpFromSpec.ts';
import type { SetUp } from '../../gun/setUp.ts';
import { changedMixSpec } from '../../mix/changedMixSpec.ts';
import { genericMix } from '../../mix/genericMix.ts';
import { makeMix } from '../../mix/makeMix.ts';
import type { Mix } from '../../mix/mix.ts';
import { filmLawOf } from '../filmLaw.ts';
import type { CoatSetting } from '../result.ts';
import { setUpWithMix } from '../setUpWithMix.ts';
import type { SprayPoint } from './sprayPoint.ts';

/** What is in the cup, the day's air, what the gun makes of both, and how the film lives. */
export interface PointConditions {
  readonly mix: Mix;
  readonly air: MoistAir;
  readonly setUp: SetUp;
  readonly law: FilmLaw;
}

/** Laws kept for points that share them: one takes 0.1 MB. */
const MOST_KEPT = 200;

/**
 * Conditions of the points of one coat, each made once and kept: a mix for every thinner ratio, the air
 * for every temperature and humidity, a law for every mix and temperature (humidity moves its dew point
 * only), a set-up for every fluid rate on top.
 *
 * Another thinner ratio is more or less of the same thinner. A cup reading stays good for it: it fixed
 * the finish's viscosity against solids, and more thinner is less solids.
 * @throws CrosscoatError `range` for a ratio, temperature or humidity that no mix or room has.
 */
export function conditionsFor(setting: CoatSetting): (point: SprayPoint) => PointConditions {
  const stated = statedSetUp(setting);
  const mixAt = kept(({ thinnerRatio }) => `${thinnerRatio}`, (point) => mixWith(setting, point.thinnerRatio));
  const airAt = kept(({ temperature_K, humidityFraction }) => `${temperature_K} ${humidityFraction}`, (point) => airWith(setting, point));
  const lawAt = kept(({ thinnerRatio, temperature_K }) => `${thinnerRatio} ${temperature_K}`, (point) => filmLawOf({ ...setting, mix: mixAt(point), air: airAt(point) }));
  const setUpAt = kept(
    ({ fluidRate_m3_s, thinnerRatio, temperature_K }) => `${fluidRate_m3_s} ${thinnerRatio} ${temperature_K}`,
    (point) => setUpWith(setting, { ...stated, fluidRate_m3_s: point.fluidRate_m3_s }, mixAt(point), airAt(point)),
  );
  return (point) => {
    const air = airAt(point);
    const law = lawAt(point);
    return { mix: mixAt(point), air, setUp: setUpAt(point), law: law.air === air ? law : { ...law, air } };
  };
}

/** A function of a point that remembers what it has made, by key, until there are too many. */
function kept<T>(keyOf: (point: SprayPoint) => string, make: (point: SprayPoint) => T): (point: SprayPoint) => T {
  const made = new Map<string, T>();
  return (point) => {
    const key = keyOf(point);
    const known = made.get(key);
    if (known !== undefined) return known;
    if (made.size >= MOST_KEPT) made.clear();
    const fresh = make(point);
    made.set(key, fresh);
    return fresh;
  };
}

/** The set-up as the job states it, before a mix is in its cup. */
function statedSetUp({ job, coat }: CoatSetting): SetUp {
  const index = job.setUps.findIndex(({ id }) => id === coat.setUp);
  return makeSetUp(job.setUps[index] as CoatSetting['job']['setUps'][number], `/setUps/${index}`);
}

function mixWith({ job, coat, mix }: CoatSetting, thinnerRatio: number): Mix {
  if (thinnerRatio === mix.thinnerRatio) return mix;
  const index = job.mixes.findIndex(({ id }) => id === coat.mix);
  const spec = job.mixes[index];
  if (spec === undefined) return genericMix(mix.finish.volumeSolidsFraction.value / (1 + thinnerRatio));
  return { ...makeMix(changedMixSpec(spec, { thinnerPerFinish: thinnerRatio }), `/mixes/${index}`), viscosity: mix.viscosity };
}

function airWith({ job, air }: CoatSetting, { temperature_K, humidityFraction }: SprayPoint): MoistAir {
  if (temperature_K === air.temperature_K && humidityFraction === air.relativeHumidityFraction) return air;
  return makeAir({ ...job.air, temperature_C: temperature_K - CELSIUS_0_K, humidity_percent: humidityFraction * 100 }, '/air');
}

/** A coat that names no mix has the drops that its set-up states, whatever the day. */
function setUpWith({ coat }: CoatSetting, stated: SetUp, mix: Mix, air: MoistAir): SetUp {
  return coat.mix === undefined ? { ...stated, volumeSolidsFraction: mix.volumeSolidsFraction } : setUpWithMix(stated, mix, air);
}
