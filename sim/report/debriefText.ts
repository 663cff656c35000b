import type { Score } from '../verdict/score.ts';
import type { Cause, Fault, FaultKind, FilmFigures, Zone } from '../verdict/verdict.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { MEASURE_WORDS, shownMeasure } from './measureWords.ts';
import { panelPlace } from './panelPlace.ts';
import type { OtherFilm, ReportedDebrief, ReportedWhatIf, WhatIfHabit } from './reportedDebrief.ts';
import { coatWarnings } from './reported.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { strokesTable } from './strokesTable.ts';
import { shown, shownAngle, shownPercent, shownTime, type UnitSystem } from './units.ts';
import { FAULT_WORDS, capitalised, listed, strokeWords } from './words.ts';

/** A share of the panel inside the limits that moved by less than this is as it was. */
const SAME_SHARE = 0.005;

/** What each question corrects, as the beginning of a sentence. */
export const WHAT_IF_WORDS: Readonly<Record<WhatIfHabit, string>> = {
  'even-speed': 'At an even speed, without stops',
  'no-arc': 'With the gun square all along, no arc',
  'even-distance': 'At one distance',
  'right-overlap': 'With the overlap that was meant',
  'trigger-past-edge': 'With the trigger worked outside the edge',
};

/** The one sentence that matters most: what the hand did, where, and what it cost. */
export function chiefSentence(debrief: ReportedDebrief, system: UnitSystem): string {
  const { chief } = debrief;
  switch (chief.kind) {
    case 'nothing':
      return 'The trigger was never held for long enough to lay a stroke: there is nothing to judge yet.';
    case 'met':
      return `${strokesMissing(debrief) ?? metText(debrief)} ${planText(debrief)}`.trim();
    case 'measure': {
      const { measure, value, limit } = chief.row;
      const { title, means } = MEASURE_WORDS[measure];
      const where = chief.stroke === null ? '' : `, most in stroke ${chief.stroke + 1}`;
      return value === null
        ? `${title} cannot be judged: nothing that was sprayed shows it (${means}).`
        : `${title} first: ${shownMeasure(measure, value, system)} against a limit of ${shownMeasure(measure, limit, system)}${where} (${means}).`;
    }
    case 'fault':
      return faultSentence(debrief, chief.fault, chief.run, system);
  }
}

/** Where fewer strokes were sprayed than the task asks for; null where there are enough. */
function strokesMissing({ strokesAsked, traces }: ReportedDebrief): string | null {
  if (traces.length >= strokesAsked) return null;
  return `Only ${traces.length} of the ${strokesAsked} strokes that this task asks for ${traces.length === 1 ? 'was' : 'were'} sprayed.`;
}

/** Nothing marked is missed; a rubric may still leave out what the task asks for. */
function metText({ score }: ReportedDebrief): string {
  return score.isPassed ? 'All that this task asks for is met.' : 'All that is marked is met, but the rubric leaves out some of what this task asks for.';
}

/** How much of the panel is inside the limits; nothing where the task is not about the film that the coat lays. */
function planText({ sprayed, planned, task }: ReportedDebrief): string {
  if (!task.counts.some((measure) => measure === 'coverage' || measure === 'evenness')) return '';
  return `${shownPercent(sprayed.inTargetFraction)} of the panel is inside the limits, ${shownPercent(planned.inTargetFraction)} as planned.`;
}

/** `Your strokes 4 to 9 slowed to 0.18 m/s at the right edge: 62 % too much film there, and a run began at 41 s.` */
function faultSentence(debrief: ReportedDebrief, fault: Fault, run: Zone | null, system: UnitSystem): string {
  const [worst] = fault.zones;
  const { panel } = debrief.coat.setting;
  const place = worst === undefined ? '' : ` ${panelPlace(worst.at_m, panel)}`;
  const ran = run?.run === undefined ? '' : `, and a run began at ${shownTime(run.run.started_s)}`;
  return `${handClause(fault.cause, system)}${place}: ${costText(fault, debrief, system)}${ran}.`;
}

