import './mix.css';
import type { JSX } from 'preact';
import { leaveField } from '../../app/fieldText.ts';
import { readBlend, type BlendRow } from '../../app/blendText.ts';
import { FieldNote } from '../fields/FieldNote.tsx';
import { withChosen, type Choices } from './choices.ts';

/** The schema's limit on the solvents of a thinner. */
const MOST_ROWS = 12;

export interface BlendRowsProps {
  /** JSON pointer of the blend. */
  readonly pointer: string;
  readonly rows: readonly BlendRow[];
  readonly solvents: Choices;
  /** Takes rows while a share is being typed. */
  readonly type: (rows: readonly BlendRow[]) => void;
  /** Takes rows after a choice or a button. */
  readonly choose: (rows: readonly BlendRow[]) => void;
}

/** Solvents and their shares of a blend, the sum below; what is wrong stands beside it. */
export function BlendRows({ pointer, rows, solvents, type, choose }: BlendRowsProps): JSX.Element {
  const read = readBlend(rows);
  const wrongRow = 'problem' in read ? read.row : null;
  const sumProblem = 'problem' in read && read.row === null ? read.problem : null;
  const withRow = (i: number, change: Partial<BlendRow>): BlendRow[] => rows.map((row, each) => (each === i ? { ...row, ...change } : row));
  const free = solvents.filter(([id]) => !rows.some(({ solvent }) => solvent === id));
  const sumId = 'thinner-sum';
  return (
    <fieldset class="group" aria-describedby={sumId}>
      <legend>Thinner, % by volume</legend>
      {rows.map((row, i) => (
        <div key={i} class="blend-row">
          <select aria-label={`Solvent ${i + 1}`} onChange={(event) => choose(withRow(i, { solvent: event.currentTarget.value }))}>
            {withChosen(solvents, row.solvent).map(([id, words]) => <option key={id} value={id} selected={id === row.solvent}>{words}</option>)}
          </select>
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            aria-label={`Share of solvent ${i + 1}, %`}
            aria-invalid={wrongRow === i || sumProblem !== null}
            aria-describedby={wrongRow === i ? `thinner-${i}-note` : sumId}
            value={row.share}
            onInput={(event) => type(withRow(i, { share: event.currentTarget.value }))}
            onBlur={() => leaveField(pointer)}
          />
          <button
            type="button"
            disabled={rows.length < 2}
            aria-label={`Remove solvent ${i + 1}`}
            title="Remove this solvent"
            onClick={() => choose(rows.filter((_, each) => each !== i))}
          >
            ×
          </button>
          {wrongRow === i && 'problem' in read ? <FieldNote id={`thinner-${i}-note`} problem={read.problem} hint={undefined} /> : null}
        </div>
      ))}
      <FieldNote
        id={sumId}
        problem={sumProblem === null ? null : `${sumProblem}. The job keeps the last thinner that added up.`}
        hint={read.sum === null ? 'The sum waits for the share above.' : `Together ${read.sum} %.`}
      />
      <div class="actions">
        <button
          type="button"
          disabled={rows.length >= MOST_ROWS || free.length === 0}
          onClick={() => choose([...rows, { solvent: free[0]?.[0] ?? '', share: missing(read.sum) }])}
        >
          Add a solvent
        </button>
      </div>
    </fieldset>
  );
}

/** What a new row is given: the share that the others leave, so that they add up; nothing where they leave none. */
function missing(sum: number | null): string {
  return sum === null || !(sum < 100) ? '' : String(Number((100 - sum).toFixed(2)));
}
