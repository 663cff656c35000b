import type { Stroke } from '../stroke/stroke.ts';
import type { TravelChange, Fault } from '../verdict/verdict.ts';
import { anchoredOf, meantLead_m } from './changedStrokes.ts';
import { missingStrokes } from './missingStrokes.ts';
import { planTrials, type PlanCause } from './planTrials.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';

/** What to try against a fault, the likeliest first; nothing for a fault without a named cause, or where nobody can say what was meant. */
export function candidateChanges(fault: Fault, setting: CoatSetting, travel: CoatStrokes): TravelChange[] {
  return changesFor(fault, setting, travel).filter((change) => change.kind !== 'even-speed' || Number.isFinite(change.speed_m_s));
}

function changesFor(fault: Fault, setting: CoatSetting, travel: CoatStrokes): TravelChange[] {
  const { cause } = fault;
  const strokes = [...cause.strokes].sort((a, b) => a - b);
  const chief = travel.strokes[cause.strokes[0] ?? -1];
  switch (cause.kind) {
    case 'missing-stroke':
      return addedStrokes(strokes, setting, travel);
    case 'stop':
      return chief === undefined ? [] : [{ kind: 'no-stops', strokes }, evenSpeed(strokes, chief)];
    case 'speed':
      return chief === undefined ? [] : [evenSpeed(strokes, chief)];
    case 'distance':
      return chief === undefined ? [] : [evenDistance(strokes, chief), { kind: 'square-gun', strokes }];
    case 'angle':
      return chief === undefined ? [] : [{ kind: 'square-gun', strokes }, evenDistance(strokes, chief)];
    case 'overlap':
      return chief === undefined ? [] : [strokes, onward(chief, travel)].map((moved) => moveStrokes(moved, chief, setting, travel));
    case 'trigger':
      return [{ kind: 'trigger-past-edge', strokes, lead_m: meantLead_m(setting) }];
    case 'edge':
      return edgeChanges(chief, setting, travel);
    case 'plan-overlap':
    case 'plan-film':
    case 'plan-distance':
    case 'plan-lead':
    case 'plan-edge':
      return planChanges(cause.kind, fault, setting);
    case 'set-up':
    case 'plan-speed':
    case 'fluid':
    case 'thinner':
    case 'solvent':
    case 'air':
    case 'wait':
    case 'unknown':
      return [];
  }
}

/** The strokes that the fault misses; then every one that is missing, since its edges may need the next one too. */
function addedStrokes(strokes: readonly number[], setting: CoatSetting, travel: CoatStrokes): TravelChange[] {
  const all = [...new Set(missingStrokes(setting, travel).planned)];
  return (all.length > strokes.length ? [strokes, all] : [strokes]).map((added) => ({ kind: 'add-strokes', strokes: added }));
}

/** The stroke that left its line goes back, alone or with its whole pass. */
function edgeChanges(chief: Stroke | undefined, setting: CoatSetting, travel: CoatStrokes): TravelChange[] {
  if (chief === undefined) return [];
  return [[chief.index], wholePass(chief, travel)].map((strokes) => moveStrokes(strokes, chief, setting, travel));
}

/** A stroke and those after it in its pass: they followed it, so they move with it. */
function onward(chief: Stroke, travel: CoatStrokes): number[] {
  return wholePass(chief, travel).filter((index) => index >= chief.index);
}

function wholePass({ pass }: Stroke, travel: CoatStrokes): number[] {
  return travel.strokes.filter((stroke) => stroke.pass === pass).map(({ index }) => index);
}

function planChanges(name: PlanCause, fault: Fault, setting: CoatSetting): TravelChange[] {
  const trials = planTrials(setting, fault.kind === 'dry-spray');
  const first = trials.filter((trial) => trial.name === name);
  const rest = trials.filter((trial) => trial.name !== name);
  return [...first, ...(name === 'plan-edge' || name === 'plan-lead' ? [] : rest)].map((trial) => trial.change);
}

function evenSpeed(strokes: readonly number[], { meant }: Stroke): TravelChange {
  return { kind: 'even-speed', strokes, speed_m_s: meant.speed_m_s };
}

function evenDistance(strokes: readonly number[], { meant }: Stroke): TravelChange {
  return { kind: 'even-distance', strokes, distance_m: meant.distance_m };
}

function moveStrokes(strokes: readonly number[], { meant }: Stroke, { plan }: CoatSetting, travel: CoatStrokes): TravelChange {
  const overlapFraction = Number.isFinite(meant.overlapFraction) ? meant.overlapFraction : plan.overlapFraction;
  const anchored = anchoredOf(travel, strokes).filter((index) => travel.strokes[index]?.meant.source === 'plan');
  return { kind: 'move-strokes', strokes, overlapFraction, ...(anchored.length === 0 ? {} : { anchored }) };
}
