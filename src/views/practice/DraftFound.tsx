import type { JSX } from 'preact';
import { dropDraft, foundDraft, lookAtDraft } from '../../app/practice/underway.ts';

/** A session that was under way when the page was last closed. */
export function DraftFound(): JSX.Element | null {
  const draft = foundDraft.value;
  if (draft === null) return null;
  return (
    <div class="notice" role="status">
      <div>
        <h2>A session was not finished</h2>
        <p>{draft.task.title}{draft.trainee === '' ? '' : `, ${draft.trainee}`}: what was sprayed is still here.</p>
      </div>
      <div class="actions">
        <button type="button" class="act" onClick={lookAtDraft}>Look through it</button>
        <button type="button" onClick={dropDraft}>Throw it away</button>
      </div>
    </div>
  );
}
