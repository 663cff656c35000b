import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { FieldKind, MomentFieldKind } from '../../../sim/index.ts';
import { mountCanvas } from '../../app/canvasMount.ts';
import { state } from '../../app/state.ts';
import type { PanelCanvas } from '../../canvas/scene.ts';
import { FilmShown } from '../time/FilmShown.tsx';
import { LAID_WORDS, MOMENT_WORDS } from './fieldWords.ts';
import { Legend } from './Legend.tsx';
import { Probe } from './Probe.tsx';

/** The panel as it hangs, with what is shown on it, its clock close by, its legend and the probe. */
export function PanelView(): JSX.Element {
  const host = useRef<HTMLDivElement>(null);
  const [canvas, setCanvas] = useState<PanelCanvas | null>(null);
  useEffect(() => (host.current === null ? undefined : mountCanvas(host.current, setCanvas)), []);
  return (
    <section class={state.inTime.value ? 'panel-view in-time' : 'panel-view'} aria-label="Panel">
      <div class="panel-tools">
        <label class="inline-field">
          <span>Show</span>
          <FieldChoice />
        </label>
        <div class="button-row" role="group" aria-label="View">
          <button type="button" aria-label="Zoom in" disabled={canvas === null} onClick={() => canvas?.zoomBy(1.5)}>+</button>
          <button type="button" aria-label="Zoom out" disabled={canvas === null} onClick={() => canvas?.zoomBy(1 / 1.5)}>−</button>
          <button type="button" disabled={canvas === null} onClick={() => canvas?.fit()}>Fit</button>
        </div>
        {(['strokes', 'faults'] as const).map((part) => (
          <label key={part} class="inline-tick">
            <input
              type="checkbox"
              checked={state.drawnOver.value[part]}
              onChange={(event) => (state.drawnOver.value = { ...state.drawnOver.peek(), [part]: event.currentTarget.checked })}
            />
            <span>{part}</span>
          </label>
        ))}
        <span class="working" aria-hidden="true">{state.working.value ? 'working…' : ''}</span>
      </div>
      <div class="canvas-host" ref={host} data-testid="canvas" />
      <FilmShown />
      <Legend />
      <Probe />
    </section>
  );
}

/** What of the film is shown; a film in time has fields of its own. */
function FieldChoice(): JSX.Element {
  const { value: inTime } = state.inTime;
  const kind = inTime ? state.momentField.value : state.field.value;
  return (
    <select
      aria-label="Show on the panel"
      value={kind}
      onChange={({ currentTarget: { value } }) => {
        if (inTime) state.momentField.value = value as MomentFieldKind;
        else state.field.value = value as FieldKind;
      }}
    >
      {(inTime ? MOMENT_WORDS : LAID_WORDS).map(([each, words]) => <option key={each} value={each} selected={each === kind}>{words}</option>)}
    </select>
  );
}
