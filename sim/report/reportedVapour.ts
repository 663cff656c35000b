import type { FaceAir } from '../air/boothAir.ts';
import type { RoomAir, VapourCourse } from '../air/roomVapour.ts';
import type { RoomVapour, VapourAir } from '../air/vapour.ts';
import type { SolventByMinute } from '../scheme/solvent.ts';

/** Air that a coat asks for in its busiest minute, were that to go on, m³/s. */
export interface AirNeeded {
  /** To stay at a quarter and at a tenth of the lower explosive limit. */
  readonly quarter_m3_s: number;
  readonly tenth_m3_s: number;
  /** To stay at the exposure limits, with the room's mixing factor. */
  readonly exposure_m3_s: number;
  /** 0-based. */
  readonly busiest: number;
}

/** What a coat does to the air of a room. */
export interface ReportedVapour {
  readonly solvent: SolventByMinute;
  readonly air: VapourAir;
  readonly room: RoomAir;
  /** Null where no open face is stated. */
  readonly face: FaceAir | null;
  readonly course: VapourCourse;
  /** All the coat's solvent turned to vapour with nothing let out. */
  readonly shut: RoomVapour;
  readonly needed: AirNeeded;
  /** Power that warms the fan's air by 10 K, W. */
  readonly warming_W_10K: number;
}
