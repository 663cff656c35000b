import { CELSIUS_0_K } from '../base/units.ts';
import type { Target } from '../verdict/target.ts';
import type { Cause, Change, Cure, Fault, FaultKind, Zone } from '../verdict/verdict.ts';
import { causeText } from './causeText.ts';
import { cureText } from './cureText.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { pointJson } from './strokeJson.ts';

const UM = 1e-6;
const MM = 1e-3;
const MM2 = 1e-6;
const DEGREE = Math.PI / 180;
const PERCENT = 0.01;
const ML_MIN = 1e-6 / 60;

/**
 * A fault: its worst zone's place and value, its zones, its cause and its cure. `worst` and
 * `limit` are in `worst_unit`: µm of the target's film (`um`), for dry spray per cent of the film, for a
 * run mm, for blush K of film above the dew point, for a pinhole a plain ratio.
 * Strokes are numbered from 1; texts are in metric units.
 */
export function faultJson(fault: Fault, target: Target): JsonValue {
  const unit = worstUnit(fault.kind);
  const [worst] = fault.zones;
  return {
    kind: fault.kind,
    area_mm2: jsonNumber(fault.area_m2, MM2),
    at_mm: worst === undefined ? null : pointJson(worst.at_m),
    worst: worst === undefined ? null : jsonNumber(worst.worst, unit.size),
    worst_unit: unit.name,
    limit: worst === undefined ? null : jsonNumber(worst.limit, unit.size),
    zones: fault.zones.map((zone) => zoneJson(zone, unit.size)),
    cause: causeJson(fault),
    cure: fault.cure === null ? null : cureJson(fault, fault.cure, target),
  };
}

function worstUnit(kind: FaultKind): { readonly name: string; readonly size: number } {
  switch (kind) {
    case 'dry-spray':
    case 'dry-lap':
      return { name: 'percent', size: PERCENT };
    case 'run':
      return { name: 'mm', size: MM };
    case 'blush':
      return { name: 'K', size: 1 };
    case 'pinhole':
      return { name: 'ratio', size: 1 };
    case 'holiday':
    case 'thin-lap':
    case 'heavy-spot':
    case 'orange-peel':
    case 'blister':
    case 'over-thick':
      return { name: 'um', size: UM };
  }
}

function zoneJson(zone: Zone, unit: number): JsonValue {
  return {
    area_mm2: jsonNumber(zone.area_m2, MM2),
    at_mm: pointJson(zone.at_m),
    box_mm: zone.box_m.map((side) => jsonNumber(side, MM)),
    worst: jsonNumber(zone.worst, unit),
    margin: jsonNumber(zone.margin, unit),
    ...(zone.run === undefined
      ? {}
      : { run: { start_mm: pointJson(zone.run.start_m), started_s: jsonNumber(zone.run.started_s), length_mm: jsonNumber(zone.run.length_m, MM) } }),
  };
}

function causeJson(fault: Fault): JsonValue {
  const { cause } = fault;
  const unit = causeUnit(cause);
  return {
    kind: cause.kind,
    text: causeText(fault, 'metric'),
    strokes: strokeNumbers(cause.strokes),
    found: jsonNumber(cause.found, unit.size),
    meant: jsonNumber(cause.meant, unit.size),
    unit: unit.name,
    explains: jsonNumber(cause.explains),
  };
}

function causeUnit({ kind, unit }: Cause): { readonly name: string; readonly size: number } {
  switch (unit) {
    case 'm':
      return kind === 'plan-film' ? { name: 'um', size: UM } : { name: 'mm', size: MM };
    case 'rad':
      return { name: 'deg', size: DEGREE };
    case 'fraction':
      return { name: 'percent', size: PERCENT };
    case 'K':
      return { name: 'K', size: 1 };
    case 'm3/s':
      return { name: 'mL/min', size: ML_MIN };
    case 'm/s':
    case 's':
    case 'ratio':
    case '':
      return { name: unit, size: 1 };
  }
}

function cureJson(fault: Fault, cure: Cure, target: Target): JsonValue {
  return {
    text: cureText(fault, target, 'metric'),
    change: changeJson(cure.change),
    worst: jsonNumber(cure.worst, worstUnit(fault.kind).size),
    areaBefore_mm2: jsonNumber(cure.areaBefore_m2, MM2),
    areaAfter_mm2: jsonNumber(cure.areaAfter_m2, MM2),
    inTargetBefore: jsonNumber(cure.inTargetBefore),
    inTargetAfter: jsonNumber(cure.inTargetAfter),
    worsens: [...cure.worsens],
  };
}

/** A change with the keys of the job file's plan where it has them. */
function changeJson(change: Change): JsonValue {
  const figures: Record<string, JsonValue> = { kind: change.kind };
  if ('strokes' in change) figures['strokes'] = strokeNumbers(change.strokes);
  if ('speed_m_s' in change) figures['speed_m_s'] = jsonNumber(change.speed_m_s);
  if ('distance_m' in change) figures['distance_mm'] = jsonNumber(change.distance_m, MM);
  if ('overlapFraction' in change) figures['overlap_percent'] = jsonNumber(change.overlapFraction, PERCENT);
  if ('firstStroke_m' in change) figures['firstStroke_mm'] = jsonNumber(change.firstStroke_m, MM);
  if ('rate_m3_s' in change) figures['fluidRate_mL_min'] = jsonNumber(change.rate_m3_s, ML_MIN);
  if ('thinnerPerFinish' in change) figures['thinnerPerFinish'] = jsonNumber(change.thinnerPerFinish);
  if ('retarderFraction' in change) figures['retarder_percent'] = jsonNumber(change.retarderFraction, PERCENT);
  if ('temperature_K' in change) figures['temperature_C'] = jsonNumber(change.temperature_K - CELSIUS_0_K);
  if ('wait_s' in change) figures['wait_min'] = jsonNumber(change.wait_s, 60);
  if ('lead_m' in change) figures['lead_mm'] = jsonNumber(change.lead_m, MM);
  return figures;
}

function strokeNumbers(strokes: readonly number[]): number[] {
  return strokes.map((index) => index + 1);
}
