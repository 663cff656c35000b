import type { CellBlock } from '../../base/grid.ts';
import { FILM_HEAT_J_M3_K, NODE_WIDTH, SOLIDS_NODES, type FilmLaw } from '../law.ts';
import type { LivingFilm } from '../life/state.ts';

/** What a step over some cells gives back besides the cells: reused, so that a step allocates nothing. */
export interface DryTally {
  /** Evaporated in the step, summed over cells, m. */
  fast_m: number;
  slow_m: number;
  /** Fastest wave of flow among the cells after the step, m/s. */
  wave_m_s: number;
}

/** Per cell: a film thinner than this is left alone, m. A tenth of a nanometre is less than a molecule. */
const LEAST_SOLVENT_M = 1e-10;

/** The table holds (π²/4)·D. */
const DIFFUSION_FACTOR = Math.PI ** 2 / 4;

/** The skin forms in the last stretch before the film sets; earlier the film is still well mixed. */
const SKIN_STRETCH = 0.1;

/**
 * Dries, cools and levels the cells of a block for `step_s`.
 *
 * Gas side: `E_i = k_i · -ln(1 - y_i)`, `y_i = x_i a(φ) P_i(T)/p` (Stefan flow; x by Raoult among the
 * solvents, a from the polymer), with -ln(1 - y) as its first three terms, right to 0.5 % up to y = 0.25.
 * Film side in series: the last solvent must diffuse through the film, at most `(π²/4) D(φ)/h²` of it
 * a second (J. Crank, The Mathematics of Diffusion, 2nd ed. 1975, the leading term of a sheet that
 * loses at one face). What is left decays as 1/(1 + r), which stays above zero for any step.
 * Temperature: heat from the air less latent heat, over the heat that film and backing hold, implicit
 * in the temperature so that a long step is safe. Order 1 in the step.
 *
 * Levelling: Λ grows by σ h³/(3 µ) dt (S.E. Orchard, Appl. Sci. Res. A11, 451, 1962, from memory).
 *
 * One loop on purpose: each cell is read and written once.
 * @param jetRatio multiplies both mass and heat transfer (air blown at the film); 1 in a still room.
 */
