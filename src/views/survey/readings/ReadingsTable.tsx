import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { counted, type SurveySpec } from '../../../../sim/index.ts';
import { PAGE_ROWS, readingRows, type ReadingRow } from '../../../app/survey/readingRows.ts';
import { removeReading } from '../../../app/survey/surveyCommands.ts';
import { takenOf } from '../../../app/survey/surveyJudged.ts';
import { state } from '../../../app/state.ts';
import { ReadingEditor } from './ReadingEditor.tsx';

/** The readings, newest page first in sight, a hundred at a time. */
export function ReadingsTable({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const { readings, signed } = survey;
  const pages = Math.max(1, Math.ceil(readings.length / PAGE_ROWS));
  const [asked, setPage] = useState(pages - 1);
  const [open, setOpen] = useState<number | null>(null);
  const page = Math.min(asked, pages - 1);
  if (readings.length === 0) return <p class="soft">No readings yet.</p>;
  const rows = readingRows(readings, page, takenOf(survey) ?? { dryDensity_kg_m3: null, solidsFraction: null }, state.units.value);
  const turn = (next: number): void => {
    setPage(next);
    setOpen(null);
  };
  return (
    <>
      {pages === 1 ? null : <Pages page={page} pages={pages} turn={turn} />}
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Table of readings">
        <table class="survey-readings-table">
          <caption class="hidden-words">{counted(readings.length, 'reading')}</caption>
          <thead><tr><th scope="col">No.</th><th scope="col">As read</th><th scope="col">Dry film</th><th scope="col">Place</th><th scope="col">Area, spot</th><th scope="col">Kind</th><th scope="col"><span class="hidden-words">Change</span></th></tr></thead>
          <tbody>
            {rows.map((row) => (
              <Row key={row.index} row={row} note={readings[row.index]?.note ?? ''} isLocked={signed !== undefined} isOpen={open === row.index} open={(isOpen) => setOpen(isOpen ? row.index : null)} />
            ))}
          </tbody>
        </table>
      </div>
      {open === null || readings[open] === undefined ? null : <ReadingEditor key={open} index={open} reading={readings[open]} close={() => setOpen(null)} />}
    </>
  );
}

interface RowProps {
  readonly row: ReadingRow;
  readonly note: string;
  readonly isLocked: boolean;
  readonly isOpen: boolean;
  readonly open: (isOpen: boolean) => void;
}

function Row({ row, note, isLocked, isOpen, open }: RowProps): JSX.Element {
  const number = row.index + 1;
  return (
    <tr class={isOpen ? 'chosen' : ''}>
      <th scope="row">{number}</th>
      <td>{row.asRead}</td>
      <td>{row.dry}</td>
      <td>{row.place}</td>
      <td>{row.group}</td>
      <td>{row.kind}{note === '' ? '' : `; ${note}`}</td>
      <td>
        <button type="button" disabled={isLocked} aria-expanded={isOpen} aria-label={`Change reading ${number}`} onClick={() => open(!isOpen)}>Change</button>
        <button type="button" disabled={isLocked} aria-label={`Remove reading ${number}`} onClick={() => { open(false); removeReading(row.index); }}>Remove</button>
      </td>
    </tr>
  );
}

function Pages({ page, pages, turn }: { readonly page: number; readonly pages: number; readonly turn: (page: number) => void }): JSX.Element {
  return (
    <div class="actions" role="group" aria-label="Pages of readings">
      <button type="button" disabled={page === 0} onClick={() => turn(0)}>First</button>
      <button type="button" disabled={page === 0} onClick={() => turn(page - 1)}>Before</button>
      <p class="survey-readings-page">{`Page ${page + 1} of ${pages}`}</p>
      <button type="button" disabled={page === pages - 1} onClick={() => turn(page + 1)}>Next</button>
      <button type="button" disabled={page === pages - 1} onClick={() => turn(pages - 1)}>Last</button>
    </div>
  );
}
