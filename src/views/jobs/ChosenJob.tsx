import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { archiveJob, duplicateJob, openJob, removeJob, renameJob, saveKeptJob, whatGoes } from '../../app/jobs/jobActs.ts';
import { jobs } from '../../app/jobs/jobs.ts';
import { state } from '../../app/state.ts';
import type { JobHead } from '../../storage/jobs.ts';

export interface ChosenJobProps {
  readonly head: JobHead;
  readonly close: () => void;
}

/** What can be done with the chosen job. */
export function ChosenJob({ head, close }: ChosenJobProps): JSX.Element {
  const [asks, setAsks] = useState<'name' | 'remove' | null>(null);
  const [goes, setGoes] = useState('');
  const isOpen = head.id === state.jobId.value;
  const isBusy = jobs.working.value;
  const askRemove = async (): Promise<void> => {
    setGoes(await whatGoes(head));
    setAsks('remove');
  };
  const openIt = async (): Promise<void> => {
    if (await openJob(head)) close();
  };
  return (
    <div class="jobs-chosen" role="group" aria-label={`With ${head.name}`}>
      <div class="actions">
        <button type="button" class="act" disabled={isBusy || isOpen} onClick={() => void openIt()}>{isOpen ? 'Open now' : 'Open'}</button>
        <button type="button" disabled={isBusy} onClick={() => void duplicateJob(head)}>Duplicate</button>
        <button type="button" disabled={isBusy} aria-expanded={asks === 'name'} onClick={() => setAsks(asks === 'name' ? null : 'name')}>Rename…</button>
        <button type="button" disabled={isBusy} onClick={() => void archiveJob(head)}>{head.archived ? 'Bring back' : 'Archive'}</button>
        <button type="button" disabled={isBusy} onClick={() => void saveKeptJob(head)}>Save as file</button>
        {isOpen ? null : <button type="button" disabled={isBusy} aria-expanded={asks === 'remove'} onClick={() => void askRemove()}>Remove…</button>}
      </div>
      {isOpen ? <p class="soft">The job that is open cannot be removed; open another one first. Opening keeps this one as it is.</p> : null}
      {asks === 'name' ? <NameField head={head} done={() => setAsks(null)} /> : null}
      {asks === 'remove' ? (
        <div class="notice" role="alert">
          <p><strong>Remove “{head.name}”?</strong> {goes}</p>
          <div class="actions">
            <button type="button" onClick={() => void removeJob(head)}>Remove it</button>
            <button type="button" class="act" onClick={() => setAsks(null)}>Keep it</button>
          </div>
        </div>
      ) : null}
    </div>
  );
}

/** A new name: Enter takes it, Escape leaves it. */
function NameField({ head, done }: { readonly head: JobHead; readonly done: () => void }): JSX.Element {
  const [name, setName] = useState(head.name);
  const take = (): void => {
    if (name.trim() !== '' && name !== head.name) void renameJob(head, name.trim());
    done();
  };
  return (
    <div class="field field-wide jobs-rename">
      <label for="jobs-name">New name</label>
      <span class="field-box">
        <input
          id="jobs-name"
          type="text"
          maxLength={200}
          autocomplete="off"
          value={name}
          ref={(input) => { if (input !== null && !input.dataset['seen']) { input.dataset['seen'] = 'yes'; input.focus(); input.select(); } }}
          onInput={(event) => setName(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take();
            if (event.key !== 'Escape') return;
            event.preventDefault();
            done();
          }}
        />
        <button type="button" class="act" onClick={take}>Rename</button>
      </span>
    </div>
  );
}
