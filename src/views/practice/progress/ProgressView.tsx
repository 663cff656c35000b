import './progress.css';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { HandSample, UnitSystem } from '../../../../sim/index.ts';
import type { Problem } from '../../../app/problem.ts';
import type { ListedSession } from '../../../storage/sessions.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { HandFigures } from './HandFigures.tsx';
import { NotKept, type NotKeptProps } from './NotKept.tsx';
import { personalHand, traineesOf, traineeWords } from './progressData.ts';
import { SessionList, type SessionActs } from './SessionList.tsx';
import { Trends } from './Trends.tsx';

export interface ProgressViewProps extends SessionActs {
  /** Every kept session, newest first. */
  readonly sessions: readonly ListedSession[];
  /** False while the browser's storage is being read. */
  readonly isRead: boolean;
  /** Whose sessions are shown at first; where there are none of theirs, the newest session's trainee. */
  readonly trainee: string;
  readonly system: UnitSystem;
  /** What storage refused last. */
  readonly problem: Problem | null;
  readonly notKept: Pick<NotKeptProps, 'sessions' | 'save' | 'keepAgain'>;
  /** Name of the session removed last; null where nothing can be put back. */
  readonly removedName: string | null;
  readonly putBack: () => void;
  readonly onUseHand: (sample: HandSample) => void;
}

/** One trainee's sessions, what has become of each measure, and the hand that they show. */
export function ProgressView(props: ProgressViewProps): JSX.Element {
  const { sessions, isRead, trainee, system, problem, notKept, removedName, putBack, onUseHand, ...acts } = props;
  const [wanted, setWanted] = useState(trainee);
  const names = traineesOf(sessions);
  const chosen = names.includes(wanted) ? wanted : (sessions[0]?.session.trainee ?? '');
  const theirs = sessions.filter(({ session }) => session.trainee === chosen);
  const hand = personalHand(theirs);
  return (
    <div class="progress-view">
      {problem === null ? null : <p class="progress-problem" role="alert"><strong>{problem.title}.</strong> {problem.text}</p>}
      <NotKept {...notKept} />
      {removedName === null ? null : (
        <p class="put-back" role="status">
          <span>Removed: {removedName}.</span>
          <button type="button" onClick={putBack}>Put back</button>
        </p>
      )}
      {sessions.length === 0 ? <Empty isRead={isRead} /> : (
        <>
          <ChoiceField id="progress-trainee" label="Trainee" value={chosen} options={names.map((name) => [name, traineeWords(name)])} choose={setWanted} hint="Names as typed before each session, in this browser only." />
          <div class="progress-body">
            <section class="progress-sessions" aria-labelledby="progress-sessions">
              <h2 id="progress-sessions">Sessions</h2>
              <SessionList sessions={theirs} system={system} {...acts} />
            </section>
            <div class="progress-told">
              <Trends sessions={theirs} system={system} />
              {hand === null ? null : <HandFigures hand={hand} system={system} onUseHand={onUseHand} />}
            </div>
          </div>
        </>
      )}
    </div>
  );
}

function Empty({ isRead }: { readonly isRead: boolean }): JSX.Element {
  if (!isRead) return <p role="status">Reading the kept sessions…</p>;
  return <p>No sessions yet. Choose a drill and spray it; it is kept here when you put the gun away.</p>;
}
