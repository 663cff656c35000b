import type { Warning } from '../base/errors.ts';
import { nearestWord } from '../base/nearestWord.ts';
import type { SupplySpec } from '../job/schema.ts';
import { FINISHES } from '../materials/finishes.ts';
import type { ProductAmount, SchemeAmounts } from './amounts.ts';
import { chooseTins, type TinChoice, type TinSize } from './tins.ts';

/** What must be stated before a cost is known. */
export type MissingForCost =
  | { readonly kind: 'tins' | 'price'; readonly product: string; /** Sizes without a price. */ readonly sizes_m3: readonly number[] }
  | { readonly kind: 'one-currency'; /** Empty for none stated. */ readonly currencies: readonly string[] }
  | { readonly kind: 'coat' };

/** What to buy of one product. */
export interface ProductPurchase {
  readonly amount: ProductAmount;
  /** Place of its tins in the job's `supplies`; null where none are stated. */
  readonly supply: number | null;
  readonly currency: string | null;
  /** Tins for the amount as worked out, and for its high end; null where no sizes are stated. */
  readonly usual: TinChoice | null;
  readonly high: TinChoice | null;
  /** What must be stated before its cost is known. */
  readonly missing: readonly MissingForCost[];
}

/** What it all costs; null where not known. */
export interface TotalCost {
  readonly cost: number | null;
  readonly high: number | null;
  readonly currency: string | null;
  /** What must be stated before it is known; empty where it is. */
  readonly missing: readonly MissingForCost[];
}

/** Tins to buy for a scheme. */
export interface Purchase {
  readonly products: readonly ProductPurchase[];
  readonly total: TotalCost;
  readonly doubts: readonly Warning[];
}

/** What the job's `supplies` may name. */
export const SUPPLY_PRODUCTS: readonly string[] = [...FINISHES.map(({ id }) => id), 'thinner', 'retarder'];

/**
 * Tins to buy of each product in its stated sizes, for the amount and for its high end, and what they cost. A price that is not stated
 * leaves the cost not known and says which; prices in several currencies are not added.
 * @throws CrosscoatError `limit` for an amount of more steps than `chooseTins` counts.
 */
export function purchaseOf(amounts: SchemeAmounts, supplies: readonly SupplySpec[]): Purchase {
  const products = amounts.products.map((amount) => productPurchase(amount, supplies));
  const total = totalCost(products);
  return { products, total, doubts: supplyDoubts(supplies) };
}

function productPurchase(amount: ProductAmount, supplies: readonly SupplySpec[]): ProductPurchase {
  const { product, volume_m3 } = amount;
  const place = supplies.findIndex((each) => each.product === product.supply);
  const supply = supplies[place];
  if (supply === undefined) return { amount, supply: null, currency: null, usual: null, high: null, missing: [{ kind: 'tins', product: product.name, sizes_m3: [] }] };
  const sizes: TinSize[] = supply.tins.map(({ size_mL, price }) => ({ size_m3: size_mL * 1e-6, price: price ?? null }));
  const unpriced = sizes.filter(({ price }) => price === null).map(({ size_m3 }) => size_m3);
  const usual = chooseTins(sizes, volume_m3.value);
  const high = chooseTins(sizes, volume_m3.high);
  return { amount, supply: place, currency: supply.currency ?? null, usual, high, missing: usual.cost === null || high.cost === null ? [{ kind: 'price', product: product.name, sizes_m3: unpriced }] : [] };
}

function totalCost(products: readonly ProductPurchase[]): TotalCost {
  if (products.length === 0) return { cost: null, high: null, currency: null, missing: [{ kind: 'coat' }] };
  const currencies = [...new Set(products.filter(({ usual }) => usual !== null).map(({ currency }) => currency ?? ''))];
  const mixed: MissingForCost[] = currencies.length > 1 ? [{ kind: 'one-currency', currencies }] : [];
  const missing = [...products.flatMap((each) => each.missing), ...mixed];
  const currency = currencies.length === 1 && currencies[0] !== '' ? (currencies[0] as string) : null;
  if (missing.length > 0) return { cost: null, high: null, currency, missing };
  const sum = (of: (each: ProductPurchase) => TinChoice | null) => products.reduce((total, each) => total + (of(each)?.cost ?? NaN), 0);
  return { cost: sum(({ usual }) => usual), high: sum(({ high }) => high), currency, missing: [] };
}

/** Supplies that name no product, or one twice. */
function supplyDoubts(supplies: readonly SupplySpec[]): Warning[] {
  return supplies.flatMap(({ product }, i) => {
    const place = { pointer: `/supplies/${i}/product` };
    if (!SUPPLY_PRODUCTS.includes(product)) {
      const near = nearestWord(product, SUPPLY_PRODUCTS);
      const meant = near === null ? '' : `did you mean "${near}"? `;
      return [{ code: 'unknown-supply' as const, text: `The tins of "${product}" belong to no product; ${meant}known are ${SUPPLY_PRODUCTS.join(', ')}.`, place }];
    }
    if (supplies.findIndex((each) => each.product === product) === i) return [];
    return [{ code: 'unknown-supply' as const, text: `The tins of "${product}" are stated twice; the first are used, put all its sizes there.`, place }];
  });
}
