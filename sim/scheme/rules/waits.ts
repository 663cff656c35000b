import { CIRCULAR_WAITS_H } from '../../materials/circularWaits.ts';
import { findingAt, type SchemeFinding } from '../finding.ts';
import type { PlannedScheme, PlannedStep } from '../planned.ts';
import { coatsOf, isDopedFabric, wholeCoats, type CoatStep } from './coatsOf.ts';

const HOUR_S = 3600;
const BETWEEN_ALUMINIUM_S = CIRCULAR_WAITS_H.betweenAluminium * HOUR_S;
const BEFORE_SANDING_ALUMINIUM_S = CIRCULAR_WAITS_H.beforeSanding * HOUR_S;
/** At 70 °F; from memory, AC 43.13-1B 2-21c. */
const BEFORE_TAPES_S = 2 * HOUR_S;
const CLEAR_BEFORE_TAPES = 2;
/** Common practice: overnight. */
const BEFORE_MASK_S = 12 * HOUR_S;
/** Common practice: about a day. */
const MOST_TAPE_S = 24 * HOUR_S;

/**
 * From the end of one step to the start of a later one: waits times `waitRatio`, and work between.
 * No clock: the nights between working days only make it longer.
 */
export function elapsed_s(steps: readonly PlannedStep[], from: number, to: number, waitRatio: number): number {
  return steps.slice(from, to).reduce((sum, { wait_s, work_s }, k) => sum + wait_s * waitRatio + (k === 0 ? 0 : work_s), 0);
}

/**
 * Waits that are too short or too long. Stated waits are meant at 70 °F.
 * @param waitRatio how much longer they are in today's air, by the trade's rule.
 */
export function waitFindings(plan: PlannedScheme, waitRatio: number): SchemeFinding[] {
  return [
    ...coatsOf(plan).flatMap((each) => [...dryingFindings(plan, each, waitRatio), ...lateFindings(plan, each, waitRatio), ...(isDopedFabric(plan) ? aluminiumWaits(plan, each) : [])]),
    ...maskFindings(plan, waitRatio),
    ...(isDopedFabric(plan) ? tapeFindings(plan) : []),
  ];
}

/** A coat over one that is not dry, and work on a film that still takes a fingerprint. */
function dryingFindings({ steps }: PlannedScheme, { step, coat, stepIndex }: CoatStep, waitRatio: number): SchemeFinding[] {
  const nextCoat = steps.findIndex((each, i) => i > stepIndex && each.coat !== null);
  const worked = steps.findIndex(({ spec }, i) => i > stepIndex && (spec.kind === 'sand' || spec.kind === 'mask' || spec.kind === 'fix'));
  const key = 'wait_h';
  const found: SchemeFinding[] = [];
  if (worked >= 0 && (nextCoat < 0 || worked < nextCoat) && coat.touchDry_s !== null) {
    const wait_s = elapsed_s(steps, stepIndex, worked, waitRatio);
    const { spec } = steps[worked] as PlannedStep;
    if (wait_s < coat.touchDry_s) found.push(findingAt(step, stepIndex, 'stop', { rule: 'touch-wet', next: spec.name, nextKind: spec.kind, wait_s, touchDry_s: coat.touchDry_s }, key));
  }
  if (nextCoat < 0) return found;
  const next = (steps[nextCoat] as PlannedStep).spec.name;
  const wait_s = elapsed_s(steps, stepIndex, nextCoat, waitRatio);
  if (coat.touchDry_s === null || coat.recoat_s === null) found.push(findingAt(step, stepIndex, 'doubt', { rule: 'never-dry', next }, key));
  else if (wait_s < coat.touchDry_s) found.push(findingAt(step, stepIndex, 'stop', { rule: 'wet-beneath', next, wait_s, touchDry_s: coat.touchDry_s }, key));
  else if (wait_s < coat.recoat_s) found.push(findingAt(step, stepIndex, 'doubt', { rule: 'wait-short', next, wait_s, recoat_s: coat.recoat_s }, key));
  return found;
}

/** A next step that may begin no sooner than its own latest. */
function lateFindings({ steps }: PlannedScheme, { step, coat, stepIndex }: CoatStep, waitRatio: number): SchemeFinding[] {
  const next = steps[stepIndex + 1];
  if (step.latest_s === null || next === undefined) return [];
  const earliest_s = Math.max(step.wait_s * waitRatio, next.coat === null ? 0 : (coat.recoat_s ?? 0));
  return earliest_s > step.latest_s ? [findingAt(step, stepIndex, 'stop', { rule: 'too-late', earliest_s, latest_s: step.latest_s }, 'latest_h')] : [];
}

/** The circular's own waits after aluminium, at 70 °F as they are stated. */
function aluminiumWaits({ steps }: PlannedScheme, { step, coat, stepIndex }: CoatStep): SchemeFinding[] {
  if (coat.layer !== 'aluminium') return [];
  const next = steps.findIndex(({ spec }, i) => i > stepIndex && (spec.kind === 'sand' || spec.kind === 'brush' || spec.kind === 'spray'));
  const spec = steps[next]?.spec;
  if (spec === undefined) return [];
  const wait_s = elapsed_s(steps, stepIndex, next, 1);
  const least_s = spec.kind === 'sand' ? BEFORE_SANDING_ALUMINIUM_S : BETWEEN_ALUMINIUM_S;
  return wait_s < least_s ? [findingAt(step, stepIndex, 'doubt', { rule: 'trade-wait', next: spec.name, wait_s, least_s }, 'wait_h')] : [];
}

/** Tape on a film that is too fresh, and tape that stays too long. */
function maskFindings(plan: PlannedScheme, waitRatio: number): SchemeFinding[] {
  const { steps } = plan;
  return steps.flatMap((step, k) => {
    if (step.spec.kind !== 'mask') return [];
    const under = coatsOf(plan).filter(({ stepIndex }) => stepIndex < k).at(-1);
    const off = steps.findIndex(({ spec }, i) => i > k && spec.kind === 'unmask');
    const dried_s = under === undefined ? Infinity : elapsed_s(steps, under.stepIndex, k, waitRatio);
    const stays_s = off < 0 ? 0 : elapsed_s(steps, k, off, waitRatio);
    return [
      ...(dried_s < BEFORE_MASK_S ? [findingAt(step, k, 'doubt', { rule: 'mask-early', wait_s: dried_s, least_s: BEFORE_MASK_S })] : []),
      ...(stays_s > MOST_TAPE_S ? [findingAt(step, k, 'doubt', { rule: 'tape-long', wait_s: stays_s, most_s: MOST_TAPE_S })] : []),
    ];
  });
}

/** Tapes, patches, rings and grommets on cloth that is not yet taut. Lacing goes before them and is left out. */
function tapeFindings(plan: PlannedScheme): SchemeFinding[] {
  const clear = wholeCoats(plan, 'clear');
  return plan.steps.flatMap((step, k) => {
    if (step.spec.kind !== 'fix' || step.spec.what === 'lacing') return [];
    const beneath = clear.filter(({ stepIndex }) => stepIndex < k);
    const last = beneath.at(-1);
    const { what } = step.spec;
    if (last === undefined) return [findingAt(step, k, 'stop', { rule: 'tapes-on-bare-cloth', what })];
    const wait_s = elapsed_s(plan.steps, last.stepIndex, k, 1);
    return beneath.length < CLEAR_BEFORE_TAPES || wait_s < BEFORE_TAPES_S
      ? [findingAt(step, k, 'doubt', { rule: 'tapes-before-taut', what, clear: beneath.length, wait_s, least_s: BEFORE_TAPES_S })]
      : [];
  });
}
