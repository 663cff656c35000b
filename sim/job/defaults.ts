import type { SetUpSpec } from './schema.ts';

/**
 * Values for a set-up that nobody has measured yet. Each is a starting point, to be replaced by
 * the shop's own test card, timed catch and cup.
 */

/** Full fan width over distance of a low-pressure gun with a good test card. Common practice: 0.8 to 1.0. */
export const LOW_PRESSURE_WIDTH_RATIO = 1.0;
/** Depth over width there. Common practice, from bursts seen on paper. */
export const LOW_PRESSURE_DEPTH_RATIO = 0.15;
/** Full fan width over distance of a conventional gun set wide. Common practice: 1.2 to 1.5. */
export const CONVENTIONAL_WIDTH_RATIO = 1.25;
/** Depth over width there. Assumed: no published value; 0.15 to 0.5 is plausible. */
export const CONVENTIONAL_DEPTH_RATIO = 0.25;

/**
 * Exponents of the elliptical double-beta fan. Assumed: published fits were not to hand; 3 across
 * the fan lies next to 2.92, where the trade's 50 % overlap is flattest.
 */
export const BETA_ACROSS = 3;
/** Along the travel a stroke does not depend on it; only a held burst does. Assumed. */
export const BETA_ALONG = 3;

/**
 * Gun to panel, mm: lacquer and quick-drying liquids 6 to 8 in (150 to 200 mm), US Federal Test
 * Method Standard 141D, method 4331.2.
 */
export const DISTANCE_MM = 200;

/** Liquid leaving the gun, mL/min. Common practice: 100 to 250 for a hand-held low-pressure gun. */
export const LOW_PRESSURE_FLUID_RATE_ML_MIN = 180;
/** The same for a conventional gun. Common practice: up to 350 from a pressure pot. */
export const CONVENTIONAL_FLUID_RATE_ML_MIN = 200;

/**
 * Transfer efficiency, %. US Federal Aviation Administration, Aviation Maintenance Technician
 * Handbook, chapter on finishing: at least 65.
 */
export const LOW_PRESSURE_EFFICIENCY_PERCENT = 65;
/** The same for a conventional gun. Common practice: 25 to 40. */
export const CONVENTIONAL_EFFICIENCY_PERCENT = 40;

/** Added distance over which transfer falls to 37 %, mm. Assumed: no published curve; 500 to 800 is plausible. */
export const TRANSFER_DECAY_MM = 600;

/** Volume solids of a thinned finish in the cup, %. Common practice: 10 to 20. */
export const VOLUME_SOLIDS_PERCENT = 15;

/** Sauter mean drop diameter, µm. Assumed: paint sprays are measured at 20 to 50. */
export const MEAN_DROP_UM = 35;
/** Geometric standard deviation of drop volume. Assumed. */
export const DROP_SPREAD = 1.8;

/** Evaporation rate of the thinner, n-butyl acetate = 1. Assumed: a medium thinner. */
export const SOLVENT_SPEED = 1.8;

/** From trigger to fluid, ms. Assumed. */
export const TRIGGER_LAG_MS = 80;

/** Distances, mm, for which a fan read at 200 mm may be believed. Assumed: half to twice. */
export const DISTANCE_RANGE_MM: readonly [number, number] = [100, 400];

/** What two kinds of gun differ in. */
interface GunClass {
  readonly widthRatio: number;
  readonly depthRatio: number;
  readonly fluidRate_mL_min: number;
  readonly efficiency_percent: number;
}

/** The kinds of gun that have defaults. */
export const GUN_CLASSES = {
  'low-pressure': {
    widthRatio: LOW_PRESSURE_WIDTH_RATIO,
    depthRatio: LOW_PRESSURE_DEPTH_RATIO,
    fluidRate_mL_min: LOW_PRESSURE_FLUID_RATE_ML_MIN,
    efficiency_percent: LOW_PRESSURE_EFFICIENCY_PERCENT,
  },
  'conventional': {
    widthRatio: CONVENTIONAL_WIDTH_RATIO,
    depthRatio: CONVENTIONAL_DEPTH_RATIO,
    fluidRate_mL_min: CONVENTIONAL_FLUID_RATE_ML_MIN,
    efficiency_percent: CONVENTIONAL_EFFICIENCY_PERCENT,
  },
} as const satisfies Record<string, GunClass>;

/** A set-up with the default values of a kind of gun, at `DISTANCE_MM`. */
export function defaultSetUp(kind: keyof typeof GUN_CLASSES, id: string, name: string): SetUpSpec {
  const gun = GUN_CLASSES[kind];
  const width_mm = gun.widthRatio * DISTANCE_MM;
  return {
    id,
    name,
    fan: {
      width_mm,
      depth_mm: gun.depthRatio * width_mm,
      atDistance_mm: DISTANCE_MM,
      profile: { family: 'double-beta', beta1: BETA_ACROSS, beta2: BETA_ALONG },
    },
    fluidRate_mL_min: gun.fluidRate_mL_min,
    transfer: {
      efficiency_percent: gun.efficiency_percent,
      atDistance_mm: DISTANCE_MM,
      decayLength_mm: TRANSFER_DECAY_MM,
    },
    volumeSolids_percent: VOLUME_SOLIDS_PERCENT,
    drops: { meanDiameter_um: MEAN_DROP_UM, spread: DROP_SPREAD, solventSpeed: SOLVENT_SPEED },
    triggerLag_ms: TRIGGER_LAG_MS,
    distanceRange_mm: [...DISTANCE_RANGE_MM],
  };
}
