import type { JSX, TargetedFocusEvent, TargetedKeyboardEvent } from 'preact';
import { useRef } from 'preact/hooks';
import { exportAs, openFile, saveJob, startFromDemo } from '../../app/files.ts';
import { state, type Theme } from '../../app/state.ts';
import type { ExportKind } from '../../worker/protocol.ts';
import { openJobs } from '../jobs/openJobs.ts';

const EXPORTS: readonly (readonly [kind: ExportKind, words: string])[] = [
  ['map-png', 'Export film map, PNG'],
  ['strokes-svg', 'Export strokes drawing, SVG'],
  ['film-csv', 'Export film at every cell, CSV'],
  ['strokes-csv', 'Export gun path, CSV'],
  ['results-json', 'Export results, JSON'],
];

const THEMES: readonly (readonly [theme: Theme, words: string])[] = [
  ['system', 'As the system'],
  ['light', 'Light'],
  ['dark', 'Dark'],
];

/** Open, save; under More: export, print, start again, light or dark. */
export function FileActions(): JSX.Element {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={chooser}
        type="file"
        hidden
        accept=".json,.csv,.txt,application/json,text/csv,text/plain"
        data-testid="open-file"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file !== undefined) void openFile(file);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" onClick={() => void openJobs()}>Jobs</button>
      <button type="button" onClick={() => chooser.current?.click()}>Open…</button>
      <button type="button" onClick={saveJob}>Save</button>
      <details class="menu" onKeyDown={closeOnEscape} onFocusOut={closeWhenLeft}>
        <summary>More</summary>
        <div class="menu-list">
          {EXPORTS.map(([kind, words]) => (
            <button key={kind} type="button" onClick={(event) => { close(event.currentTarget); void exportAs(kind); }}>{words}</button>
          ))}
          <button type="button" onClick={(event) => { close(event.currentTarget); window.print(); }}>Print the sheet</button>
          <button type="button" onClick={(event) => { close(event.currentTarget); void startFromDemo(); }}>Start again from the demo</button>
          <label class="menu-field">
            Paper
            <select onChange={(event) => (state.theme.value = event.currentTarget.value as Theme)}>
              {THEMES.map(([theme, words]) => (
                <option key={theme} value={theme} selected={theme === state.theme.value}>{words}</option>
              ))}
            </select>
          </label>
        </div>
      </details>
    </>
  );
}

function close(inside: Element): void {
  inside.closest('details')?.removeAttribute('open');
}

function closeOnEscape(event: TargetedKeyboardEvent<HTMLDetailsElement>): void {
  if (event.key !== 'Escape') return;
  event.currentTarget.open = false;
  event.currentTarget.querySelector('summary')?.focus();
}

function closeWhenLeft(event: TargetedFocusEvent<HTMLDetailsElement>): void {
  const next = event.relatedTarget;
  if (next instanceof Node && !event.currentTarget.contains(next)) event.currentTarget.open = false;
}
