import { makeAir } from '../../air/moistAir.ts';
import { secondsOfMoment } from '../../base/moment.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import type { Job, LogEntrySpec } from '../../job/schema.ts';
import { waitBefore } from '../../log/progress.ts';
import { signatureState } from '../../log/signing.ts';
import { CUPS } from '../../materials/cups.ts';
import { specRatio } from '../../mix/partDensities.ts';
import { ratioWords } from '../../report/ratioWords.ts';
import type { ReportedEntry, ReportedEntryPlan, ReportedNotedAir } from '../../report/reportedLog.ts';
import { plannedFor } from './plannedFor.ts';

/** Every entry of a job's log, in its order, with what follows from it. */
export function reportLog(job: Job): ReportedEntry[] {
  return (job.log ?? []).map((entry) => reportEntry(job, entry));
}

/**
 * One entry with what follows from it: dew points, the wait before it, what the plan says, and whether it still is what was signed.
 * What it names and the job has no more is null.
 */
export function reportEntry(job: Job, entry: LogEntrySpec): ReportedEntry {
  const nameOf = (list: readonly { readonly id: string; readonly name: string }[], id: string | undefined): string | null => list.find((each) => each.id === id)?.name ?? null;
  const recording = job.recordings.find(({ id }) => id === entry.recording);
  return {
    entry,
    panelNames: entry.panels.map((id) => nameOf(job.part.panels, id) ?? id),
    coatName: nameOf(job.coats, entry.coat),
    setUpName: nameOf(job.setUps, entry.setUp),
    recordingName: recording?.name ?? null,
    cupName: entry.cup === undefined ? null : (nameOf(CUPS, entry.cup.kind) ?? entry.cup.kind),
    took_s: tookSeconds(entry),
    airStart: notedAir(entry.airStart, job.air.altitude_m),
    airEnd: notedAir(entry.airEnd, job.air.altitude_m),
    wait: waitBefore(job.log ?? [], entry),
    plan: planOf(job, entry),
    signature: signatureState(entry, recording?.text ?? null),
  };
}

/** The air as noted, with its dew point and how far the surface is above that. @param altitude_m of the room. */
export function notedAir(noted: LogEntrySpec['airStart'], altitude_m: number): ReportedNotedAir | null {
  if (noted === undefined) return null;
  const { temperature_C, humidity_percent, surface_C } = noted;
  const { temperature_K, dewPoint_K } = makeAir({ temperature_C, humidity_percent, altitude_m, speed_m_s: 0, ceiling_C: 0 }, '/airStart');
  const surface_K = surface_C === undefined ? null : surface_C + CELSIUS_0_K;
  return { temperature_K, humidityFraction: humidity_percent / 100, dewPoint_K, surface_K, surfaceMargin_K: surface_K === null ? null : surface_K - dewPoint_K };
}

function tookSeconds({ started, ended }: LogEntrySpec): number | null {
  const [from, to] = [secondsOfMoment(started), ended === undefined ? null : secondsOfMoment(ended)];
  return from === null || to === null ? null : to - from;
}

function planOf(job: Job, entry: LogEntrySpec): ReportedEntryPlan {
  const { step, before, coat, mix } = plannedFor(job, entry);
  return {
    stepName: step?.name ?? null,
    before,
    mixName: mix?.name ?? null,
    ratio: mix === null ? null : ratioWords(specRatio(mix)),
    cup: mix?.cup ?? null,
    air: job.air,
    wet_um: coat?.target.film === 'wet' ? coat.target.thickness_um : null,
  };
}
