import { vapourRowOf } from '../materials/vapourTable.ts';
import { CUBIC_METRES_PER_US_GALLON, METRES_PER_FOOT } from '../base/units.ts';
import { faceAir, type FaceAir } from './boothAir.ts';
import { explosiveAir_m3, exposureAir_m3, ruleDilution_ft3_gal, SHIPYARD_SHARE } from './dilution.ts';
import { vapourCourse, type VapourCourse } from './roomVapour.ts';
import { vapourInRoom, vapourRatio, type LiquidPart, type RoomVapour, type VapourAir } from './vapour.ts';

const STEP_S = 60;
/** The room is followed for so long after the last of the liquid is gone, s. */
const AFTER_S = 4 * 3600;

/** Some liquid, the room that it evaporates in, and over what time. */
export interface Spill {
  readonly liquids: readonly LiquidPart[];
  readonly room_m3: number;
  readonly air: VapourAir;
  readonly mixing: number;
  /** Null: all at once. */
  readonly over_s: number | null;
  readonly fresh_m3_s: number;
  readonly face_m2: number | null;
}

/** What it does to the air. */
export interface SpillAnswer {
  readonly spill: Spill;
  /** All of it, with nothing let out. */
  readonly shut: RoomVapour;
  /** Air that all of it asks for, m³: to a quarter and a tenth of the lower explosive limit, to the exposure limits. */
  readonly quarter_m3: number;
  readonly tenth_m3: number;
  readonly exposure_m3: number;
  /** To a quarter by the fire rule's own table; null where that lacks a solvent or the liquid is a blend. */
  readonly rule_m3: number | null;
  /** With the fan running; null where no time is given. */
  readonly course: VapourCourse | null;
  readonly face: FaceAir | null;
}

/**
 * Liquid that evaporates in a room, at once or evenly over a time.
 * @throws CrosscoatError `range` for a room outside 1 to 100 000 m³ or liquid outside 0 to 10 m³.
 */
export function spillAnswer(spill: Spill): SpillAnswer {
  const { liquids, room_m3, air, mixing, over_s, fresh_m3_s, face_m2 } = spill;
  return {
    spill,
    shut: vapourInRoom(liquids, room_m3, air),
    quarter_m3: explosiveAir_m3(liquids, air),
    tenth_m3: explosiveAir_m3(liquids, air, SHIPYARD_SHARE),
    exposure_m3: exposureAir_m3(liquids, air, mixing),
    rule_m3: ruleAir_m3(liquids),
    course: over_s === null ? null : courseOf(spill, over_s),
    face: face_m2 === null ? null : faceAir(fresh_m3_s, face_m2),
  };
}

function ruleAir_m3(liquids: readonly LiquidPart[]): number | null {
  const [first] = liquids;
  const row = first === undefined ? null : vapourRowOf(first.solvent.id);
  if (first === undefined || liquids.length !== 1 || row === null) return null;
  return (ruleDilution_ft3_gal(row) * METRES_PER_FOOT ** 3 * first.liquid_m3) / CUBIC_METRES_PER_US_GALLON;
}

function courseOf({ liquids, room_m3, air, mixing, fresh_m3_s }: Spill, over_s: number): VapourCourse {
  const steps = Math.ceil((over_s + AFTER_S) / STEP_S);
  const sources = liquids.map(({ solvent, liquid_m3 }) => {
    const whole_m3 = liquid_m3 * vapourRatio(solvent, air);
    const share = (step: number): number => Math.max(0, Math.min(STEP_S, over_s - step * STEP_S)) / over_s;
    return { solvent, vapour_m3: Float64Array.from({ length: steps }, (_, step) => whole_m3 * share(step)) };
  });
  return vapourCourse(sources, STEP_S, { volume_m3: room_m3, fresh_m3_s, mixing }, over_s);
}
