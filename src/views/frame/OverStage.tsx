import './overStage.css';
import type { Signal } from '@preact/signals';
import type { ComponentChildren, ComponentType, JSX } from 'preact';
import type { Problem } from '../../app/problem.ts';
import { Notice, Notices } from './Notices.tsx';
import { OverHead } from './OverHead.tsx';
import { SheetTabs, tabId } from './SheetTabs.tsx';
import { useOverWindow } from './useOverWindow.ts';

export interface OverStageProps<Tab extends string> {
  /** Class of the stage and head of its ids: `setups`. */
  readonly name: string;
  readonly title: string;
  readonly close: () => void;
  /** Something asked for on a sheet did not work; stays until dismissed. */
  readonly problem: Signal<Problem | null>;
  readonly words: Readonly<Record<Tab, string>>;
  readonly tabs: readonly Tab[];
  readonly shown: Tab;
  readonly show: (tab: Tab) => void;
  readonly sheets: Readonly<Record<Tab, ComponentType>>;
  /** What stands above the tabs for every sheet. */
  readonly children?: ComponentChildren;
}

/** A stage of several sheets laid over the window, with undo and redo, and Escape to close. */
export function OverStage<Tab extends string>({ name, title, close, problem, words, tabs, shown, show, sheets, children }: OverStageProps<Tab>): JSX.Element {
  const stage = useOverWindow(close);
  const Sheet: ComponentType = sheets[shown];
  const sheetId = `${name}-sheet`;
  return (
    <div
      ref={stage}
      class={`over-window over-stage ${name}`}
      role="dialog"
      aria-modal="true"
      aria-label={title}
      tabIndex={-1}
      // A file that misses its field must not take the browser away from the page.
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => event.preventDefault()}
    >
      <OverHead title={title} close={close} />
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      <Notices />
      {children}
      <SheetTabs sheet={sheetId} label={`Sheets of ${title}`} words={words} tabs={tabs} shown={shown} show={show} />
      <div id={sheetId} class="over-sheet" role="tabpanel" aria-labelledby={tabId(sheetId, shown)}>
        <Sheet key={shown} />
      </div>
    </div>
  );
}
