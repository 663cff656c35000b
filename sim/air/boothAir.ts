import { METRES_PER_FOOT } from '../base/units.ts';
import { AIR_GUNS, BOOTH_TABLE, FIRE_FACE_ft_min, type BoothRow } from '../materials/boothVelocities.ts';

const M_S_PER_FT_MIN = METRES_PER_FOOT / 60;

/** Average air speed through the open face of a spray booth that the fire rule asks for, m/s: 100 ft/min. */
export const FIRE_FACE_m_s = FIRE_FACE_ft_min * M_S_PER_FT_MIN;

/** A speed on the edge of a range lies within it. */
const ROUNDING = 1e-9;

/** What a fan makes at the open face of a booth. */
export interface FaceAir {
  readonly face_m2: number;
  readonly flow_m3_s: number;
  /** Mean over the face. */
  readonly velocity_m_s: number;
  /** Flow that gives the fire rule's speed at this face, m³/s. */
  readonly fireFlow_m3_s: number;
  /** Rows of the design table for air guns whose range, of a large or of a small booth, holds the speed. */
  readonly within: readonly WithinRange[];
}

/** A row of the table, and the size of booth whose range holds a speed. */
export interface WithinRange {
  readonly row: BoothRow;
  readonly booth: 'large' | 'small';
}

/** Mean speed of the air through a booth's open face. @param face_m2 above 0. */
export function faceAir(flow_m3_s: number, face_m2: number): FaceAir {
  const velocity_m_s = flow_m3_s / face_m2;
  const speed = velocity_m_s / M_S_PER_FT_MIN;
  const within = BOOTH_TABLE.filter(({ operation }) => operation === AIR_GUNS).flatMap((row) =>
    (['large', 'small'] as const).filter((booth) => speed >= row[booth].low * (1 - ROUNDING) && speed <= row[booth].high * (1 + ROUNDING)).map((booth) => ({ row, booth })),
  );
  return { face_m2, flow_m3_s, velocity_m_s, fireFlow_m3_s: flowForFace_m3_s(FIRE_FACE_m_s, face_m2), within };
}

/** Flow that gives a mean speed at a face. */
export function flowForFace_m3_s(velocity_m_s: number, face_m2: number): number {
  return velocity_m_s * face_m2;
}

/** How often an hour the fan renews the room's air, 1/h. */
export function airChanges_h(fresh_m3_s: number, room_m3: number): number {
  return (fresh_m3_s * 3600) / room_m3;
}

/** Heat that one kilogram of air takes for each kelvin, J/(kg K), and its density, kg/m³, at 20 °C; handbook values, from memory. */
const AIR_HEAT_J_kg_K = 1006;
const AIR_DENSITY_kg_m3 = 1.2;

/** Power that warms a stream of outside air, W. Walls and what stands in the room are left out. */
export function warmingPower_W(fresh_m3_s: number, warmer_K: number): number {
  return AIR_DENSITY_kg_m3 * AIR_HEAT_J_kg_K * fresh_m3_s * warmer_K;
}
