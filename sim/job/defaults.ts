import type { AirSpec, BackingWord, MixSpec, SetUpSpec } from './schema.ts';

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

/** Viscosity at which the drops have that diameter, mPa s. Assumed: about 19 s in a Ford 4 cup at 0.9 g/mL. */
export const DROPS_AT_VISCOSITY_MPA_S = 50;

/**
 * Air pressure above the room at the cap of a low-pressure gun, kPa: 8 psig. US 40 CFR 63.801
 * (definitions) calls more than 10 psig (69 kPa) at the point of atomising conventional. Assumed
 * below that limit: common practice is 6 to 10 psig.
 */
export const LOW_PRESSURE_CAP_KPA = 55;
/**
 * The same for a conventional gun, kPa: 35 psig. US Federal Aviation Administration, Aviation
 * Maintenance Technician Handbook, chapter on finishing: 40 to 50 psi at the gun. Assumed: 5 to
 * 15 psi are lost between the gun's inlet and the cap.
 */
export const CONVENTIONAL_CAP_KPA = 240;

/** What lies under the film where nobody has said: fabric-covered parts are what this is for. */
export const USUAL_BACKING: BackingWord = 'open-cloth';

/**
 * The air where nobody has said. 21 °C (70 °F) is the middle of the 65 to 75 °F, and 50 % lies
 * below the 65 %, of US Federal Aviation Administration, Advisory Circular 43.13-1B, chapter 2, for
 * doping. Ceiling: 90 °F, below the 95 °F above which the administration's Aviation Maintenance
 * Technician Handbook expects blush. Assumed: the air speed, a slow draught in a room.
 */
export const USUAL_AIR: AirSpec = { temperature_C: 21, humidity_percent: 50, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 };

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
  readonly capPressure_kPa: number;
}

/** The kinds of gun that have defaults. */
export const GUN_CLASSES = {
  'low-pressure': {
    widthRatio: LOW_PRESSURE_WIDTH_RATIO,
    depthRatio: LOW_PRESSURE_DEPTH_RATIO,
    fluidRate_mL_min: LOW_PRESSURE_FLUID_RATE_ML_MIN,
    efficiency_percent: LOW_PRESSURE_EFFICIENCY_PERCENT,
    capPressure_kPa: LOW_PRESSURE_CAP_KPA,
  },
  'conventional': {
    widthRatio: CONVENTIONAL_WIDTH_RATIO,
    depthRatio: CONVENTIONAL_DEPTH_RATIO,
    fluidRate_mL_min: CONVENTIONAL_FLUID_RATE_ML_MIN,
    efficiency_percent: CONVENTIONAL_EFFICIENCY_PERCENT,
    capPressure_kPa: CONVENTIONAL_CAP_KPA,
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
    drops: {
      meanDiameter_um: MEAN_DROP_UM,
      spread: DROP_SPREAD,
      solventSpeed: SOLVENT_SPEED,
      atViscosity_mPa_s: DROPS_AT_VISCOSITY_MPA_S,
      atPressure_kPa: gun.capPressure_kPa,
    },
    triggerLag_ms: TRIGGER_LAG_MS,
    capPressure_kPa: gun.capPressure_kPa,
    distanceRange_mm: [...DISTANCE_RANGE_MM],
  };
}

/**
 * The general thinner of `sim/materials`, to whole per cent by volume. Assumed: a blend that stands
 * for its kind; the maker's own differs.
 */
export const GENERAL_THINNER: MixSpec['thinner'] = [
  { solvent: 'mek', percent: 26 },
  { solvent: 'toluene', percent: 46 },
  { solvent: 'n-butyl-acetate', percent: 19 },
  { solvent: 'n-butanol', percent: 9 },
];

/** How far the shares of a blend may add up beside 100 %: what rounding leaves in a few shares of 0.1 %. */
export const SHARE_SLACK_PERCENT = 0.1;

/** The retarder of a new mix. US Air Force TO 1-1-8 names butyl alcohol; common practice: 5 to 15 % of the thinner. */
export const RETARDER: NonNullable<MixSpec['retarder']> = { solvent: 'n-butanol', percent: 10 };

/**
 * Volumes of thinner to one of clear dope. Assumed: one to three, which brings dope of 20 % volume
 * solids to the 15 % of `VOLUME_SOLIDS_PERCENT`; practice for the gun runs on to one to one.
 */
export const THINNER_PER_FINISH = 0.33;

/** Clear dope thinned for the gun, without retarder. */
export function defaultMix(id: string, name: string): MixSpec {
  return { id, name, finish: 'clear-dope', thinner: GENERAL_THINNER.map((part) => ({ ...part })), thinnerPerFinish: THINNER_PER_FINISH };
}

/** How long a coat is left before the next is laid on it, min. Assumed: touch-dry, and still soft. */
export const WAIT_MIN = 20;
