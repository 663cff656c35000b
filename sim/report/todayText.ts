import type { TodayAnswer, TodayPart } from '../scheme/today.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { airCautions } from './airReport.ts';
import { ruleVerdictWords } from './climateWords.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { COAT_WORDS, TODAY_PARTS, todayAmountRows, todayLine, todaySentences } from './todayWords.ts';
import { todayWorking } from './todayWorking.ts';
import type { UnitSystem } from './units.ts';

/** The front sheet as plain text: each question, its answer, what belongs to it, how it comes about; one newline at the end. */
export function todayText(answer: TodayAnswer, system: UnitSystem): string {
  const lines = [
    ...TODAY_PARTS.flatMap(([part, question]) => [question.toUpperCase(), ...wrapped(todayLine(answer, part, system)), ...moreLines(answer, part, system), ...workingLines(answer, part, system), '']),
    ...bulleted('Before spraying', airCautions(answer.climate.answer)),
    '',
    ...wrapped(ESTIMATE_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function moreLines(answer: TodayAnswer, part: TodayPart, system: UnitSystem): string[] {
  if (part === 'climate') return answer.climate.verdict.rules.flatMap((each) => wrapped(`${each.rule.name}: ${ruleVerdictWords(each, system)}`, '- ', '  '));
  const sentences = todaySentences(answer, part, system).flatMap((text) => wrapped(text, '- ', '  '));
  if (part === 'film') return [...sentences, ...COAT_WORDS.flatMap(([word, meaning]) => wrapped(`${word}: ${meaning}`, '- ', '  '))];
  return part === 'amounts' ? [...textTable(todayAmountRows(answer, system)).map((line) => `  ${line}`), ...sentences] : sentences;
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
