import { isLifeFault } from './judged.ts';
import type { Target } from './target.ts';
import type { Cause, CauseKind, Fault, Zone } from './verdict.ts';

/** A zone with its cause named. */
export interface CausedZone {
  readonly zone: Zone;
  readonly cause: Cause;
}

/** A film that is colder than the dew point by this counts as wholly at fault, K. Assumed: blush is then plain to see. */
export const BLUSH_SCALE_K = 5;

/** Causes that lie with the plan or the gun and so with no stroke in particular. */
const GENERAL: ReadonlySet<CauseKind> = new Set([
  'plan-edge',
  'plan-lead',
  'plan-overlap',
  'plan-film',
  'plan-distance',
  'set-up',
  'plan-speed',
  'fluid',
  'thinner',
  'solvent',
  'air',
  'wait',
  'unknown',
]);

/** Whether a cause lies with single strokes of the hand. */
export function isLocal(kind: CauseKind): boolean {
  return !GENERAL.has(kind);
}

/**
 * How bad a zone is, for the order of the list: area times how far past the limit, as a share of
 * the target (film faults), of the film (dry spray) or of the limit (faults of the film's life; a
 * blush as a share of `BLUSH_SCALE_K`), m². A holiday counts from the thin lap's limit,
 * so that a bare place goes before a thin one of its size.
 */
export function severity_m2({ kind, area_m2, worst, limit, margin }: Zone, target: Target): number {
  if (kind === 'dry-spray') return area_m2 * Math.max(0, margin);
  if (isLifeFault(kind)) return area_m2 * Math.max(0, kind === 'blush' ? margin / BLUSH_SCALE_K : margin / limit);
  const past_m = kind === 'holiday' ? target.minFraction * target.thickness_m - worst : margin;
  return (area_m2 * Math.max(0, past_m)) / target.thickness_m;
}

/**
 * Zones of one kind with one cause, put together; for a local cause also with one chief stroke
 * (the first of `cause.strokes`). Zones and faults stand worst first. A fault's cause is that of
 * its worst zone, with every stroke that any of its zones names.
 */
export function groupFaults(caused: readonly CausedZone[], target: Target): Fault[] {
  const groups = new Map<string, CausedZone[]>();
  for (const one of caused) {
    const { kind, strokes } = one.cause;
    const key = [one.zone.kind, kind, isLocal(kind) ? (strokes[0] ?? '') : ''].join(' ');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return [...groups.values()]
    .map((group) => faultOf(group, target))
    .sort((a, b) => faultSeverity_m2(b, target) - faultSeverity_m2(a, target));
}

function faultOf(group: readonly CausedZone[], target: Target): Fault {
  const sorted = [...group].sort((a, b) => severity_m2(b.zone, target) - severity_m2(a.zone, target));
  const worst = sorted[0] as CausedZone;
  const strokes = [...new Set(sorted.flatMap((one) => one.cause.strokes))];
  return {
    kind: worst.zone.kind,
    zones: sorted.map((one) => one.zone),
    area_m2: sorted.reduce((sum, one) => sum + one.zone.area_m2, 0),
    cause: { ...worst.cause, strokes },
    cure: null,
  };
}

function faultSeverity_m2(fault: Fault, target: Target): number {
  return fault.zones.reduce((sum, zone) => sum + severity_m2(zone, target), 0);
}
