import type { Warning } from '../../base/errors.ts';
import { fanScale } from '../../base/raySource.ts';
import type { CardSpec, KnownWithinSpec, SetUpSpec } from '../../job/schema.ts';
import { solventKept } from '../drops.ts';
import { UNMEASURED } from '../knownWithin.ts';
import { makeSetUp } from '../setUpFromSpec.ts';
import { strokeProfile } from '../strokeProfile.ts';
import { caughtFlow } from './caughtFlow.ts';
import { hundredth, tenth } from './fileDigits.ts';
import { combEfficiency, foilEfficiency, type CardLiquid, type EfficiencyFound } from './filmPerStroke.ts';
import type { Measured } from './measured.ts';
import type { ProvedWithin } from './provedChanges.ts';

/** A set-up while one part of a card after another is put into it. */
export interface Proving {
  readonly setUp: SetUpSpec;
  readonly within: ProvedWithin;
  readonly warnings: readonly Warning[];
}

const ML_MIN_PER_M3_S = 60e6;

/** With the catch cup's fluid rate. */
export function withFlow(now: Proving, { caught }: CardSpec): Proving {
  if (caught === undefined) return now;
  const rate = caughtFlow(caught);
  const setUp = { ...now.setUp, fluidRate_mL_min: tenth(rate.value * ML_MIN_PER_M3_S) };
  return {
    ...now,
    setUp: knownSetUp(setUp, { ...setUp.knownWithin, fluidRate_percent: percentOf(rate) }),
    within: { ...now.within, fluidRate_mL_min: rate.within * ML_MIN_PER_M3_S },
  };
}

/**
 * With the efficiency by the foil, which asks nothing of the fan's shape, or else by the comb; where there are both they are
 * held against each other. The fan's middle is taken to be known as well as its width: the exponent errs with it, the other way.
 */
export function withEfficiency(now: Proving, { foil, comb }: CardSpec, distance_m: number, liquid: CardLiquid): Proving {
  const { fluidRate_percent = 100 * UNMEASURED.fluidRateRatio } = now.setUp.knownWithin ?? {};
  const { fluidRate_m3_s } = makeSetUp(now.setUp);
  const rate = { value: fluidRate_m3_s, within: (fluidRate_m3_s * fluidRate_percent) / 100 };
  const byFoil = foil === undefined ? null : foilEfficiency(foil, rate, liquid);
  const byComb = comb === undefined ? null : combEfficiency(comb, { fluidRate_m3_s: rate, ...combSetting(now.setUp, distance_m, liquid) });
  const found = byFoil ?? byComb;
  if (found === null) return now;
  const percent = tenth(100 * found.value);
  const setUp = { ...now.setUp, transfer: { ...now.setUp.transfer, efficiency_percent: percent, atDistance_mm: tenth(distance_m * 1000) } };
  return {
    setUp: knownSetUp(setUp, { ...setUp.knownWithin, efficiency_percent: percentOf(found) }),
    within: { ...now.within, efficiency_percent: 100 * found.within },
    warnings: [...now.warnings, ...found.warnings, ...(byFoil === null || byComb === null ? [] : apartWarnings(byFoil, byComb))],
  };
}

function combSetting(spec: SetUpSpec, distance_m: number, { volumeSolidsFraction }: CardLiquid) {
  const { fan, drops } = makeSetUp(spec);
  const { width_percent = 100 * UNMEASURED.widthRatio } = spec.knownWithin ?? {};
  const middle_per_m = strokeProfile(fan)(0) / fanScale(distance_m, fan.atDistance_m, fan.origin_m);
  return {
    middle_per_m: { value: middle_per_m, within: (middle_per_m * width_percent) / 100 },
    volumeSolidsFraction,
    solventKeptFraction: solventKept(distance_m, drops.meanDiameter_m, drops.solventSpeedRatio),
  };
}

function apartWarnings(foil: EfficiencyFound, comb: EfficiencyFound): Warning[] {
  if (Math.abs(foil.value - comb.value) <= Math.hypot(foil.within, comb.within)) return [];
  const text = `By the foil ${(100 * foil.value).toFixed(0)} % of the solids landed, by the comb ${(100 * comb.value).toFixed(0)} %, which lie farther apart than either is known; the foil's is taken. Look at the strokes and speed of both, and at the solids.`;
  return [{ code: 'model-limit', text, place: {} }];
}

/** A set-up with other half intervals; keys stay in the schema's order, so that the job is written as it would be read back. */
export function knownSetUp({ card, ...rest }: SetUpSpec, knownWithin: KnownWithinSpec): SetUpSpec {
  const { width_percent, beta1, fluidRate_percent, efficiency_percent } = knownWithin;
  const known = {
    ...(width_percent === undefined ? {} : { width_percent }),
    ...(beta1 === undefined ? {} : { beta1 }),
    ...(fluidRate_percent === undefined ? {} : { fluidRate_percent }),
    ...(efficiency_percent === undefined ? {} : { efficiency_percent }),
  };
  return { ...rest, knownWithin: known, ...(card === undefined ? {} : { card }) };
}

/** A half interval as the job file has it, at most all of the number. */
export function percentOf({ value, within }: Measured): number {
  return Math.min(100, hundredth((100 * within) / value));
}
