import type { FaultKind } from '../verdict/verdict.ts';

/** The trade's word for a fault, one of it. */
export const FAULT_WORDS: Readonly<Record<FaultKind, string>> = {
  holiday: 'holiday',
  'thin-lap': 'thin lap',
  'heavy-spot': 'heavy spot',
  'dry-spray': 'dry spray',
  run: 'run',
  'orange-peel': 'orange peel',
  'dry-lap': 'dry lap',
  blush: 'blush',
  blister: 'blister risk',
  pinhole: 'pinhole risk',
  'over-thick': 'over-thick film',
};

/** The trade's word for more than one of a fault. */
export const FAULT_PLURALS: Readonly<Record<FaultKind, string>> = {
  holiday: 'holidays',
  'thin-lap': 'thin laps',
  'heavy-spot': 'heavy spots',
  'dry-spray': 'dry spray',
  run: 'runs',
  'orange-peel': 'orange peel',
  'dry-lap': 'dry laps',
  blush: 'blush',
  blister: 'blister risk',
  pinhole: 'pinhole risk',
  'over-thick': 'over-thick film',
};

/** Faults that are counted by places, having no plural. */
export const PLACED_FAULTS: ReadonlySet<FaultKind> = new Set(['dry-spray', 'orange-peel', 'blush', 'blister', 'pinhole', 'over-thick']);

/** Strokes listed one by one up to this many. */
const MOST_LISTED = 6;

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] as string}`;
}

/** Strokes as people number them, from 1: `stroke 5`, `strokes 4 and 5`, `12 strokes from 1 to 14`. */
export function strokeWords(strokes: readonly number[]): string {
  const numbers = [...strokes].sort((a, b) => a - b).map((index) => index + 1);
  if (numbers.length === 0) return 'the strokes here';
  if (numbers.length === 1) return `stroke ${numbers[0] as number}`;
  if (numbers.length <= MOST_LISTED) return `strokes ${listed(numbers.map(String))}`;
  return `${numbers.length} strokes from ${numbers[0] as number} to ${numbers[numbers.length - 1] as number}`;
}

/** First letter as a capital. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
