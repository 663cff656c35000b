import { CrosscoatError, type Place } from '../../sim/index.ts';

/** Why something did not work, plain enough to show; survives a trip between worker and page. */
export interface Problem {
  readonly title: string;
  readonly text: string;
  readonly place: Place;
}

/** A problem, or news, with what the reader may do about it. */
export interface Notice extends Problem {
  readonly act?: { readonly words: string; readonly run: () => void };
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

/** What a problem's title and text leave unsaid of its place; empty where they say it all. */
export function unsaidPlace({ title, text, place }: Problem): string {
  const said = `${title} ${text}`;
  const parts: readonly (readonly [value: string | undefined, words: string])[] = [
    [place.file, `file ${place.file}`],
    [place.pointer, `at ${place.pointer}`],
    [place.row === undefined ? undefined : `row ${place.row}`, `row ${place.row}`],
    [place.column, `column ${place.column}`],
    [place.stroke === undefined ? undefined : `stroke ${place.stroke + 1}`, `stroke ${(place.stroke ?? 0) + 1}`],
  ];
  return parts.flatMap(([value, words]) => (value === undefined || value === '' || said.includes(value) ? [] : [words])).join(', ');
}
