import { cellAt } from '../base/grid.ts';
import { LEAST_EXPLAINED } from '../verdict/attribution.ts';
import { inTargetFraction } from '../verdict/figures.ts';
import { LAID_KINDS, LIFE_KINDS, marginOf } from '../verdict/judged.ts';
import { findLifeZones, lifeValues, type JudgedLife } from '../verdict/lifeMaps.ts';
import type { Cause, Change, ConditionChange, Cure, Fault, FaultKind, LifeFaultKind, Zone } from '../verdict/verdict.ts';
import { findZones } from '../verdict/zones.ts';
import { candidateChanges } from './candidates.ts';
import { changedStrokes } from './changedStrokes.ts';
import { runLife, type CoatLife, type LifeOptions } from './coatLife.ts';
import { isWorse, noAreas } from './cures.ts';
import { jobWithCondition, lifeTrials, type LifeTrial } from './lifeTrials.ts';
import { layCoat, type Travel } from './lay.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';
import { settleCoat } from './settle.ts';
import { stopIfAsked } from './stop.ts';
import { strokesOf } from './strokes.ts';

/** Coats sprayed and watched again for one verdict, at most. */
export const MOST_LIFE_RERUNS = 12;

/** Side of a cell on which cures are tried, at least, mm: four times as coarse costs a sixteenth. */
const TRIAL_CELL_MM = 4;

/** Share of the fault's area that must go for the search to end. */
const GONE_SHARE = 0.9;
/** A cure must take away at least this share of the excess at the fault's place. */
const LEAST_HELP = 0.25;

/** Zones of one kind that may have one cause, and the laid fault on which they lie, where there is one. */
export interface LifeFinding {
  readonly kind: LifeFaultKind;
  readonly zones: readonly Zone[];
  readonly laid: Fault | null;
}

/** Faults with causes and cures, and how many were not tried for want of runs. */
export interface LifeCured {
  readonly faults: readonly Fault[];
  readonly untried: number;
}

interface Outcome {
  readonly life: JudgedLife;
  readonly setting: CoatSetting;
  readonly area_m2: Readonly<Record<FaultKind, number>>;
  readonly inTarget: number;
}

/**
 * Names causes of faults of the film's life and tries cures, by spraying the coat again with one thing
 * changed and watching its film as long.
 *
 * Where the fault lies on a heavy or thin place of the film as laid, that place's cause is its cause, and
 * what would mend it is tried first. Otherwise the trade's changes are tried in their order; the first
 * that takes the fault away is its cure and says its cause, or else the one that helps most. Trials
 * run on cells of `TRIAL_CELL_MM`, the coat as it was among them, so that like is compared with like.
 */
export function tryLifeCures(setting: CoatSetting, strokes: CoatStrokes, findings: readonly LifeFinding[], options: LifeOptions): LifeCured {
  const { job, coat } = setting;
  const cell_mm = Math.max(TRIAL_CELL_MM, setting.panelGrid.grid.cellSize_m * 1e3);
  const coarse = settleCoat(job, coat.id, { cell_mm });
  const before = outcomeOf(coarse, strokes, options);
  const tried = new Map<string, Outcome>();
  let untried = 0;
  const outcomeWith = (change: Change): Outcome | null => {
    const key = JSON.stringify(change);
    const known = tried.get(key);
    if (known !== undefined) return known;
    if (tried.size >= MOST_LIFE_RERUNS) return null;
    stopIfAsked(options.shouldStop);
    const changed = withChange(coarse, strokes, change, cell_mm);
    const outcome = outcomeOf(changed.setting, changed.travel, options);
    tried.set(key, outcome);
    return outcome;
  };
  const faults = findings.map((finding): Fault => {
    let best: { readonly cure: Cure; readonly trial: LifeTrial } | null = null;
    for (const trial of trialsFor(finding, coarse, strokes)) {
      const after = outcomeWith(trial.change);
      if (after === null) {
        untried++;
        break;
      }
      const cure = cureOf(finding, trial.change, before, after);
      if (!helps(finding, cure, coarse)) continue;
      if (best === null || isBetter(cure, best.cure)) best = { cure, trial };
      if (cure.worsens.length === 0 && isGone(finding, cure)) break;
    }
    return faultOf(finding, best, coarse);
  });
  return { faults, untried };
}

/** A change of travel needs no stroke that was never sprayed: those are put right by the film's own cures. */
function trialsFor(finding: LifeFinding, setting: CoatSetting, strokes: CoatStrokes): LifeTrial[] {
  const { laid } = finding;
  const travel = laid === null ? [] : candidateChanges(laid, setting, strokes).filter((change) => change.kind !== 'add-strokes' && change.kind !== 'plan');
  const byHand = travel.map((change): LifeTrial => ({ change, cause: (laid as Fault).cause }));
  return [...byHand, ...lifeTrials(finding.kind, setting)];
}

