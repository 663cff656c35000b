import type { DryTally } from '../../film/dry/dryBlock.ts';
import { dryBlock } from '../../film/dry/dryBlock.ts';
import { blowFilm, type Blast } from '../../film/flow/blow.ts';
import { FRESH_STEP_S } from '../../film/life/advance.ts';
import { emptyLivingFilm, type LivingFilm } from '../../film/life/state.ts';
import { wetFilm } from '../../film/life/wetFilm.ts';
import { viscosityOf, type FilmLaw } from '../../film/law.ts';
import { LONGEST_WATCH_S } from '../coatLife.ts';

/** What one stroke does at a pair of places in the middle of a panel. Lengths along the fan from the first place. */
export interface ColumnStroke {
  readonly time_s: number;
  /** The stroke's centre line, m from the first place towards the second. */
  readonly centre_m: number;
  /** Wet film that lands at either place, m; 0 where only its air passes. */
  readonly wet_m: readonly [number, number];
}

/** A pair of places and what lands on them. */
export interface ColumnCoat {
  readonly law: FilmLaw;
  /** From the first place to the second, across the strokes, above 0. */
  readonly apart_m: number;
  /** In the order of time. */
  readonly strokes: readonly ColumnStroke[];
  readonly speed_m_s: number;
  readonly blast: Pick<Blast, 'halfLength_m' | 'halfDepth_m' | 'speed_m_s'>;
  readonly solidsFraction: number;
  readonly fastFraction: number;
  /** Multiplies every step, for convergence tests. */
  readonly stepScale: number;
}

/** A step is at most this share of the time since liquid last landed: half as long again as a panel's. */
const STEP_SHARE = 1 / 16;
/** Poses at which a passing fan's air is felt, in half depths of the fan from the place, and how much travel each stands for: the reach of the air is 1.3 half depths to each side. */
const BLAST_POSES = [-13 / 15, 0, 13 / 15] as const;
const BLAST_TRAVEL = 13 / 15;

const TALLY: DryTally = { fast_m: 0, slow_m: 0, wave_m_s: 0 };
/** Columns of the little film; the one between them is outside, so that neither gives to the other. */
const FIRST = 0;
const SECOND = 2;
const COLUMNS = 3;
const BLOCK = { lowColumn: 0, highColumn: COLUMNS, lowRow: 0, highRow: 1 };

/**
 * The life of two columns of film in the middle of a panel: they are landed on and blown at stroke by stroke,
 * dry, cool, level, and slide as the sheet around them slides, until both have set.
 *
 * Kernels are a panel's own. What is left out is all exchange between neighbours: as much film slides into a
 * column as out of it, and blown air marks the film but carries none away. `run_m` of the result is the
 * distance slid, by `flowBlock`'s flux over the film's thickness.
 * @returns the film: columns 0 and 2 of a grid of three.
 */
export function liveColumns(coat: ColumnCoat): LivingFilm {
  const { law, apart_m, strokes } = coat;
  const film = emptyLivingFilm({ columns: COLUMNS, rows: 1, cellSize_m: apart_m / 2 }, Uint8Array.of(1, 0, 1), law.air.temperature_K);
  const columns = { film, law, stepScale: coat.stepScale, slide: slideOf(law) };
  const strike = striker(film, coat);
  film.time_s = strokes[0]?.time_s ?? 0;
  let landed_s = film.time_s;
  for (const stroke of strokes) {
    carryOn(columns, landed_s, stroke.time_s, false);
    strike(stroke);
    landed_s = stroke.time_s;
  }
  carryOn(columns, landed_s, landed_s + LONGEST_WATCH_S, true);
  return film;
}

