import type { JSX } from 'preact';
import { MEASURE_WORDS, rubricFromSpec, shownMeasure, totalText, type Measure, type RubricSpec, type UnitSystem } from '../../../../sim/index.ts';
import { cellOf, classMeasures, missCount, type ClassCell, type ClassRow } from '../../../app/practice/classTable.ts';
import { LessonMap } from '../../demonstrations/LessonMap.tsx';
import { dateWords, limitWords, passWords, traineeWords } from './progressData.ts';

export interface ClassTableProps {
  /** In the order shown. */
  readonly rows: readonly ClassRow[];
  readonly rubric: RubricSpec;
  readonly system: UnitSystem;
}

/** A row a session: total, each criterion, a small map; below them how many miss each. */
export function ClassTable({ rows, rubric, system }: ClassTableProps): JSX.Element {
  const measures = classMeasures(rows);
  return (
    <>
      <p class="class-key">Marked by: {rubric.name}. ✓ met, ✗ missed, with the figure that missed.</p>
      <div class="scroll-box class-scroll" tabIndex={0} role="region" aria-label="Class table">
        <table class="class-table">
          <thead>
            <tr>
              <th scope="col" class="class-name">Trainee</th>
              <th scope="col">Film</th>
              <th scope="col">Total</th>
              {measures.map((measure) => <th key={measure} scope="col">{MEASURE_WORDS[measure].title}<br /><LimitWords measure={measure} rubric={rubric} system={system} /></th>)}
            </tr>
          </thead>
          <tbody>{rows.map((row) => <Row key={row.key} row={row} measures={measures} system={system} />)}</tbody>
          <tfoot>
            <tr>
              <th scope="row" class="class-name">How many miss it</th>
              <td />
              <td />
              {measures.map((measure) => <td key={measure}>{countWords(rows, measure)}</td>)}
            </tr>
          </tfoot>
        </table>
      </div>
    </>
  );
}

function LimitWords({ measure, rubric, system }: { readonly measure: Measure; readonly rubric: RubricSpec; readonly system: UnitSystem }): JSX.Element {
  const row = rubricFromSpec(rubric).rows.find((each) => each.measure === measure);
  return <>{row === undefined ? 'no limit' : limitWords(row, system)}</>;
}

function countWords(rows: readonly ClassRow[], measure: Measure): string {
  const { missed, of } = missCount(rows, measure);
  return of === 0 ? '–' : `${missed} of ${of}`;
}

function Row({ row, measures, system }: { readonly row: ClassRow; readonly measures: readonly Measure[]; readonly system: UnitSystem }): JSX.Element {
  const { session, reply, problem } = row;
  return (
    <tr>
      <th scope="row" class="class-name">
        {traineeWords(session.trainee)}
        <span class="class-about">{session.task.title}<br />{dateWords(session.sprayedAt)}</span>
      </th>
      <td class="class-map">{reply === null ? null : <LessonMap field={reply.map} values={reply.map.values} title={traineeWords(session.trainee)} />}</td>
      {reply === null ? (
        <td colSpan={measures.length + 1} class="class-wait">{problem === null ? 'Waits to be marked' : `${problem.title}: ${problem.text}`}</td>
      ) : (
        <>
          <td>{totalText(reply.score)}<br /><Sign isMet={reply.score.isPassed} /> {passWords(session.task, reply.score)}</td>
          {measures.map((measure) => <Cell key={measure} cell={cellOf(row, measure)} measure={measure} system={system} />)}
        </>
      )}
    </tr>
  );
}

function Cell({ cell, measure, system }: { readonly cell: ClassCell; readonly measure: Measure; readonly system: UnitSystem }): JSX.Element {
  switch (cell.kind) {
    case 'met':
      return <td><Sign isMet /> met</td>;
    case 'missed':
      return <td class="class-missed"><Sign isMet={false} /> <span class="hidden-words">missed: </span>{shownMeasure(measure, cell.value, system)}</td>;
    case 'no-limit':
      return <td><Sign isMet={false} /> no limit in the rubric</td>;
    case 'not-asked':
      return <td class="soft">not asked</td>;
    case 'waiting':
      return <td />;
  }
}

/** Beside words that say the same. */
function Sign({ isMet }: { readonly isMet: boolean }): JSX.Element {
  return <span aria-hidden="true">{isMet ? '✓' : '✗'}</span>;
}
