import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { serialiseJob, withRecording, type RubricSpec, type SessionSpec } from '../../../sim/index.ts';
import { debriefing, markBy, nameSession, showAt } from '../../app/practice/debriefing.ts';
import { practice, rubric, setPrefs } from '../../app/practice/practice.ts';
import { saveSession, saveStrokes, sessionStem } from '../../app/practice/sessionFiles.ts';
import { state } from '../../app/state.ts';
import { download } from '../../storage/download.ts';
import { DebriefView } from './debrief/DebriefView.tsx';

/** The session in view, looked through. */
export function DebriefSheet(): JSX.Element {
  const { session, reply, whatIfs, whatIfsBusy, at, working } = debriefing;
  const shown = session.value;
  const debrief = reply.value;
  const sheet = useRef<HTMLDivElement>(null);
  // The button that ended the session is gone: the keyboard goes on with what the session has shown.
  useEffect(() => sheet.current?.focus({ preventScroll: true }), [debrief?.id]);
  if (shown === null) return <p class="practice-empty">Nothing is sprayed yet. Spray a drill and press “Finish and debrief”, or open a session under Progress.</p>;
  if (debrief === null) return <Waiting session={shown} isWorking={working.value} />;
  return (
    <div ref={sheet} class="debrief-sheet" tabIndex={-1}>
      <DebriefView
        debrief={debrief}
        whatIfs={whatIfs.value}
        whatIfsBusy={whatIfsBusy.value}
        at={at.value}
        onAt={showAt}
        rubric={rubric.value}
        onRubric={changeRubric}
        session={shown}
        units={state.units.value}
        onName={nameSession}
        onExportCsv={() => saveStrokes(shown)}
        onExportSession={() => saveSession(shown)}
        onExportJob={() => saveJob(shown)}
        onAgain={() => (practice.tab.value = 'spray')}
      />
    </div>
  );
}

function changeRubric(next: RubricSpec): void {
  setPrefs({ rubric: next });
  markBy(next);
}

/** The job with the session as its coat's recording: what the command line sprays. */
function saveJob({ job, task, strokes, name, ...session }: SessionSpec): void {
  const sprayed = withRecording(job, task.coat, { id: 'session', name, text: strokes });
  download(new Blob([serialiseJob(sprayed)], { type: 'application/json' }), `${sessionStem({ task, ...session })}.crosscoat.json`);
}

function Waiting({ session, isWorking }: { readonly session: SessionSpec; readonly isWorking: boolean }): JSX.Element {
  if (isWorking) return <p class="practice-empty" role="status">Looking through what you sprayed…</p>;
  return (
    <div class="practice-empty">
      <p>This session could not be looked through.</p>
      <button type="button" onClick={() => saveSession(session)}>Save it as a file</button>
    </div>
  );
}
