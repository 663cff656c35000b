import type { LogEntrySpec } from '../job/schema.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { entryCautions } from './logWords.ts';
import type { ReportedEntry, ReportedNotedAir } from './reportedLog.ts';
import type { UnitSystem } from './units.ts';
import { CELSIUS_0_K } from '../base/units.ts';

type JsonRecord = { readonly [key: string]: JsonValue };

/**
 * A log as JSON: each entry as the job file states it, but for its pictures, beside what follows from it. The entry of the job file,
 * with its pictures, is what a digest is of.
 */
export function logJson(entries: readonly ReportedEntry[], system: UnitSystem): JsonValue {
  return entries.map((reported) => entryJson(reported, system));
}

function entryJson(reported: ReportedEntry, system: UnitSystem): JsonRecord {
  const { entry, took_s, airStart, airEnd, wait, plan, signature } = reported;
  return {
    ...stated(entry),
    found: {
      signature,
      took_s,
      airStart: airJson(airStart),
      airEnd: airJson(airEnd),
      wait: wait === null ? null : { after: wait.entry.id, wait_s: wait.wait_s, fromEnd: wait.fromEnd },
      planned: { step: plan.stepName, waitAfter: plan.before?.id ?? null, wait_h: plan.before?.wait_h ?? null, mix: plan.mixName, ratio: plan.ratio },
      cautions: entryCautions(reported, system),
    },
  };
}

/** As the file states it: keys that are not given are left out. */
function stated({ photos, ...entry }: LogEntrySpec): JsonRecord {
  return JSON.parse(JSON.stringify({ ...entry, photos: photos.map(({ id, name, width, height }) => ({ id, name, width, height })) })) as JsonRecord;
}

function airJson(air: ReportedNotedAir | null): JsonValue {
  if (air === null) return null;
  return { dewPoint_C: jsonNumber(air.dewPoint_K - CELSIUS_0_K), surfaceMargin_K: air.surfaceMargin_K === null ? null : jsonNumber(air.surfaceMargin_K) };
}
