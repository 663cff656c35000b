import './log.css';
import type { ComponentType, JSX } from 'preact';
import { lookAtLog, logStage } from '../../app/log/log.ts';
import { LOG_TABS, type LogTab } from '../../app/log/logPrefs.ts';
import { state } from '../../app/state.ts';
import { OverStage } from '../frame/OverStage.tsx';
import { EntriesSheet } from './entries/EntriesSheet.tsx';
import { RecordSheet } from './record/RecordSheet.tsx';

const TAB_WORDS: Readonly<Record<LogTab, string>> = { entries: 'Entries', record: 'Record' };

const SHEETS: Readonly<Record<LogTab, ComponentType>> = { entries: EntriesSheet, record: RecordSheet };

/** What was really done, who signed it, and the whole record. */
export function LogStage({ close }: { readonly close: () => void }): JSX.Element {
  const { tab } = state.log.value;
  return <OverStage name="log" title="Log" close={close} problem={logStage.problem} words={TAB_WORDS} tabs={LOG_TABS} shown={tab} show={(next) => lookAtLog({ tab: next })} sheets={SHEETS} />;
}
