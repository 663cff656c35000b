import type { JSX } from 'preact';
import { exportAll, exporting } from '../../app/jobs/exportAll.ts';
import { lookIntoZip, restorePlan, restoring } from '../../app/jobs/restoreZip.ts';
import { restored } from '../../app/jobs/doRestore.ts';
import { jobs } from '../../app/jobs/jobs.ts';
import { FileDrop } from '../frame/FileDrop.tsx';
import { RestorePlanView } from './RestorePlanView.tsx';

/** All jobs and sessions out as one zip, and back, with a look at what would change first. */
export function ZipSheet(): JSX.Element {
  const look = (files: readonly File[]): void => {
    const [file] = files;
    if (file === undefined) return;
    restored.value = null;
    void lookIntoZip(file);
  };
  const isBusy = jobs.working.value;
  return (
    <div class="jobs-zip">
      <section aria-labelledby="jobs-export">
        <h2 id="jobs-export">Export</h2>
        <p>One zip with a file for every job and every practice session, archived ones too. Every file in it opens by itself, here or in any text editor; a list with SHA-256 digests tells later whether one was changed.</p>
        <p class="actions"><button type="button" class="act" disabled={isBusy} onClick={() => void exportAll()}>Export all as one zip</button></p>
        <p role="status">{exporting.value}</p>
      </section>
      <section aria-labelledby="jobs-restore">
        <h2 id="jobs-restore">Restore</h2>
        <p>You are shown what would change. Nothing is written until you press Restore.</p>
        <FileDrop name="jobs-drop" over="over" take={look} isBusy={isBusy}>
          <label class="file-button">
            Choose a zip
            <input class="hidden-words" type="file" accept=".zip,application/zip" disabled={isBusy} data-testid="restore-file" onChange={(event) => {
              const files = [...(event.currentTarget.files ?? [])];
              event.currentTarget.value = '';
              look(files);
            }} />
          </label>
          <span class="soft">or drop it here. Any zip of job files will do.</span>
        </FileDrop>
        <p role="status">{restoring.value}</p>
        {restorePlan.value === null ? null : <RestorePlanView plan={restorePlan.value} />}
        <Done />
      </section>
    </div>
  );
}

/** What a restore did, file by file. */
function Done(): JSX.Element | null {
  const rows = restored.value;
  if (rows === null) return null;
  return (
    <>
      <h3>What was done</h3>
      {rows.length === 0 ? <p>Nothing: all was left out.</p> : (
        <ul class="jobs-done">
          {rows.map(({ name, isDone, words }, i) => <li key={i}>{isDone ? '✓' : '✗'} <strong>{name}</strong>: {words}</li>)}
        </ul>
      )}
    </>
  );
}
