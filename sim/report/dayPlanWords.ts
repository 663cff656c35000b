import { counted } from '../base/counted.ts';
import type { DayFinding } from '../scheme/dayFindings.ts';
import type { DayPlan } from '../scheme/dayPlan.ts';
import type { Hold } from '../scheme/firstStart.ts';
import type { LaidChain, LaidTask } from '../scheme/timeline.ts';
import { clockWords, dayWords, spanWords, whenWords } from './clockWords.ts';
import { roundedText, shownTemperature, type UnitSystem } from './units.ts';
import { capitalised, listed } from './words.ts';

/** How the days come about, and what they leave out. */
export const DAYS_NOTE =
  'One crew, one step at a time; each step begins on a full five minutes, ends within working hours, and a coat begins only where the air allows it from its first stroke to its last. ' +
  'Tapes, patches and rings are set in wet dope and are held to the same air, with the mix of the coat before them; sanding, masks and pulling them go in any air. A step’s time is rounded up to the full minute, so the hours at work here are a few minutes more than on the sheet Amounts. ' +
  'Waits run day and night: each is over when the drying, hour by hour, comes to what is stated for 70 °F (21.1 °C) by the rule of 10 °F (FAA AC 43.13-1B 2-21; doubling and halving is our reading of "by 100 percent"), ' +
  'and to what the model asks for, scaled by the first evaporation of the mix in that hour’s air; the later of the two counts. A latest start is moved by the same rule as its wait. ' +
  'The model knows no film beneath, no draught and no sun, and its touch is not your thumbnail: try the film before you go on.';

/** Said with every stop between days. */
export const OVERNIGHT_NOTE =
  'Solvent leaves the film through every wait and every night. This plan calls no closed room safe to leave: how it is ventilated and watched meanwhile is for local codes and whoever answers for the room.';

const AIR_NOTES: Readonly<Record<DayPlan['air'], string>> = {
  typed: 'The air of all these days is as typed.',
  repeated: 'Beyond the hours typed the days are assumed to go as the nearest one that was typed: read the gauge, and type what it says.',
  held: 'Less than a day of air is typed: before and after it the air is assumed to stay as it is there.',
  steady: 'No hours are typed: the job’s one air is assumed day and night. Nights are colder; type the hours on the sheet Air.',
};

/** A time with its day, for a sentence: `Thursday 7 May at 15:40`. */
export function dayAndClock(minute: number): string {
  return `${dayWords(minute).split(' ').slice(0, 3).join(' ')} at ${clockWords(minute)}`;
}

/** The days in one sentence: when all is ready, and what it takes. */
export function readySentence({ timeline, totals }: DayPlan): string {
  const sums = `${counted(totals.coats, 'coat')}, ${spanWords(totals.work_min)} at work, ${spanWords(totals.wait_min)} of waits`;
  if (totals.unplaced > 0) return `Not all of it fits: ${counted(totals.unplaced, 'step')} found no hour. What is laid ends on ${dayAndClock(timeline.ready)}: ${sums}.`;
  return `Ready on ${dayAndClock(timeline.ready)}: ${sums}.`;
}

/** Where the air of the days comes from. */
export function daysAirNote({ air }: Pick<DayPlan, 'air'>): string {
  return AIR_NOTES[air];
}

/** Why a step does not begin at its earliest; empty where it does. */
export function holdWords(holds: readonly Hold[]): string {
  const words = holds.flatMap(({ why, words: said }) => (why === 'air' ? said.split(', ') : [{ asked: 'begun late', hours: 'out of working hours', crew: 'the crew is at another step' }[why]]));
  return [...new Set(words)].join(', ');
}

/** The end of a wait, to the full minute after it. */
export function waitEnd(until: number, from: number): string {
  return whenWords(Math.ceil(until), from);
}

/** What made a wait as long as it is. */
export function waitRuleWords({ wait, task }: LaidTask): string {
  if (wait === null) return '';
  if (wait.rule === 'model') return wait.modelUntil !== null && task.wait_min > 0 ? 'model’s film, longer than stated' : 'model’s film';
  return task.wait_min > 0 ? 'stated, 10 °F rule' : 'nothing to wait for';
}

