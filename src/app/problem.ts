import { CrosscoatError, type Place } from '../../sim/index.ts';

/** Why something did not work, plain enough to show; survives a trip between worker and page. */
export interface Problem {
  readonly title: string;
  readonly text: string;
  readonly place: Place;
}

/** Turns anything thrown into a problem. Bugs say so; bad input already carries its advice. */
export function problemOf(title: string, thrown: unknown): Problem {
  if (thrown instanceof CrosscoatError) return { title, text: thrown.message, place: thrown.place };
  if (isProblem(thrown)) return { ...thrown, title };
  const text = thrown instanceof Error ? thrown.message : String(thrown);
  return { title, text, place: {} };
}

function isProblem(thrown: unknown): thrown is Problem {
  return typeof thrown === 'object' && thrown !== null && 'text' in thrown && 'place' in thrown;
}

/** The place in words, for a message's second line; empty where none is known. */
export function placeInWords(place: Place): string {
  const parts = [
    place.file === undefined ? '' : `file ${place.file}`,
    place.pointer === undefined || place.pointer === '' ? '' : `at ${place.pointer}`,
    place.row === undefined ? '' : `row ${place.row}`,
    place.column === undefined ? '' : `column ${place.column}`,
    place.stroke === undefined ? '' : `stroke ${place.stroke + 1}`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}
