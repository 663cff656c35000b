import './setups.css';
import type { ComponentType, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { redo, undo } from '../../app/document.ts';
import { endPool } from '../../app/setups/pool.ts';
import { lookAt, setUps } from '../../app/setups/setUps.ts';
import { SET_UPS_TABS, type SetUpsTab } from '../../app/setups/setUpsPrefs.ts';
import { state } from '../../app/state.ts';
import { Notice, Notices } from '../frame/Notices.tsx';
import { SheetTabs, tabId } from '../frame/SheetTabs.tsx';
import { BesideSheet } from './beside/BesideSheet.tsx';
import { CardSheet } from './card/CardSheet.tsx';
import { FitSheet } from './fit/FitSheet.tsx';
import { HandsSheet } from './hands/HandsSheet.tsx';
import { SetUpStrip } from './SetUpStrip.tsx';
import { WindowSheet } from './window/WindowSheet.tsx';

const TAB_WORDS: Readonly<Record<SetUpsTab, string>> = {
  card: 'Test card', beside: 'Side by side', window: 'Working window', hands: 'Hands', fit: 'Worked out',
};

const SHEETS: Readonly<Record<SetUpsTab, ComponentType>> = {
  card: CardSheet, beside: BesideSheet, window: WindowSheet, hands: HandsSheet, fit: FitSheet,
};

export interface SetUpsStageProps {
  readonly close: () => void;
}

/** Gun set-ups: the real fan from a test card, set-ups side by side, the slack that each leaves, what it forgives a hand, and one worked out. */
export function SetUpsStage({ close }: SetUpsStageProps): JSX.Element {
  const stage = useRef<HTMLDivElement>(null);
  useEffect(() => endPool, []);
  useEffect(() => stage.current?.focus(), []);
  const { tab } = state.setUps.value;
  const Sheet = SHEETS[tab];
  const [past, future] = [state.past.value.at(-1), state.future.value.at(-1)];
  return (
    <div
      ref={stage}
      class="over-window setups"
      role="dialog"
      aria-modal="true"
      aria-label="Gun set-ups"
      tabIndex={-1}
      onKeyDown={(event) => { if (event.key === 'Escape' && !event.defaultPrevented) close(); }}
      // A file that misses the card's sheet must not take the browser away from the page.
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => event.preventDefault()}
    >
      <header class="setups-head">
        <h1>Gun set-ups</h1>
        <div class="setups-actions">
          <button type="button" disabled={past === undefined} title={past === undefined ? '' : `Undo: ${past.label}`} onClick={undo}>Undo</button>
          <button type="button" disabled={future === undefined} title={future === undefined ? '' : `Redo: ${future.label}`} onClick={redo}>Redo</button>
          <button type="button" class="act" onClick={close}>Close</button>
        </div>
      </header>
      {setUps.problem.value === null ? null : <Notice problem={setUps.problem.value} dismiss={() => (setUps.problem.value = null)} />}
      <Notices />
      <SetUpStrip />
      <SheetTabs sheet="setups-sheet" label="Sheets of the gun set-ups" words={TAB_WORDS} tabs={SET_UPS_TABS} shown={tab} show={(next) => lookAt({ tab: next })} />
      <div id="setups-sheet" class="setups-sheet" role="tabpanel" aria-labelledby={tabId('setups-sheet', tab)}>
        <Sheet key={tab} />
      </div>
    </div>
  );
}
