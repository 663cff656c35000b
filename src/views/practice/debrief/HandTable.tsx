import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { shownUnit, type ReportedDebrief, type UnitSystem } from '../../../../sim/index.ts';
import { HAND_COLUMNS, handRows, type HandCell, type HandColumn, type HandMark, type HandRow } from './handRows.ts';

/** Rows drawn at most: a session of thousands of strokes is for the CSV. */
const MOST_ROWS = 400;

const MARKS: Readonly<Record<HandMark, readonly [sign: string, words: string]>> = {
  above: ['▲', 'above the band'],
  below: ['▼', 'below the band'],
  unsteady: ['↕', 'unsteady'],
};

export interface HandTableProps {
  readonly debrief: ReportedDebrief;
  readonly units: UnitSystem;
  readonly chosen: number | null;
  readonly choose: (stroke: number | null) => void;
}

/** What the hand did, stroke by stroke, against what was meant. */
export function HandTable({ debrief, units, chosen, choose }: HandTableProps): JSX.Element {
  const rows = useMemo(() => handRows(debrief, units), [debrief, units]);
  return (
    <section class="debrief-part" aria-label="Strokes">
      <h2>Strokes: {rows.length}</h2>
      <p>
        Under a figure stands what was meant; a square gun, fluid on and off past the edge and no stops always are.{' '}
        {MARKS.above[0]} above and {MARKS.below[0]} below the rubric's band; {MARKS.unsteady[0]} right on average, but not steady. Off square is
        what is exceeded for a twentieth of the stroke.{' '}
        <span class="screen-only">Choose a stroke to see it in the picture and in the traces.</span>
      </p>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Stroke by stroke">
        <table class="hand-table">
          <thead>
            <tr>
              <th scope="col">stroke</th>
              <th scope="col">pass</th>
              {HAND_COLUMNS.map((column) => <Head key={column} column={column} units={units} />)}
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, MOST_ROWS).map((row) => (
              <Row key={row.stroke} row={row} isChosen={row.stroke === chosen} choose={() => choose(row.stroke === chosen ? null : row.stroke)} />
            ))}
          </tbody>
        </table>
      </div>
      {rows.length > MOST_ROWS ? <p class="soft">and {rows.length - MOST_ROWS} more; export the table to have them all.</p> : null}
    </section>
  );
}

const HEADS: Readonly<Record<HandColumn, readonly [words: string, quantity: 'length' | 'speed' | null]>> = {
  length: ['length', 'length'],
  speed: ['speed', 'speed'],
  varies: ['varies', null],
  distance: ['distance', 'length'],
  tilt: ['off square', null],
  overlap: ['overlap', null],
  on: ['on past edge', 'length'],
  off: ['off past edge', 'length'],
  stops: ['stops', null],
};

function Head({ column, units }: { readonly column: HandColumn; readonly units: UnitSystem }): JSX.Element {
  const [words, quantity] = HEADS[column];
  return <th scope="col">{words}{quantity === null ? null : <><br />{shownUnit(quantity, units).name}</>}</th>;
}

function Row({ row, isChosen, choose }: { readonly row: HandRow; readonly isChosen: boolean; readonly choose: () => void }): JSX.Element {
  return (
    <tr class={isChosen ? 'chosen' : ''}>
      <th scope="row">
        <button type="button" class="row-button" aria-pressed={isChosen} aria-label={`Stroke ${row.stroke + 1}`} onClick={choose}>{row.stroke + 1}</button>
      </th>
      <td>{row.pass + 1}</td>
      {HAND_COLUMNS.map((column) => <Cell key={column} cell={row.cells[column]} />)}
    </tr>
  );
}

function Cell({ cell: { text, meant, mark } }: { readonly cell: HandCell }): JSX.Element {
  return (
    <td class={mark === null ? '' : 'out'}>
      {mark === null ? null : <><span aria-hidden="true">{MARKS[mark][0]} </span><span class="hidden-words">{MARKS[mark][1]}: </span></>}
      {text}
      {meant === '' ? null : <span class="hand-meant"><span class="hidden-words"> meant </span>{meant}</span>}
    </td>
  );
}
