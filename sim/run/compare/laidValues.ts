import { blendDensity_kg_m3 } from '../../materials/blend.ts';
import { largest, makeField } from '../../picture/field.ts';
import { lostPaint_m3 } from '../../report/reported.ts';
import type { ComparedName, ComparedValues } from '../../report/reportedComparison.ts';
import { filmFigures } from '../../verdict/figures.ts';
import type { FilmFigures } from '../../verdict/verdict.ts';
import type { CoatSetting, LaidCoat } from '../result.ts';

/** Figures of a film as laid and of the liquid that went into it, which follow from fan, flow and transfer at once. */
export const LAID_NAMES = [
  'wet_m', 'dry_m', 'weight_kg_m2', 'cv', 'minOverMax', 'worstLapRatio', 'dryMarginFraction',
  'sprayed_m3', 'landed_m3', 'lost_m3', 'fog_m3', 'missed_m3', 'flight_m3', 'solvent_m3', 'solvent_kg',
] as const satisfies readonly ComparedName[];
export type LaidName = (typeof LAID_NAMES)[number];
/** Those figures, and the heaviest film, which the margin to a run starts from. */
export type LaidValues = Pick<ComparedValues, LaidName> & { readonly heaviest_m: number };

/**
 * The figures of a coat as laid. The solvent that the room gets is all that left the gun: what flies off
 * the drops, what the film gives up and what the fog dries to. The worst lap is the thinnest place of
 * cells at least half covered, edges among them.
 */
export function laidValues({ panelGrid, target, setUp, mix }: CoatSetting, { film, account }: LaidCoat): LaidValues {
  const wet = filmFigures(film.wet_m, panelGrid);
  const dry_m = filmFigures(film.dry_m, panelGrid).mean_m;
  const solvent_m3 = account.sprayed_m3 * (1 - setUp.volumeSolidsFraction);
  return {
    wet_m: wet.mean_m,
    dry_m,
    weight_kg_m2: dry_m * mix.finish.solidsDensity_kg_m3.value,
    cv: wet.cv,
    ...shares(wet),
    heaviest_m: wet.max_m,
    dryMarginFraction: target.dryFraction - Math.max(0, largest(makeField('dry-share', film, target).values)),
    sprayed_m3: account.sprayed_m3,
    landed_m3: account.landed_m3,
    lost_m3: lostPaint_m3(account),
    fog_m3: account.fog_m3,
    missed_m3: account.missed_m3,
    flight_m3: account.flight_m3,
    solvent_m3,
    solvent_kg: solvent_m3 * (mix.solvents.length > 0 ? blendDensity_kg_m3(mix.solvents) : 0),
  };
}

/** NaN where nothing landed. */
function shares({ mean_m, min_m, max_m }: FilmFigures): Pick<ComparedValues, 'minOverMax' | 'worstLapRatio'> {
  return { minOverMax: min_m / max_m, worstLapRatio: min_m / mean_m };
}
