import './record.css';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { KEEP_NOTE, RECORD_STATEMENT, type KeepRow } from '../../../../sim/index.ts';
import { followRecord, printRecord, recordSheet, saveRecord, type RecordReply } from '../../../app/log/recordSheet.ts';
import { state } from '../../../app/state.ts';
import { Notice } from '../../frame/Notices.tsx';

/** The whole record as it prints, the files that it is kept as, and what is still missing from it. */
export function RecordSheet(): JSX.Element {
  const frame = useRef<HTMLIFrameElement>(null);
  useEffect(followRecord, []);
  const { problem, working, madeOf } = recordSheet;
  const record = recordSheet.record.value;
  const isOlder = record !== null && madeOf.value !== state.job.value;
  return (
    <section class="log-record" aria-labelledby="record-head">
      <h2 id="record-head">Record</h2>
      <p>{RECORD_STATEMENT}</p>
      <SaveButtons isReady={record !== null} print={() => printRecord(frame.current)} />
      <p role="status">{working.value ? 'Writing the record: films are laid and compared again, which takes some seconds…' : isOlder ? 'The job has changed since this was written.' : ''}</p>
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      {record === null ? null : (
        <>
          <Findings record={record} />
          <KeepList rows={record.keep} />
          <iframe ref={frame} class="log-record-page" title="Record as it prints" sandbox="allow-same-origin allow-modals" srcdoc={record.html} />
        </>
      )}
    </section>
  );
}

function SaveButtons({ isReady, print }: { readonly isReady: boolean; readonly print: () => void }): JSX.Element {
  return (
    <div class="actions">
      <button type="button" class="act" disabled={!isReady} onClick={print}>Print</button>
      <button type="button" disabled={!isReady} onClick={() => saveRecord('html')}>Save as HTML</button>
      <button type="button" disabled={!isReady} onClick={() => saveRecord('readings')}>Save readings, CSV</button>
      <button type="button" disabled={!isReady} onClick={() => saveRecord('log')}>Save log, CSV</button>
      <button type="button" disabled={!isReady} onClick={() => saveRecord('json')}>Save results, JSON</button>
      <button type="button" disabled={!isReady} onClick={() => saveRecord('canonical')}>Save job, canonical form</button>
    </div>
  );
}

function Findings({ record: { look, unsigned, digest } }: { readonly record: RecordReply }): JSX.Element {
  return (
    <div class="log-record-findings">
      {look.length === 0 ? <p>Every rule of a survey passes, and every signature is of what stands here.</p> : <><h3>Look at these first</h3><ul>{look.map((text) => <li key={text}>{text}</li>)}</ul></>}
      <p>{unsigned.length === 0 ? 'Nothing waits for a signature.' : `Not signed: ${unsigned.join('; ')}.`}</p>
      <p>SHA-256 of this job: <code>{digest}</code></p>
      <details>
        <summary>How to check that without this program</summary>
        <p>Save the job in canonical form and keep it beside the printed sheet. <code>sha256sum</code> (Linux), <code>shasum -a 256</code> (macOS) or <code>certutil -hashfile</code> with <code>SHA256</code> at its end (Windows) gives the same 64 digits for it, for as long as nothing in it is changed.</p>
      </details>
    </div>
  );
}

function KeepList({ rows }: { readonly rows: readonly KeepRow[] }): JSX.Element {
  return (
    <details class="log-record-keep">
      <summary>What people are expected to keep</summary>
      <p>{KEEP_NOTE}</p>
      <ul>{rows.map(({ what, source, found }) => <li key={what}><strong>{what}.</strong> Here: {found}. <span class="soft">({source})</span></li>)}</ul>
    </details>
  );
}
