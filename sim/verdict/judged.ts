import type { Film } from '../film/film.ts';
import type { FaultKind, LaidFaultKind, LifeFaultKind } from './verdict.ts';
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

/** The limit of one kind of fault: m of the target's film, for dry spray a share, for the film's life see `LifeLimits`. */
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
    case 'run':
      return target.life.run_m;
    case 'orange-peel':
      return target.life.peel_m;
    case 'dry-lap':
      return target.life.lapFraction;
    case 'blush':
      return target.life.blush_K;
    case 'blister':
      return target.life.trapped_m;
    case 'pinhole':
      return target.life.skin;
    case 'over-thick':
      return target.life.thick_m;
  }
}

/** Whether a fault of this kind lies below its limit (too little) rather than above it. */
export function isLack(kind: FaultKind): boolean {
  return kind === 'holiday' || kind === 'thin-lap' || kind === 'blush';
}

/** How far `value` is past the limit of `kind`, positive when at fault, in the value's unit. */
export function marginOf(kind: FaultKind, value: number, target: Target): number {
  const limit = limitOf(kind, target);
  return isLack(kind) ? limit - value : value - limit;
}

/** The kinds of fault that a film has as laid. */
export const LAID_KINDS: readonly LaidFaultKind[] = ['holiday', 'thin-lap', 'heavy-spot', 'dry-spray'];

/** The kinds of fault that a film gets while it lives. */
export const LIFE_KINDS: readonly LifeFaultKind[] = ['run', 'orange-peel', 'dry-lap', 'blush', 'blister', 'pinhole', 'over-thick'];

/** Whether a fault belongs to the film's life rather than to the film as laid. */
export function isLifeFault(kind: FaultKind): kind is LifeFaultKind {
  return (LIFE_KINDS as readonly FaultKind[]).includes(kind);
}
