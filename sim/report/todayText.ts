import type { TodayAnswer, TodayPart } from '../scheme/today.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { airCautions } from './airReport.ts';
import { ruleVerdictWords, surfaceSentence } from './climateWords.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { climateHelp, COAT_WORDS, TODAY_CAUTION, TODAY_PARTS, todayAmountRows, todayLine, todaySentences } from './todayWords.ts';
import { todayTaken } from './todayTaken.ts';
import { todayWorking } from './todayWorking.ts';
import type { UnitSystem } from './units.ts';

/** What is printed beside the answers. */
export interface TodayTextOptions {
  /** How each answer comes about: formula, inputs, sources, limits. */
  readonly working?: boolean;
  /** Keys of the question that somebody stated; the others are said to be usual. */
  readonly stated: ReadonlySet<string>;
}

/** The front sheet as plain text: each question, its answer, what belongs to it; one newline at the end. */
export function todayText(answer: TodayAnswer, system: UnitSystem, { working = false, stated }: TodayTextOptions): string {
  const taken = todayTaken(answer, stated, system);
  const lines = [
    ...TODAY_PARTS.flatMap(([part, question]) => [question.toUpperCase(), ...wrapped(todayLine(answer, part, system)), ...moreLines(answer, part, system), ...(working ? workingLines(answer, part, system) : []), '']),
    ...(taken.length === 0 ? [] : [...wrapped(`Taken as usual, not stated: ${taken.join('; ')}.`), '']),
    ...bulleted('Before spraying', airCautions(answer.climate.answer)),
    '',
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function moreLines(answer: TodayAnswer, part: TodayPart, system: UnitSystem): string[] {
  if (part === 'climate') return climateLines(answer, system);
  const sentences = todaySentences(answer, part, system).flatMap((text) => wrapped(text, '- ', '  '));
  if (part === 'film') return [...sentences, ...COAT_WORDS.flatMap(([word, meaning]) => wrapped(`${word}: ${meaning}`, '- ', '  '))];
  return part === 'amounts' ? [...textTable(todayAmountRows(answer, system)).map((line) => `  ${line}`), ...sentences] : sentences;
}

function climateLines({ climate }: TodayAnswer, system: UnitSystem): string[] {
  const found = climateHelp(climate, system);
  const surface = surfaceSentence(climate.verdict, climate.answer, system);
  return [
    ...wrapped(TODAY_CAUTION),
    ...(surface === null ? [] : wrapped(surface)),
    ...climate.verdict.rules.flatMap((each) => wrapped(`${each.rule.name}: ${ruleVerdictWords(each, system)}`, '- ', '  ')),
    ...(found.length === 0 ? [] : bulleted('What would make it go', found)),
  ];
}

function workingLines(answer: TodayAnswer, part: TodayPart, system: UnitSystem): string[] {
  const { formula, inputs, sources, limits } = todayWorking(answer, part, system);
  const listed = (head: string, texts: readonly string[]): string[] => texts.flatMap((text, i) => wrapped(text, i === 0 ? `    ${head}: ` : '    - ', '      '));
  return [
    '  How this comes about',
    ...listed('formula', formula),
    ...listed('inputs', [inputs.map(([name, value]) => `${name} ${value}`).join('; ')]),
    ...listed('sources', sources),
    ...listed('limits', limits),
  ];
}
