import './practice.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { debriefing, saveFailed, startDebriefing } from '../../app/practice/debriefing.ts';
import { closeKeptSessions, keepAgain, keptSessions, openKeptSessions, saveNotKept } from '../../app/practice/keptSessions.ts';
import { practice, setPrefs, TABS, type PracticeTab } from '../../app/practice/practice.ts';
import { findDraft, isUnderWay } from '../../app/practice/underway.ts';
import { state } from '../../app/state.ts';
import { Notice } from '../frame/Notices.tsx';
import { SheetTabs, tabId } from '../frame/SheetTabs.tsx';
import { useOverWindow } from '../frame/useOverWindow.ts';
import { ClassSheet } from './ClassSheet.tsx';
import { DebriefSheet } from './DebriefSheet.tsx';
import { DraftFound } from './DraftFound.tsx';
import { ProgressSheet } from './ProgressSheet.tsx';
import { NotKept } from './progress/NotKept.tsx';
import { SpraySheet } from './SpraySheet.tsx';

const TAB_WORDS: Readonly<Record<PracticeTab, string>> = { spray: 'Spray', debrief: 'Debrief', progress: 'Progress', class: 'Class' };

export interface PracticeStageProps {
  readonly close: () => void;
}

/** Practice: a panel to spray by hand, what the hand did, how it gets on, and a class's marks. */
export function PracticeStage({ close }: PracticeStageProps): JSX.Element {
  const stage = useOverWindow(() => { if (!isUnderWay()) close(); });
  useEffect(startDebriefing, []);
  useEffect(() => {
    void openKeptSessions().then(findDraft);
    return () => void closeKeptSessions();
  }, []);
  const tab = practice.tab.value;
  return (
    <div
      ref={stage}
      class="over-window practice"
      role="dialog"
      aria-modal="true"
      aria-label="Practice"
      tabIndex={-1}
    >
      <header class="practice-head">
        <h1>Practice</h1>
        <SheetTabs sheet="practice-sheet" label="Sheets of practice" words={TAB_WORDS} tabs={TABS} shown={tab} show={(next) => (practice.tab.value = next)} />
        <label class="practice-trainee">
          <span>Trainee</span>
          <input type="text" maxLength={100} autocomplete="off" value={state.practice.value.trainee} onInput={(event) => setPrefs({ trainee: event.currentTarget.value })} />
        </label>
        <button type="button" class="act" onClick={close}>Close</button>
      </header>
      {practice.problem.value === null ? null : <Notice problem={practice.problem.value} dismiss={() => (practice.problem.value = null)} />}
      <DraftFound />
      <Failed />
      {tab === 'progress' ? null : <NotKept sessions={keptSessions.notKept.value} save={saveNotKept} keepAgain={() => void keepAgain()} />}
      <div id="practice-sheet" role="tabpanel" aria-labelledby={tabId('practice-sheet', tab)}>
        <SpraySheet isShown={tab === 'spray'} />
        {tab === 'debrief' ? <div class="practice-padded"><DebriefSheet /></div> : null}
        {tab === 'progress' ? <div class="practice-padded"><ProgressSheet close={close} /></div> : null}
        {tab === 'class' ? <div class="practice-padded"><ClassSheet /></div> : null}
      </div>
    </div>
  );
}

/** A session that could not be looked through, to be saved before it is forgotten. */
function Failed(): JSX.Element | null {
  const sessions = debriefing.failed.value;
  if (sessions.length === 0) return null;
  return (
    <div class="notice" role="alert">
      <p><strong>Not looked through, and kept nowhere.</strong> Save it as a file.</p>
      <div class="actions">
        {sessions.map((session) => <button key={session.id} type="button" class="act" onClick={() => saveFailed(session)}>Save {session.task.title}</button>)}
      </div>
    </div>
  );
}
