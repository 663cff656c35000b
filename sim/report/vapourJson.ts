import { CELSIUS_0_K } from '../base/units.ts';
import type { FaceAir } from '../air/boothAir.ts';
import type { RoomAir, VapourCourse } from '../air/roomVapour.ts';
import type { SpillAnswer } from '../air/spill.ts';
import type { PublishedLimit, VapourPart } from '../air/vapour.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION } from './reportJson.ts';
import type { ReportedVapour } from './reportedVapour.ts';
import { VAPOUR_ASSUMPTIONS, VAPOUR_CAUTIONS, VAPOUR_DECIDES, VAPOUR_STATEMENT } from './vapourWords.ts';

type JsonObject = { readonly [key: string]: JsonValue };

const HEAD: JsonObject = { schemaVersion: RESULT_VERSION, estimate: VAPOUR_STATEMENT, whoDecides: VAPOUR_DECIDES, assumptions: VAPOUR_ASSUMPTIONS, cautions: VAPOUR_CAUTIONS };
const LITRE = 1e-3;
const PPM = 1e-6;
const SECONDS_PER_HOUR = 3600;

/** Liquid evaporating in a room, as one JSON object; keys carry their unit. */
export function spillJson(answer: SpillAnswer): JsonObject {
  const { spill, shut, course, face } = answer;
  const only = shut.parts.length === 1 ? shut.parts[0] : undefined;
  return {
    ...HEAD,
    room_m3: jsonNumber(spill.room_m3),
    temperature_C: jsonNumber(spill.air.temperature_K - CELSIUS_0_K),
    mixingFactor: jsonNumber(spill.mixing),
    vapour_L: jsonNumber(shut.vapour_m3, LITRE),
    airFraction: jsonNumber(shut.airFraction),
    ppm: jsonNumber(shut.airFraction, PPM),
    overSaturated: shut.isOverSaturated,
    lel_percent: jsonNumber(shut.blendLel, 0.01),
    lelSource: only?.explosive[0]?.source ?? 'Le Chatelier, of the lowest limit published of each solvent',
    lelFraction: jsonNumber(shut.lelFraction),
    otherLel_percent: shut.otherLel === shut.blendLel ? null : jsonNumber(shut.otherLel, 0.01),
    otherLelSource: shut.otherLel === shut.blendLel ? null : (only?.explosive.at(-1)?.source ?? 'Le Chatelier, of the highest limit published of each solvent'),
    otherLelFraction: shut.otherLel === shut.blendLel ? null : jsonNumber(shut.airFraction / shut.otherLel),
    timesExposureLimit: shut.timesLimit === null ? null : jsonNumber(shut.timesLimit),
    limitName: only === undefined ? 'sum of shares of the lowest limit of each solvent' : (only.exposure[0]?.name ?? null),
    limit_ppm: only?.exposure[0] === undefined ? null : jsonNumber(only.exposure[0].fraction, PPM),
    limitSource: only?.exposure[0]?.source ?? null,
    withoutLimit: shut.unlimited,
    dilution_m3: jsonNumber(answer.quarter_m3),
    dilutionRule_m3: answer.rule_m3 === null ? null : jsonNumber(answer.rule_m3),
    dilutionTenth_m3: jsonNumber(answer.tenth_m3),
    dilutionExposure_m3: jsonNumber(answer.exposure_m3),
    solvents: shut.parts.map(partJson),
    fresh_m3_h: jsonNumber(spill.fresh_m3_s * SECONDS_PER_HOUR),
    course: course === null ? null : courseJson(course),
    face: face === null ? null : faceJson(face),
  };
}

/** Coats of a scheme minute by minute, as one JSON object. */
export function vapourJson(coats: readonly ReportedVapour[]): JsonObject {
  const [first] = coats;
  return {
    ...HEAD,
    room: first === undefined ? null : roomJson(first.room),
    face: first === undefined || first.face === null ? null : faceJson(first.face),
    solvent_mL: jsonNumber(coats.reduce((sum, { solvent }) => sum + solvent.used_m3, 0), 1e-6),
    coats: coats.map(coatJson),
  };
}

