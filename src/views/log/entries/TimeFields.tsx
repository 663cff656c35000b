import type { JSX } from 'preact';
import type { LogEntrySpec } from '../../../../sim/index.ts';
import { changeEntry } from '../../../app/log/entryChange.ts';
import { noteNow } from '../../../app/log/logCommands.ts';
import { MomentField } from '../../fields/MomentField.tsx';

/** Start and end, by the device's clock or typed. */
export function TimeFields({ entry }: { readonly entry: LogEntrySpec }): JSX.Element {
  return (
    <div class="log-entries-times">
      <MomentField id="entry-started" label="Begun" value={entry.started} set={(at) => changeEntry('Begun', '/started', at)} />
      <div class="log-entries-end">
        {entry.ended === undefined ? null : <MomentField id="entry-ended" label="Ended" value={entry.ended} set={(at) => changeEntry('Ended', '/ended', at)} />}
        <div class="actions">
          <button type="button" onClick={() => noteNow('started')}>Begin now</button>
          <button type="button" class={entry.ended === undefined ? 'act' : ''} onClick={() => noteNow('ended')}>End now</button>
          {entry.ended === undefined ? null : <button type="button" onClick={() => changeEntry('Take the end out', '/ended', undefined)}>No end yet</button>}
        </div>
      </div>
    </div>
  );
}
