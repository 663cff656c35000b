import type { CellBlock } from '../../base/grid.ts';
import { NODE_WIDTH, SOLIDS_NODES, type FilmLaw } from '../law.ts';
import { MOVED_M, type LifeAccount, type LivingFilm } from '../life/state.ts';

/** Share of its content that a cell may give away in one sub-step. */
const COURANT = 0.9;

/** Longest sub-step that keeps every cell of a film at or above zero, s. @param wave_m_s fastest wave of flow. */
export function flowLimit_s(film: LivingFilm, law: FilmLaw, wave_m_s: number): number {
  const { gravityX_m_s2: gx, gravityY_m_s2: gy } = law;
  const spread = (Math.abs(gx) + Math.abs(gy)) / Math.hypot(gx, gy);
  return (COURANT * film.grid.cellSize_m) / (wave_m_s * spread);
}

/**
 * Lets the film in a block run downhill for `step_s`, and gives back the fastest wave of flow met, m/s.
 *
 * A film that yields at τ (Bingham) on a wall: sheared depth `h_y = h - τ/(ρ g')`, flux
 * `q = ρ g' h_y² (3h - h_y)/(6 µ)`, nothing below `h_c = τ/(ρ g')` (a textbook result; the Newtonian
 * `ρ g' h³/(3 µ)` is its case τ = 0). Donor cell: what a cell gives is worked out from itself alone,
 * so mass is kept to rounding and nothing falls below zero within the limit of `flowLimit_s`. Rows
 * and columns are walked from the lowest place upward, so that a cell has given before it is given to.
 *
 * The film that runs takes its solids and both solvents along in the share in which it holds them,
 * and the distance it has run. What crosses the outline runs off. Left out: surface tension (a drip's
 * nose is a millimetre or two, below a cell), the heat that moves with the film, levelling carried on.
 */
export function flowBlock(film: LivingFilm, law: FilmLaw, block: CellBlock, step_s: number): number {
  const { columns, rows, cellSize_m } = film.grid;
  const { solids_m, fast_m, slow_m, temperature_K, run_m, gathered_m, movedAt_s } = film;
  const { bySolids, byTemperature, start_K, nodesPerK, setFraction } = law;
  const nodes = SOLIDS_NODES;
  const width = NODE_WIDTH;
  const lastNode = byTemperature.length / width - 1;
  const gravity = Math.hypot(law.gravityX_m_s2, law.gravityY_m_s2);
  const pull = law.density_kg_m3 * gravity;
  const held_m = law.yieldStress_Pa / pull;
  const acrossShare = Math.abs(law.gravityX_m_s2) / gravity;
  const alongShare = Math.abs(law.gravityY_m_s2) / gravity;
  const acrossStep = law.gravityX_m_s2 < 0 ? -1 : 1;
  const alongStep = law.gravityY_m_s2 < 0 ? -1 : 1;
  const firstRow = alongStep < 0 ? block.lowRow : block.highRow - 1;
  const firstColumn = acrossStep < 0 ? block.lowColumn : block.highColumn - 1;
  const perCell = step_s / cellSize_m;
  const total = acrossShare + alongShare;
  let wave_m_s = 0;
  for (let r = block.lowRow; r < block.highRow; r++) {
    const row = firstRow - alongStep * (r - block.lowRow);
    for (let c = block.lowColumn; c < block.highColumn; c++) {
      const column = firstColumn - acrossStep * (c - block.lowColumn);
      const cell = row * columns + column;
      const solids = solids_m[cell] as number;
      const fast = fast_m[cell] as number;
      const slow = slow_m[cell] as number;
      const wet = solids + fast + slow;
      const sheared = wet - held_m;
      if (!(sheared > 0)) continue;
      const solidsFraction = solids / wet;
      if (solidsFraction >= setFraction) continue;
      const thin = bySolids[width * ((solidsFraction * nodes + 0.5) | 0) + 2] as number;
      const thinning = byTemperature[width * Math.max(0, Math.min(lastNode, (((temperature_K[cell] as number) - start_K) * nodesPerK + 0.5) | 0)) + 2] as number;
      const drive = pull * thin * thinning;
      wave_m_s = Math.max(wave_m_s, drive * wet * sheared);
      const given_m = Math.min(wet / total, ((drive * sheared * sheared * (3 * wet - sheared)) / 6) * perCell);
      const ran_m = (run_m[cell] as number) + (given_m * cellSize_m) / wet;
      run_m[cell] = ran_m;
      if (ran_m > MOVED_M && Number.isNaN(movedAt_s[cell])) movedAt_s[cell] = film.time_s;
      const share = given_m / wet;
      const kept = 1 - share * total;
      solids_m[cell] = solids * kept;
      fast_m[cell] = fast * kept;
      slow_m[cell] = slow * kept;
      gathered_m[cell] = (gathered_m[cell] as number) - given_m * total;
      // What leaves is the difference of what is stored, so that a cell's loss is its neighbours' gain.
      const outSolids = solids - (solids_m[cell]);
      const outFast = fast - (fast_m[cell]);
      const outSlow = slow - (slow_m[cell]);
      if (acrossShare > 0) {
        const to = column + acrossStep;
        give(film, to >= 0 && to < columns ? cell + acrossStep : -1, acrossShare / total, outSolids, outFast, outSlow, ran_m);
      }
      if (alongShare > 0) {
        const to = row + alongStep;
        give(film, to >= 0 && to < rows ? cell + alongStep * columns : -1, alongShare / total, outSolids, outFast, outSlow, ran_m);
      }
    }
  }
  return wave_m_s;
}

/** Adds a share of what a cell gave to another cell, or to what ran off where that is outside. */
function give(film: LivingFilm, to: number, share: number, solids: number, fast: number, slow: number, ran_m: number): void {
  if (to < 0 || film.inside[to] === 0) {
    runOff(film.account, film.grid.cellSize_m, share, solids, fast, slow);
    return;
  }
  const { solids_m, fast_m, slow_m, run_m, gathered_m } = film;
  const there = (solids_m[to] as number) + (fast_m[to] as number) + (slow_m[to] as number);
  const came = share * (solids + fast + slow);
  solids_m[to] = (solids_m[to] as number) + share * solids;
  fast_m[to] = (fast_m[to] as number) + share * fast;
  slow_m[to] = (slow_m[to] as number) + share * slow;
  gathered_m[to] = (gathered_m[to] as number) + came;
  run_m[to] = ((run_m[to] as number) * there + ran_m * came) / (there + came);
}

function runOff(account: LifeAccount, cell_m: number, share: number, solids: number, fast: number, slow: number): void {
  const area_m2 = share * cell_m * cell_m;
  account.ranOffSolids_m3 += solids * area_m2;
  account.ranOffFast_m3 += fast * area_m2;
  account.ranOffSlow_m3 += slow * area_m2;
}
