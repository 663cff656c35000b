import * as v from 'valibot';
import type { BaseIssue } from 'valibot';
import { nearestWord } from '../base/nearestWord.ts';
import { SHAPES } from './schema.ts';

/** One thing wrong in a job. */
export interface Problem {
  /** JSON pointer (RFC 6901). */
  readonly pointer: string;
  /** What is wrong and what to do, to be read after the pointer. */
  readonly text: string;
}

/** Problems in the reader's words, in the order found. */
export function problemsOfIssues(issues: readonly BaseIssue<unknown>[], root = ''): Problem[] {
  return issues.flatMap((issue) => problemsOfIssue(issue, root));
}

function problemsOfIssue(issue: BaseIssue<unknown>, root: string): Problem[] {
  const pointer = root + (issue.path ?? []).map((item) => `/${escapePointer(String(item.key))}`).join('');
  if (issue.type === 'union') return shapeProblems(issue, pointer);
  if (issue.message.startsWith('is ')) return [{ pointer, text: `${pointerWords(pointer)} ${issue.message}` }];
  return [{ pointer, text: `${pointerWords(pointer)} = ${valueWords(issue.input)}: ${issue.message}` }];
}

/** A shape that fits none of its four forms is judged by the one whose key it has. */
function shapeProblems(issue: BaseIssue<unknown>, pointer: string): Problem[] {
  const input = issue.input;
  if (typeof input === 'object' && input !== null) {
    const shapeKeys = Object.keys(SHAPES) as (keyof typeof SHAPES)[];
    const named = shapeKeys.filter((key) => Object.hasOwn(input, key));
    if (named.length === 1) {
      const result = v.safeParse(SHAPES[named[0] as keyof typeof SHAPES], input, { abortPipeEarly: true });
      if (result.issues) return problemsOfIssues(result.issues, pointer);
    }
    if (named.length > 1) {
      return [{ pointer, text: `${pointerWords(pointer)} has ${named.join(' and ')}; give only one of them` }];
    }
    const [key] = Object.keys(input);
    const near = key === undefined ? null : nearestWord(key, shapeKeys);
    if (key !== undefined && near !== null) {
      const at = `${pointer}/${escapePointer(key)}`;
      return [{ pointer: at, text: `${pointerWords(at)} is not a known key; did you mean "${near}"?` }];
    }
  }
  return [{ pointer, text: `${pointerWords(pointer)} = ${valueWords(input)}: ${issue.message}` }];
}

/** A key as a step of a JSON pointer. */
function escapePointer(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1');
}

function pointerWords(pointer: string): string {
  return pointer === '' ? 'the job' : shorten(pointer, 200);
}

/** A value short enough for one line: never the inside of an object. */
export function valueWords(value: unknown): string {
  if (typeof value === 'string') return shorten(JSON.stringify(shorten(value, 60)), 80);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'object') return 'an object';
  if (typeof value === 'function') return 'a function';
  return (value as number | bigint | boolean | symbol).toString();
}

function shorten(words: string, most: number): string {
  return words.length <= most ? words : `${words.slice(0, most - 1)}…`;
}
