import { faceAir, warmingPower_W } from '../../air/boothAir.ts';
import { explosiveAir_m3, exposureAir_m3, SHIPYARD_SHARE } from '../../air/dilution.ts';
import { vapourCourse, type RoomAir } from '../../air/roomVapour.ts';
import { vapourInRoom, vapourRatio, type LiquidPart, type VapourAir } from '../../air/vapour.ts';
import type { RoomSpec } from '../../job/schema.ts';
import type { AirNeeded, ReportedVapour } from '../../report/reportedVapour.ts';
import type { SolventByMinute } from '../../scheme/solvent.ts';

const SECONDS_PER_HOUR = 3600;
const WARMER_K = 10;

/** The room of a job in SI. */
export function roomAirOf({ volume_m3, fresh_m3_h, mixing }: RoomSpec): RoomAir {
  return { volume_m3, fresh_m3_s: fresh_m3_h / SECONDS_PER_HOUR, mixing };
}

/**
 * The air of a room while a coat is laid and dries, the room clean at its start.
 * @throws CrosscoatError `range` for a room outside 1 to 100 000 m³.
 */
export function coatVapour(solvent: SolventByMinute, spec: RoomSpec, { temperature_K, pressure_Pa }: VapourAir): ReportedVapour {
  const air = { temperature_K, pressure_Pa };
  const room = roomAirOf(spec);
  const sources = solvent.parts.map((part) => {
    const ratio = vapourRatio(part.solvent, air);
    return { solvent: part.solvent, vapour_m3: part.liquid_m3.map((liquid_m3) => liquid_m3 * ratio) };
  });
  return {
    solvent,
    air,
    room,
    face: spec.face_m2 === undefined ? null : faceAir(room.fresh_m3_s, spec.face_m2),
    course: vapourCourse(sources, solvent.step_s, room, solvent.lay_s),
    shut: vapourInRoom(solvent.parts.map((part) => ({ solvent: part.solvent, liquid_m3: part.used_m3 })), room.volume_m3, air),
    needed: airNeeded(solvent, air, room.mixing),
    warming_W_10K: warmingPower_W(room.fresh_m3_s, WARMER_K),
  };
}

function airNeeded(solvent: SolventByMinute, air: VapourAir, mixing: number): AirNeeded {
  const rates = (minute: number): LiquidPart[] => solvent.parts.map((part) => ({ solvent: part.solvent, liquid_m3: (part.liquid_m3[minute] as number) / solvent.step_s }));
  let busiest = 0;
  let most = -1;
  for (let minute = 0; minute < solvent.minutes; minute++) {
    const now = exposureAir_m3(rates(minute), air, mixing) + explosiveAir_m3(rates(minute), air);
    if (now > most) [busiest, most] = [minute, now];
  }
  const liquids = rates(busiest);
  return {
    quarter_m3_s: explosiveAir_m3(liquids, air),
    tenth_m3_s: explosiveAir_m3(liquids, air, SHIPYARD_SHARE),
    exposure_m3_s: exposureAir_m3(liquids, air, mixing),
    busiest,
  };
}
