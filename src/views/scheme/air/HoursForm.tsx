import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { addHour, dayHours, hoursNotes, MOST_SHOWN_ROWS, openHours, removeAllHours, removeHour, setHourTime, takeHours } from '../../../app/scheme/airSheet.ts';
import { state } from '../../../app/state.ts';
import { NumberField } from '../../fields/NumberField.tsx';
import { FileDrop } from '../../frame/FileDrop.tsx';

/** The rows of the day: typed, pasted, or from a logger's file. Every change is a step of undo. */
export function HoursForm(): JSX.Element {
  const total = state.job.value.hours?.length ?? 0;
  const rows = dayHours.value;
  return (
    <FileDrop name="scheme-air-hours" take={([file]) => { if (file !== undefined) void openHours(file); }}>
      <h3>Where the hours come from</h3>
      <p>{total === 0 ? 'No rows yet.' : `${total} rows in the job, ${rows.length} of them on this day.`} A file replaces them all; Undo brings them back.</p>
      {hoursNotes.value.length === 0 ? null : <ul role="status">{hoursNotes.value.map((text) => <li key={text}>{text}</li>)}</ul>}
      <div class="actions">
        <label class="file-button">
          Open a logger’s file
          <input class="hidden-words" type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file !== undefined) void openHours(file);
          }} />
        </label>
        <button type="button" onClick={addHour}>Add an hour</button>
        {total === 0 ? null : <button type="button" onClick={removeAllHours}>Remove all</button>}
      </div>
      <PasteRows />
      {rows.length === 0 ? null : (
        <details>
          <summary>Change the rows of this day</summary>
          {rows.length > MOST_SHOWN_ROWS ? <p>The first {MOST_SHOWN_ROWS} rows of this day can be changed here; change the others in their file.</p> : null}
          <ul class="scheme-air-rows">{rows.slice(0, MOST_SHOWN_ROWS).map(({ hour, index }) => <HourRow key={hour.at} at={hour.at} index={index} />)}</ul>
        </details>
      )}
    </FileDrop>
  );
}

function HourRow({ at, index }: { readonly at: string; readonly index: number }): JSX.Element {
  const id = `hours-${index}-at`;
  return (
    <li>
      <div class="field">
        <label for={id}>Time</label>
        <input id={id} type="datetime-local" value={at} onChange={(event) => (event.currentTarget.value === '' ? (event.currentTarget.value = at) : setHourTime(index, event.currentTarget.value))} />
      </div>
      <NumberField path={['hours', index, 'temperature_C']} label="Temperature" />
      <NumberField path={['hours', index, 'humidity_percent']} label="Humidity" />
      <button type="button" aria-label={`Remove ${at.replace('T', ' ')}`} onClick={() => removeHour(index)}>Remove</button>
    </li>
  );
}

/** Rows from a sheet or a page, with their header. */
function PasteRows(): JSX.Element {
  const [text, setText] = useState('');
  return (
    <details>
      <summary>Paste rows</summary>
      <div class="field field-wide">
        <label for="air-paste">Rows with a header</label>
        <textarea id="air-paste" spellcheck={false} value={text} aria-describedby="air-paste-note" onInput={(event) => setText(event.currentTarget.value)} />
        <span class="field-note" id="air-paste-note">The first line names the columns with their unit: time,temperature_C,humidity_percent or time,temp_F,rh_percent; then a line an hour, such as 2026-05-04T08:00,18,62.</span>
      </div>
      <button type="button" disabled={text.trim() === ''} onClick={() => {
        if (takeHours(text, 'the pasted rows')) setText('');
      }}>Take these rows</button>
    </details>
  );
}
