import { moleFractions } from '../materials/blend.ts';
import type { Mix } from '../mix/mix.ts';
import { dryingFactor, evaporation_m_s, type DryingFactor } from './dryingFactor.ts';
import { criticalHumidityFraction, filmTemperature_K } from './filmTemperature.ts';
import { heatedAir, type MoistAir } from './moistAir.ts';

/** Bisection: a range of 80 K halved so often is within 0.01 K. */
const HALVINGS = 14;

/** What is asked of the air. */
export interface AirQuestion {
  readonly mix: Mix;
  /** Faces of the film's backing that take heat: 2 open cloth, 1 backed. */
  readonly faces: 1 | 2;
  /** Warmest room that may be asked for. */
  readonly ceiling_K: number;
  /** The same mix with more retarder, to be tried. */
  readonly retarded: readonly RetardedMix[];
}

/** A mix made to try a retarder. */
export interface RetardedMix {
  /** The retarder's name. */
  readonly retarder: string;
  /** Share of the thinner, 0 to 1. */
  readonly retarderFraction: number;
  readonly mix: Mix;
}

/** What one retarder does. */
export interface RetarderAnswer {
  readonly retarder: string;
  readonly retarderFraction: number;
  readonly film_K: number;
  readonly blushMargin_K: number;
  /** How many times as long the first evaporation takes as without. */
  readonly evaporationRatio: number;
}

/** What the air does to a fresh film of a mix. */
export interface AirAnswer {
  readonly air: MoistAir;
  readonly mix: Mix;
  readonly faces: 1 | 2;
  readonly film_K: number;
  /** Film less dew point: below 0 water can fall into the film. */
  readonly blushMargin_K: number;
  readonly criticalHumidityFraction: number;
  readonly drying: DryingFactor;
  readonly ceiling_K: number;
  /** Least warm room, same moisture, without blush; null where none up to the ceiling is. */
  readonly warmEnough_K: number | null;
  readonly retarders: readonly RetarderAnswer[];
}

/**
 * Answers by trying: the film as it is, the room warmed with its own moisture, more retarder. The
 * film's temperature is the steady bound of `filmTemperature_K`: nothing lends heat but the air.
 */
export function airAnswer(air: MoistAir, { mix, faces, ceiling_K, retarded }: AirQuestion): AirAnswer {
  const film_K = mixFilm_K(air, mix, faces);
  return {
    air,
    mix,
    faces,
    film_K,
    blushMargin_K: film_K - air.dewPoint_K,
    criticalHumidityFraction: criticalHumidityFraction(air, film_K),
    drying: dryingFactor(air, mix.solvents, faces),
    ceiling_K,
    warmEnough_K: warmEnough_K(air, mix, faces, ceiling_K),
    retarders: retarded.map(({ retarder, retarderFraction, mix: slower }) => {
      const slower_K = mixFilm_K(air, slower, faces);
      const evaporationRatio = loss_m_s(air, mix, film_K) / loss_m_s(air, slower, slower_K);
      return { retarder, retarderFraction, film_K: slower_K, blushMargin_K: slower_K - air.dewPoint_K, evaporationRatio };
    }),
  };
}

function mixFilm_K(air: MoistAir, mix: Mix, faces: 1 | 2): number {
  return filmTemperature_K(air, moleFractions(mix.solvents), faces);
}

/** Liquid that leaves a fresh film of a mix, m/s. */
export function loss_m_s(air: MoistAir, { solvents }: Mix, film_K: number): number {
  return evaporation_m_s(air, moleFractions(solvents), film_K);
}

function warmEnough_K(air: MoistAir, mix: Mix, faces: 1 | 2, ceiling_K: number): number | null {
  const isClear = (temperature_K: number) => {
    const warmed = heatedAir(air, temperature_K);
    return mixFilm_K(warmed, mix, faces) >= warmed.dewPoint_K;
  };
  if (isClear(air.temperature_K)) return air.temperature_K;
  if (ceiling_K <= air.temperature_K || !isClear(ceiling_K)) return null;
  // The dew point stays and the film warms with the room, so there is one crossing.
  let low_K = air.temperature_K;
  let high_K = ceiling_K;
  for (let i = 0; i < HALVINGS; i++) {
    const middle_K = (low_K + high_K) / 2;
    if (isClear(middle_K)) high_K = middle_K;
    else low_K = middle_K;
  }
  return high_K;
}
