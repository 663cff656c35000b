import type { Target } from '../verdict/target.ts';
import type { Change, Cure, Fault, Zone } from '../verdict/verdict.ts';
import { isInside, worstText } from './faultFigures.ts';
import { roundedText, shown, shownFluidRate, shownPercent, shownTemperature, shownTime, type UnitSystem } from './units.ts';
import { FAULT_PLURALS, PLACED_FAULTS, capitalised, listed, strokeWords } from './words.ts';

/** Said where changes were tried and none helped, and where there was nothing to try. */
export const NO_CURE = 'None known: no change tried by the model makes it better.';
export const NO_CURE_TRIED = 'None tried: without a cause there is nothing to change.';

/**
 * A tried cure in words: what to do otherwise, and what the film at the fault's place, the
 * fault's area and the share inside the limits then come to.
 */
export function cureText(fault: Fault, target: Target, system: UnitSystem): string {
  const { cure } = fault;
  if (cure === null) return fault.cause.kind === 'unknown' ? NO_CURE_TRIED : NO_CURE;
  return `${capitalised(changeText(cure.change, system))}: ${outcome(fault, cure, target, system)}. ${totals(fault, cure, system)}${sideEffects(cure)}`;
}

/** A change as a condition: `with no stop in stroke 5`. */
export function changeText(change: Change, system: UnitSystem): string {
  switch (change.kind) {
    case 'add-strokes':
      return `with ${strokeWords(change.strokes)} of the plan sprayed`;
    case 'no-stops':
      return `with no stop in ${strokeWords(change.strokes)}`;
    case 'even-speed':
      return `at an even ${shown(change.speed_m_s, 'speed', system)} in ${strokeWords(change.strokes)}`;
    case 'even-distance':
      return `with the gun held at ${shown(change.distance_m, 'length', system)} in ${strokeWords(change.strokes)}`;
    case 'square-gun':
      return `with the gun square to the panel in ${strokeWords(change.strokes)}`;
    case 'move-strokes':
      return `with ${listed(placings(change))}`;
    case 'trigger-past-edge':
      return `with the fluid on and off ${shown(change.lead_m, 'length', system)} past the edge in ${strokeWords(change.strokes)}`;
    case 'plan':
      return `with the plan at ${listed(planParts(change, system))}`;
    case 'fluid-rate':
      return `with the fluid set to ${shownFluidRate(change.rate_m3_s, system)}`;
    case 'thinner':
      return `with ${roundedText(change.thinnerPerFinish)} of thinner to one of finish`;
    case 'retarder':
      return `with retarder as ${shownPercent(change.retarderFraction)} of the thinner`;
    case 'warm-room':
      return `in the same air warmed to ${shownTemperature(change.temperature_K, system)}`;
    case 'wait':
      return `after a wait of ${shownTime(change.wait_s)}`;
  }
}

/** Strokes put on their planned lines, and strokes that lap the one before. */
function placings({ strokes, overlapFraction, anchored = [] }: Extract<Change, { kind: 'move-strokes' }>): string[] {
  const onLine = anchored.length === 0 ? [] : [`${strokeWords(anchored)} on ${anchored.length === 1 ? 'its planned line' : 'their planned lines'}`];
  const lapped = strokes.filter((index) => !anchored.includes(index));
  return lapped.length === 0 && onLine.length > 0 ? onLine : [...onLine, `${shownPercent(overlapFraction)} overlap at ${strokeWords(lapped)}`];
}

function planParts(change: Extract<Change, { kind: 'plan' }>, system: UnitSystem): string[] {
  const parts: string[] = [];
  if (change.overlapFraction !== undefined) parts.push(`${shownPercent(change.overlapFraction)} overlap`);
  if (change.speed_m_s !== undefined) parts.push(shown(change.speed_m_s, 'speed', system));
  if (change.distance_m !== undefined) parts.push(`${shown(change.distance_m, 'length', system)} distance`);
  if (change.firstStroke_m !== undefined) {
    parts.push(`the first stroke ${firstPlace(change.firstStroke_m, system)} the edge`);
  }
  if (change.lead_m !== undefined) parts.push(`the fluid on and off ${shown(change.lead_m, 'length', system)} past the edge`);
  return parts;
}

function firstPlace(inward_m: number, system: UnitSystem): string {
  if (Math.abs(inward_m) < 5e-4) return 'on';
  return `${shown(Math.abs(inward_m), 'length', system)} ${inward_m < 0 ? 'outside' : 'in from'}`;
}

function outcome(fault: Fault, cure: Cure, target: Target, system: UnitSystem): string {
  const { kind } = fault;
  const zone = fault.zones[0] as Zone;
  const { worst: was, limit } = zone;
  const there = `${worstText(kind, cure.worst, target, system)} there`;
  if (isInside(zone, cure.worst, target)) return `${there}, inside the limits`;
  const isStill = was < limit ? cure.worst < limit : cure.worst > limit;
  // The dew point is the limit, and the film's place against it has just been told.
  if (isStill && kind === 'blush') return `${there}, so still at fault`;
  if (isStill) return `${there}, still past the limit of ${worstText(kind, limit, target, system)}`;
  const isHeavy = cure.worst > target.thickness_m;
  const side = isHeavy ? 'over the upper' : 'under the lower';
  const other_m = target.thickness_m * (isHeavy ? target.maxFraction : target.minFraction);
  return `${there}, but ${side} limit of ${shown(other_m, 'film', system)} ${target.film}`;
}

function totals(fault: Fault, cure: Cure, system: UnitSystem): string {
  const [before, after] = [cure.areaBefore_m2, cure.areaAfter_m2].map((area) => shown(area, 'area', system)) as [string, string];
  return (
    `${capitalised(FAULT_PLURALS[fault.kind])} ${PLACED_FAULTS.has(fault.kind) ? 'goes' : 'go'} from ${before} to ${after} in all, ` +
    `the share of the panel inside the limits from ${shownPercent(cure.inTargetBefore)} to ${shownPercent(cure.inTargetAfter)}.`
  );
}

function sideEffects({ worsens }: Cure): string {
  return worsens.length === 0 ? '' : ` It makes ${listed(worsens.map((kind) => FAULT_PLURALS[kind]))} worse.`;
}
