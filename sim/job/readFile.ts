import * as v from 'valibot';
import { CrosscoatError, type Place } from '../base/errors.ts';
import { findJsonFault } from './jsonFault.ts';
import { problemsOfIssues, type Problem } from './problems.ts';

/** Longest text of a file, letters: an hour of recorded strokes is about a third of it. */
const LONGEST_TEXT = 64e6;

/** Problems named in one error; the rest are counted. */
export const MOST_PROBLEMS = 10;

/** How a file is spoken of in messages, and its name where it has one. */
export interface FileHead {
  /** `parseJob: rudder.json` */
  readonly words: string;
  readonly file: string | undefined;
}

/** JSON from a text. @throws CrosscoatError `limit`, `not-json` with row and column. */
export function readJson(text: string, { words, file }: FileHead): unknown {
  const place: Place = file === undefined ? {} : { file };
  if (text.length > LONGEST_TEXT) {
    throw new CrosscoatError('limit', `${words} is ${(text.length / 1e6).toFixed(1)} million letters long, more than ${LONGEST_TEXT / 1e6} million; shorten the recordings, or give them as a file of their own`, place);
  }
  // Editors on one system put a byte order mark first; RFC 8259 lets a reader skip it.
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  try {
    return JSON.parse(plain) as unknown;
  } catch {
    const fault = findJsonFault(plain);
    if (fault === null) throw new CrosscoatError('not-json', `${words} is not JSON; save it again`, place);
    const { row, column } = fault;
    throw new CrosscoatError('not-json', `${words} is not JSON: in row ${row}, column ${column}, ${fault.text}; mend it there`, {
      ...place,
      row,
      column: String(column),
    });
  }
}

/** A value that fits a schema. @throws CrosscoatError `schema`: one error for up to ten problems. */
export function fitted<S extends v.GenericSchema>(schema: S, value: unknown, head: FileHead): v.InferOutput<S> {
  const result = v.safeParse(schema, value, { abortPipeEarly: true });
  if (!result.success) throw problemsError(problemsOfIssues(result.issues), head);
  return result.output;
}

/** One error for all problems of a file, the first ones named. */
export function problemsError(problems: readonly Problem[], { words, file }: FileHead): CrosscoatError {
  const first = problems[0] as Problem;
  const place: Place = { pointer: first.pointer, ...(file === undefined ? {} : { file }) };
  if (problems.length === 1) return new CrosscoatError('schema', `${words}: ${first.text}`, place);
  const lines = problems.slice(0, MOST_PROBLEMS).map((problem) => `  ${problem.text}`);
  const more = problems.length - lines.length;
  if (more > 0) lines.push(`  and ${more} more`);
  return new CrosscoatError('schema', `${words}: ${problems.length} problems\n${lines.join('\n')}`, place);
}
