import * as v from 'valibot';
import { CrosscoatError } from '../base/errors.ts';
import { problemsOfIssues } from './problems.ts';
import { ruleProblems } from './recordReferences.ts';
import type { RuleSpec } from './schema.ts';
import { RuleSchema } from './surveySchema.ts';

/** A rule as stated; what may be left out has the schema's own defaults. */
export type RuleInput = v.InferInput<typeof RuleSchema>;

/**
 * A rule that stands outside a job, held to the same limits as in one.
 * @param name what messages call it.
 * @param typed what messages write in place of a key and its value, by key: `nominal_um` as `--nominal = "100ft"`.
 * @throws CrosscoatError `schema`, naming all that is wrong with it.
 */
export function checkRule(rule: RuleInput, name = 'rule', typed: Readonly<Record<string, string>> = {}): RuleSpec {
  const parsed = v.safeParse(RuleSchema, rule);
  const problems = parsed.success ? ruleProblems('', parsed.output) : problemsOfIssues(parsed.issues);
  if (parsed.success && problems.length === 0) return parsed.output;
  throw new CrosscoatError('schema', `${name}: ${problems.map(({ text }) => asTyped(text, typed)).join('; ')}`, { pointer: problems[0]?.pointer ?? '' });
}

/** Keys with their values as whoever stated the rule wrote them. */
function asTyped(text: string, typed: Readonly<Record<string, string>>): string {
  return text.replaceAll(/\/?\b(\w+) = [^\s:;]+/g, (whole, key: string) => (Object.hasOwn(typed, key) ? (typed[key] as string) : whole));
}
