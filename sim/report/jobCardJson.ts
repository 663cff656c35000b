import { localTimeOf } from '../base/localTime.ts';
import { ACT_CAUTIONS } from './actCautions.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { dayActs } from './jobCardText.ts';
import { RESULT_VERSION } from './reportJson.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import type { CardEntry, CardGun, CardMix, JobCard } from './reportedCard.ts';

/** The job card as one JSON object, keys with their unit. */
export function jobCardJson(card: JobCard): { readonly [key: string]: JsonValue } {
  return {
    schemaVersion: RESULT_VERSION,
    job: card.jobName,
    part: card.partName,
    seed: card.seed,
    estimate: ESTIMATE_STATEMENT,
    days: card.days.map((day, i) => ({ date: day.date, steps: day.entries.map(entryJson), cautions: dayActs(day, i === card.days.length - 1).flatMap((act) => ACT_CAUTIONS[act]) })),
    doubts: [...card.doubts],
  };
}

function entryJson(entry: CardEntry): JsonValue {
  const { step, wet_m, dry_m, after_m } = entry;
  const when = (minutes: number | null): JsonValue => (minutes === null ? null : localTimeOf(minutes));
  return {
    scheme: entry.schemeName,
    panels: [...entry.panelNames],
    number: entry.number,
    id: step.id,
    kind: step.kind,
    name: step.name,
    area_m2: jsonNumber(entry.area_m2),
    start: when(entry.start),
    end: when(entry.end),
    waitUntil: when(entry.waitUntil),
    latestNext: when(entry.latest),
    wet_um: jsonNumber(wet_m?.value ?? NaN, 1e-6),
    dry_um: jsonNumber(dry_m?.value ?? NaN, 1e-6),
    dryAfter_um: jsonNumber(after_m.value, 1e-6),
    mix: entry.mix === null ? null : mixJsonOf(entry.mix),
    gun: entry.gun === null ? null : gunJson(entry.gun),
    source: step.source ?? null,
  };
}

function mixJsonOf({ name, finishName, ratio, cup, pour, volumeSolidsFraction, isRead }: CardMix): JsonValue {
  return {
    name,
    finish: finishName,
    thinnerPerFinish: jsonNumber(ratio.thinnerPerFinish),
    retarder_percent: jsonNumber(ratio.retarderFraction, 0.01),
    volumeSolids_percent: jsonNumber(volumeSolidsFraction, 0.01),
    cup: cup.cup.id,
    seconds: cup.seconds === null ? null : jsonNumber(cup.seconds),
    cupRead: isRead,
    pour_mL: { finish: jsonNumber(pour.finish.volume_m3, 1e-6), thinner: jsonNumber(pour.thinner.volume_m3, 1e-6), retarder: jsonNumber(pour.retarder.volume_m3, 1e-6), total: jsonNumber(pour.total.volume_m3, 1e-6) },
  };
}

function gunJson(gun: CardGun): JsonValue {
  return {
    setUp: gun.setUpName,
    distance_mm: jsonNumber(gun.distance_m, 1e-3),
    fanWidth_mm: jsonNumber(gun.fanWidth_m, 1e-3),
    speed_m_s: jsonNumber(gun.speed_m_s),
    overlap_percent: jsonNumber(gun.overlapFraction, 0.01),
    strokes: gun.strokeCount,
    cross: gun.isCross,
    target_um: jsonNumber(gun.target.thickness_m, 1e-6),
    targetFilm: gun.target.film,
  };
}
