import { MEASURE_WORDS, MORE_IS_BETTER, USUAL_RUBRIC, type Measure, type RubricRowSpec, type RubricSpec, type UnitSystem } from '../../../../sim/index.ts';
import { readTyped, typedText, unitOfKey } from '../../../app/units.ts';

/** The numbers of a rubric's row, in the order in which they are read. */
export const RUBRIC_FIELDS = ['weight', 'limit', 'none'] as const;
export type RubricField = (typeof RUBRIC_FIELDS)[number];

/** What is being typed, by `rubricKey`; kept until the row it stands in is right and is left. */
export type RubricDrafts = Readonly<Record<string, string>>;

/** As the rubric's file has them. */
const MOST: Readonly<Record<RubricField, number>> = { weight: 100, limit: 10_000, none: 10_000 };

export function rubricKey(measure: Measure, field: RubricField): string {
  return `${measure}/${field}`;
}

/** A key whose ending tells its unit, as the job's keys do. */
function unitKey(measure: Measure, field: RubricField): string {
  if (field === 'weight') return 'weight';
  const { unit } = MEASURE_WORDS[measure];
  return { mm: '_mm', percent: 'percent', deg: '_deg', s: 'seconds' }[unit];
}

/** The name of the unit that a field is typed in; empty for a weight. */
export function rubricUnit(measure: Measure, field: RubricField, system: UnitSystem): string {
  return unitOfKey(unitKey(measure, field), system);
}

/** The text of a field: as typed, or the rubric's value. */
export function rubricText(row: RubricRowSpec, field: RubricField, drafts: RubricDrafts, system: UnitSystem): string {
  return drafts[rubricKey(row.measure, field)] ?? typedText(row[field], unitKey(row.measure, field), system);
}

/** A row as typed: its values, or what is wrong with which field. */
export interface TypedRow {
  readonly row: RubricRowSpec;
  /** Empty where the row can be marked by. */
  readonly problems: Readonly<Partial<Record<RubricField, string>>>;
}

/** Reads a row with what is typed in it. While anything in it is wrong, the row stays as it was. */
export function typedRow(row: RubricRowSpec, drafts: RubricDrafts, system: UnitSystem): TypedRow {
  const problems: Partial<Record<RubricField, string>> = {};
  const values: Record<RubricField, number> = { weight: row.weight, limit: row.limit, none: row.none };
  for (const field of RUBRIC_FIELDS) {
    const text = drafts[rubricKey(row.measure, field)];
    if (text === undefined) continue;
    const read = readField(row.measure, field, text, system);
    if ('problem' in read) problems[field] = read.problem;
    else values[field] = read.value;
  }
  const isRead = Object.keys(problems).length === 0;
  if (isRead && !isRightSide(row.measure, values)) {
    problems.none = `No mark ${MORE_IS_BETTER.includes(row.measure) ? 'below' : 'from'} here on must lie ${MORE_IS_BETTER.includes(row.measure) ? 'below' : 'above'} the limit; change one of the two`;
  }
  return Object.keys(problems).length === 0 ? { row: { measure: row.measure, ...values }, problems } : { row, problems };
}

function readField(measure: Measure, field: RubricField, text: string, system: UnitSystem): { readonly value: number } | { readonly problem: string } {
  const key = unitKey(measure, field);
  const read = readTyped(text, key, system);
  if ('problem' in read || (read.value >= 0 && read.value <= MOST[field])) return read;
  const shown = (value: number): string => `${typedText(value, key, system)} ${unitOfKey(key, system)}`.trim();
  return { problem: `${shown(read.value)} is outside 0 to ${shown(MOST[field])}; give a number within these` };
}

function isRightSide(measure: Measure, { limit, none }: Readonly<Record<RubricField, number>>): boolean {
  return MORE_IS_BETTER.includes(measure) ? none < limit : none > limit;
}

/** The rubric with one row put in place of the row of its measure. */
export function withRow(rubric: RubricSpec, row: RubricRowSpec): RubricSpec {
  return { ...rubric, rows: rubric.rows.map((each) => (each.measure === row.measure ? row : each)) };
}

/** The rubric with the usual row of a measure that it did not mark, in the usual order. */
export function withMeasure(rubric: RubricSpec, measure: Measure): RubricSpec {
  const rows = USUAL_RUBRIC.rows.flatMap((usual) => {
    const own = rubric.rows.find((row) => row.measure === usual.measure);
    if (own !== undefined) return [own];
    return usual.measure === measure ? [usual] : [];
  });
  return { ...rubric, rows };
}

/** What is typed without a row's texts. */
export function withoutRow(drafts: RubricDrafts, measure: Measure): RubricDrafts {
  return Object.fromEntries(Object.entries(drafts).filter(([key]) => !key.startsWith(`${measure}/`)));
}
