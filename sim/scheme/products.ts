import type { ColourSpec, MixSpec } from '../job/schema.ts';
import { blended, type BlendPart } from '../materials/blend.ts';
import { solventById } from '../materials/solvents.ts';
import { thinnerById, THINNERS } from '../materials/thinners.ts';
import type { Mix } from '../mix/mix.ts';

/** Something that is bought: a finish, a thinner or a retarder. */
export interface Product {
  /** One of a kind: mixes with the same key are filled from the same tin. */
  readonly key: string;
  /** What the job's `supplies` call it: a finish's id, `thinner` or `retarder`. */
  readonly supply: string;
  readonly name: string;
}

/** A product and its share of a mixed liquid by volume, 0 to 1. */
export interface MixedProduct {
  readonly product: Product;
  readonly fraction: number;
}

/** A stated thinner within so much of each share of a known one is that thinner: job files round them to whole per cent. */
const SAME_SHARE = 0.01;
/** Two thinners that agree in each share to this are one. */
const KEY_STEP_percent = 1;

/**
 * What a mixed liquid is made of, the finish first. Volumes are taken to add up.
 * @param spec the mix as the job states it; without one the liquid is thinned with the general thinner, as `genericMix` does.
 * @param colour of the coat: each colour of a finish is bought in tins of its own.
 */
export function mixedProducts(mix: Mix, spec: MixSpec | undefined, colour: ColourSpec | null = null): MixedProduct[] {
  const finish = finishProduct(mix.finish, colour);
  const whole = 1 + mix.thinnerRatio;
  const retarded = spec?.retarder === undefined ? 0 : mix.retarderFraction;
  const thinnerFraction = (mix.thinnerRatio * (1 - retarded)) / whole;
  const retarderFraction = (mix.thinnerRatio * retarded) / whole;
  return [
    { product: finish, fraction: 1 / whole },
    ...(thinnerFraction > 0 ? [{ product: thinnerProduct(thinnerParts(spec)), fraction: thinnerFraction }] : []),
    ...(spec?.retarder !== undefined && retarderFraction > 0 ? [{ product: retarderProduct(spec.retarder.solvent), fraction: retarderFraction }] : []),
  ];
}

function finishProduct({ id, name }: Mix['finish'], colour: ColourSpec | null): Product {
  return colour === null ? { key: id, supply: id, name } : { key: `${id}:${colour.id}`, supply: id, name: `${name}, ${colour.name}` };
}

function thinnerParts(spec: MixSpec | undefined): readonly BlendPart[] {
  if (spec === undefined) return thinnerById('general').parts;
  const parts = spec.thinner.map(({ solvent, percent }) => ({ solvent: solventById(solvent), volumeFraction: percent / 100 }));
  return blended([{ parts, weight: 1 }]);
}

function thinnerProduct(parts: readonly BlendPart[]): Product {
  const known = THINNERS.find((thinner) => isSame(thinner.parts, parts));
  if (known !== undefined) return { key: `thinner:${known.id}`, supply: 'thinner', name: known.name };
  const shares = [...parts]
    .sort((a, b) => b.volumeFraction - a.volumeFraction || (a.solvent.id < b.solvent.id ? -1 : 1))
    .map(({ solvent, volumeFraction }) => `${solvent.name} ${Math.round((volumeFraction * 100) / KEY_STEP_percent) * KEY_STEP_percent} %`);
  return { key: `thinner:${shares.join(', ')}`, supply: 'thinner', name: `thinner of ${shares.join(', ')}` };
}

function isSame(a: readonly BlendPart[], b: readonly BlendPart[]): boolean {
  return a.length === b.length && a.every(({ solvent, volumeFraction }) => b.some((other) => other.solvent.id === solvent.id && Math.abs(other.volumeFraction - volumeFraction) <= SAME_SHARE));
}

function retarderProduct(solventId: string): Product {
  const { id, name } = solventById(solventId);
  return { key: `retarder:${id}`, supply: 'retarder', name: `retarder, ${name}` };
}