/** Makes what a stroke does to the columns: its liquid lands, then its air blows. Its working memory is used for every stroke. */
function striker(film: LivingFilm, coat: ColumnCoat): (stroke: ColumnStroke) => void {
  const { law, blast, speed_m_s, solidsFraction } = coat;
  const half_m = 0.5 * film.grid.cellSize_m;
  const landing = { ...BLOCK, wet_m: new Float32Array(COLUMNS), solids_m: new Float32Array(COLUMNS), arrivedDry_m: new Float32Array(COLUMNS), fastFraction: coat.fastFraction };
  const air = { ...blast, x_m: 0, y_m: 0, longX: 1, longY: 0 };
  const blow_s = (BLAST_TRAVEL * blast.halfDepth_m) / speed_m_s;
  const land = (cell: number, wet_m: number) => {
    landing.wet_m[cell] = wet_m;
    landing.solids_m[cell] = wet_m * solidsFraction;
  };
  return ({ centre_m, wet_m }) => {
    // The only tile's clock goes with the film's: nothing is left to catch up with.
    film.tiles.at_s[0] = film.time_s;
    land(FIRST, wet_m[0]);
    land(SECOND, wet_m[1]);
    if (wet_m[0] > 0 || wet_m[1] > 0) wetFilm(film, law, landing);
    air.x_m = centre_m + half_m;
    for (const pose of BLAST_POSES) {
      air.y_m = half_m + pose * blast.halfDepth_m;
      blowFilm(film, law, air, blow_s);
    }
  };
}

/** A little film and what its steps need, worked out once. */
interface Columns {
  readonly film: LivingFilm;
  readonly law: FilmLaw;
  readonly stepScale: number;
  readonly slide: Slide;
}

/** What a film slides by: weight of a unit of film along the panel, Pa/m, and the film that just holds, m. */
interface Slide {
  readonly pull_Pa_m: number;
  readonly held_m: number;
}

function slideOf(law: FilmLaw): Slide {
  const pull_Pa_m = law.density_kg_m3 * Math.hypot(law.gravityX_m_s2, law.gravityY_m_s2);
  return { pull_Pa_m, held_m: pull_Pa_m > 0 ? law.yieldStress_Pa / pull_Pa_m : Infinity };
}

/** Dries and slides up to a time, or until both columns have set; the slide of a step is taken at the mean of its speeds before and after. */
function carryOn({ film, law, stepScale, slide }: Columns, landed_s: number, until_s: number, untilSet: boolean): void {
  const { run_m } = film;
  let first = slideSpeed_m_s(film, law, slide, FIRST);
  let second = slideSpeed_m_s(film, law, slide, SECOND);
  while (film.time_s < until_s && !(untilSet && hasSet(film, law, FIRST) && hasSet(film, law, SECOND))) {
    const step_s = Math.min(until_s - film.time_s, stepScale * Math.max(FRESH_STEP_S, STEP_SHARE * (film.time_s - landed_s)));
    film.time_s += step_s;
    dryBlock(film, law, BLOCK, step_s, 1, TALLY);
    const firstThen = slideSpeed_m_s(film, law, slide, FIRST);
    const secondThen = slideSpeed_m_s(film, law, slide, SECOND);
    run_m[FIRST] = (run_m[FIRST] as number) + 0.5 * step_s * (first + firstThen);
    run_m[SECOND] = (run_m[SECOND] as number) + 0.5 * step_s * (second + secondThen);
    first = firstThen;
    second = secondThen;
  }
}

/** Mean speed of a film that runs as its neighbours do: the flux of `flowBlock` over the film's thickness. */
function slideSpeed_m_s(film: LivingFilm, law: FilmLaw, { pull_Pa_m, held_m }: Slide, cell: number): number {
  const solids = film.solids_m[cell] as number;
  const wet = solids + (film.fast_m[cell] as number) + (film.slow_m[cell] as number);
  const sheared = wet - held_m;
  if (!(sheared > 0) || solids >= law.setFraction * wet) return 0;
  const viscosity = viscosityOf(law, solids / wet, film.temperature_K[cell] as number);
  return (pull_Pa_m * sheared * sheared * (3 * wet - sheared)) / (6 * viscosity * wet);
}

function hasSet(film: LivingFilm, law: FilmLaw, cell: number): boolean {
  const solids = film.solids_m[cell] as number;
  const wet = solids + (film.fast_m[cell] as number) + (film.slow_m[cell] as number);
  return solids >= law.setFraction * wet;
}
