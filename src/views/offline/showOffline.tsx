import './offline.css';
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';
import { keepOffline, offline, startNewer } from '../../app/offline/keepOffline.ts';
import { lateNotice } from '../frame/lateNotice.ts';

const isPutOff = signal(false);
const isStarting = signal(false);

/** Keeps the page for use without a network from now on, and shows what there is to say of it. */
export function showOffline(): void {
  lateNotice.value = OfflineNotice;
  void keepOffline();
}

function start(): void {
  isStarting.value = true;
  startNewer().catch((thrown: unknown) => {
    isStarting.value = false;
    state.notice.value = problemOf('The newer version was not started; this one goes on', thrown);
  });
}

/** Quiet lines above the sheet: a newer version is there; there is no network, and whether that matters. */
function OfflineNotice(): JSX.Element {
  const { newer, hasNetwork, isWhole } = offline;
  return (
    <div role="status">
      {newer.value === null || isPutOff.value ? null : (
        <div class="offline-notice">
          <p>
            {newer.value === 'waits'
              ? 'A newer version is ready. It starts when you choose, or at the next visit.'
              : 'Another window has started a newer version. This one goes on as it is until you choose.'}
            {' '}Your work is saved first.
          </p>
          <span class="offline-acts">
            <button type="button" disabled={isStarting.value} onClick={start}>{isStarting.value ? 'Saving and starting…' : 'Start it now'}</button>
            <button type="button" onClick={() => (isPutOff.value = true)}>Later</button>
          </span>
        </div>
      )}
      {hasNetwork.value ? null : (
        <div class="offline-notice">
          <p>{isWhole.value ? 'No network. Nothing here needs one: all stages open, and your work is kept in this browser.' : 'No network. What you have not opened yet may not open until there is one; your work is kept in this browser.'}</p>
        </div>
      )}
    </div>
  );
}
