import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { MEASURES, MEASURE_WORDS, parseRubric, USUAL_RUBRIC, type RubricSpec, type UnitSystem } from '../../../../sim/index.ts';
import { problemOf, type Problem } from '../../../app/problem.ts';
import { download } from '../../../storage/download.ts';
import { RubricRow } from './RubricRow.tsx';
import { rubricKey, typedRow, withMeasure, withoutRow, withRow, type RubricDrafts } from './rubricDrafts.ts';

export interface RubricEditorProps {
  readonly rubric: RubricSpec;
  readonly onRubric: (next: RubricSpec) => void;
  readonly units: UnitSystem;
}

/** The rubric, to be changed: every right value marks the session again at once; a wrong one stays as typed and is told. */
export function RubricEditor({ rubric, onRubric, units }: RubricEditorProps): JSX.Element {
  const [drafts, setDrafts] = useState<RubricDrafts>({});
  const [problem, setProblem] = useState<Problem | null>(null);
  const replace = (next: RubricSpec): void => {
    setDrafts({});
    setProblem(null);
    onRubric(next);
  };
  const missing = MEASURES.filter((measure) => !rubric.rows.some((row) => row.measure === measure));
  return (
    <details class="rubric">
      <summary>Change the rubric: {rubric.name}</summary>
      <div class="field field-wide">
        <label for="rubric-name">Name of the rubric</label>
        <input id="rubric-name" type="text" maxLength={200} autocomplete="off" value={rubric.name} onChange={(event) => onRubric({ ...rubric, name: event.currentTarget.value })} />
      </div>
      <p class="soft">Up to the limit the mark is full, from “no mark” on there is none, and it falls evenly in between. A weight of 0 leaves a measure out of the total.</p>
      {rubric.rows.map((row) => (
        <RubricRow
          key={row.measure}
          row={row}
          drafts={drafts}
          units={units}
          type={(field, text) => {
            const next = { ...drafts, [rubricKey(row.measure, field)]: text };
            setDrafts(next);
            const typed = typedRow(row, next, units);
            if (Object.keys(typed.problems).length === 0) onRubric(withRow(rubric, typed.row));
          }}
          leave={() => {
            if (Object.keys(typedRow(row, drafts, units).problems).length === 0) setDrafts(withoutRow(drafts, row.measure));
          }}
        />
      ))}
      {missing.length === 0 ? null : (
        <div class="actions" role="group" aria-label="Measures that are not marked">
          {missing.map((measure) => <button key={measure} type="button" onClick={() => onRubric(withMeasure(rubric, measure))}>Mark {MEASURE_WORDS[measure].title.toLowerCase()} too</button>)}
        </div>
      )}
      <RubricFiles rubric={rubric} replace={replace} tell={setProblem} />
      {problem === null ? null : <p class="field-note wrong" role="alert">{problem.title}. {problem.text}</p>}
    </details>
  );
}

interface RubricFilesProps {
  readonly rubric: RubricSpec;
  readonly replace: (next: RubricSpec) => void;
  readonly tell: (problem: Problem) => void;
}

function RubricFiles({ rubric, replace, tell }: RubricFilesProps): JSX.Element {
  const chooser = useRef<HTMLInputElement>(null);
  const open = async (file: File): Promise<void> => {
    try {
      replace(parseRubric(await file.text(), file.name));
    } catch (thrown) {
      tell(problemOf(`${file.name} was not opened; the rubric is as it was`, thrown));
    }
  };
  return (
    <div class="actions">
      <input
        ref={chooser}
        type="file"
        hidden
        accept=".json,application/json"
        data-testid="open-rubric"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file !== undefined) void open(file);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" onClick={() => replace(USUAL_RUBRIC)}>Usual rubric</button>
      <button type="button" onClick={() => chooser.current?.click()}>Open a rubric…</button>
      <button type="button" onClick={() => saveRubric(rubric)}>Save the rubric</button>
    </div>
  );
}

function saveRubric(rubric: RubricSpec): void {
  const stem = rubric.name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '').slice(0, 60);
  download(new Blob([`${JSON.stringify(rubric, null, 2)}\n`], { type: 'application/json' }), `${stem === '' ? 'rubric' : stem}.rubric.json`);
}
