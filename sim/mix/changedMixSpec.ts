import type { MixSpec } from '../job/schema.ts';
import { thinnerById } from '../materials/thinners.ts';

/** What may be changed in a stated mix to try another. */
export interface MixChange {
  /** Retarder as a share of the thinner, %; 0 takes it out. */
  readonly retarder_percent?: number;
  /** Which solvent is the retarder; that of the mix where it has one, else n-butyl alcohol. */
  readonly retarder?: string;
  readonly thinnerPerFinish?: number;
}

/**
 * The retarder tried where none is named: butyl and diacetone alcohol are the usual anti-blush
 * additions (USAF T.O. 1-1-8, 6.7.2.3).
 */
export const USUAL_RETARDER = 'n-butanol';

/** A stated mix with some of it changed. A cup reading is dropped: it was of the mix before. */
export function changedMixSpec(spec: MixSpec, change: MixChange): MixSpec {
  const percent = change.retarder_percent ?? spec.retarder?.percent ?? 0;
  const solvent = change.retarder ?? spec.retarder?.solvent ?? USUAL_RETARDER;
  return {
    id: spec.id,
    name: spec.name,
    finish: spec.finish,
    thinner: spec.thinner,
    thinnerPerFinish: change.thinnerPerFinish ?? spec.thinnerPerFinish,
    ...(percent > 0 ? { retarder: { solvent, percent } } : {}),
  };
}

/** A stated mix of a finish with a generic thinner, `general`, `retarded` or `fast`. */
export function genericMixSpec(finish: string, thinner: string, thinnerPerFinish: number): MixSpec {
  const { name, parts } = thinnerById(thinner);
  return {
    id: thinner,
    name: `${finish.replace('-', ' ')}, ${name}`,
    finish,
    thinner: parts.map(({ solvent, volumeFraction }) => ({ solvent: solvent.id, percent: volumeFraction * 100 })),
    thinnerPerFinish,
  };
}
