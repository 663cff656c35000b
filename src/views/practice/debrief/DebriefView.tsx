import './debrief.css';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ESTIMATE_STATEMENT, type RubricSpec, type SessionSpec, type UnitSystem } from '../../../../sim/index.ts';
import type { DebriefReply, SessionAtReply, WhatIfReply } from '../../../worker/protocol.ts';
import { ChiefFinding } from './ChiefFinding.tsx';
import { DebriefActions, type DebriefActionsProps } from './DebriefActions.tsx';
import { HandTable } from './HandTable.tsx';
import { MapsBeside } from './MapsBeside.tsx';
import { RubricEditor } from './RubricEditor.tsx';
import { ScoreTable } from './ScoreTable.tsx';
import { SessionReplay } from './SessionReplay.tsx';
import { Traces } from './Traces.tsx';
import { WhatIfCards } from './WhatIfCards.tsx';

export interface DebriefViewProps extends Omit<DebriefActionsProps, 'name'> {
  readonly debrief: DebriefReply;
  readonly whatIfs: readonly WhatIfReply[];
  readonly whatIfsBusy: boolean;
  readonly at: SessionAtReply | null;
  readonly onAt: (time_s: number) => void;
  readonly rubric: RubricSpec;
  readonly onRubric: (next: RubricSpec) => void;
  readonly session: SessionSpec;
  readonly units: UnitSystem;
}

/** A practice session looked through: what matters most first, then the marks, the film, the hand and the replay. */
export function DebriefView({ debrief, whatIfs, whatIfsBusy, at, onAt, rubric, onRubric, session, units, ...actions }: DebriefViewProps): JSX.Element {
  const [chosen, choose] = useState<number | null>(null);
  useEffect(() => choose(null), [debrief.id]);
  const { reported } = debrief;
  return (
    <article class="debrief">
      <header class="debrief-head">
        <h1>{session.task.title}</h1>
        <p>{[session.name, session.trainee, session.sprayedAt.slice(0, 10)].filter((text) => text !== '').join(', ')}</p>
      </header>
      <ChiefFinding debrief={debrief} units={units} chosen={chosen} />
      <section class="debrief-part" aria-label="Score">
        <h2>Score</h2>
        <ScoreTable score={reported.score} units={units} />
        <RubricEditor rubric={rubric} onRubric={onRubric} units={units} />
      </section>
      <MapsBeside debrief={debrief} units={units} />
      <WhatIfCards debrief={debrief} whatIfs={whatIfs} isBusy={whatIfsBusy} units={units} />
      <HandTable debrief={reported} units={units} chosen={chosen} choose={choose} />
      <Traces debrief={debrief} units={units} chosen={chosen} />
      <SessionReplay debrief={debrief} at={at} onAt={onAt} units={units} />
      <DebriefActions name={session.name} {...actions} />
      <p class="soft">{ESTIMATE_STATEMENT}</p>
    </article>
  );
}
