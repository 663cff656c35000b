import { unitSize } from '../base/units.ts';
import { roundedText, shownLiquid, type UnitSystem } from './units.ts';

/** A size in a unit that tins are sold by. */
interface LabelUnit {
  readonly name: string;
  readonly system: UnitSystem | 'imperial';
  /** A tin holds no more of them. */
  readonly most: number;
}

/** Larger first: 4 quarts are sold as a gallon. */
const LABEL_UNITS: readonly LabelUnit[] = [
  { name: 'US gal', system: 'us', most: 55 }, { name: 'US qt', system: 'us', most: 3 }, { name: 'US pt', system: 'us', most: 3 },
  { name: 'imp gal', system: 'imperial', most: 55 }, { name: 'imp qt', system: 'imperial', most: 3 }, { name: 'imp pt', system: 'imperial', most: 3 },
];
/** Metric tins hold whole steps of this, m³; no whole pint, quart or gallon does up to 200 L. Assumed. */
const METRIC_STEP_m3 = 50e-6;
/** A label's figure in millilitres is rounded: 946 mL are a US quart less 0.04 %. */
const LABEL_ROUNDING = 5e-4;

/**
 * A tin by the size that it is sold by, with what that is for a reader of other units in brackets: `1 L`, for a US reader
 * `1 L (1.06 US qt)`; `1 US qt`, for a metric one `1 US qt (946 mL)`. Sizes that are no whole number of any unit are metric.
 */
export function tinLabel(size_m3: number, system: UnitSystem): string {
  const label = isWhole(size_m3 / METRIC_STEP_m3, Infinity, 1e-9) ? undefined : LABEL_UNITS.find(({ name, most }) => isWhole(size_m3 / unitSize('volume', name), most, LABEL_ROUNDING));
  const sold = label === undefined ? shownLiquid(size_m3, 'metric') : `${Math.round(size_m3 / unitSize('volume', label.name))} ${label.name}`;
  if ((label?.system ?? 'metric') === system) return sold;
  return `${sold} (${system === 'us' ? usSize(size_m3) : shownLiquid(size_m3, 'metric')})`;
}

function isWhole(count: number, most: number, within: number): boolean {
  const whole = Math.round(count);
  return whole >= 1 && whole <= most && Math.abs(count / whole - 1) <= within;
}

/** US quarts between one of them and a gallon, where a US reader thinks in neither ounces nor parts of a gallon. */
function usSize(size_m3: number): string {
  const quarts = size_m3 / unitSize('volume', 'US qt');
  return quarts >= 1 && quarts < 4 ? `${roundedText(quarts)} US qt` : shownLiquid(size_m3, 'us');
}
