import type { JSX } from 'preact';
import { unsaidPlace, type Notice as NoticeOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';
import { lateNotice } from './lateNotice.ts';

/** What went wrong, in plain words, above the sheet. Nothing was changed by it. */
export function Notices(): JSX.Element {
  const { notice, jobProblem, storageProblem } = state;
  const Late = lateNotice.value;
  return (
    <div class="notices">
      {notice.value === null ? null : <Notice problem={notice.value} dismiss={() => (notice.value = null)} />}
      {jobProblem.value === null ? null : <Notice problem={jobProblem.value} />}
      {storageProblem.value === null ? null : (
        <Notice problem={{ title: 'Your work is not being kept in this browser', text: storageProblem.value, place: {} }} />
      )}
      {Late === null ? null : <Late />}
    </div>
  );
}

/** One thing that went wrong; with `dismiss` it can be put away. */
export function Notice({ problem, dismiss }: { readonly problem: NoticeOf; readonly dismiss?: () => void }): JSX.Element {
  const place = unsaidPlace(problem);
  return (
    <div class="notice" role="alert">
      <div>
        <h2>{problem.title}</h2>
        <p>{problem.text}</p>
        {place === '' ? null : <p class="soft">{place}</p>}
      </div>
      {problem.act === undefined ? null : <button type="button" onClick={problem.act.run}>{problem.act.words}</button>}
      {dismiss === undefined ? null : <button type="button" onClick={dismiss}>Dismiss</button>}
    </div>
  );
}