/** What the hand did, from the cause that the model found. */
function handClause(cause: Cause, system: UnitSystem): string {
  const who = `Your ${rangeWords(cause.strokes)}`;
  const { found, meant } = cause;
  const against = (value: string): string => (Number.isFinite(meant) ? ` (${value} was meant)` : '');
  switch (cause.kind) {
    case 'stop':
      return `${who} stood still for ${shownTime(found)} with the fluid on`;
    case 'speed': {
      const speed = (value: number): string => shown(value, 'speed', system);
      return `${who} ${found < meant ? 'slowed' : 'sped up'} to ${speed(found)}${against(speed(meant))}`;
    }
    case 'distance': {
      const length = (value: number): string => shown(value, 'length', system);
      return `${who} ${found < meant ? 'came in' : 'drifted out'} to ${length(found)}${against(length(meant))}`;
    }
    case 'angle':
      return `${who} swung to ${shownAngle(found)} off square`;
    case 'overlap':
      return `${who} lapped the one beside by ${shownPercent(found)}${against(shownPercent(meant))}`;
    case 'trigger':
      return `${who} worked the trigger ${shown(Math.abs(found), 'length', system)} ${found < 0 ? 'inside' : 'outside'} the edge`;
    case 'edge':
      return `${who} left the line along the edge`;
    case 'missing-stroke':
      return `${capitalised(rangeWords(cause.strokes))} of the plan ${cause.strokes.length === 1 ? 'was' : 'were'} not sprayed${found > 0 ? ' all along' : ''}`;
    case 'plan-edge':
    case 'plan-lead':
    case 'plan-overlap':
    case 'plan-film':
    case 'plan-distance':
    case 'plan-speed':
    case 'set-up':
    case 'fluid':
    case 'thinner':
    case 'solvent':
    case 'air':
    case 'wait':
    case 'unknown':
      return 'The film was at fault';
  }
}

/** What the fault costs at its worst place. */
function costText({ kind, zones, area_m2 }: Fault, { coat }: ReportedDebrief, system: UnitSystem): string {
  const { target } = coat.setting;
  const [worst] = zones;
  if (worst === undefined) return FAULT_WORDS[kind];
  const share = worst.worst / target.thickness_m;
  const size = `over ${shown(area_m2, 'area', system)}`;
  switch (kind) {
    case 'heavy-spot':
      return `${shownPercent(share - 1)} too much film there, ${size}`;
    case 'thin-lap':
    case 'holiday':
      return `only ${shownPercent(share)} of the film there, ${size}`;
    case 'dry-spray':
      return `${shownPercent(worst.worst)} of the film arrived dry, ${size}`;
    case 'run':
    case 'orange-peel':
    case 'dry-lap':
    case 'blush':
    case 'blister':
    case 'pinhole':
    case 'over-thick':
      return `${FAULT_WORDS[kind]} ${size}`;
  }
}

/** `strokes 4 to 9` where they follow each other, else as listed. */
function rangeWords(strokes: readonly number[]): string {
  const numbers = [...strokes].sort((a, b) => a - b);
  const first = numbers[0];
  const last = numbers.at(-1);
  if (first === undefined || last === undefined || numbers.length < 3 || last - first !== numbers.length - 1) return strokeWords(strokes);
  return `strokes ${first + 1} to ${last + 1}`;
}

/** A total as words: `84 of 100`; a session whose measures weigh nothing has none. */
export function totalText({ total }: Pick<Score, 'total'>): string {
  return Number.isFinite(total) ? `${Math.round(100 * total)} of 100` : 'no mark';
}

/** The mark: total, whether the task is passed, and what is missed. */
export function markSentence(debrief: ReportedDebrief, system: UnitSystem): string {
  const { score } = debrief;
  const total = totalText(score);
  const missed = score.rows.filter(({ counts, isMet }) => counts && !isMet);
  if (score.isPassed) return `${total}: passed.`;
  const few = strokesMissing(debrief);
  if (missed.length === 0) return `${total}: not yet. ${few ?? 'The rubric leaves out what this task asks for.'}`;
  return `${total}: not yet. Outside the limits: ${listed(missed.map(({ measure, value, limit }) => `${MEASURE_WORDS[measure].title.toLowerCase()} (${shownMeasure(measure, value, system)}, limit ${shownMeasure(measure, limit, system)})`))}.`;
}

