import './setups.css';
import type { ComponentType, JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { endPool } from '../../app/setups/pool.ts';
import { lookAt, setUps } from '../../app/setups/setUps.ts';
import { SET_UPS_TABS, type SetUpsTab } from '../../app/setups/setUpsPrefs.ts';
import { state } from '../../app/state.ts';
import { OverStage } from '../frame/OverStage.tsx';
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
  useEffect(() => endPool, []);
  const { tab } = state.setUps.value;
  return (
    <OverStage name="setups" title="Gun set-ups" close={close} problem={setUps.problem} words={TAB_WORDS} tabs={SET_UPS_TABS} shown={tab} show={(next) => lookAt({ tab: next })} sheets={SHEETS}>
      <SetUpStrip />
    </OverStage>
  );
}