export function dryBlock(film: LivingFilm, law: FilmLaw, block: CellBlock, step_s: number, jetRatio: number, tally: DryTally): void {
  const { solids_m, fast_m, slow_m, temperature_K, levelling_m4, margin_K, skin } = film;
  const { bySolids, byTemperature, start_K, nodesPerK, setFraction } = law;
  // Imported names are looked up at each use, so they are brought in once.
  const nodes = SOLIDS_NODES;
  const width = NODE_WIDTH;
  const third = 1 / 3;
  const leastSolvent = LEAST_SOLVENT_M;
  const filmHeat = FILM_HEAT_J_M3_K;
  const lastNode = byTemperature.length / width - 1;
  const fastRate = law.fast.rate_m_s * jetRatio;
  const slowRate = law.slow.rate_m_s * jetRatio;
  /** Moles in a volume of slow solvent over those in the same volume of fast. */
  const moleRatio = law.fast.molarVolume_m3_mol / law.slow.molarVolume_m3_mol;
  const fastHeat = law.fast.latentHeat_J_m3;
  const slowHeat = law.slow.latentHeat_J_m3;
  const heat = law.heatTransfer_W_m2_K * jetRatio;
  const backing = law.backingHeat_J_m2_K;
  // Evaporation falls as the film cools, by about half as much heat a kelvin as the air gives.
  const store = backing + 1.5 * heat * step_s;
  const heatStep = heat * step_s;
  const air_K = law.air.temperature_K;
  const dew_K = law.air.dewPoint_K;
  const levelRate = (law.surfaceTension_N_m / 3) * step_s;
  const pull = law.density_kg_m3 * Math.hypot(law.gravityX_m_s2, law.gravityY_m_s2);
  const skinFraction = setFraction - SKIN_STRETCH;
  const held_m = pull > 0 ? law.yieldStress_Pa / pull : Infinity;
  let evaporatedFast_m = 0;
  let evaporatedSlow_m = 0;
  let wave_m_s = tally.wave_m_s;
  const { columns } = film.grid;
  for (let row = block.lowRow; row < block.highRow; row++) {
    const end = row * columns + block.highColumn;
    for (let cell = row * columns + block.lowColumn; cell < end; cell++) {
      const fast = fast_m[cell] as number;
      const slow = slow_m[cell] as number;
      const solvent = fast + slow;
      if (!(solvent > leastSolvent)) continue;
      const solids = solids_m[cell] as number;
      const wet = solids + solvent;
      // Reciprocals that depend on nothing yet to be looked up come first: the processor works on them meanwhile.
      const perWet = 1 / wet;
      const perMoles = 1 / (fast + slow * moleRatio);
      const perStore = 1 / (store + filmHeat * wet);
      const solidsFraction = solids * perWet;
      const at = width * ((solidsFraction * nodes + 0.5) | 0);
      const activity = bySolids[at] as number;
      const diffusion = bySolids[at + 1] as number;
      const fluidity = bySolids[at + 2] as number;

      const now_K = temperature_K[cell] as number;
      const w = width * Math.max(0, Math.min(lastNode, ((now_K - start_K) * nodesPerK + 0.5) | 0));
      const fastShare = byTemperature[w] as number;
      const slowShare = byTemperature[w + 1] as number;
      const thinning = byTemperature[w + 2] as number;

      const pulled = perMoles * activity;
      const fastPull = pulled * fastShare;
      const slowPull = pulled * moleRatio * slowShare;
      const yFast = fast * fastPull;
      const ySlow = slow * slowPull;
      const gasFast = fastRate * fastPull * (1 + yFast * (0.5 + yFast * third));
      const gasSlow = slowRate * slowPull * (1 + ySlow * (0.5 + ySlow * third));
      const through = diffusion * perWet * perWet;
      const bothFast = gasFast + through;
      const bothSlow = gasSlow + through;
      const stepThrough = step_s * through;
      const leftFast = (fast * bothFast) / (bothFast + gasFast * stepThrough);
      const leftSlow = (slow * bothSlow) / (bothSlow + gasSlow * stepThrough);
      const goneFast = fast - leftFast;
      const goneSlow = slow - leftSlow;
      fast_m[cell] = leftFast;
      slow_m[cell] = leftSlow;
      evaporatedFast_m += goneFast;
      evaporatedSlow_m += goneSlow;

      const wanted = heatStep * (air_K - now_K) - fastHeat * goneFast - slowHeat * goneSlow;
      const then_K = now_K + wanted * perStore;
      temperature_K[cell] = then_K;

      if (solidsFraction < setFraction) {
        const flows = fluidity * thinning;
        levelling_m4[cell] = (levelling_m4[cell] as number) + levelRate * wet * wet * wet * flows;
        const margin = then_K - dew_K;
        if (margin < (margin_K[cell] as number)) margin_K[cell] = margin;
        if (solidsFraction > skinFraction) {
          const crowding = ((gasFast * fast + gasSlow * slow) * wet * DIFFUSION_FACTOR) / diffusion;
          if (crowding > (skin[cell] as number)) skin[cell] = crowding;
        }
        if (wet > held_m) {
          const wave = pull * wet * (wet - held_m) * flows;
          if (wave > wave_m_s) wave_m_s = wave;
        }
      } else {
        noteDry(film, law, cell, solidsFraction, film.time_s - step_s);
      }
    }
  }
  tally.fast_m += evaporatedFast_m;
  tally.slow_m += evaporatedSlow_m;
  tally.wave_m_s = wave_m_s;
}

/** Notes when a film set and when it was ready; fresh film that has set becomes one sheet with what lies beneath it. */
function noteDry(film: LivingFilm, law: FilmLaw, cell: number, solidsFraction: number, at_s: number): void {
  const { setAt_s, readyAt_s } = film;
  if (!((setAt_s[cell] as number) >= 0)) setAt_s[cell] = at_s;
  if ((film.beneathSolids_m[cell] as number) > 0) joinBeneath(film, cell);
  else if (solidsFraction >= law.recoatFraction && !((readyAt_s[cell] as number) >= 0)) readyAt_s[cell] = at_s;
}

function joinBeneath(film: LivingFilm, cell: number): void {
  const { solids_m, fast_m, slow_m, beneathSolids_m, beneathFast_m, beneathSlow_m } = film;
  solids_m[cell] = (solids_m[cell] as number) + (beneathSolids_m[cell] as number);
  fast_m[cell] = (fast_m[cell] as number) + (beneathFast_m[cell] as number);
  slow_m[cell] = (slow_m[cell] as number) + (beneathSlow_m[cell] as number);
  beneathSolids_m[cell] = 0;
  beneathFast_m[cell] = 0;
  beneathSlow_m[cell] = 0;
}
