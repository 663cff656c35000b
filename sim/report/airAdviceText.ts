import type { AirAdvice } from '../air/airAdvice.ts';
import { DAY_LIMITS, dayRows, daySentences, firstMinute, passingRows } from './airDayWords.ts';
import { airText } from './airReport.ts';
import { CLIMATE_STATEMENT, climateSentence, ruleVerdictWords, ruleWords, surfaceSentence } from './climateWords.ts';
import { noRemedyWords, remedySentence, FAN_CAUTION, timeWords } from './remedyWords.ts';
import { bulleted, wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import type { UnitSystem } from './units.ts';

/** The verdict on the room with whose rule says what, what would turn it, the day, and the figures; plain text, one newline at the end. */
export function airAdviceText(advice: AirAdvice, system: UnitSystem): string {
  const { answer, remedies } = advice;
  const lines = [
    ...wrapped(climateSentence(remedies.now, answer, system)),
    ...[surfaceSentence(remedies.now, answer, system)].flatMap((text) => (text === null ? [] : wrapped(text))),
    ...lookedAt(advice),
    '',
    ...bulleted('Whose rule says what', remedies.now.rules.map((each) => `${each.rule.name} (${ruleWords(each.rule, system)}). ${ruleVerdictWords(each, system)}`)),
    '',
    ...remedyLines(advice, system),
    ...dayLines(advice, system),
    ...wrapped(CLIMATE_STATEMENT),
    '',
  ];
  return `${lines.join('\n')}\n${airText(answer, system)}`;
}

function lookedAt({ minute, held, day }: AirAdvice): string[] {
  if (minute === null || day === null) return [];
  const head = `That is for ${timeWords(minute, firstMinute(day))} of the day given.`;
  if (held === null) return wrapped(head);
  return wrapped(`${head} It lies ${held === 'before' ? 'before the first row, whose' : 'after the last row, whose'} air is held.`);
}

function remedyLines({ remedies, day, minute }: AirAdvice, system: UnitSystem): string[] {
  if (remedies.now.verdict === 'go') return [];
  const none = noRemedyWords(remedies, system);
  const day_min = day === null ? (minute ?? 0) : firstMinute(day);
  const found = remedies.found.map((remedy) => remedySentence(remedy, system, day_min));
  const isWarm = remedies.found.some(({ kind }) => kind === 'warm' || kind === 'warm-retard');
  return [...bulleted('What would make it go', [...found, ...(none === null ? [] : [none]), ...(isWarm ? [FAN_CAUTION] : [])]), ''];
}

function dayLines({ day, recheck }: AirAdvice, system: UnitSystem): string[] {
  if (day === null) return [];
  return [
    ...bulleted('The day', [...daySentences(day, recheck, system), DAY_LIMITS]),
    '',
    ...textTable(dayRows(day, system)),
    '',
    ...textTable([['hours that pass', ''], ...passingRows(day)]),
    '',
  ];
}
