import type { JSX } from 'preact';
import { ownHand, ownHandSpec, type HandSample } from '../../../sim/index.ts';
import { useOwnHand } from '../../app/coatCommands.ts';
import { coat } from '../../app/document.ts';
import { lookThrough } from '../../app/practice/debriefing.ts';
import { keepAgain, keptSessions, putBack, readKept, removeSession, renameSession, saveKeptSession, saveKeptStrokes, saveNotKept } from '../../app/practice/keptSessions.ts';
import { state } from '../../app/state.ts';
import { ProgressView } from './progress/ProgressView.tsx';

/** What this browser has kept, by trainee. */
export function ProgressSheet({ close }: { readonly close: () => void }): JSX.Element {
  const { trainee } = state.practice.value;
  const { list, isRead, problem, notKept, removed } = keptSessions;
  const giveHand = (sample: HandSample): void => {
    useOwnHand(coat.peek().id, ownHandSpec(trainee === '' ? 'Own hand' : trainee, ownHand(sample)));
    close();
  };
  return (
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
  );
}

async function open(id: string): Promise<void> {
  const kept = await readKept(id);
  if (kept !== null) await lookThrough(kept.session);
}
