import type { JSX } from 'preact';
import type { KeptSession } from '../../../storage/sessions.ts';
import { dateWords } from './progressData.ts';

export interface NotKeptProps {
  readonly sessions: readonly KeptSession[];
  readonly save: (kept: KeptSession) => void;
  readonly keepAgain: () => void;
}

/** Sessions that the browser would not keep: each can be saved as a file. Nothing where all are kept. */
export function NotKept({ sessions, save, keepAgain }: NotKeptProps): JSX.Element | null {
  if (sessions.length === 0) return null;
  return (
    <div class="not-kept" role="alert">
      <p><strong>Not kept in this browser.</strong> Save it as a file before you close this page, or make room and try again.</p>
      <div class="actions">
        {sessions.map((kept) => (
          <button key={kept.session.id} type="button" class="act" onClick={() => save(kept)}>
            Save {kept.session.task.title}, {dateWords(kept.session.sprayedAt)}
          </button>
        ))}
        <button type="button" onClick={keepAgain}>Try again</button>
      </div>
    </div>
  );
}
