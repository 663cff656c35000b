import type { JSX } from 'preact';
import { LOG_FAULTS, type LogEntrySpec } from '../../../../sim/index.ts';
import { addItem, removeItem } from '../../../app/log/listFields.ts';
import { EntryWords } from './EntryBoxes.tsx';

const OTHER = 'other';

/** Faults seen: chosen from the trade's words or typed, where, and what was done about them. */
export function FaultFields({ entry }: { readonly entry: LogEntrySpec }): JSX.Element {
  const choose = (select: HTMLSelectElement): void => {
    const what = select.value;
    select.value = '';
    if (what !== '') addItem('faults', { what: what === OTHER ? '' : what }, 'Add a fault');
  };
  return (
    <fieldset class="log-entries-group">
      <legend>Faults seen</legend>
      {entry.faults.map((_, k) => (
        <div key={k} class="log-entries-item" role="group" aria-label={`Fault ${k + 1}`}>
          <EntryWords at={['faults', k, 'what']} label="What was seen" longest={200} isOptional={false} />
          <EntryWords at={['faults', k, 'where']} label="Where" longest={200} />
          <EntryWords at={['faults', k, 'done']} label="What was done about it" longest={500} />
          <button type="button" aria-label={`Remove fault ${k + 1}`} onClick={() => removeItem('faults', k, 'Remove a fault')}>Remove</button>
        </div>
      ))}
      <div class="field field-wide">
        <label for="entry-fault-add">Add a fault</label>
        <select id="entry-fault-add" value="" onChange={(event) => choose(event.currentTarget)}>
          <option value="">Choose what was seen…</option>
          {LOG_FAULTS.map((fault) => <option key={fault} value={fault}>{fault}</option>)}
          <option value={OTHER}>Something else, in your own words</option>
        </select>
      </div>
    </fieldset>
  );
}
