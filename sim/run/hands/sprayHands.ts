import { checkRange } from '../../base/check.ts';
import { CrosscoatError } from '../../base/errors.ts';
import type { HandSpec } from '../../job/schema.ts';
import { handOf, wander } from '../../stroke/hand.ts';
import type { FilmLaw } from '../../film/law.ts';
import type { FilmMoment } from '../../film/life/snapshot.ts';
import type { PanelGrid } from '../../panel/panelGrid.ts';
import { filmFigures } from '../../verdict/figures.ts';
import { JUDGED_COVER, judgedFilm } from '../../verdict/judged.ts';
import { findLifeZones } from '../../verdict/lifeMaps.ts';
import type { FaultKind } from '../../verdict/verdict.ts';
import { findZones } from '../../verdict/zones.ts';
import { peelOf } from '../coatLife.ts';
import { filmLawOf } from '../filmLaw.ts';
import { landedFilm } from '../landedFilm.ts';
import { judgedLifeOf } from '../lifeCures.ts';
import type { CoatSetting } from '../result.ts';
import { stopIfAsked } from '../stop.ts';
import { planOf } from '../strokes.ts';
import { airMarks, handFilm } from './handFilm.ts';
import { mixedSeed } from '../../base/mixedSeed.ts';
import { emptyTally, HAND_FAULTS, type HandFault, type HandOutcome, type HandsTally } from './handsTally.ts';

/** Which hands spray, and how it is watched and stopped. */
export interface HandsOptions {
  readonly hand: HandSpec;
  /** 1 to `MOST_HANDS`. */
  readonly count: number;
  /** 0 to 2^32 - 1: the same seed gives the same hands, however they are shared out. */
  readonly seed: number;
  /** Index of the first, where others do the rest; 0 where not given. */
  readonly first?: number;
  readonly shouldStop?: () => boolean;
  readonly onHand?: (done: number) => void;
}

/** More hands make no figure better than the model is. */
export const MOST_HANDS = 5000;
/** Cells on which hands are sprayed, mm: see `handFilm` for what that costs. */
export const HANDS_CELL_MM = 10;

/**
 * Lays a coat's plan by many hands, each with errors of its own, and tallies what went wrong, how much and where.
 *
 * Zones of 1 cm² or more count, by the rules of a verdict. Whether a coat ran was the same as with 2 mm cells and full steps
 * for 22 of 22 hands of the demo (8 of them ran), and whether it has orange peel with full steps for 19 of 19 (15 of them had);
 * a run or ripple of about 2 cm² may be missed. Blisters, pinholes, dry laps and
 * over-thick film are left out, and so is a coat beneath.
 * @param setting on cells of about `HANDS_CELL_MM`.
 * @throws CrosscoatError `range` for a count, seed or hand that is none; `cancelled`.
 */
export function sprayHands(setting: CoatSetting, options: HandsOptions): HandsTally {
  const { hand, count, seed, first = 0, shouldStop, onHand } = options;
  checkRange({ name: 'sprayHands: count', value: count, low: 1, high: MOST_HANDS, advice: 'give a number of hands such as 200' });
  checkRange({ name: 'sprayHands: seed', value: seed, low: 0, high: 4294967295, advice: 'give a whole number' });
  checkRange({ name: 'sprayHands: first hand', value: first, low: 0, high: MOST_HANDS - count, why: 'the last would lie beyond the most hands there may be', advice: 'give the index of the first hand of this share' });
  for (const [name, value] of Object.entries({ count, seed, 'first hand': first })) checkWhole(name, value);
  const plan = planOf(setting, setting.plan);
  const law = filmLawOf(setting);
  const errors = handOf(hand);
  const withAir = airMarks(setting, law, plan);
  const tally = emptyTally(setting.panelGrid.grid, Uint8Array.from(setting.panelGrid.cover, (cover) => (cover < JUDGED_COVER ? 0 : 1)), judgedArea_m2(setting));
  const outcomes: HandOutcome[] = [];
  for (let i = 0; i < count; i++) {
    stopIfAsked(shouldStop);
    const index = first + i;
    outcomes.push(judged(setting, law, handFilm(setting, law, wander(plan, errors, mixedSeed(seed, index)), withAir), index, tally));
    onHand?.(i + 1);
  }
  return { ...tally, outcomes };
}

function checkWhole(name: string, value: number): void {
  if (!Number.isInteger(value)) throw new CrosscoatError('range', `sprayHands: ${name} = ${value} is not a whole number; give one`);
}

function judgedArea_m2({ panelGrid: { cover, grid } }: CoatSetting): number {
  return cover.reduce((sum, share) => (share < JUDGED_COVER ? sum : sum + share), 0) * grid.cellSize_m ** 2;
}

/** Judges a hand's film and counts its faults into the tally's maps. */
function judged(setting: CoatSetting, law: FilmLaw, end: FilmMoment, index: number, tally: HandsTally): HandOutcome {
  const { target } = setting;
  const panelGrid = judgedGrid(setting.panelGrid);
  const landed = landedFilm(end);
  const life = judgedLifeOf({ end, law, peel_m: peelOf(setting, end) });
  const zones = [...findZones(landed, panelGrid, target).zones, ...findLifeZones(life, panelGrid, target).zones];
  const cell_m2 = panelGrid.grid.cellSize_m ** 2;
  const area_m2 = Object.fromEntries(HAND_FAULTS.map((kind) => [kind, 0])) as Record<HandFault, number>;
  const any = new Uint8Array(panelGrid.cover.length);
  for (const { kind, cells, area_m2: area } of zones) {
    if (!isHandFault(kind)) continue;
    const counts = tally.byKind[kind];
    area_m2[kind] += area;
    for (const cell of cells) {
      counts[cell] = (counts[cell] as number) + 1;
      any[cell] = 1;
    }
  }
  let faulty_m2 = 0;
  any.forEach((is, cell) => {
    if (is === 0) return;
    tally.faulty[cell] = (tally.faulty[cell] as number) + 1;
    faulty_m2 += (panelGrid.cover[cell] as number) * cell_m2;
  });
  const { mean_m, min_m, max_m, cv } = filmFigures(judgedFilm(landed, target), panelGrid);
  return { index, mean_m, least_m: min_m, most_m: max_m, cv, area_m2, faulty_m2 };
}

/** A living film lies on judged cells only, so the others must not count as bare in its figures. */
function judgedGrid(panelGrid: PanelGrid): PanelGrid {
  return { ...panelGrid, cover: panelGrid.cover.map((cover) => (cover < JUDGED_COVER ? 0 : cover)) };
}

function isHandFault(kind: FaultKind): kind is HandFault {
  return (HAND_FAULTS as readonly FaultKind[]).includes(kind);
}
