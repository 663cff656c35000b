import type { JSX } from 'preact';
import { chooseCoat } from '../../app/chooseCoat.ts';
import { redo, undo, coat } from '../../app/document.ts';
import { room } from '../../app/keeping/keeping.ts';
import { state } from '../../app/state.ts';
import { ButtonRow } from '../fields/ButtonRow.tsx';
import { FileActions } from './FileActions.tsx';

/** The title block: what is open, in whose units, and what can be done with the whole. */
export function Header(): JSX.Element {
  const job = state.job.value;
  const past = state.past.value.at(-1);
  const future = state.future.value.at(-1);
  return (
    <header class="title-block">
      <div class="title-cell title-name">
        <h1>Crosscoat</h1>
        <p>{job.name}</p>
        {room.value.privateGuess === 'likely' ? <p role="status">A private window, it seems: what is not saved as a file is gone when it closes</p> : null}
      </div>
      <div class="title-cell title-coat">
        <label class="title-label" for="coat">Coat</label>
        <select id="coat" onChange={(event) => chooseCoat(event.currentTarget.value)}>
          {job.coats.map((each) => (
            <option key={each.id} value={each.id} selected={each.id === coat.value.id}>{each.name}</option>
          ))}
        </select>
      </div>
      <div class="title-cell">
        <ButtonRow
          label="Units"
          value={state.units.value}
          options={[['metric', 'µm · mm'], ['us', 'mil · in']]}
          choose={(units) => (state.units.value = units)}
        />
      </div>
      <div class="title-cell title-actions">
        <button type="button" disabled={past === undefined} title={past === undefined ? '' : `Undo: ${past.label}`} onClick={undo}>Undo</button>
        <button type="button" disabled={future === undefined} title={future === undefined ? '' : `Redo: ${future.label}`} onClick={redo}>Redo</button>
        <FileActions />
      </div>
    </header>
  );
}
