import { CrosscoatError } from '../base/errors.ts';

/** A size in which a product is sold. */
export interface TinSize {
  readonly size_m3: number;
  /** Of one, in the supply's currency; null where not given. */
  readonly price: number | null;
}

/** So many tins of a size. */
export interface ChosenTin extends TinSize {
  readonly count: number;
}

/** Tins for an amount. */
export interface TinChoice {
  readonly need_m3: number;
  /** Largest first; sizes of which none is taken are left out. */
  readonly tins: readonly ChosenTin[];
  readonly held_m3: number;
  /** Left in the tins when the work is done. */
  readonly over_m3: number;
  /** Of all of them; null where the price of one is not known, never 0 in its place. */
  readonly cost: number | null;
  readonly rule: 'least cost' | 'least left over';
}

/** Sizes count in tenths of a millilitre: no label states more. */
const UNITS_PER_M3 = 1e7;
/** Prices count in thousandths, so that sums are exact whole numbers. */
const UNITS_PER_PRICE = 1000;
/** Most units of the table; about 60 MB. */
const MOST_UNITS = 2_000_000;

/**
 * Tins to buy for an amount. Where every size has a price, the least cost, and of equal cost the least left over, then the fewest tins;
 * else the least left over, then the fewest tins. Exact, by dynamic programming over the amount in the sizes' greatest common
 * unit, 0.1 mL at the finest.
 * @param need_m3 0 or more; 0 takes no tin.
 * @throws CrosscoatError `range` for a need that is no number or below 0, or no size above 0; `limit` for a need of more than two million units.
 */
export function chooseTins(sizes: readonly TinSize[], need_m3: number): TinChoice {
  check(sizes, need_m3);
  const whole = sizes.map(({ size_m3 }) => Math.max(1, Math.floor(size_m3 * UNITS_PER_M3 + 1e-3)));
  const unit = whole.reduce(greatestCommon);
  const units = whole.map((size) => size / unit);
  const need = Math.ceil((need_m3 * UNITS_PER_M3) / unit - 1e-6);
  if (need > MOST_UNITS) throw tooMuch(need_m3, unit);
  const isPriced = sizes.every(({ price }) => price !== null);
  const prices = sizes.map(({ price }) => (isPriced ? Math.round((price as number) * UNITS_PER_PRICE) : 0));
  const counts = fewest(units, prices, need);
  const tins = sizes
    .map((size, i) => ({ ...size, count: counts[i] as number }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.size_m3 - a.size_m3);
  const held_m3 = tins.reduce((sum, { size_m3, count }) => sum + size_m3 * count, 0);
  return { need_m3, tins, held_m3, over_m3: Math.max(0, held_m3 - need_m3), cost: costOf(tins), rule: isPriced ? 'least cost' : 'least left over' };
}

/**
 * How many of each size: best[j] is the choice of least (cost, content, tins), in that order, that holds j units or more. All three add up, so
 * the best choice for j ends in a tin of some size after a best choice for what is left.
 */
function fewest(units: readonly number[], prices: readonly number[], need: number): number[] {
  const cost = new Float64Array(need + 1);
  const content = new Float64Array(need + 1);
  const tins = new Float64Array(need + 1);
  const last = new Uint8Array(need + 1);
  for (let j = 1; j <= need; j++) {
    cost[j] = Infinity;
    for (let i = 0; i < units.length; i++) {
      const before = Math.max(0, j - (units[i] as number));
      const c = (cost[before] as number) + (prices[i] as number);
      const v = (content[before] as number) + (units[i] as number);
      const n = (tins[before] as number) + 1;
      const by = c - (cost[j] as number) || v - (content[j] as number) || n - (tins[j] as number);
      if (by >= 0) continue;
      cost[j] = c;
      content[j] = v;
      tins[j] = n;
      last[j] = i;
    }
  }
  const counts = new Array<number>(units.length).fill(0);
  for (let j = need; j > 0; ) {
    const i = last[j] as number;
    counts[i] = (counts[i] as number) + 1;
    j = Math.max(0, j - (units[i] as number));
  }
  return counts;
}

function costOf(tins: readonly ChosenTin[]): number | null {
  if (tins.some(({ price }) => price === null)) return null;
  return tins.reduce((sum, { price, count }) => sum + Math.round((price as number) * UNITS_PER_PRICE) * count, 0) / UNITS_PER_PRICE;
}

function check(sizes: readonly TinSize[], need_m3: number): void {
  if (!(need_m3 >= 0 && Number.isFinite(need_m3))) throw new CrosscoatError('range', `chooseTins: need_m3 = ${need_m3} is not 0 or more; give the liquid in m³`);
  if (sizes.length === 0 || sizes.length > 255 || !sizes.every(({ size_m3 }) => size_m3 > 0 && Number.isFinite(size_m3))) {
    throw new CrosscoatError('range', 'chooseTins: needs 1 to 255 sizes, each above 0; give what the tins hold');
  }
}

function tooMuch(need_m3: number, unit: number): CrosscoatError {
  return new CrosscoatError(
    'limit',
    `chooseTins: ${Math.round(need_m3 * 1000)} L in steps of ${unit / 10} mL is more than ${MOST_UNITS} steps; give the tins' sizes in round millilitres, or the larger sizes alone`,
  );
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}
