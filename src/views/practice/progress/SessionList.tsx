import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { UnitSystem } from '../../../../sim/index.ts';
import type { ListedSession } from '../../../storage/sessions.ts';
import { dateWords, resultWords } from './progressData.ts';

/** What can be done with a kept session, by its id. */
export interface SessionActs {
  readonly open: (id: string) => void;
  readonly rename: (id: string, name: string) => void;
  readonly saveStrokes: (id: string) => void;
  readonly saveSession: (id: string) => void;
  readonly remove: (id: string) => void;
}

export interface SessionListProps extends SessionActs {
  readonly sessions: readonly ListedSession[];
  readonly system: UnitSystem;
}

/** Sessions, newest first, each with what can be done with it. */
export function SessionList({ sessions, system, ...acts }: SessionListProps): JSX.Element {
  return (
    <ol class="session-list">
      {sessions.map((listed) => <SessionItem key={listed.session.id} listed={listed} system={system} acts={acts} />)}
    </ol>
  );
}

interface ItemProps {
  readonly listed: ListedSession;
  readonly system: UnitSystem;
  readonly acts: SessionActs;
}

function SessionItem({ listed, system, acts }: ItemProps): JSX.Element {
  const [isRenaming, setRenaming] = useState(false);
  const more = useRef<HTMLElement>(null);
  const endRenaming = (): void => {
    setRenaming(false);
    more.current?.focus();
  };
  const { session } = listed;
  const { id, task } = session;
  const name = session.name === '' ? task.title : session.name;
  const when = dateWords(session.sprayedAt);
  const about = `: ${name}, ${when}`;
  const named = (words: string): JSX.Element => <>{words}<span class="hidden-words">{about}</span></>;
  return (
    <li class="session-item">
      <p><strong>{name}</strong>{name === task.title ? null : <> · {task.title}</>}</p>
      <p class="soft">{when}</p>
      <p class={listed.score.isPassed ? 'session-result passed' : 'session-result'}>{resultWords(listed, system)}</p>
      {isRenaming ? <RenameForm session={session} close={endRenaming} rename={acts.rename} /> : null}
      <div class="actions">
        <button type="button" onClick={() => acts.open(id)}>{named('Open')}</button>
        <details class="session-more">
          <summary ref={more}>{named('More')}</summary>
          <div class="actions">
            <button type="button" onClick={() => setRenaming(true)}>{named('Rename')}</button>
            <button type="button" onClick={() => acts.saveStrokes(id)}>{named('Save strokes as CSV')}</button>
            <button type="button" onClick={() => acts.saveSession(id)}>{named('Save session file')}</button>
            <button type="button" onClick={() => acts.remove(id)}>{named('Remove')}</button>
          </div>
        </details>
      </div>
    </li>
  );
}

interface RenameFormProps {
  readonly session: ListedSession['session'];
  readonly rename: SessionActs['rename'];
  readonly close: () => void;
}

function RenameForm({ session, rename, close }: RenameFormProps): JSX.Element {
  const [text, setText] = useState(session.name);
  const id = `rename-${session.id}`;
  return (
    <form
      class="session-rename"
      onSubmit={(event) => {
        event.preventDefault();
        rename(session.id, text.trim());
        close();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        close();
      }}
    >
      <label for={id}>Name of this session</label>
      <input id={id} ref={focusOnce} type="text" maxLength={200} autocomplete="off" value={text} onInput={(event) => setText(event.currentTarget.value)} />
      <div class="actions">
        <button type="submit" class="act">Save name</button>
        <button type="button" onClick={close}>Cancel</button>
      </div>
    </form>
  );
}

function focusOnce(field: HTMLInputElement | null): void {
  field?.focus();
}
