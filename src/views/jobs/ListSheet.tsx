import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { counted } from '../../../sim/index.ts';
import { newJob, putBackJob, type NewFrom } from '../../app/jobs/jobActs.ts';
import { chosenJob, found, jobs } from '../../app/jobs/jobs.ts';
import { JobRows } from './JobRows.tsx';

const NEW_WORDS: readonly (readonly [NewFrom, string])[] = [
  ['blank', 'New small job'],
  ['chosen', 'New plan from the chosen job'],
  ['demo', 'New from the demo'],
];

/** All jobs of this browser, newest first, with a search. */
export function ListSheet({ close }: { readonly close: () => void }): JSX.Element {
  const { present, archived } = found.value;
  const list = useRef<HTMLDivElement>(null);
  const intoList = (event: KeyboardEvent): void => {
    if (event.key !== 'ArrowDown') return;
    list.current?.querySelector<HTMLButtonElement>('.jobs-row')?.focus();
    event.preventDefault();
  };
  return (
    <div class="jobs-list">
      <Removed />
      <div class="jobs-tools">
        <div class="field field-wide jobs-search">
          <label for="jobs-search">Find a job by name, part or day</label>
          <input id="jobs-search" type="text" autocomplete="off" spellcheck={false} aria-describedby="jobs-found" value={jobs.search.value} onInput={(event) => (jobs.search.value = event.currentTarget.value)} onKeyDown={intoList} />
          <span class="field-note" id="jobs-found" role="status">{foundWords(present.length, archived.length)}</span>
        </div>
        <div class="actions">
          {NEW_WORDS.map(([from, words]) => (
            <button key={from} type="button" disabled={jobs.working.value || (from === 'chosen' && chosenJob.value === null)} onClick={() => void newJob(from, chosenJob.peek()).then((isMade) => { if (isMade) close(); })}>{words}</button>
          ))}
        </div>
      </div>
      <div ref={list}>
        <JobRows label="Jobs" heads={present} close={close} />
        {archived.length === 0 ? null : (
          <details class="more" open={jobs.search.value !== '' || present.length === 0}>
            <summary>Archived ({archived.length})</summary>
            <JobRows label="Archived jobs" heads={archived} close={close} />
          </details>
        )}
      </div>
      <p class="soft">A new plan takes part, mixes, set-ups, coats and schemes over, and leaves out log, surveys and recorded strokes: what was done last time, to be done again.</p>
    </div>
  );
}

function foundWords(present: number, archived: number): string {
  const all = jobs.list.value.length;
  if (!jobs.isRead.value) return 'Reading the list…';
  if (jobs.search.value.trim() === '') return `${counted(all, 'job')}${archived === 0 ? '' : `, ${archived} of them archived`}, newest first.`;
  return present + archived === 0 ? `None of ${counted(all, 'job')}. Words are looked for in names, parts, coat counts and days.` : `${present + archived} of ${counted(all, 'job')}.`;
}

/** The job that was removed last, to be put back for as long as the sheet is open. */
function Removed(): JSX.Element | null {
  const last = jobs.removed.value.at(-1);
  if (last === undefined) return null;
  return (
    <p class="put-back" role="status">
      <span>{last.replacement === undefined ? 'Removed' : 'Replaced'}: {last.head.name}. It can be put back until you close this sheet.</span>
      <button type="button" onClick={() => void putBackJob()}>Put back</button>
    </p>
  );
}
