import { minutesOf } from '../base/localTime.ts';
import { ACT_CAUTIONS, actsOf, type Act } from './actCautions.ts';
import { cardDayLines, type EntryLines } from './cardDayLines.ts';
import { CARD_AIR, entryPanels, entryTime, handBoxes, stepKindWords } from './cardLines.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { dayWords } from './clockWords.ts';
import type { CardDay, JobCard } from './reportedCard.ts';
import { bulleted, wrapped } from './textLines.ts';
import type { UnitSystem } from './units.ts';

/** Letters of the longest head of a line, and a space. */
const HEAD_LENGTH = 11;

/** What a page is about, for its head. */
export function cardDayWords({ date }: CardDay): string {
  return date === null ? 'Without a day' : dayWords(minutesOf(`${date}T00:00`));
}

/** Acts of a day, each once, in the order in which they first come; drying always, release on the last page. */
export function dayActs({ entries }: CardDay, isLast: boolean): Act[] {
  const acts = new Set(entries.flatMap(({ step }) => actsOf(step.kind)));
  return [...acts, 'dry', ...(isLast ? (['release'] as const) : [])];
}

/** The job card as plain text: a part a day; lines joined, one newline at the end. */
export function jobCardText(card: JobCard, system: UnitSystem): string {
  const lines = [
    `${card.jobName}: ${card.partName}`,
    '',
    ...card.days.flatMap((day, i) => [...dayLines(day, system, i === card.days.length - 1), '']),
    ...(card.doubts.length === 0 ? [] : [...bulleted('Doubts', card.doubts), '']),
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function dayLines(day: CardDay, system: UnitSystem, isLast: boolean): string[] {
  const head = cardDayWords(day);
  return [
    head,
    '='.repeat(head.length),
    ...cardDayLines(day, system).flatMap((each) => ['', ...entryText(each, system)]),
    '',
    ...wrapped(CARD_AIR),
    ...bulleted('Cautions', dayActs(day, isLast).flatMap((act) => ACT_CAUTIONS[act])),
  ];
}

function entryText({ entry, lines }: EntryLines, system: UnitSystem): string[] {
  const { number, step } = entry;
  const time = entryTime(entry);
  return [
    `${time === '' ? '' : `${time}  `}${number}. ${step.name} (${stepKindWords(step)}; ${entryPanels(entry)})`,
    ...lines.flatMap(({ head, text }) => wrapped(text, `  ${head.padEnd(HEAD_LENGTH)}`, ' '.repeat(HEAD_LENGTH + 2))),
    ...(step.source === undefined ? [] : wrapped(step.source, `  ${'Source'.padEnd(HEAD_LENGTH)}`, ' '.repeat(HEAD_LENGTH + 2))),
    ...wrapped(handBoxes(step, system).map((box) => `${box.replaceAll(' ', '\u00a0')}:\u00a0______`).join(' '), '  '),
  ];
}
