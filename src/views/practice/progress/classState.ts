import { computed, signal } from '@preact/signals';
import type { RubricSpec, SessionSpec } from '../../../../sim/index.ts';
import { problemOf, type Problem } from '../../../app/problem.ts';
import { withOpened, type ClassOrder, type ClassRow } from '../../../app/practice/classTable.ts';
import { readSessionFiles, type ReadableFile } from '../../../app/practice/sessionFiles.ts';
import type { ClassReply } from '../../../worker/protocol.ts';

/** Marks one session; rejects with why it cannot be marked. */
export type MarkSession = (session: SessionSpec, rubric: RubricSpec) => Promise<ClassReply>;

/** The class as opened, for as long as the page is. */
export const classState = {
  rows: signal<readonly ClassRow[]>([]),
  /** Files that would not open, of the last choice. */
  refused: signal<readonly Problem[]>([]),
  order: signal<ClassOrder>('name'),
  reading: signal(false),
};

const isWaiting = ({ reply, problem }: ClassRow): boolean => reply === null && problem === null;

/** How many sessions still wait to be marked. */
export const waitingCount = computed(() => classState.rows.value.filter(isWaiting).length);

/** Opens session files into the table; those that are in it already stay as they are. */
export async function openClassFiles(files: readonly ReadableFile[]): Promise<void> {
  if (files.length === 0) return;
  classState.reading.value = true;
  const { opened, refused } = await readSessionFiles(files);
  classState.rows.value = withOpened(classState.rows.peek(), opened);
  classState.refused.value = refused;
  classState.reading.value = false;
}

export function clearClass(): void {
  stopMarking();
  markedBy = '';
  classState.rows.value = [];
  classState.refused.value = [];
}

/** The rubric that the rows are marked by, as text. */
let markedBy = '';
/** The marking under way; a newer one makes an older one's answers void. */
let turn = 0;
let isMarking = false;

/**
 * Marks every row that waits, one after another, in the order in which they were opened. Another
 * rubric than before marks all of them again.
 */
export async function markClass(mark: MarkSession, rubric: RubricSpec): Promise<void> {
  const rubricText = JSON.stringify(rubric);
  if (rubricText !== markedBy) {
    stopMarking();
    markedBy = rubricText;
    classState.rows.value = classState.rows.peek().map((row) => ({ ...row, reply: null, problem: null }));
  }
  if (isMarking) return;
  isMarking = true;
  const mine = ++turn;
  for (let next = classState.rows.peek().find(isWaiting); next !== undefined; next = classState.rows.peek().find(isWaiting)) {
    const marked = await markedRow(next, mark, rubric);
    if (mine !== turn) return;
    classState.rows.value = classState.rows.peek().map((row) => (row.key === marked.key ? marked : row));
  }
  isMarking = false;
}

/** Leaves the rest unmarked until it is asked for again. */
export function stopMarking(): void {
  turn++;
  isMarking = false;
}

/** Lets the rows that failed wait again. */
export function waitAgain(): void {
  classState.rows.value = classState.rows.peek().map((row) => ({ ...row, problem: null }));
}

async function markedRow(row: ClassRow, mark: MarkSession, rubric: RubricSpec): Promise<ClassRow> {
  try {
    return { ...row, reply: await mark(row.session, rubric), problem: null };
  } catch (thrown) {
    return { ...row, problem: problemOf('Not marked', thrown) };
  }
}