function withChange(setting: CoatSetting, strokes: CoatStrokes, change: Change, cell_mm: number): { readonly setting: CoatSetting; readonly travel: Travel } {
  if (isCondition(change)) {
    const changed = settleCoat(jobWithCondition(setting, change), setting.coat.id, { cell_mm });
    return { setting: changed, travel: strokes.source === 'plan' ? strokesOf(changed) : strokes };
  }
  return { setting, travel: change.kind === 'add-strokes' ? strokes : changedStrokes(setting, strokes, change) };
}

function isCondition(change: Change): change is ConditionChange {
  const kinds: readonly Change['kind'][] = ['fluid-rate', 'thinner', 'retarder', 'warm-room', 'wait'] satisfies ConditionChange['kind'][];
  return kinds.includes(change.kind);
}

function outcomeOf(setting: CoatSetting, travel: Travel, options: LifeOptions): Outcome {
  const { film } = layCoat(setting, travel);
  const life = judgedLifeOf(runLife(setting, travel, withoutTimes(options)));
  const area_m2 = noAreas();
  const { panelGrid, target } = setting;
  for (const zone of [...findZones(film, panelGrid, target).zones, ...findLifeZones(life, panelGrid, target).zones]) area_m2[zone.kind] += zone.area_m2;
  return { life, setting, area_m2, inTarget: inTargetFraction(film, panelGrid, target) };
}

function withoutTimes({ shouldStop, until_s, recordings }: LifeOptions): LifeOptions {
  return { ...(recordings === undefined ? {} : { recordings }), ...(shouldStop === undefined ? {} : { shouldStop }), ...(until_s === undefined ? {} : { until_s }) };
}

/** A life as the verdict reads it. */
export function judgedLifeOf({ end, peel_m, law }: Pick<CoatLife, 'end' | 'peel_m' | 'law'>): JudgedLife {
  return { moment: end, peel_m, gravityX_m_s2: law.gravityX_m_s2, gravityY_m_s2: law.gravityY_m_s2 };
}

function cureOf({ kind, zones }: LifeFinding, change: Change, before: Outcome, after: Outcome): Cure {
  const [x, y] = (zones[0] as Zone).at_m;
  const cell = cellAt(after.setting.panelGrid.grid, x, y);
  const worst = lifeValues(kind, after.life, after.setting.target)[cell] as number;
  return {
    change,
    worst: Number.isFinite(worst) ? worst : marginlessValue(kind),
    areaBefore_m2: before.area_m2[kind],
    areaAfter_m2: after.area_m2[kind],
    inTargetBefore: before.inTarget,
    inTargetAfter: after.inTarget,
    worsens: [...LAID_KINDS, ...LIFE_KINDS].filter((other) => other !== kind && isWorse(before.area_m2[other], after.area_m2[other])),
  };
}

/** Where the change leaves no film at the place there is nothing to be colder than the dew point. */
function marginlessValue(kind: LifeFaultKind): number {
  return kind === 'blush' ? 0 : NaN;
}

function helps({ kind, zones }: LifeFinding, cure: Cure, { target }: CoatSetting): boolean {
  const was = (zones[0] as Zone).margin;
  return marginOf(kind, cure.worst, target) <= (1 - LEAST_HELP) * was && cure.areaAfter_m2 <= cure.areaBefore_m2;
}

function isGone({ zones }: LifeFinding, cure: Cure): boolean {
  const area_m2 = zones.reduce((sum, zone) => sum + zone.area_m2, 0);
  return cure.areaBefore_m2 - cure.areaAfter_m2 >= GONE_SHARE * Math.min(area_m2, cure.areaBefore_m2);
}

function isBetter(cure: Cure, than: Cure): boolean {
  if (cure.worsens.length !== than.worsens.length) return cure.worsens.length < than.worsens.length;
  return cure.areaAfter_m2 < than.areaAfter_m2;
}

function faultOf({ kind, zones, laid }: LifeFinding, best: { readonly cure: Cure; readonly trial: LifeTrial } | null, { target }: CoatSetting): Fault {
  return {
    kind,
    zones,
    area_m2: zones.reduce((sum, zone) => sum + zone.area_m2, 0),
    cause: causeOf(zones[0] as Zone, laid, best, target),
    cure: best?.cure ?? null,
  };
}

function causeOf(worst: Zone, laid: Fault | null, best: { readonly cure: Cure; readonly trial: LifeTrial } | null, target: CoatSetting['target']): Cause {
  if (laid !== null && laid.cause.kind !== 'unknown') return laid.cause;
  if (best === null) return { kind: 'unknown', strokes: [], found: NaN, meant: NaN, unit: '', explains: 0 };
  const left = Math.max(0, marginOf(worst.kind, best.cure.worst, target));
  const explains = Math.min(1, 1 - left / worst.margin);
  if (explains < LEAST_EXPLAINED) return { kind: 'unknown', strokes: [], found: NaN, meant: NaN, unit: '', explains: 0 };
  return { ...best.trial.cause, strokes: [], explains };
}

