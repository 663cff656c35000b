import type { JSX } from 'preact';
import { ownHand, ownHandSpec, type HandSample } from '../../../sim/index.ts';
import { useOwnHand } from '../../app/coatCommands.ts';
import { coat } from '../../app/document.ts';
import { lookThrough, openFiles } from '../../app/practice/debriefing.ts';
import { keepAgain, keptSessions, putBack, readKept, removeSession, renameSession, saveKeptSession, saveKeptStrokes, saveNotKept } from '../../app/practice/keptSessions.ts';
import { drill } from '../../app/practice/practice.ts';
import type { Problem } from '../../app/problem.ts';
import { state } from '../../app/state.ts';
import { ProgressView } from './progress/ProgressView.tsx';

/** A recording says what the gun did; no hand is asked. */
const RECORDED: Problem = {
  title: 'Your hand is set, and does not show yet',
  text: 'This coat is laid by a recording. Choose “as planned” under Strokes, and the plan is laid by your hand.',
  place: {},
};

/** What this browser has kept, by trainee. */
export function ProgressSheet({ close }: { readonly close: () => void }): JSX.Element {
  const { trainee } = state.practice.value;
  const { list, isRead, problem, notKept, removed } = keptSessions;
  const giveHand = (sample: HandSample): void => {
    const { id, recording } = coat.peek();
    useOwnHand(id, ownHandSpec(trainee === '' ? 'Own hand' : trainee, ownHand(sample)));
    if (recording !== undefined) state.notice.value = RECORDED;
    close();
  };
  return (
    <>
      <OpenFiles />
      <ProgressView
        sessions={list.value}
        isRead={isRead.value}
        trainee={trainee}
        system={state.units.value}
        problem={problem.value}
        notKept={{ sessions: notKept.value, save: saveNotKept, keepAgain: () => void keepAgain() }}
        removedName={removed.value.at(-1)?.session.name ?? null}
        putBack={() => void putBack()}
        onUseHand={giveHand}
        open={(id) => void open(id)}
        rename={(id, name) => void renameSession(id, name)}
        saveStrokes={(id) => void saveKeptStrokes(id)}
        saveSession={(id) => void saveKeptSession(id)}
        remove={(id) => void removeSession(id)}
      />
    </>
  );
}

/** Sessions from elsewhere, or bare strokes as a session of the drill chosen. */
function OpenFiles(): JSX.Element {
  return (
    <p class="actions">
      <label class="file-button">
        Open session files or strokes (CSV)
        <input
          class="hidden-words"
          type="file"
          multiple
          accept=".json,.csv,application/json,text/csv"
          onChange={(event) => {
            const files = [...(event.currentTarget.files ?? [])];
            event.currentTarget.value = '';
            void openFiles(files);
          }}
        />
      </label>
      <span class="soft">Bare strokes are marked as “{drill.value.title}”, the drill chosen under Spray.</span>
    </p>
  );
}

async function open(id: string): Promise<void> {
  const kept = await readKept(id);
  if (kept !== null) await lookThrough(kept.session);
}
