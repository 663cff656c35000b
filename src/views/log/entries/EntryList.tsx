import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { entryCautions, entryLines, LOG_KIND_WORDS, momentShown, reportEntry, signatureState, type LogEntrySpec, type ReportedEntry, type SignatureState } from '../../../../sim/index.ts';
import { chooseEntry, recordingText, reopenEntry, signEntry } from '../../../app/log/logCommands.ts';
import { state } from '../../../app/state.ts';
import { HistoryList } from '../HistoryList.tsx';
import { SignOff } from '../SignOff.tsx';
import { EntryForm } from './EntryForm.tsx';

/** What was done, in order; one entry open at a time. */
export function EntryList(): JSX.Element {
  const log = state.job.value.log ?? [];
  return (
    <section aria-labelledby="log-list" class="log-entries-list">
      <h2 id="log-list">What was done</h2>
      {log.length === 0 ? <p>Nothing is noted yet. Begin with the next step above, or with something else.</p> : null}
      <ol>
        {log.map((entry, k) => <EntryItem key={entry.id} entry={entry} place={k} isOpen={entry.id === state.log.value.entry} />)}
      </ol>
    </section>
  );
}

function EntryItem({ entry, place, isOpen }: { readonly entry: LogEntrySpec; readonly place: number; readonly isOpen: boolean }): JSX.Element {
  const text = recordingText(entry);
  const found = useMemo(() => signatureState(entry, text), [entry, text]);
  const head = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isOpen) head.current?.scrollIntoView({ block: 'nearest' });
  }, [isOpen]);
  return (
    <li class={`log-entries-entry ${isOpen ? 'open' : ''}`}>
      <button ref={head} type="button" class="log-entries-open" aria-expanded={isOpen} onClick={() => chooseEntry(entry.id)}>
        <span class="log-entries-number">{place + 1}</span>
        <span class="log-entries-name">{entry.name === '' ? 'Unnamed entry' : entry.name}</span>
        <span class={`log-entries-mark ${found}`}>{markWords(entry, found)}</span>
      </button>
      <p class="log-entries-facts">{LOG_KIND_WORDS[entry.kind]} · {momentShown(entry.started)} · {entry.who === '' ? 'nobody named' : entry.who}</p>
      {isOpen ? <OpenEntry entry={entry} /> : null}
    </li>
  );
}

/** How an entry stands. One that was changed after it was signed says so before it is opened. */
function markWords({ ended }: LogEntrySpec, found: SignatureState): string {
  switch (found) {
    case 'matches': return 'Signed';
    case 'entry-changed': return 'Signed, CHANGED since';
    case 'recording-changed': return 'Signed, strokes CHANGED since';
    case 'recording-missing': return 'Signed, strokes missing';
    case 'unsigned': return ended === undefined ? 'Under way' : 'Not signed';
  }
}

function OpenEntry({ entry }: { readonly entry: LogEntrySpec }): JSX.Element {
  const reported = reportEntry(state.job.value, entry);
  return (
    <div class="log-entries-body">
      <Cautions reported={reported} />
      {entry.signed === undefined ? <EntryForm reported={reported} /> : <Lines reported={reported} />}
      <HistoryList changes={entry.history} />
      <SignOff id={`entry-${entry.id}`} what="entry" record={entry} recordingText={recordingText(entry)} who={entry.who} certificate={entry.certificate} sign={signEntry} reopen={reopenEntry} />
    </div>
  );
}

/** What the entry itself gives cause to look at; nothing of it is changed. */
function Cautions({ reported }: { readonly reported: ReportedEntry }): JSX.Element {
  const cautions = entryCautions(reported, state.units.value);
  return (
    <ul class="log-entries-doubts" role="status" aria-label="Look at again">
      {cautions.map((text) => <li key={text}>{text}</li>)}
    </ul>
  );
}

/** A locked entry as it was noted. */
function Lines({ reported }: { readonly reported: ReportedEntry }): JSX.Element {
  return (
    <>
      <dl class="log-entries-lines">
        {entryLines(reported, state.units.value).map(({ head, text }, k) => <div key={k}><dt>{head}</dt><dd>{text}</dd></div>)}
      </dl>
      {reported.entry.photos.map((photo) => (
        <figure key={photo.id}>
          <img class="log-entries-photo" src={`data:image/jpeg;base64,${photo.jpeg}`} width={photo.width} height={photo.height} alt={photo.name} />
          <figcaption>{photo.name}</figcaption>
        </figure>
      ))}
    </>
  );
}
