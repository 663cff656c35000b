import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { FieldKind } from '../../../sim/index.ts';
import { mountCanvas } from '../../app/canvasMount.ts';
import { state } from '../../app/state.ts';
import type { PanelCanvas } from '../../canvas/scene.ts';
import { Legend } from './Legend.tsx';
import { Probe } from './Probe.tsx';
import { Replay } from './Replay.tsx';

const FIELDS: readonly (readonly [kind: FieldKind, words: string])[] = [
  ['target', 'Film against target'],
  ['wet', 'Film, wet'],
  ['dry', 'Film, dry'],
  ['passes', 'Strokes over each place'],
  ['solids', 'Solids at impact'],
  ['dry-share', 'Share that arrived dry'],
];

/** The panel as it hangs, with what is shown on it, its legend, the probe and the replay. */
export function PanelView(): JSX.Element {
  const host = useRef<HTMLDivElement>(null);
  const [canvas, setCanvas] = useState<PanelCanvas | null>(null);
  useEffect(() => (host.current === null ? undefined : mountCanvas(host.current, setCanvas)), []);
  return (
    <section class="panel-view" aria-label="Panel">
      <div class="panel-tools">
        <label class="inline-field">
          <span>Show</span>
          <select
            aria-label="Show on the panel"
            value={state.field.value}
            onChange={(event) => (state.field.value = event.currentTarget.value as FieldKind)}
          >
            {FIELDS.map(([kind, words]) => <option key={kind} value={kind} selected={kind === state.field.value}>{words}</option>)}
          </select>
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
      <Legend />
      <Probe />
      <Replay />
    </section>
  );
}
