import type { JSX } from 'preact';

/** Longest name that a session's file takes. */
const LONGEST_NAME = 200;

export interface DebriefActionsProps {
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly onExportCsv: () => void;
  readonly onExportSession: () => void;
  readonly onExportJob: () => void;
  readonly onAgain: () => void;
}

/** The session's name, what can be taken away of it, and another go. */
export function DebriefActions({ name, onName, onExportCsv, onExportSession, onExportJob, onAgain }: DebriefActionsProps): JSX.Element {
  return (
    <section class="debrief-part debrief-actions" aria-label="Keep this session">
      <div class="field field-wide">
        <label for="session-name">Name of the session</label>
        <input id="session-name" type="text" maxLength={LONGEST_NAME} autocomplete="off" value={name} onChange={(event) => onName(event.currentTarget.value)} />
      </div>
      <div class="actions">
        <button type="button" class="act" onClick={onAgain}>Spray again</button>
        <button type="button" onClick={onExportSession}>Save the session</button>
        <button type="button" onClick={onExportCsv}>Export strokes, CSV</button>
        <button type="button" onClick={onExportJob}>Save as a job</button>
        <button type="button" onClick={() => window.print()}>Print</button>
      </div>
    </section>
  );
}
