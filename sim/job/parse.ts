import type { Warning } from '../base/errors.ts';
import { valueWords, type Problem } from './problems.ts';
import { fitted, MOST_PROBLEMS, problemsError, readJson } from './readFile.ts';
import { referenceProblems } from './references.ts';
import { JobSchema, type Job } from './schema.ts';
import { addedSince, cameAfter, fileWords, upgradeJob } from './upgrade.ts';

/** A job and what had to be assumed while reading it. */
export interface ParsedJob {
  readonly job: Job;
  readonly warnings: Warning[];
}

/**
 * A job from the text of a file, or from a value already read from JSON: upgraded to this
 * version, its defaults filled in, its ids and limits checked. Geometry and recordings are read
 * later, by the stages that use them.
 * @param file name of the file, for messages.
 * @throws CrosscoatError `limit`, `not-json` (with row and column), `version`, or `schema` (one
 * error for up to ten problems, each with its JSON pointer, value, limit and advice).
 */
export function parseJob(input: unknown, file?: string): ParsedJob {
  const head = { words: fileWords(file), file };
  const { job: stated, version } = upgradeJob(typeof input === 'string' ? readJson(input, head) : input, file);
  const job = fitted(JobSchema, stated, head);
  const problems = referenceProblems(job);
  if (problems.length > 0) throw problemsError(problems, head);
  return { job, warnings: defaultWarnings(stated, job, version) };
}

/** Lists that are empty by default add nothing that a reader should check. */
function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}

/**
 * One warning that names the values filled in, and one in a few words for all that a file of an
 * older version could not state: that is no slip of its writer, and is no list to be read through.
 */
function defaultWarnings(stated: unknown, job: Job, version: number): Warning[] {
  const filled: Problem[] = [];
  collectFilled('', stated, job, filled);
  const unasked = filled.filter(({ pointer }) => cameAfter(version, pointer));
  const left = filled.filter((one) => !unasked.includes(one));
  return [...(unasked.length === 0 ? [] : [olderFile(version)]), ...(left.length === 0 ? [] : [leftOut(left)])];
}

function olderFile(version: number): Warning {
  const text = `This job was written as version ${version}, which did not ask for ${addedSince(version)}; the usual values are taken.`;
  return { code: 'defaults-used', text, place: { pointer: '/schemaVersion' } };
}

function leftOut(filled: readonly Problem[]): Warning {
  const named = filled.slice(0, MOST_PROBLEMS).map((one) => one.text);
  const more = filled.length - named.length;
  const text = `Not stated, so the usual value is taken: ${named.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`;
  return { code: 'defaults-used', text, place: { pointer: (filled[0] as Problem).pointer } };
}

/** Walks the parsed job beside the stated one; the schema fixes the depth. */
function collectFilled(pointer: string, stated: unknown, parsed: unknown, filled: Problem[]): void {
  if (typeof parsed !== 'object' || parsed === null || typeof stated !== 'object' || stated === null) return;
  for (const [key, value] of Object.entries(parsed)) {
    const at = `${pointer}/${key}`;
    if (key in stated) collectFilled(at, (stated as Record<string, unknown>)[key], value, filled);
    else if (!isEmptyList(value)) filled.push({ pointer: at, text: `${at} = ${defaultWords(value)}` });
  }
}

function defaultWords(value: unknown): string {
  return typeof value === 'object' ? JSON.stringify(value) : valueWords(value);
}