/** What one habit cost: the same session without it. */
export function whatIfSentence({ habit, strokes, other }: ReportedWhatIf, { sprayed }: ReportedDebrief, system: UnitSystem): string {
  const head = WHAT_IF_WORDS[habit];
  if (strokes === 0) return `${head}: your strokes are so already.`;
  if (isAlike(sprayed, other)) return `${head}: hardly a difference.`;
  const gained = other.inTargetFraction - sprayed.inTargetFraction;
  const inside = `${shownPercent(other.inTargetFraction)} of the panel inside the limits in place of ${shownPercent(sprayed.inTargetFraction)}`;
  const even = `film varies by ${shownPercent(other.figures.cv)} in place of ${shownPercent(sprayed.figures.cv)}`;
  const changes = areaChanges(sprayed, other, system);
  const verdict = gained > SAME_SHARE ? 'this habit costs you film' : gained < -SAME_SHARE ? 'alone it would not help' : 'hardly a difference';
  return `${head}: ${inside}, ${even}${changes.length === 0 ? '' : `; ${listed(changes)}`} (${verdict}).`;
}

/** Whether two films are the same to the eye: share inside the limits and evenness within half a per cent, no fault grown or gone. */
function isAlike(a: OtherFilm, b: OtherFilm): boolean {
  return Math.abs(a.inTargetFraction - b.inTargetFraction) < SAME_SHARE && Math.abs(a.figures.cv - b.figures.cv) < SAME_SHARE && areaChanges(a, b, 'metric').length === 0;
}

/** Kinds of fault whose area moved by a tenth or more, and by a square centimetre. */
function areaChanges(before: OtherFilm, after: OtherFilm, system: UnitSystem): string[] {
  const kinds = [...new Set([...Object.keys(before.areas_m2), ...Object.keys(after.areas_m2)])] as FaultKind[];
  return kinds.flatMap((kind) => {
    const was = before.areas_m2[kind] ?? 0;
    const is = after.areas_m2[kind] ?? 0;
    if (Math.abs(is - was) < Math.max(1e-4, 0.1 * was)) return [];
    if (is === 0) return [`no ${FAULT_WORDS[kind]}`];
    return [`${FAULT_WORDS[kind]} over ${shown(is, 'area', system)} in place of ${shown(was, 'area', system)}`];
  });
}

/** A debrief for a terminal: the sentence, the mark, what the plan would have given, questions, strokes. */
export function debriefText(debrief: ReportedDebrief, whatIfs: readonly ReportedWhatIf[], system: UnitSystem): string {
  const { score, coat, planned, sprayed, task, trainee } = debrief;
  const doubts = coatWarnings(coat);
  const rows = score.rows.map(({ measure, value, limit, mark, weight, isMet, counts }) => [
    MEASURE_WORDS[measure].title,
    shownMeasure(measure, value, system),
    shownMeasure(measure, limit, system),
    `${Math.round(100 * mark)}`,
    String(weight),
    counts ? (isMet ? 'met' : 'NOT MET') : '-',
  ]);
  return [
    `${task.title}${trainee === '' ? '' : `, ${trainee}`}`,
    '',
    ...wrapped(chiefSentence(debrief, system)),
    '',
    ...wrapped(markSentence(debrief, system)),
    '',
    ...textTable([['measure', 'value', 'limit', 'mark', 'weight', 'asked'], ...rows]),
    '',
    ...textTable([
      ['film', 'mean', 'varies', 'in target', 'paint', 'time'],
      ['sprayed', ...filmRow(sprayed, system)],
      ['planned', ...filmRow(planned, system)],
    ]),
    ...(whatIfs.length === 0 ? [] : ['', 'What if', ...whatIfs.flatMap((one) => wrapped(whatIfSentence(one, debrief, system)))]),
    '',
    ...strokesTable(coat.strokes.measures, system),
    '',
    ...(doubts.length === 0 ? [] : [...bulleted('Doubts', doubts.map(({ text }) => text)), '']),
    ...wrapped(ESTIMATE_STATEMENT),
    '',
  ].join('\n');
}

function filmRow({ figures, inTargetFraction, account, duration_s }: OtherFilm, system: UnitSystem): string[] {
  return [meanText(figures, system), shownPercent(figures.cv), shownPercent(inTargetFraction), shown(account.sprayed_m3, 'volume', system), shownTime(duration_s)];
}

function meanText({ mean_m }: FilmFigures, system: UnitSystem): string {
  return shown(mean_m, 'film', system);
}
