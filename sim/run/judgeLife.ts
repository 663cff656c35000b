import type { Warning } from '../base/errors.ts';
import { severity_m2 } from '../verdict/faults.ts';
import { JUDGED_COVER } from '../verdict/judged.ts';
import { findLifeZones } from '../verdict/lifeMaps.ts';
import type { LifeFigures, LifeVerdict } from '../verdict/lifeVerdict.ts';
import type { CauseKind, Fault, LaidFaultKind, LifeFaultKind, Zone } from '../verdict/verdict.ts';
import type { CoatLife, LifeOptions } from './coatLife.ts';
import { judgedLifeOf, tryLifeCures, type LifeFinding } from './lifeCures.ts';
import type { CoatStrokes } from './result.ts';

/** How a film's life is judged. */
export interface JudgeLifeOptions extends Pick<LifeOptions, 'until_s' | 'recordings' | 'shouldStop'> {
  /** Whether causes are sought and cures tried, by spraying the coat again; true where not given. */
  readonly cures?: boolean;
  /** Faults of the film as laid, with their causes: a run below a heavy spot has the heavy spot's cause. */
  readonly laidFaults?: readonly Fault[];
}

/** The faults of the film as laid that bring about a fault of its life. */
const COMES_OF: Readonly<Record<LifeFaultKind, readonly LaidFaultKind[]>> = {
  run: ['heavy-spot'],
  'orange-peel': ['holiday', 'thin-lap', 'dry-spray'],
  'dry-lap': [],
  blush: ['heavy-spot'],
  blister: ['heavy-spot'],
  pinhole: ['heavy-spot'],
  'over-thick': ['heavy-spot'],
};

/** Judges what a film went through: figures, zones of each fault with cause and tried cure, and doubts. */
export function judgeLife(life: CoatLife, strokes: CoatStrokes, options: JudgeLifeOptions = {}): LifeVerdict {
  const { setting } = life;
  const { zones, warnings } = findLifeZones(judgedLifeOf(life), setting.panelGrid, setting.target);
  const findings = findingsOf(zones, options.laidFaults ?? []);
  const cured = options.cures === false ? { faults: findings.map(untried), untried: 0 } : findings.length === 0 ? { faults: [], untried: 0 } : tryLifeCures(setting, strokes, findings, options);
  const worst = (fault: Fault) => fault.zones.reduce((sum, zone) => sum + severity_m2(zone, setting.target), 0);
  return {
    figures: figuresOf(life),
    faults: [...cured.faults].sort((a, b) => worst(b) - worst(a)),
    warnings: [...warnings, ...untriedWarnings(cured.untried), ...watchWarnings(life)],
  };
}

/** Zones of one kind that lie on the same fault of the film as laid, or on none, are one finding; worst zone first. */
function findingsOf(zones: readonly Zone[], laidFaults: readonly Fault[]): LifeFinding[] {
  const groups = new Map<string, { kind: LifeFaultKind; zones: Zone[]; laid: Fault | null }>();
  for (const zone of zones) {
    const kind = zone.kind as LifeFaultKind;
    const index = laidFaultOf(zone, zones, laidFaults);
    const key = `${kind} ${index}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { kind, zones: [zone], laid: laidFaults[index] ?? null });
    else group.zones.push(zone);
  }
  return [...groups.values()].map((group) => ({ ...group, zones: group.zones.sort((a, b) => b.area_m2 * b.margin - a.area_m2 * a.margin) }));
}

/** Place in the list of the laid fault that a zone comes of, -1 for none. What a run piled up comes of what made it run. */
function laidFaultOf(zone: Zone, zones: readonly Zone[], laidFaults: readonly Fault[]): number {
  const kind = zone.kind as LifeFaultKind;
  const own = laidFaults.findIndex((fault) => COMES_OF[kind].some((of) => of === fault.kind) && fault.zones.some((one) => touches(zone, one)));
  if (own >= 0 || kind === 'run') return own;
  const run = PILED_UP.includes(kind) ? zones.find((one) => one.kind === 'run' && touches(zone, one)) : undefined;
  return run === undefined ? -1 : laidFaultOf(run, zones, laidFaults);
}

/** Faults of too much film, which a run carries to where none was laid. */
const PILED_UP: readonly LifeFaultKind[] = ['over-thick', 'pinhole'];

/** Whether a fault of the film's life lies on a zone of the film as laid; a run also where it starts there. */
function touches(life: Zone, laid: Zone): boolean {
  const own = new Set(laid.cells);
  if (life.cells.some((cell) => own.has(cell))) return true;
  if (life.run === undefined) return false;
  const [left, bottom, right, top] = laid.box_m;
  const [x, y] = life.run.start_m;
  return x >= left && x <= right && y >= bottom && y <= top;
}

function untried({ kind, zones, laid }: LifeFinding): Fault {
  const unknown = { kind: 'unknown' as CauseKind, strokes: [], found: NaN, meant: NaN, unit: '' as const, explains: NaN };
  return { kind, zones, area_m2: zones.reduce((sum, zone) => sum + zone.area_m2, 0), cause: laid?.cause ?? unknown, cure: null };
}

function figuresOf({ end, setting, sprayed_s, touchDry_s, recoat_s, peel_m }: CoatLife): LifeFigures {
  const { film } = end;
  const { cover } = setting.panelGrid;
  let covered = 0;
  let ripple = 0;
  let dry = 0;
  let longestRun_m = 0;
  let margin_K = Infinity;
  for (let cell = 0; cell < cover.length; cell++) {
    const share = cover[cell] as number;
    if (share < JUDGED_COVER) continue;
    covered += share;
    ripple += share * (peel_m[cell] as number);
    dry += share * (end.dry_m[cell] as number);
    longestRun_m = Math.max(longestRun_m, film.run_m[cell] as number);
    margin_K = Math.min(margin_K, film.margin_K[cell] as number);
  }
  const { account } = film;
  return {
    sprayed_s,
    watched_s: end.time_s,
    touchDry_s,
    recoat_s,
    longestRun_m,
    ranOff_m3: account.ranOffSolids_m3 + account.ranOffFast_m3 + account.ranOffSlow_m3,
    peel_m: covered > 0 ? ripple / covered : 0,
    coldest_K: Number.isFinite(margin_K) ? margin_K + setting.air.dewPoint_K : NaN,
    blushMargin_K: Number.isFinite(margin_K) ? margin_K : NaN,
    dry_m: covered > 0 ? dry / covered : 0,
    weight_kg_m2: covered > 0 ? (dry / covered) * setting.mix.finish.solidsDensity_kg_m3.value : 0,
    evaporated_m3: account.evaporatedFast_m3 + account.evaporatedSlow_m3,
  };
}

function untriedWarnings(count: number): Warning[] {
  if (count === 0) return [];
  const text = `The coat was sprayed and watched again as often as is allowed for trying cures; ${count} ${count === 1 ? 'fault was' : 'faults were'} left with fewer trials. Mend the worst first and judge again`;
  return [{ code: 'model-limit', text, place: {} }];
}

/** What was not seen because the watch ended first. */
function watchWarnings({ touchDry_s, end }: CoatLife): Warning[] {
  if (touchDry_s !== null || !(end.film.account.landedSolids_m3 > 0)) return [];
  const text = `The film was watched for ${Math.round(end.time_s)} s and had not set by then: what it still runs or blushes is not judged; watch it longer`;
  return [{ code: 'model-limit', text, place: {} }];
}
