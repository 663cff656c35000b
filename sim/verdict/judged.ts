import type { Film } from '../film/film.ts';
import type { FaultKind } from './verdict.ts';
import type { Target } from './target.ts';

/**
 * Least cover of a cell that is judged. A cell mostly outside the outline says more about the
 * outline than about the coat; its area still counts in the panel's means.
 */
export const JUDGED_COVER = 0.5;

/** The film that the target speaks of, wet or dry, m. */
export function judgedFilm(film: Film, target: Target): Float32Array {
  return target.film === 'wet' ? film.wet_m : film.dry_m;
}

/** Share of a wet film that arrived in dry drops, 0 where there is no film. */
export function dryShare(arrivedDry_m: number, wet_m: number): number {
  return wet_m > 0 ? arrivedDry_m / wet_m : 0;
}

/** The limit of one kind of fault: m of the target's film, or for dry spray a share. */
export function limitOf(kind: FaultKind, target: Target): number {
  switch (kind) {
    case 'holiday':
      return target.holidayFraction * target.thickness_m;
    case 'thin-lap':
      return target.minFraction * target.thickness_m;
    case 'heavy-spot':
      return target.maxFraction * target.thickness_m;
    case 'dry-spray':
      return target.dryFraction;
  }
}

/** Whether a fault of this kind lies below its limit (too little) rather than above it. */
export function isLack(kind: FaultKind): boolean {
  return kind === 'holiday' || kind === 'thin-lap';
}

/** How far `value` is past the limit of `kind`, positive when at fault, in the value's unit. */
export function marginOf(kind: FaultKind, value: number, target: Target): number {
  const limit = limitOf(kind, target);
  return isLack(kind) ? limit - value : value - limit;
}
