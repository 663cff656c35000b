import type { JSX } from 'preact';
import { shownTime } from '../../../sim/index.ts';
import { chooseRecording, removeRecording } from '../../app/coatCommands.ts';
import { coat } from '../../app/document.ts';
import { openFile } from '../../app/files.ts';
import { recordingFacts } from '../../app/recordingFacts.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';

/** Whether the coat is laid by its plan or by a recorded path, and the recordings at hand. */
export function RecordingFields(): JSX.Element {
  const { recordings } = state.job.value;
  return (
    <>
      <ChoiceField
        id="source"
        label="Laid by"
        value={coat.value.recording ?? ''}
        options={[['', 'The plan below'], ...recordings.map(({ id, name }) => [id, `Recording: ${name}`] as const)]}
        choose={chooseRecording}
      />
      {recordings.length === 0 ? null : (
        <ul class="plain-list">
          {recordings.map(({ id, name }) => (
            <li key={id} class="recording">
              <span>
                {name}
                <span class="soft">{factsText(id)}</span>
              </span>
              <button type="button" aria-label={`Remove recording ${name}`} onClick={() => removeRecording(id)}>Remove</button>
            </li>
          ))}
        </ul>
      )}
      <label class="file-button">
        Read a recorded path…
        <input
          type="file"
          class="hidden-words"
          accept=".csv,.txt,text/csv,text/plain"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            if (file !== undefined) void openFile(file);
            event.currentTarget.value = '';
          }}
        />
      </label>
      <p class="soft">Or drop a CSV anywhere on this window: t_s, x_mm, y_mm, z_mm, fan_deg, pitch_deg, yaw_deg, trigger.</p>
    </>
  );
}

function factsText(id: string): string {
  const facts = recordingFacts.value.get(id);
  return facts === undefined ? '' : `, ${facts.rows.toLocaleString('en-GB')} rows, ${shownTime(facts.duration_s)}`;
}