function coatJson({ solvent, course, shut, needed, warming_W_10K }: ReportedVapour): JsonObject {
  const sum = (of: (part: ReportedVapour['solvent']['parts'][number]) => number): number | null => jsonNumber(solvent.parts.reduce((all, part) => all + of(part), 0), 1e-6);
  return {
    step: solvent.stepId,
    name: solvent.name,
    kind: solvent.kind,
    mix: solvent.mixName,
    laying_s: jsonNumber(solvent.lay_s),
    solvent_mL: jsonNumber(solvent.used_m3, 1e-6),
    atOnce_mL: sum(({ atOnce_m3 }) => atOnce_m3),
    later_mL: sum(({ later_m3 }) => later_m3),
    lelFraction: jsonNumber(course.lelFraction[course.worstLel] ?? 0),
    timesExposureLimit: jsonNumber(course.timesLimit[course.worstLimit] ?? 0),
    shutLelFraction: jsonNumber(shut.lelFraction),
    shutTimesExposureLimit: shut.timesLimit === null ? null : jsonNumber(shut.timesLimit),
    airQuarterLel_m3_h: jsonNumber(needed.quarter_m3_s * SECONDS_PER_HOUR),
    airTenthLel_m3_h: jsonNumber(needed.tenth_m3_s * SECONDS_PER_HOUR),
    airExposure_m3_h: jsonNumber(needed.exposure_m3_s * SECONDS_PER_HOUR),
    warmingBy10C_kW: jsonNumber(warming_W_10K, 1000),
    course: courseJson(course),
    solvents: shut.parts.map(partJson),
  };
}

function courseJson(course: VapourCourse): JsonObject {
  return {
    worstLelMinute: course.worstLel + 1,
    worstLimitMinute: course.worstLimit + 1,
    worstLelFraction: jsonNumber(course.lelFraction[course.worstLel] ?? 0),
    worstTimesExposureLimit: jsonNumber(course.timesLimit[course.worstLimit] ?? 0),
    overLimit_min: jsonNumber(course.overLimit_s, 60),
    overQuarter_min: jsonNumber(course.overQuarter_s, 60),
    lowAfter_min: course.lowAfter_s === null ? null : jsonNumber(course.lowAfter_s, 60),
    lelFraction: [...course.lelFraction].map((value) => jsonNumber(value)),
    timesExposureLimit: [...course.timesLimit].map((value) => jsonNumber(value)),
  };
}

function partJson(part: VapourPart): JsonObject {
  return {
    solvent: part.solvent.id,
    name: part.solvent.name,
    liquid_mL: jsonNumber(part.liquid_m3, 1e-6),
    vapour_L: jsonNumber(part.vapour_m3, LITRE),
    ppm: jsonNumber(part.airFraction, PPM),
    lelFraction: jsonNumber(part.lelFraction),
    timesExposureLimit: part.timesLimit === null ? null : jsonNumber(part.timesLimit),
    explosiveLimits: part.explosive.map(({ fraction, source }) => ({ percent: jsonNumber(fraction, 0.01), source })),
    exposureLimits: part.exposure.map(({ name, fraction, source }: PublishedLimit) => ({ name, ppm: jsonNumber(fraction, PPM), source })),
  };
}

function roomJson({ volume_m3, fresh_m3_s, mixing }: RoomAir): JsonObject {
  return { volume_m3: jsonNumber(volume_m3), fresh_m3_h: jsonNumber(fresh_m3_s * SECONDS_PER_HOUR), mixingFactor: jsonNumber(mixing) };
}

function faceJson({ face_m2, velocity_m_s, fireFlow_m3_s }: FaceAir): JsonObject {
  return { face_m2: jsonNumber(face_m2), velocity_m_s: jsonNumber(velocity_m_s), fireRule_m3_h: jsonNumber(fireFlow_m3_s * SECONDS_PER_HOUR) };
}
