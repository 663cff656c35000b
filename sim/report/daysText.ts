import type { DayPlan } from '../scheme/dayPlan.ts';
import type { LaidChain, LaidTask } from '../scheme/timeline.ts';
import { clockWords, dayWords, spanWords, whenWords } from './clockWords.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { chainWords, DAYS_NOTE, daysAirNote, findingWords, holdWords, OVERNIGHT_NOTE, readySentence, shiftSentence, unplacedWords, waitEnd, waitRuleWords } from './dayPlanWords.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import type { UnitSystem } from './units.ts';

/** The days as plain text: the sentence, a table a scheme, what is doubtful, how it comes about; one newline at the end. */
export function daysText(plan: DayPlan, system: UnitSystem): string {
  const doubts = [
    ...plan.timeline.chains.flatMap((chain) => unplacedWords(chain) ?? []),
    ...plan.findings.map((finding) => findingWords(finding, system)),
  ];
  const shift = shiftSentence(plan);
  const held = plan.timeline.chains.flatMap(({ laid }) => laid).filter(({ holds }) => holds.length > 0)
    .map(({ task, earliest, start, holds }) => `${task.planned.spec.name}: ready at ${waitEnd(earliest, start)}, begun at ${clockWords(start)}; ${holdWords(holds)}`);
  const lines = [
    ...wrapped(readySentence(plan)),
    ...(shift === '' ? [] : wrapped(shift)),
    '',
    ...plan.timeline.chains.flatMap((chain) => [...chainTable(chain), '']),
    ...(held.length === 0 ? [] : [...bulleted('Not at their earliest:', held), '']),
    ...(plan.shifts.length === 0 ? [] : [...bulleted('What the late begin shifts:', shiftLines(plan)), '']),
    ...(doubts.length === 0 ? [] : [...bulleted('Look at:', doubts), '']),
    ...wrapped(OVERNIGHT_NOTE),
    '',
    ...wrapped(`${daysAirNote(plan)} ${DAYS_NOTE}`),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function chainTable(chain: LaidChain): string[] {
  const days = chain.laid.map(({ start }) => dayWords(start));
  const rows = chain.laid.flatMap((laid, i) => [
    ...(days[i] === days[i - 1] ? [] : [[days[i] ?? '']]),
    taskRow(laid),
  ]);
  return [`${chainWords(chain)}, ready ${whenWords(chain.ready, 0)}`, ...textTable([['', 'begin', 'end', 'wait until', 'latest next', 'wait by'], ...rows])];
}

function taskRow(laid: LaidTask): string[] {
  const { task, start, end, wait } = laid;
  return [
    `  ${task.planned.spec.name}`, clockWords(start), clockWords(end),
    wait === null ? '' : waitEnd(wait.until, end), wait === null || wait.latest === null ? '' : whenWords(wait.latest, end), waitRuleWords(laid),
  ];
}

function shiftLines({ shifts, base }: DayPlan): string[] {
  const names = new Map(base.chains.flatMap(({ laid }) => laid.map(({ task }) => [task.id, task.planned.spec.name])));
  return shifts.map(({ id, planned, start }) => `${names.get(id) ?? id}: ${start === null ? 'finds no hour' : `${spanWords(start - planned)} later, ${whenWords(start, 0)}`}`);
}
