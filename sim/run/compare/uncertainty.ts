import { knownWithin, KNOWN_NUMBERS, movedSetUp, type KnownNumber, type KnownWithin } from '../../gun/knownWithin.ts';
import { makeSpray } from '../../gun/makeSpray.ts';
import type { SetUp } from '../../gun/setUp.ts';
import { makeSetUp } from '../../gun/setUpFromSpec.ts';
import type { SetUpSpec } from '../../job/schema.ts';
import { layCoat, type Travel } from '../lay.ts';
import type { CoatSetting } from '../result.ts';
import { setUpWithMix } from '../setUpWithMix.ts';
import { laidValues, type LaidValues } from './laidValues.ts';
import { halfInterval } from './spread.ts';

/** A coat's set-up as the job states it, and how well its numbers are known. */
export interface KnownSetUp {
  readonly stated: SetUp;
  readonly known: KnownWithin;
}

/** The stated set-up of a coat that was settled, before its mix changed the drops. */
export function knownSetUp({ job, coat }: CoatSetting): KnownSetUp {
  const index = job.setUps.findIndex(({ id }) => id === coat.setUp);
  const spec = job.setUps[index] as SetUpSpec;
  const stated = makeSetUp(spec, `/setUps/${index}`);
  return { stated, known: knownWithin(stated, spec.knownWithin) };
}

/** A coat's setting with another set-up in the hand; the plan is not changed, since nobody knows of it. */
export function withSetUp(setting: CoatSetting, moved: SetUp): CoatSetting {
  const setUp = setting.coat.mix === undefined ? moved : setUpWithMix(moved, setting.mix, setting.air);
  return { ...setting, setUp, spray: makeSpray(setUp) };
}

/**
 * Half 95 % intervals of the figures as laid: the same travel is laid again with each number of the
 * set-up moved by its half interval down and up, one at a time, and what each gives (`halfInterval`) is
 * added in quadrature. The strokes stay where the believed fan put them, so a fan that is wider than
 * believed laps more than planned.
 *
 * Left out: that two numbers off at once may do more than each alone (for the evenness at the flattest
 * overlap of a usual fan the interval is 8 % short of that of 4000 coats drawn at random, where stripes
 * make the film vary it agrees); depth of the fan, drops, solids
 * and decay with distance, which are taken as exact; the hand, which is steady.
 * @param setting may be on coarser cells than the coat itself: only differences are taken from it.
 */
export function laidWithin(setting: CoatSetting, travel: Travel, { stated, known }: KnownSetUp, shouldStop?: () => boolean): LaidValues {
  const valuesOf = (moved: CoatSetting) => laidValues(moved, layCoat(moved, travel, shouldStop === undefined ? {} : { shouldStop }));
  const middle = valuesOf(setting);
  const pairs = KNOWN_NUMBERS.filter((number) => sizeOf(known, number) > 0).map((number) => {
    const [low, high] = [-1, 1].map((move) => valuesOf(withSetUp(setting, movedSetUp(stated, known, { [number]: move }))));
    return { low: low as LaidValues, high: high as LaidValues };
  });
  const names = Object.keys(middle) as (keyof LaidValues)[];
  const within = names.map((name) => [name, Math.hypot(...pairs.map(({ low, high }) => halfInterval(low[name], middle[name], high[name])))]);
  return Object.fromEntries(within) as Record<keyof LaidValues, number>;
}

function sizeOf(known: KnownWithin, number: KnownNumber): number {
  switch (number) {
    case 'width':
      return known.width_m;
    case 'beta1':
      return known.beta1;
    case 'fluidRate':
      return known.fluidRate_m3_s;
    case 'efficiency':
      return known.efficiencyFraction;
  }
}
