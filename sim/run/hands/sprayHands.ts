import { checkRange } from '../../base/check.ts';
import type { HandSpec } from '../../job/schema.ts';
import { handOf, wander } from '../../stroke/hand.ts';
import { dryCodes, filmCodes } from '../../verdict/classes.ts';
import { filmFigures } from '../../verdict/figures.ts';
import { JUDGED_COVER, judgedFilm, limitOf } from '../../verdict/judged.ts';
import { zonesOfMaps, type FaultMap } from '../../verdict/zones.ts';
import { peelOf } from '../coatLife.ts';
import { filmLawOf } from '../filmLaw.ts';
import { landedFilm } from '../landedFilm.ts';
import type { CoatSetting } from '../result.ts';
import { stopIfAsked } from '../stop.ts';
import { planOf } from '../strokes.ts';
import { handFilm } from './handFilm.ts';
import { handSeed } from './handSeed.ts';
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
 * Zones of 1 cm² or more count, as in a verdict. A run is film that slid as far as the limit, whether or not it gathered:
 * what gathers is narrower than these cells. Blisters, pinholes, dry laps and over-thick film are left out, and so is a
 * coat beneath.
 * @param setting on cells of about `HANDS_CELL_MM`.
 * @throws CrosscoatError `range` for a count, seed or hand that is none; `cancelled`.
 */
export function sprayHands(setting: CoatSetting, options: HandsOptions): HandsTally {
  const { hand, count, seed, first = 0, shouldStop, onHand } = options;
  checkRange({ name: 'sprayHands: count', value: count, low: 1, high: MOST_HANDS, advice: 'give a number of hands such as 200' });
  checkRange({ name: 'sprayHands: seed', value: seed, low: 0, high: 4294967295, advice: 'give a whole number' });
  checkRange({ name: 'sprayHands: first hand', value: first, low: 0, high: MOST_HANDS, advice: 'give the index of the first hand of this share' });
  const plan = planOf(setting, setting.plan);
  const law = filmLawOf(setting);
  const errors = handOf(hand);
  const tally = emptyTally(setting.panelGrid.grid, Uint8Array.from(setting.panelGrid.cover, (cover) => (cover < JUDGED_COVER ? 0 : 1)), judgedArea_m2(setting));
  const outcomes: HandOutcome[] = [];
  for (let i = 0; i < count; i++) {
    stopIfAsked(shouldStop);
    const index = first + i;
    outcomes.push(judged(setting, handFilm(setting, law, wander(plan, errors, handSeed(seed, index))), index, tally));
    onHand?.(i + 1);
  }
  return { ...tally, outcomes };
}

function judgedArea_m2({ panelGrid: { cover, grid } }: CoatSetting): number {
  return cover.reduce((sum, share) => (share < JUDGED_COVER ? sum : sum + share), 0) * grid.cellSize_m ** 2;
}

/** Judges a hand's film and counts its faults into the tally's maps. */
function judged(setting: CoatSetting, moment: ReturnType<typeof handFilm>, index: number, tally: HandsTally): HandOutcome {
  const { panelGrid, target } = setting;
  const landed = landedFilm(moment);
  const { zones } = zonesOfMaps(faultMaps(setting, moment), panelGrid, target);
  const cell_m2 = panelGrid.grid.cellSize_m ** 2;
  const area_m2 = Object.fromEntries(HAND_FAULTS.map((kind) => [kind, 0])) as Record<HandFault, number>;
  const any = new Uint8Array(panelGrid.cover.length);
  for (const { kind, cells, area_m2: area } of zones) {
    const counts = tally.byKind[kind as HandFault];
    area_m2[kind as HandFault] += area;
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

function faultMaps(setting: CoatSetting, moment: ReturnType<typeof handFilm>): FaultMap[] {
  const { panelGrid, target } = setting;
  const landed = landedFilm(moment);
  const { film } = moment;
  const codes = filmCodes(landed, panelGrid, target);
  const hasFilm = film.landed_m.map((wet) => (wet > LEAST_FILM_M ? 1 : 0));
  const past = (kind: 'run' | 'orange-peel' | 'blush', values: Float32Array): FaultMap => {
    const limit = limitOf(kind, target);
    const isPast = (value: number): boolean => (kind === 'blush' ? value < limit : value > limit);
    return { kinds: [kind], values, codes: Uint8Array.from(values, (value, cell) => ((panelGrid.cover[cell] as number) >= JUDGED_COVER && hasFilm[cell] === 1 && isPast(value) ? 1 : 0)) };
  };
  return [
    { codes, kinds: ['holiday', 'thin-lap', 'heavy-spot'], values: judgedFilm(landed, target) },
    { codes: dryCodes(landed, panelGrid, target, codes), kinds: ['dry-spray'], values: landed.arrivedDry_m },
    past('run', film.run_m),
    // Film that has not set still levels.
    past('orange-peel', peelOf(setting, moment).map((peel, cell) => ((film.setAt_s[cell] as number) >= 0 ? peel : 0))),
    past('blush', film.margin_K),
  ];
}

/** Film that landed so thinly is a holiday, not a film with faults of its own, m. Assumed: a micrometre. */
const LEAST_FILM_M = 1e-6;
