import { cellAt } from '../base/grid.ts';
import type { FilmMoment } from '../film/life/snapshot.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import { isLack, JUDGED_COVER, LIFE_KINDS, limitOf } from './judged.ts';
import type { Target } from './target.ts';
import type { LifeFaultKind, RunCourse, Zone } from './verdict.ts';
import { type FaultMap, type FoundZones, zonesOfMaps } from './zones.ts';

/** A film at the end of the time that is judged, with what is worked out of its marks elsewhere. */
export interface JudgedLife {
  readonly moment: FilmMoment;
  /** Amplitude of the ripple left, one value a cell, m. */
  readonly peel_m: Float32Array;
  /** Gravity along the panel, m/s². */
  readonly gravityX_m_s2: number;
  readonly gravityY_m_s2: number;
}

/** Film that landed so thinly is a holiday, not a film with faults of its own, m. Assumed: a micrometre. */
const LEAST_FILM_M = 1e-6;

/** The value that each kind of fault is judged by, cell by cell; `LifeLimits` says in which unit. */
export function lifeValues(kind: LifeFaultKind, { moment, peel_m }: JudgedLife, target: Target): Float32Array {
  const { film } = moment;
  switch (kind) {
    case 'run':
      return film.run_m.map((run, cell) => (isGathered(film.gathered_m[cell] as number, film.landed_m[cell] as number, target) ? run : 0));
    case 'orange-peel':
      // Film that has not set still levels.
      return peel_m.map((peel, cell) => ((film.setAt_s[cell] as number) >= 0 ? peel : 0));
    case 'dry-lap':
      return film.lapped_m.map((lapped, cell) => lapShare(lapped, film.laid_m[cell] as number));
    case 'blush':
      return film.margin_K;
    case 'blister':
      return film.trapped_m;
    case 'pinhole':
      return film.skin;
    case 'over-thick':
      return moment.dry_m;
  }
}

/** Film gathers where running has brought more than it took, by enough to see. */
function isGathered(gathered_m: number, landed_m: number, { life }: Target): boolean {
  return gathered_m >= life.gather_m && gathered_m >= GATHERED_SHARE * landed_m;
}

/** Share of the landed film that a run must have brought. Assumed. */
const GATHERED_SHARE = 0.1;

/** What had set when the rest landed on it, or the rest where that is less, over the whole. */
function lapShare(lapped_m: number, laid_m: number): number {
  return laid_m > 0 ? Math.min(lapped_m, Math.max(0, laid_m - lapped_m)) / laid_m : 0;
}

/** The zones of every fault of a film's life. A cell may be in several. */
export function findLifeZones(life: JudgedLife, panelGrid: PanelGrid, target: Target): FoundZones {
  const found = zonesOfMaps(LIFE_KINDS.map((kind) => lifeMap(kind, life, panelGrid, target)), panelGrid, target);
  return { ...found, zones: found.zones.map((zone) => (zone.kind === 'run' ? { ...zone, run: runCourse(zone, life) } : zone)) };
}

function lifeMap(kind: LifeFaultKind, life: JudgedLife, { cover }: PanelGrid, target: Target): FaultMap {
  const values = lifeValues(kind, life, target);
  const limit = limitOf(kind, target);
  const lack = isLack(kind);
  const { landed_m } = life.moment.film;
  // A coat that only blew air at the film beneath laid none of its own, and may still have run.
  const { dry_m } = life.moment;
  const codes = new Uint8Array(cover.length);
  for (let cell = 0; cell < cover.length; cell++) {
    if ((cover[cell] as number) < JUDGED_COVER || !(Math.max(landed_m[cell] as number, dry_m[cell] as number) > LEAST_FILM_M)) continue;
    const value = values[cell] as number;
    if (lack ? value < limit : value > limit) codes[cell] = 1;
  }
  return { codes, kinds: [kind], values };
}

/** Film that moved less is where a run began, m. */
const STILL_M = 1e-3;

/** Walks uphill from a run's worst place to where the film has hardly moved. */
function runCourse(zone: Zone, { moment, gravityX_m_s2, gravityY_m_s2 }: JudgedLife): RunCourse {
  const { grid, film } = moment;
  const gravity = Math.hypot(gravityX_m_s2, gravityY_m_s2);
  const step: readonly [number, number] = [(-gravityX_m_s2 / gravity) * grid.cellSize_m, (-gravityY_m_s2 / gravity) * grid.cellSize_m];
  let [x, y] = zone.at_m;
  for (let cell = cellAt(grid, x, y); cell >= 0; cell = cellAt(grid, x + step[0], y + step[1])) {
    if (!((film.run_m[cell] as number) > STILL_M) || film.inside[cell] === 0) break;
    x += step[0];
    y += step[1];
  }
  let started_s = Infinity;
  for (const cell of zone.cells) {
    const moved_s = film.movedAt_s[cell] as number;
    if (moved_s < started_s) started_s = moved_s;
  }
  return { start_m: [x, y], started_s, length_m: Math.hypot(x - zone.at_m[0], y - zone.at_m[1]) };
}

