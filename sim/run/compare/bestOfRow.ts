import type { ComparedFigure, ComparedName, ComparedRow } from '../../report/reportedComparison.ts';
import type { Target } from '../../verdict/target.ts';

/** Which figure of a row is best: the most, the least, the nearest to a value; null where none is. */
export type Better = 'more' | 'less' | { readonly nearest: number } | null;

/** What is better in each row but the films, which the target decides. */
const BETTER: Readonly<Record<Exclude<ComparedName, 'wet_m' | 'dry_m'>, Better>> = {
  speed_m_s: null,
  weight_kg_m2: null,
  cv: 'less',
  minOverMax: 'more',
  worstLapRatio: 'more',
  runMarginFraction: 'more',
  holdMarginFraction: 'more',
  holdMargin_m: 'more',
  dryMarginFraction: 'more',
  peel_m: 'less',
  blushMargin_K: 'more',
  spraying_s: 'less',
  sprayed_m3: 'less',
  landed_m3: null,
  lost_m3: 'less',
  fog_m3: 'less',
  missed_m3: 'less',
  flight_m3: 'less',
  passes: null,
  strokes: null,
  solvent_m3: 'less',
  solvent_kg: 'less',
};

/** The rows of a comparison, in the order in which they are read. */
export const ROW_NAMES: readonly ComparedName[] = [
  'speed_m_s', 'wet_m', 'dry_m', 'weight_kg_m2', 'cv', 'minOverMax', 'worstLapRatio', 'runMarginFraction', 'holdMarginFraction', 'holdMargin_m',
  'dryMarginFraction', 'peel_m', 'blushMargin_K', 'spraying_s', 'sprayed_m3', 'landed_m3', 'lost_m3', 'fog_m3', 'missed_m3', 'flight_m3',
  'passes', 'strokes', 'solvent_m3', 'solvent_kg',
];

/** What is better in a row: of the two films, the one that the target speaks of should be near it. */
export function betterOf(name: ComparedName, target: Target): Better {
  if (name === 'wet_m' || name === 'dry_m') return name === `${target.film}_m` ? { nearest: target.thickness_m } : null;
  return BETTER[name];
}

/**
 * Figures that differ by less than this share are not told apart, however well the set-ups are known.
 * Assumed: cells and steps put about as much into a figure.
 */
const LEAST_TOLD = 0.002;

/**
 * The best figure of a row, and all that differ from it by no more than the root of the sum of the
 * squares of both half intervals, or hardly at all. The errors of two set-ups are taken as independent:
 * those of two that share a measured number cancel in part, so some differences are kept back here.
 * @param figures one a side; null for a side without any. A figure that is not a number has no part.
 */
export function bestOfRow(name: ComparedName, figures: readonly (ComparedFigure | null)[], better: Better): ComparedRow {
  const scored = figures.flatMap((figure, side) => (figure === null || Number.isNaN(figure.value) ? [] : [{ side, ...figure, score: scoreOf(figure.value, better) }]));
  const [first] = scored;
  if (better === null || first === undefined) return { name, best: [], isTie: false };
  const top = scored.reduce((best, one) => (one.score > best.score || (one.score === best.score && one.within < best.within) ? one : best), first);
  const best = scored.filter((one) => isSame(one, top)).map(({ side }) => side);
  return { name, best, isTie: best.length > 1 };
}

function scoreOf(value: number, better: Better): number {
  if (better === 'more' || better === null) return value;
  return better === 'less' ? -value : -Math.abs(value - better.nearest);
}

interface Scored {
  readonly value: number;
  readonly within: number;
  readonly score: number;
}

/** Two endless margins are the same; an endless one and any other are not. */
function isSame(one: Scored, top: Scored): boolean {
  if (one.score === top.score) return true;
  const apart = top.score - one.score;
  return Number.isFinite(apart) && apart <= Math.max(Math.hypot(one.within, top.within), LEAST_TOLD * Math.abs(top.value));
}
