import './overStage.css';
import type { ComponentChildren, JSX } from 'preact';
import { redo, undo } from '../../app/document.ts';
import { state } from '../../app/state.ts';

export interface OverHeadProps {
  readonly title: string;
  readonly close: () => void;
  /** Actions of this stage, before undo, redo and close. */
  readonly children?: ComponentChildren;
}

/** Head of a stage laid over the window. */
export function OverHead({ title, close, children }: OverHeadProps): JSX.Element {
  const [past, future] = [state.past.value.at(-1), state.future.value.at(-1)];
  return (
    <header class="over-head">
      <h1>{title}</h1>
      <div class="over-actions">
        {children}
        <button type="button" disabled={past === undefined} title={past === undefined ? '' : `Undo: ${past.label}`} onClick={undo}>Undo</button>
        <button type="button" disabled={future === undefined} title={future === undefined ? '' : `Redo: ${future.label}`} onClick={redo}>Redo</button>
        <button type="button" class="act" onClick={close}>Close</button>
      </div>
    </header>
  );
}
