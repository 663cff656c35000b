import type { Cause, Fault, FaultKind } from '../verdict/verdict.ts';
import { roundedText, shown, shownAngle, shownFluidRate, shownPercent, shownTemperature, shownTime, type UnitSystem } from './units.ts';
import { capitalised, strokeWords } from './words.ts';

/**
 * A cause in one sentence: which strokes, what was found there, what was meant. Strokes are
 * numbered from 1. Where the model names no cause, it says so.
 */
export function causeText({ kind, cause }: Pick<Fault, 'kind' | 'cause'>, system: UnitSystem): string {
  return `${capitalised(causeClause(kind, cause, system))}${explained(cause)}.`;
}

/** Left out where it adds nothing: nothing named, or the whole of it. */
function explained({ kind, explains }: Cause): string {
  if (kind === 'unknown' || !(explains > 0) || explains >= 0.95) return '';
  return `; that explains about ${shownPercent(explains)} of it`;
}

function causeClause(fault: FaultKind, cause: Cause, system: UnitSystem): string {
  const who = strokeWords(cause.strokes);
  const found = figure(cause, cause.found, system);
  switch (cause.kind) {
    case 'missing-stroke':
      return `${who} of the plan ${cause.strokes.length === 1 ? 'was' : 'were'} not sprayed${cause.found > 0 ? ' all along' : ''}`;
    case 'stop':
      return `${who} stood still${found === '' ? '' : ` for ${found}`} with the fluid on`;
    case 'speed':
      return `${who} went ${sided(cause, 'too fast', 'too slow', 'unevenly')} here${foundAndMeant(cause, system)}`;
    case 'distance':
      return `the gun was ${sided(cause, 'too far off', 'too close', 'at the wrong distance')} in ${who}${foundAndMeant(cause, system)}`;
    case 'angle':
      return `the gun was not square to the panel in ${who}${foundAndMeant(cause, system, ' off square')}`;
    case 'overlap':
      return `the lap at ${who} is too ${fault === 'heavy-spot' ? 'wide' : 'narrow'} here${foundAndMeant(cause, system, " of the fan's width")}`;
    case 'trigger':
      return `the trigger of ${who} worked ${edgePlace(cause, system)}${edgeMeant(cause, system)}`;
    case 'edge':
      return `the edge is not filled by ${who}${edgeLines(cause, system)}`;
    case 'plan-edge':
      return `the plan itself: the edge is not filled${planEdge(cause, system)}`;
    case 'plan-lead':
      return `the plan itself: the fluid comes on and goes off ${found === '' ? 'too near' : `${found} past`} the edge${wanted(cause, system)}`;
    case 'plan-overlap':
      return `the plan itself: strokes${found === '' ? '' : ` at ${found} overlap`} do not lay an even film with this fan${wanted(cause, system)}`;
    case 'plan-film':
      return `the plan itself: its mean film is not the target's${foundAndMeant(cause, system)}`;
    case 'plan-distance':
      return `the plan itself: a gun ${found === '' ? 'held like this' : `at ${found}`} ${fault === 'dry-spray' ? 'lets the drops dry too far' : 'is off the distance of its fan'}${wanted(cause, system)}`;
    case 'plan-speed':
      return `the plan itself: at ${found} it lays ${sided(cause, 'less', 'more', 'another film')} than this film ${cause.found > cause.meant ? 'needs' : 'can bear'}${wanted(cause, system)}`;
    case 'fluid':
      return `${sided(cause, 'more', 'less', 'other')} liquid leaves the gun than this film ${cause.found < cause.meant ? 'needs' : 'can hold'}${wanted(cause, system)}`;
    case 'thinner':
      return `the mix is thinned too ${sided(cause, 'much', 'little', 'much or too little')}: ${found} of thinner to one of finish${wanted(cause, system)}`;
    case 'solvent':
      return `the thinner leaves too fast${Number.isFinite(cause.meant) ? `; with ${figure(cause, cause.meant, system)} of it retarder it does not` : ''}`;
    case 'air':
      return `the air of the room, at ${found}${wanted(cause, system)}`;
    case 'wait':
      return `the coat beneath had stood for only ${found}${wanted(cause, system)}`;
    case 'set-up':
      return 'the gun set-up: no way of moving this fan keeps the film inside the limits';
    case 'unknown':
      return unknownClause(cause);
  }
}

