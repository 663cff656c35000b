import type { EvaporationLaw } from '../../sim/air/evaporationLaw.ts';
import type { FilmLaw } from '../../sim/film/law.ts';
import { makeFilmLaw, type LawParts } from '../../sim/film/makeLaw.ts';
import { emptyLivingFilm, type LivingFilm } from '../../sim/film/life/state.ts';

/** Air and solvents for tests of the film alone: every figure plain, the vapour pressure the same at any temperature unless said. */
export function plainEvaporation(change: { rate_m_s?: number; share?: number; latentHeat_J_m3?: number; slowShare?: number } = {}): EvaporationLaw {
  const { rate_m_s = 0, share = 0.02, slowShare = 0.005, latentHeat_J_m3 = 0 } = change;
  const nodes = 441;
  const one = (pressure: number) => ({
    molarVolume_m3_mol: 1e-4,
    latentHeat_J_m3,
    rate_m_s,
    pressureShare: new Float64Array(nodes).fill(pressure),
  });
  const air = {
    temperature_K: 294.15,
    relativeHumidityFraction: 0.5,
    pressure_Pa: 101325,
    dewPoint_K: 283.4,
    wetBulb_K: 287.9,
    humidityRatio: 0.0078,
    speed_m_s: 0.3,
    warnings: [],
  };
  return { start_K: 230, step_K: 0.25, fast: one(share), slow: one(slowShare), heatTransfer_W_m2_K: 5, air };
}

/** A law with plain figures: viscosity 0.03 Pa s at 12.5 % solids, growing by exp(20.0375 φ); upright, down the page. */
export function plainLaw(change: Partial<LawParts> = {}): FilmLaw {
  return makeFilmLaw({
    evaporation: plainEvaporation(),
    viscosity: (solids) => 0.03 * Math.exp(20.0375 * (solids - 0.125)),
    density_kg_m3: 900,
    surfaceTension_N_m: 0.027,
    yieldStress_Pa: 0,
    setDiffusivity_m2_s: 1e-12,
    diffusivityFall: 10,
    fastFraction: 0.5,
    faces: 1,
    backingHeat_J_m2_K: 200,
    tilt_rad: Math.PI / 2,
    down_rad: -Math.PI / 2,
    ...change,
  });
}

/** A film all of whose cells are inside, wetted by `wet(column, row)` at time 0 with a mix of `solids` and half fast solvent. */
export function filmOf(law: FilmLaw, columns: number, rows: number, cell_m: number, wet: (column: number, row: number) => number, solids = 0.125): LivingFilm {
  const film = emptyLivingFilm({ columns, rows, cellSize_m: cell_m }, new Uint8Array(columns * rows).fill(1), law.air.temperature_K);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column;
      const wet_m = wet(column, row);
      film.solids_m[cell] = solids * wet_m;
      film.fast_m[cell] = law.fastFraction * (1 - solids) * wet_m;
      film.slow_m[cell] = (1 - law.fastFraction) * (1 - solids) * wet_m;
      film.landed_m[cell] = wet_m;
      film.wettedAt_s[cell] = 0;
      film.account.landedSolids_m3 += film.solids_m[cell] * cell_m ** 2;
      film.account.landedFast_m3 += film.fast_m[cell] * cell_m ** 2;
      film.account.landedSlow_m3 += film.slow_m[cell] * cell_m ** 2;
    }
  }
  film.tiles.due_s.fill(0);
  return film;
}

/** Sums of an amount over a film's cells, m³. */
export function volumeOf(film: LivingFilm, amount: Float64Array): number {
  return amount.reduce((sum, value) => sum + value, 0) * film.grid.cellSize_m ** 2;
}

/** What lies on each cell, solids and solvent, m; film beneath left out. */
export function totalWet_m(film: LivingFilm): number[] {
  return Array.from(film.solids_m, (solids, cell) => solids + (film.fast_m[cell] as number) + (film.slow_m[cell] as number));
}
