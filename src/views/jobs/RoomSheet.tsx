import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { counted } from '../../../sim/index.ts';
import { room } from '../../app/keeping/keeping.ts';
import { jobs } from '../../app/jobs/jobs.ts';
import { askToKeep, readRoom } from '../../app/jobs/roomSheet.ts';
import { sizeWords } from './jobWords.ts';

/** Where the jobs are, how much room they take, and whether the browser may clear it. */
export function RoomSheet(): JSX.Element {
  useEffect(() => void readRoom(), []);
  const { usage_B, quota_B, persisted, privateGuess } = room.value;
  const letters = jobs.list.value.reduce((sum, head) => sum + head.letters, 0);
  return (
    <div class="jobs-room">
      <p>Everything is kept in this browser on this device, and nowhere else: no account, no server. Another browser, another device or a private window does not see it. What must last goes out as a zip, under Export and restore.</p>
      <dl class="jobs-facts">
        <dt>Jobs</dt><dd>{counted(jobs.list.value.length, 'job')}, about {sizeWords(letters)} together</dd>
        <dt>Room taken by this page</dt><dd>{usage_B === null ? 'The browser does not say.' : `${sizeWords(usage_B)}${quota_B === null ? '' : ` of the ${bigWords(quota_B)} that the browser gives it`}. The program itself is in it too.`}</dd>
        <dt>Kept for good</dt><dd>{keptWords(persisted)}</dd>
        {privateGuess === 'likely' ? <><dt>Private window</dt><dd>By its signs this is a private window: all is gone when you close it. Export before you do.</dd></> : null}
      </dl>
      {persisted === true ? null : <p class="actions"><button type="button" class="act" onClick={() => void askToKeep()}>Ask the browser to keep it</button></p>}
      <p class="soft">Clearing the browser’s site data removes all of it, whatever the browser promised.</p>
    </div>
  );
}

function keptWords(persisted: boolean | null): string {
  if (persisted === null) return 'The browser does not say.';
  return persisted ? 'Yes: the browser will not clear it by itself.' : 'No: the browser may clear it when the device runs short of room.';
}

function bigWords(bytes: number): string {
  return bytes < 1e9 ? sizeWords(bytes) : `${(bytes / 1e9).toFixed(1)} GB`;
}
