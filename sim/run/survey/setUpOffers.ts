import type { SetUpSpec } from '../../job/schema.ts';
import type { Estimate, RatioCause, SetUpOffer, WetComparison } from '../../survey/comparison.ts';

/** Most that a transfer efficiency can be, and the least that a job file takes, %. */
const EFFICIENCY_PERCENT: readonly [number, number] = [1, 100];
/** Limits of a job file's fluid rate, mL/min. */
const FLUID_mL_min: readonly [number, number] = [0.1, 5000];

/**
 * Updates that bring the plan to the readings: transfer efficiency, or fluid rate, times the ratio, one or the other for each
 * set-up. By the dry ratio; by the wet one where solids are off as well. None where solids alone explain it, where nothing
 * differs, or where the number would leave its limits.
 */
export function setUpOffers(setUps: readonly SetUpSpec[], cause: RatioCause, dry: Estimate | null, wet: WetComparison | null): SetUpOffer[] {
  const ratio = cause === 'both' ? (wet?.ratio ?? null) : cause === 'either' || cause === 'transfer-or-flow' ? dry : null;
  if (ratio === null || !(ratio.low > 0)) return [];
  return setUps.flatMap((setUp) => [
    ...offer(setUp, 'efficiency', setUp.transfer.efficiency_percent, ratio, EFFICIENCY_PERCENT),
    ...offer(setUp, 'fluidRate', setUp.fluidRate_mL_min, ratio, FLUID_mL_min),
  ]);
}

function offer({ id, name }: SetUpSpec, number: SetUpOffer['number'], from: number, { value, low, high }: Estimate, [least, most]: readonly [number, number]): SetUpOffer[] {
  const to = { value: rounded(from * value), low: rounded(from * low), high: rounded(from * high) };
  return to.value >= least && to.value <= most ? [{ setUp: id, name, number, from, to }] : [];
}

/** Four figures: more than a survey knows. */
function rounded(value: number): number {
  return Number(value.toPrecision(4));
}

/**
 * A set-up with an offer taken: the number, and how well it is now known where the job says that. The interval is that of flow
 * times transfer; what is stated of the other number stays as it was.
 */
export function withOffer(setUp: SetUpSpec, { number, to }: SetUpOffer): SetUpSpec {
  const within_percent = Number(Math.min(100, (Math.max(to.high - to.value, to.value - to.low) / to.value) * 100).toPrecision(3));
  const known = { ...setUp.knownWithin, ...(number === 'efficiency' ? { efficiency_percent: within_percent } : { fluidRate_percent: within_percent }) };
  const changed = number === 'efficiency' ? { transfer: { ...setUp.transfer, efficiency_percent: to.value } } : { fluidRate_mL_min: to.value };
  return { ...setUp, ...changed, knownWithin: known };
}
