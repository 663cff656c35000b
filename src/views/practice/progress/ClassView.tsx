import './progress.css';
import '../../demonstrations/demonstrations.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { RubricSpec, UnitSystem } from '../../../../sim/index.ts';
import { classCsv, sortedRows } from '../../../app/practice/classTable.ts';
import { download } from '../../../storage/download.ts';
import { LessonLegend } from '../../demonstrations/LessonLegend.tsx';
import { ButtonRow } from '../../fields/ButtonRow.tsx';
import { FileDrop } from '../../frame/FileDrop.tsx';
import { ClassTable } from './ClassTable.tsx';
import { classState, clearClass, markClass, openClassFiles, stopMarking, waitAgain, waitingCount, type MarkSession } from './classState.ts';

export interface ClassViewProps {
  readonly rubric: RubricSpec;
  readonly system: UnitSystem;
  /** Asked for one session after another. */
  readonly mark: MarkSession;
}

/** A class's session files, marked by one rubric and laid side by side; to be printed on A4, wide. */
export function ClassView({ rubric, system, mark }: ClassViewProps): JSX.Element {
  const { rows, refused, order } = classState;
  const shown = sortedRows(rows.value, order.value);
  const field = shown.find(({ reply }) => reply !== null)?.reply?.map;
  const opened = rows.value.length;
  useEffect(() => void markClass(mark, rubric), [mark, rubric, opened]);
  useEffect(() => stopMarking, []);
  const saveTable = (): void => download(new Blob([classCsv(shown, rubric, system)], { type: 'text/csv' }), 'class-table.csv');
  const tryAgain = (): void => {
    waitAgain();
    void markClass(mark, rubric);
  };
  return (
    <div class="class-view">
      <SessionFiles />
      {refused.value.length === 0 ? null : (
        <ul class="class-refused" role="alert">
          {refused.value.map(({ title, text }) => <li key={title}><strong>{title}.</strong> {text}</li>)}
        </ul>
      )}
      {opened === 0 ? <p>No sessions opened yet. Ask each trainee for their session file (Progress, More, Save session file) and open them all here.</p> : (
        <>
          <MarkingLine opened={opened} />
          <div class="class-tools actions">
            <ButtonRow label="Order of the rows" value={order.value} options={[['name', 'By name'], ['total', 'By total']]} choose={(chosen) => (order.value = chosen)} />
            <button type="button" onClick={() => window.print()}>Print</button>
            <button type="button" onClick={saveTable}>Save table as CSV</button>
            {shown.some(({ problem }) => problem !== null) ? <button type="button" onClick={tryAgain}>Mark the failed ones again</button> : null}
            <button type="button" onClick={clearClass}>Clear the table</button>
          </div>
          <ClassTable rows={shown} rubric={rubric} system={system} />
          {field === undefined ? null : <LessonLegend field={field} />}
        </>
      )}
    </div>
  );
}

function MarkingLine({ opened }: { readonly opened: number }): JSX.Element {
  const waiting = waitingCount.value;
  return (
    <div class="class-marking">
      <p role="status">{waiting === 0 ? `${opened} ${opened === 1 ? 'session' : 'sessions'} in the table.` : `Marking: ${opened - waiting} of ${opened} done.`}</p>
      {waiting === 0 ? null : <progress aria-label="Sessions marked" max={opened} value={opened - waiting} />}
    </div>
  );
}

/** Session files, chosen or dropped. */
function SessionFiles(): JSX.Element {
  return (
    <FileDrop name="class-drop" over="over" take={(files) => void openClassFiles(files)}>
      <label class="file-button">
        Open session files
        <input
          class="hidden-words"
          type="file"
          multiple
          accept=".json,application/json"
          onChange={(event) => {
            const files = [...(event.currentTarget.files ?? [])];
            event.currentTarget.value = '';
            void openClassFiles(files);
          }}
        />
      </label>
      <p class="soft">{classState.reading.value ? 'Reading the files…' : 'Or drop them here, up to 200 at once. They stay on this computer.'}</p>
    </FileDrop>
  );
}
