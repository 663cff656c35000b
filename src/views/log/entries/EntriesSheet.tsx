import './entries.css';
import type { JSX } from 'preact';
import { lookAtLog } from '../../../app/log/log.ts';
import { state } from '../../../app/state.ts';
import { WordsBox } from './EntryBoxes.tsx';
import { EntryList } from './EntryList.tsx';
import { PlannedSteps } from './PlannedSteps.tsx';

/** What was really done, step by step, as it happens. */
export function EntriesSheet(): JSX.Element {
  return (
    <div class="log-entries">
      <WordsBox
        id="log-who"
        label="Who writes here"
        hint="Asked once and kept in this browser. It stands beside every change in the history."
        text={state.log.value.who}
        longest={200}
        type={(who) => lookAtLog({ who })}
        leave={() => undefined}
      />
      <div class="log-entries-columns">
        <PlannedSteps />
        <EntryList />
      </div>
    </div>
  );
}
