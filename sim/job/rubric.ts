import * as v from 'valibot';
import { MEASURES, MORE_IS_BETTER } from './measures.ts';
import type { Problem } from './problems.ts';
import { fitted, problemsError, readJson } from './readFile.ts';
import { list, number, oneOf, record, text } from './words.ts';

/** Version of the rubric file that this build writes. */
export const RUBRIC_VERSION = 1;

const RowSchema = record(
  {
    measure: oneOf(MEASURES, 'what is marked'),
    weight: number(0, 100, 'share in the total; with 0 it has none, and must be met all the same'),
    limit: number(0, 10000, 'within it the criterion is met and the mark is full; mm, percent, deg or s, by the measure'),
    none: number(0, 10000, 'from here on there is no mark; in between it falls evenly; same unit'),
  },
  'how one measure is marked',
);

/** How a practice session is marked: weight and limits of each measure, in mm, percent, deg or s by the measure. */
export const RubricSchema = record(
  {
    rubricVersion: v.pipe(v.literal(RUBRIC_VERSION, `give ${RUBRIC_VERSION}, the version that this build reads`), v.description('version of this file format')),
    name: text(200, 'name of the rubric'),
    rows: list(RowSchema, 1, MEASURES.length, 'one row a measure; a measure without a row is not marked'),
  },
  'a rubric',
);

export type RubricSpec = v.InferOutput<typeof RubricSchema>;
export type RubricRowSpec = RubricSpec['rows'][number];

/**
 * The rubric of a new installation. Distance ± 25 mm (two standard deviations), angle 10°, speed
 * within 15 %, overlap 50 ± 10 %, coverage 98 %, evenness 15 % and no runs are common practice in
 * training courses; the marks between limit and none, the weights, and the limits of trigger,
 * stops, dry laps, dust, paint and time are Assumed. An instructor changes all of it.
 */
export const USUAL_RUBRIC: RubricSpec = {
  rubricVersion: RUBRIC_VERSION,
  name: 'Usual rubric',
  rows: [
    { measure: 'distance', weight: 10, limit: 12.5, none: 50 },
    { measure: 'speed', weight: 10, limit: 15, none: 60 },
    { measure: 'angle', weight: 10, limit: 10, none: 30 },
    { measure: 'overlap', weight: 10, limit: 10, none: 35 },
    { measure: 'trigger', weight: 8, limit: 90, none: 40 },
    { measure: 'stops', weight: 8, limit: 0.1, none: 1 },
    { measure: 'coverage', weight: 12, limit: 98, none: 70 },
    { measure: 'evenness', weight: 12, limit: 15, none: 50 },
    { measure: 'runs', weight: 8, limit: 0, none: 2 },
    { measure: 'dry-laps', weight: 4, limit: 1, none: 10 },
    { measure: 'dust', weight: 4, limit: 1, none: 10 },
    { measure: 'paint', weight: 2, limit: 15, none: 80 },
    { measure: 'time', weight: 2, limit: 100, none: 400 },
  ],
};

/** A rubric from the text of a file, or from a value already read from JSON. @throws CrosscoatError `not-json`, `schema`. */
export function parseRubric(input: unknown, file?: string): RubricSpec {
  const head = { words: `parseRubric: ${file ?? 'the rubric'}`, file };
  const rubric = fitted(RubricSchema, typeof input === 'string' ? readJson(input, head) : input, head);
  const problems = rubric.rows.flatMap((row, i) => rowProblems(rubric, row, i));
  if (problems.length > 0) throw problemsError(problems, head);
  return rubric;
}

/** What a schema cannot say: one row a measure, and limits on their right sides. */
function rowProblems({ rows }: RubricSpec, { measure, limit, none }: RubricRowSpec, i: number): Problem[] {
  const first = rows.findIndex((row) => row.measure === measure);
  if (first < i) return [{ pointer: `/rows/${i}/measure`, text: `/rows/${i}/measure = "${measure}" is also marked by /rows/${first}; give each measure one row` }];
  const isRight = MORE_IS_BETTER.includes(measure) ? none < limit : none > limit;
  if (isRight) return [];
  return [{ pointer: `/rows/${i}/none`, text: `/rows/${i}/none = ${none} is not ${MORE_IS_BETTER.includes(measure) ? 'below' : 'above'} /rows/${i}/limit = ${limit} (the mark falls from the limit to there); give another` }];
}
