import { MEASURE_WORDS, MEASURES, numberCell, textCell, unitSize, type Measure, type QuantityName, type RubricSpec, type Score, type TaskSpec, type UnitSystem } from '../../../sim/index.ts';
import type { ClassReply } from '../../worker/protocol.ts';
import type { Problem } from '../problem.ts';
import type { OpenedSession } from './sessionFiles.ts';

/** One session of the class. Ids of sessions repeat from one trainee's browser to another's, so a row has a key of its own. */
export interface ClassRow extends OpenedSession {
  readonly key: number;
  /** Null while it waits to be marked, and where that failed. */
  readonly reply: ClassReply | null;
  /** Why it could not be marked. */
  readonly problem: Problem | null;
}

export type ClassOrder = 'name' | 'total';

/** How a session stands in one measure. */
export type ClassCell =
  | { readonly kind: 'not-asked' | 'waiting' | 'no-limit' | 'met' }
  | { readonly kind: 'missed'; readonly value: number | null };

/** Adds what was opened. A session that is in the table already is left out. */
export function withOpened(rows: readonly ClassRow[], opened: readonly OpenedSession[]): readonly ClassRow[] {
  const all = [...rows];
  for (const { file, session } of opened) {
    if (all.some((row) => isSame(row, session))) continue;
    all.push({ key: (all.at(-1)?.key ?? 0) + 1, file, session, reply: null, problem: null });
  }
  return all;
}

function isSame({ session }: ClassRow, other: OpenedSession['session']): boolean {
  return session.id === other.id && session.trainee === other.trainee && session.sprayedAt === other.sprayedAt && session.strokes === other.strokes;
}

/** Rows in the order of trainees' names, or of totals, best first and those without one last. */
export function sortedRows(rows: readonly ClassRow[], order: ClassOrder): readonly ClassRow[] {
  const byName = (a: ClassRow, b: ClassRow): number =>
    a.session.trainee.localeCompare(b.session.trainee) || a.session.sprayedAt.localeCompare(b.session.sprayedAt) || a.key - b.key;
  const total = ({ reply }: ClassRow): number => (reply === null || Number.isNaN(reply.score.total) ? -1 : reply.score.total);
  return [...rows].sort((a, b) => (order === 'total' ? total(b) - total(a) : 0) || byName(a, b));
}

/** Measures that at least one session's task asks for, in an instructor's order. */
export function classMeasures(rows: readonly ClassRow[]): readonly Measure[] {
  return MEASURES.filter((measure) => rows.some(({ session }) => session.task.counts.includes(measure)));
}

/** How a row stands in one measure. */
export function cellOf({ session, reply }: ClassRow, measure: Measure): ClassCell {
  if (!session.task.counts.includes(measure)) return { kind: 'not-asked' };
  return reply === null ? { kind: 'waiting' } : standing(reply.score, measure);
}

function standing({ rows }: Score, measure: Measure): ClassCell {
  const row = rows.find((each) => each.measure === measure);
  if (row === undefined) return { kind: 'no-limit' };
  return row.isMet ? { kind: 'met' } : { kind: 'missed', value: row.value };
}

/** What a session missed of what its task asks for, in an instructor's order. */
export interface Miss {
  readonly measure: Measure;
  readonly cell: ClassCell;
}

/** Every criterion that a session does not meet. One that the rubric has no limit for counts as not met. */
export function missesOf({ counts }: TaskSpec, score: Score): readonly Miss[] {
  return MEASURES.filter((measure) => counts.includes(measure))
    .map((measure) => ({ measure, cell: standing(score, measure) }))
    .filter(({ cell }) => cell.kind !== 'met');
}

/** Of the sessions that were marked in a measure, how many miss it. */
export interface MissCount {
  readonly missed: number;
  readonly of: number;
}

export function missCount(rows: readonly ClassRow[], measure: Measure): MissCount {
  const cells = rows.map((row) => cellOf(row, measure).kind);
  const missed = cells.filter((kind) => kind === 'missed').length;
  return { missed, of: missed + cells.filter((kind) => kind === 'met').length };
}

/** A unit of a rubric file as the reader has it: what it measures, in words metric and US. */
const READER_UNITS: Readonly<Record<'mm' | 'percent' | 'deg' | 's', readonly [QuantityName, metric: string, us: string]>> = {
  mm: ['length', 'mm', 'in'],
  percent: ['ratio', '%', '%'],
  deg: ['angle', '°', '°'],
  s: ['time', 's', 's'],
};

/**
 * The table as CSV, RFC 4180 with CRLF: for each measure its figure as a number and whether it is met. Names are
 * guarded, so that no spreadsheet takes one for a formula.
 */
export function classCsv(rows: readonly ClassRow[], rubric: RubricSpec, system: UnitSystem): string {
  const measures = classMeasures(rows);
  const unitOf = (measure: Measure): readonly [name: string, size: number] => {
    const [quantity, metric, us] = READER_UNITS[MEASURE_WORDS[measure].unit];
    const name = system === 'us' ? us : metric;
    return [name, unitSize(quantity, name)];
  };
  const head = ['Trainee', 'Drill', 'Session', 'Sprayed at', 'File', 'Rubric', 'Total (%)', 'Passed', ...measures.flatMap((measure) => [`${MEASURE_WORDS[measure].title} (${unitOf(measure)[0]})`, `${MEASURE_WORDS[measure].title} met`])];
  const lines = rows.map((row) => {
    const { session, reply, file } = row;
    const texts = [session.trainee, session.task.title, session.name, session.sprayedAt, file, rubric.name].map(textCell);
    const passed = reply === null ? (row.problem === null ? 'not marked yet' : 'could not be marked') : reply.score.isPassed ? 'yes' : 'no';
    const figures = measures.flatMap((measure) => {
      const value = reply?.score.rows.find((each) => each.measure === measure)?.value ?? NaN;
      return [numberCell(value / unitOf(measure)[1], 4), MET_WORDS[cellOf(row, measure).kind]];
    });
    return [...texts, numberCell((reply?.score.total ?? NaN) * 100, 4), passed, ...figures];
  });
  return [head.map(textCell), ...lines].map((cells) => `${cells.join(',')}\r\n`).join('');
}

const MET_WORDS: Readonly<Record<ClassCell['kind'], string>> = {
  'not-asked': 'not asked for',
  waiting: '',
  'no-limit': 'no limit in the rubric',
  met: 'yes',
  missed: 'no',
};
