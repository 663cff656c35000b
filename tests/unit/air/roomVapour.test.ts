import { describe, expect, it } from 'vitest';
import { airChanges_h, faceAir, warmingPower_W } from '../../../sim/air/boothAir.ts';
import { vapourCourse, type RoomAir } from '../../../sim/air/roomVapour.ts';
import { spillAnswer, type Spill } from '../../../sim/air/spill.ts';
import { exposureLimits, SEA_PRESSURE_Pa, vapourInRoom } from '../../../sim/air/vapour.ts';
import { solventById, SOLVENTS } from '../../../sim/materials/solvents.ts';
import { VAPOUR_TABLE } from '../../../sim/materials/vapourTable.ts';

const TOLUENE = solventById('toluene');
const MINUTE_S = 60;
const AIR = { temperature_K: 293.15, pressure_Pa: SEA_PRESSURE_Pa };

function even(minutes: number, whole: number, rate_m3: number): Float64Array {
  return Float64Array.from({ length: whole }, (_, minute) => (minute < minutes ? rate_m3 : 0));
}

/** The end of every minute by 600 small steps of the differential equation (mid-point rule). */
function integrated(source_m3: Float64Array, { volume_m3, fresh_m3_s, mixing }: RoomAir): number[] {
  const ends: number[] = [];
  let fraction = 0;
  const step_s = MINUTE_S / 600;
  const slope = (at: number, rate: number): number => (rate - (fresh_m3_s / mixing) * at) / volume_m3;
  for (const in_m3 of source_m3) {
    const rate = in_m3 / MINUTE_S;
    for (let k = 0; k < 600; k++) fraction += step_s * slope(fraction + 0.5 * step_s * slope(fraction, rate), rate);
    ends.push(fraction);
  }
  return ends;
}

describe('vapour in a room, minute by minute', () => {
  const room: RoomAir = { volume_m3: 60, fresh_m3_s: 1.2, mixing: 3 };

  it('follows the differential equation', () => {
    const source = Float64Array.from({ length: 30 }, (_, minute) => (minute % 7 === 0 ? 0.02 : minute < 12 ? 0.004 : 0));
    const ours = vapourCourse([{ solvent: TOLUENE, vapour_m3: source }], MINUTE_S, room).solvents[0]!.airFraction;
    const theirs = integrated(source, room);
    theirs.forEach((fraction, minute) => expect(Math.abs(ours[minute]! / fraction - 1)).toBeLessThan(1e-6));
  });

  it('comes to source · K / fan, and falls by e in V K / fan', () => {
    const long = vapourCourse([{ solvent: TOLUENE, vapour_m3: even(200, 260, 0.006) }], MINUTE_S, room);
    const [{ airFraction }] = long.solvents as [typeof long.solvents[number]];
    expect(airFraction[199]! / ((0.006 / 60) * (3 / 1.2))).toBeCloseTo(1, 9);
    const fall = airFraction[219]! / airFraction[209]!;
    expect(fall).toBeCloseTo(Math.exp((-600 * 1.2) / (60 * 3)), 9);
  });

  it.each([0, 1e-9, 1e-5, 1e-3, 0.03, 1, 50])('loses nothing with a fan of %s m³/s', (fresh_m3_s) => {
    const { solvents } = vapourCourse([{ solvent: TOLUENE, vapour_m3: even(9, 40, 0.01) }], MINUTE_S, { volume_m3: 60, fresh_m3_s, mixing: 4 });
    const [{ entered_m3, left_m3, there_m3 }] = solvents as [typeof solvents[number]];
    expect(Math.abs(entered_m3 - left_m3 - there_m3) / entered_m3).toBeLessThan(1e-9);
    expect(Math.min(left_m3, there_m3)).toBeGreaterThanOrEqual(0);
  });

  it('keeps everything where no fan runs, and says that it does not come down', () => {
    const { solvents, lowAfter_s, worstLimit } = vapourCourse([{ solvent: TOLUENE, vapour_m3: even(5, 60, 0.01) }], MINUTE_S, { ...room, fresh_m3_s: 0 });
    expect(solvents[0]!.airFraction[59]).toBeCloseTo(0.05 / 60, 12);
    expect([lowAfter_s, worstLimit >= 4]).toEqual([null, true]);
  });

  it('counts the time to a tenth of both limits from the last stroke', () => {
    const source = even(1, 120, 0.06);
    const { lowAfter_s, timesLimit, overLimit_s } = vapourCourse([{ solvent: TOLUENE, vapour_m3: source }], MINUTE_S, room, MINUTE_S);
    // One minute's end after another falls by the same factor; toluene's limit is 20 ppm.
    const first = timesLimit[0]!;
    const minutes = Math.ceil((Math.log(first / 0.1) * room.volume_m3 * room.mixing) / room.fresh_m3_s / MINUTE_S);
    expect(lowAfter_s).toBe(minutes * MINUTE_S);
    expect(overLimit_s / MINUTE_S).toBe(Math.ceil((Math.log(first) * room.volume_m3 * room.mixing) / room.fresh_m3_s / MINUTE_S));
  });
});

