import { LEFT_IN_POT_M3, TEST_SHARE } from '../materials/potLoss.ts';
import type { Warning } from '../base/errors.ts';
import type { MixSpec } from '../job/schema.ts';
import type { PlannedCoat, PlannedScheme, PlannedStep, Spread } from './planned.ts';
import { mixedProducts, type Product } from './products.ts';
import { exactly, scaled, summed } from './spread.ts';

/** What is mixed for a sprayed coat beside what leaves the gun: stays in cup, hose and strainer, runs out while the fan is set, and is washed out. */
export interface AmountOptions {
  /** For each sprayed coat, m³. */
  readonly left_m3: number;
  /** And this share of what leaves the gun, 0 to 1. */
  readonly leftFraction: number;
}

/** What stays behind where nobody has measured it. */
export const USUAL_AMOUNTS: AmountOptions = { left_m3: LEFT_IN_POT_M3.value, leftFraction: TEST_SHARE.value };

/** Where mixed liquid goes, all of it wet, as mixed, m³. */
export interface LiquidParts {
  /** Stays on the part. */
  readonly net_m3: Spread;
  /** Sprayed past the part, or bounced off it. */
  readonly missed_m3: Spread;
  /** Left in pot, hose or brush. */
  readonly left_m3: Spread;
  /** All three: what to mix. */
  readonly mixed_m3: Spread;
}

/** So much of a product. */
export interface ProductPart {
  readonly product: Product;
  readonly volume_m3: Spread;
}

/** One coat's liquid. */
export interface CoatAmount {
  readonly step: PlannedStep;
  readonly coat: PlannedCoat;
  readonly liquid: LiquidParts;
  readonly products: readonly ProductPart[];
  /** Aluminium paste stirred in, kg; 0 where none is stated. */
  readonly paste_kg: Spread;
}

/** A product over all coats. */
export interface ProductAmount extends ProductPart {
  /** Steps that take it. */
  readonly steps: readonly string[];
}

/** Liquid and products of a scheme, by coat and in all. */
export interface SchemeAmounts {
  readonly options: AmountOptions;
  readonly coats: readonly CoatAmount[];
  readonly total: LiquidParts;
  readonly products: readonly ProductAmount[];
  readonly paste_kg: Spread;
  readonly doubts: readonly Warning[];
}

/**
 * What a scheme takes to mix: for each coat the liquid that stays, what misses, what is left over, and the products that it is
 * mixed of; then all coats, with products that are the same grouped. A brushed coat's own loss, as stated in its step, is what stays in brush
 * and pot; nothing more is added to it. Low and high take all coats to be off the same way at once. Left out: liquid spoilt, coats
 * done again, thinner to wash the gun with.
 * @param mixes of the job; they say what the thinner and the retarder are.
 */
export function schemeAmounts(plan: PlannedScheme, mixes: readonly MixSpec[], options: AmountOptions = USUAL_AMOUNTS): SchemeAmounts {
  const coats = plan.steps.flatMap((step) => (step.coat === null ? [] : [coatAmount(step, step.coat, mixes, options)]));
  return {
    options,
    coats,
    total: summedParts(coats.map(({ liquid }) => liquid)),
    products: grouped(coats),
    paste_kg: summed(coats.map(({ paste_kg }) => paste_kg)),
    doubts: coats.flatMap(nothingLanded),
  };
}

/** What to mix for one coat, and where it goes. A brushed coat's stated loss is all that stays behind of it. */
export function coatLiquid({ spec }: PlannedStep, coat: PlannedCoat, options: AmountOptions = USUAL_AMOUNTS): LiquidParts {
  return spec.kind === 'brush' ? brushedParts(coat) : sprayedParts(coat, options);
}

function coatAmount(step: PlannedStep, coat: PlannedCoat, mixes: readonly MixSpec[], options: AmountOptions): CoatAmount {
  const liquid = coatLiquid(step, coat, options);
  const spec = mixes.find(({ id }) => id === coat.mixId);
  const products = mixedProducts(coat.mix, spec, coat.colour).map(({ product, fraction }) => ({ product, volume_m3: scaled(liquid.mixed_m3, fraction) }));
  const finish_m3 = products[0]?.volume_m3 ?? exactly(0);
  return { step, coat, liquid, products, paste_kg: scaled(finish_m3, coat.paste_kg_m3 ?? 0) };
}

/** Nothing is sprayed past; the stated loss is what stays in brush and pot. */
function brushedParts({ liquid_m3, landedFraction }: PlannedCoat): LiquidParts {
  return { net_m3: scaled(liquid_m3, landedFraction), missed_m3: exactly(0), left_m3: scaled(liquid_m3, 1 - landedFraction), mixed_m3: liquid_m3 };
}

function sprayedParts({ liquid_m3, landedFraction }: PlannedCoat, { left_m3, leftFraction }: AmountOptions): LiquidParts {
  const landed = Math.min(1, Math.max(0, landedFraction));
  const left = summed([exactly(left_m3), scaled(liquid_m3, leftFraction)]);
  return { net_m3: scaled(liquid_m3, landed), missed_m3: scaled(liquid_m3, 1 - landed), left_m3: left, mixed_m3: summed([liquid_m3, left]) };
}

function summedParts(parts: readonly LiquidParts[]): LiquidParts {
  const of = (key: keyof LiquidParts): Spread => summed(parts.map((part) => part[key]));
  return { net_m3: of('net_m3'), missed_m3: of('missed_m3'), left_m3: of('left_m3'), mixed_m3: of('mixed_m3') };
}

/** In order of first use. */
function grouped(coats: readonly CoatAmount[]): ProductAmount[] {
  const found = new Map<string, ProductAmount>();
  for (const { step, products } of coats) {
    for (const { product, volume_m3 } of products) {
      const before = found.get(product.key);
      found.set(product.key, {
        product,
        volume_m3: before === undefined ? volume_m3 : summed([before.volume_m3, volume_m3]),
        steps: [...(before?.steps ?? []), step.spec.id],
      });
    }
  }
  return [...found.values()];
}

function nothingLanded({ step, coat, liquid }: CoatAmount): Warning[] {
  if (coat.landedFraction > 0 && liquid.mixed_m3.value > 0) return [];
  return [{ code: 'model-limit', text: `Step "${step.spec.name}" lays no film, so its liquid is only what is left in the pot; check its strokes and set-up.`, place: { pointer: step.pointer } }];
}