/** Says no more than is known: nothing sprayed there, nothing found, or nothing sought. */
function unknownClause({ strokes, explains }: Cause): string {
  if (strokes.length > 0) return `no single cause is found; ${strokeWords(strokes)} ${strokes.length === 1 ? 'reaches' : 'reach'} it`;
  return explains === 0 ? 'no stroke laid film there' : 'no cause was sought: worse zones went before it';
}

/** `: 0.5 m/s, 0.3 m/s was meant`, without what has no figure. */
function foundAndMeant(cause: Cause, system: UnitSystem, behind = ''): string {
  const found = figure(cause, cause.found, system);
  const meant = figure(cause, cause.meant, system);
  const parts = [found === '' ? '' : found + behind, meant === '' ? '' : `${meant} was meant`];
  const known = parts.filter((part) => part !== '');
  return known.length === 0 ? '' : `: ${known.join(', ')}`;
}

/** What a plan should have instead, where that has a figure. */
function wanted(cause: Cause, system: UnitSystem): string {
  return Number.isFinite(cause.meant) ? `; ${figure(cause, cause.meant, system)} does better` : '';
}

/** One word for a figure above what was meant, one for below, one for where that is not known. */
function sided({ found, meant }: Cause, above: string, below: string, otherwise: string): string {
  if (found > meant) return above;
  return found < meant ? below : otherwise;
}

/** A figure of a cause in the reader's unit; empty where it has none. */
function figure(cause: Cause, value: number, system: UnitSystem): string {
  if (!Number.isFinite(value)) return '';
  switch (cause.unit) {
    case 'm':
      return shown(value, cause.kind === 'plan-film' ? 'film' : 'length', system);
    case 'm/s':
      return shown(value, 'speed', system);
    case 's':
      return shownTime(value);
    case 'rad':
      return shownAngle(value);
    case 'fraction':
      return shownPercent(value);
    case 'K':
      return shownTemperature(value, system);
    case 'm3/s':
      return shownFluidRate(value, system);
    case 'ratio':
      return roundedText(value);
    case '':
      return String(value);
  }
}

/** A trigger point is positive outside the panel's edge and negative inside it. */
function edgePlace({ found, unit }: Cause, system: UnitSystem): string {
  if (unit !== 'm' || !Number.isFinite(found)) return 'too late or too early at the edge';
  return `${shown(Math.abs(found), 'length', system)} ${found < 0 ? 'inside' : 'outside'} the edge`;
}

function edgeMeant({ meant, unit }: Cause, system: UnitSystem): string {
  if (unit !== 'm' || !Number.isFinite(meant)) return '';
  return `, ${shown(Math.abs(meant), 'length', system)} ${meant < 0 ? 'inside' : 'outside'} was meant`;
}

/** A stroke's line is positive inside the panel's edge and negative outside it. */
function edgeLines({ found, meant }: Cause, system: UnitSystem): string {
  if (!Number.isFinite(found)) return '';
  const wasMeant = Number.isFinite(meant) ? `, ${edgeLine(meant, system)} was meant` : '';
  return `: its line runs ${edgeLine(found, system)}${wasMeant}`;
}

function planEdge({ found, meant }: Cause, system: UnitSystem): string {
  if (!Number.isFinite(found)) return '';
  return `, its first line runs ${edgeLine(found, system)}${Number.isFinite(meant) ? `; ${edgeLine(meant, system)} does better` : ''}`;
}

function edgeLine(inward_m: number, system: UnitSystem): string {
  if (Math.abs(inward_m) < 5e-4) return 'on the edge';
  return `${shown(Math.abs(inward_m), 'length', system)} ${inward_m < 0 ? 'outside' : 'inside'} it`;
}