describe('limits as stated', () => {
  it('finds every limit of the rule\'s table within what is known of the solvent', () => {
    for (const { solvent, lel_percent } of VAPOUR_TABLE) {
      if (solvent === null) continue;
      const { low, high } = solventById(solvent).lowerExplosiveFraction;
      expect(lel_percent / 100).toBeGreaterThanOrEqual(low - 1e-12);
      expect(lel_percent / 100).toBeLessThanOrEqual(high + 1e-12);
    }
  });

  it('names exposure limits lowest first, and those that are missing', () => {
    expect(exposureLimits(TOLUENE).map(({ name, fraction }) => [name, Math.round(fraction * 1e6)])).toEqual([['ACGIH TLV', 20], ['OSHA PEL', 200]]);
    const bare = SOLVENTS.find(({ oshaPel_ppm, acgihTlv_ppm }) => oshaPel_ppm === null && acgihTlv_ppm === null)!;
    const room = vapourInRoom([{ solvent: bare, liquid_m3: 1e-4 }, { solvent: TOLUENE, liquid_m3: 1e-4 }], 50, AIR);
    expect(room.unlimited).toEqual([bare.name]);
    expect(room.timesLimit).toBeCloseTo(room.parts[1]!.timesLimit!, 12);
    expect(vapourInRoom([{ solvent: bare, liquid_m3: 1e-4 }], 50, AIR).timesLimit).toBeNull();
  });

  it('says when the air cannot hold it', () => {
    const held = (liquid_m3: number) => vapourInRoom([{ solvent: TOLUENE, liquid_m3 }], 10, AIR).isOverSaturated;
    // Toluene at 20 °C: 2.9 kPa of 101, 0.29 m³ of vapour in 10 m³, 1.27 L.
    expect([held(1.2e-3), held(1.4e-3)]).toEqual([false, true]);
  });

  it.each([[0.5, /room = 0\.5 m³ is not from 1/], [NaN, /room = NaN/], [2e5, /not from 1 to 100000 m³/]])('refuses a room of %s m³', (room_m3, message) => {
    expect(() => vapourInRoom([{ solvent: TOLUENE, liquid_m3: 1e-3 }], room_m3, AIR)).toThrow(message);
  });

  it('refuses less than no liquid', () => {
    expect(() => vapourInRoom([{ solvent: TOLUENE, liquid_m3: -1e-3 }], 10, AIR)).toThrow(/liquid of toluene = -0\.001 m³ is not from 0/);
  });
});

describe('fan, face and heat', () => {
  const FT_MIN = 0.00508;
  it('finds the design ranges that hold a speed', () => {
    const rows = faceAir(125 * FT_MIN * 5, 5).within.map(({ row, booth }) => [row.crossDraft, booth]);
    expect(rows).toEqual([['up to 50 ft/min', 'large'], ['up to 50 ft/min', 'small'], ['up to 100 ft/min', 'large']]);
    expect(faceAir(20 * FT_MIN * 5, 5).within).toEqual([]);
    expect(faceAir(60 * FT_MIN * 5, 5).fireFlow_m3_s / (100 * FT_MIN * 5)).toBeCloseTo(1, 12);
  });

  it('counts air changes and the heat that they take', () => {
    expect(airChanges_h(0.5, 60)).toBe(30);
    expect(warmingPower_W(1, 10) / 12072).toBeCloseTo(1, 6);
  });
});

describe('liquid that evaporates', () => {
  const spill: Spill = { liquids: [{ solvent: TOLUENE, liquid_m3: 1e-3 }], room_m3: 120, air: AIR, mixing: 4, over_s: 900, fresh_m3_s: 0, face_m2: null };

  it('comes with no fan to what the shut room says', () => {
    const { course, shut, rule_m3, quarter_m3, tenth_m3 } = spillAnswer(spill);
    expect(course!.lelFraction[14]).toBeCloseTo(shut.lelFraction, 12);
    expect(rule_m3).toBeCloseTo(64.06, 1);
    expect(tenth_m3 / quarter_m3).toBeCloseTo(2.5, 12);
  });

  it('ends a time that is no whole minute where it ends', () => {
    const { course, shut } = spillAnswer({ ...spill, over_s: 90 });
    expect(course!.lelFraction[0]! / shut.lelFraction).toBeCloseTo(60 / 90, 12);
    expect(course!.lelFraction[1]! / shut.lelFraction).toBeCloseTo(1, 12);
  });
});