/** How a wait comes about: stated, at which temperatures, and the model's own. */
export function waitWorking(laid: LaidTask, temperature_K: (minute: number) => number, system: UnitSystem): string[] {
  const { wait, task } = laid;
  if (wait === null) return [];
  const stated = wait.statedUntil - wait.from;
  return [
    task.wait_min === 0
      ? 'No wait is stated.'
      : `Stated ${spanWords(task.wait_min)} at 70 °F; in this air ${spanWords(stated)}, a factor of ${roundedText(stated / task.wait_min)}: over at ${waitEnd(wait.statedUntil, wait.from)}.`,
    wait.modelUntil === null || task.modelWait_min === null
      ? 'The model says nothing of this wait.'
      : `The model’s film asks for ${spanWords(task.modelWait_min)} in the job’s own air, ${spanWords(wait.modelUntil - wait.from)} in this: over at ${waitEnd(wait.modelUntil, wait.from)}.`,
    ...(wait.latest === null ? [] : [`Latest next start ${dayAndClock(wait.latest)}, moved by the same rule.`]),
    `Air from ${shownTemperature(temperature_K(wait.from), system)} at its begin to ${shownTemperature(temperature_K(wait.until), system)} at its end.`,
  ];
}

/** The factor on a stated wait through its hours: time, air, factor; at most 24 rows. */
export function factorRows({ wait }: LaidTask, { temperature_K, factorAt }: Pick<DayPlan, 'temperature_K' | 'factorAt'>, system: UnitSystem): string[][] {
  if (wait === null) return [];
  const step = 60 * Math.max(1, Math.ceil((wait.until - wait.from) / 60 / 24));
  const rows: string[][] = [];
  for (let at = wait.from; at < wait.until; at += step) rows.push([whenWords(at, wait.from), shownTemperature(temperature_K(at), system), roundedText(factorAt(at))]);
  return rows;
}

/** A finding in words, with what to do. */
export function findingWords(finding: DayFinding, system: UnitSystem): string {
  const name = `“${finding.laid.task.planned.spec.name}”`;
  switch (finding.kind) {
    case 'no-model-time':
      return `${name}: the model did not see this film ready in the time it was watched; only the stated wait counts. Try the film before going on.`;
    case 'long-work':
      return `${name} takes ${spanWords(finding.laid.task.work_min)}, the working day has ${spanWords(finding.day_min)}: it is begun with a day and runs past its end. Divide the panels, or lengthen the day.`;
    case 'past-latest':
      return `${name} begins ${spanWords(finding.by_min)} after the latest start that the step before it states. Ask the data sheet whether the film must be scuffed first, or move the steps before it.`;
    case 'shut-window':
      return `${name}: its wait is over ${spanWords(finding.by_min)} after its latest next start, so no start can meet both. Correct one of the two, or warm the air.`;
    case 'cold-night':
      return `The wait after ${name} runs through the night down to ${shownTemperature(finding.least_K, system)} (${whenWords(finding.at, finding.laid.end)}), below ${shownTemperature(finding.limit_K, system)} where the trade’s window ends: drying slows, and damp can settle. Nothing here says that the room may be left closed.`;
    case 'early-sanding':
      return `${name} begins after drying worth ${spanWords(finding.dried_min)} at 70 °F; FAA AC 43.13-1B 2-21h gives aluminium 4 h before sanding. A cool film is not dry.`;
    case 'early-mask':
      return `${name} begins ${spanWords(finding.after_min)} after the last coat; common practice is overnight, a day is better. Tape can lift or mark a young film.`;
    case 'long-mask':
      return `${name}: the tape sits for ${spanWords(finding.on_min)}; about a day is the most in common practice. Begin the masking later, so that the coat and the pulling follow on one day.`;
  }
}

/** What found no place, and why. */
export function unplacedWords({ unplaced, unplacedHolds, chain }: LaidChain): string | null {
  const [first] = unplaced;
  if (first === undefined) return null;
  const air = unplacedHolds.filter(({ why }) => why === 'air').map(({ words }) => words);
  const reason = air.length > 0 ? `no working hour of 60 days goes (${[...new Set(air)].join('; ')})` : 'no working hour of 60 days is left after the wait before it';
  const rest = unplaced.length === 1 ? '' : ` ${capitalised(counted(unplaced.length - 1, 'step'))} after it wait with it.`;
  return `${chain.schemeName}: “${first.planned.spec.name}” finds no place: ${reason}. Warm the room, type other hours, or lengthen the day.${rest}`;
}

/** What a late begin shifts, in one sentence; empty where nothing is late. */
export function shiftSentence({ shifts, late, base, timeline }: DayPlan): string {
  if (late.size === 0) return '';
  const by = timeline.ready - base.ready;
  const others = shifts.filter(({ id }) => !late.has(id)).length;
  const end = by === 0 ? 'All is ready as planned.' : by > 0 ? `All is ready ${spanWords(by)} later, on ${dayAndClock(timeline.ready)}.` : 'Less is laid than planned.';
  return `Begun late, ${others === 0 ? 'nothing else moves' : `${counted(others, 'other step')} ${others === 1 ? 'moves' : 'move'}`}. ${end}`;
}

/** Names of what a chain works on. */
export function chainWords({ chain }: Pick<LaidChain, 'chain'>): string {
  return `${chain.schemeName} (${listed(chain.panels)})`;
}
